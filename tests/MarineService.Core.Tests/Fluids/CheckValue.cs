using System.Globalization;
using System.Text.RegularExpressions;
using MarineService.Core.Tests.Reference;

namespace MarineService.Core.Tests.Fluids;

/// <summary>Rows of fluids-check-values.csv by their id.</summary>
internal static partial class CheckValue
{
    /// <summary>Every number in the expected column, in its order.</summary>
    internal static double[] Numbers(string id)
    {
        IReadOnlyDictionary<string, string> row = ReferenceTable.Read("fluids-check-values.csv").Single(row => row["id"] == id);
        return [.. Number().Matches(row["expected"]).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];
    }

    [GeneratedRegex(@"(?<![\w.])-?\d+(\.\d+)?(e-?\d+)?")]
    private static partial Regex Number();
}
