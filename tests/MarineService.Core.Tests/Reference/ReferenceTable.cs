using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace MarineService.Core.Tests.Reference;

/// <summary>Published or worked figures kept as CSV beside this class; lines that start with # tell source, units and tolerance.</summary>
internal static class ReferenceTable
{
    /// <summary>The rows of a table, each a map from column name to text.</summary>
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string fileName)
    {
        using Stream stream = typeof(ReferenceTable).Assembly.GetManifestResourceStream($"Reference/{fileName}")
            ?? throw new ArgumentException($"No reference table '{fileName}'.", nameof(fileName));
        using StreamReader text = new(stream);
        CsvConfiguration configuration = new(CultureInfo.InvariantCulture) { AllowComments = true, Comment = '#' };
        using CsvReader csv = new(text, configuration);
        csv.Read();
        csv.ReadHeader();
        string[] header = csv.HeaderRecord!;
        List<IReadOnlyDictionary<string, string>> rows = [];
        while (csv.Read())
        {
            rows.Add(header.Select((name, i) => (name, value: csv.GetField(i) ?? "")).ToDictionary(cell => cell.name, cell => cell.value));
        }

        return rows;
    }

    /// <summary>A number as the table writes it: dot decimal.</summary>
    internal static double Number(this IReadOnlyDictionary<string, string> row, string column) =>
        double.Parse(row[column], NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>A number, or null where the cell is empty.</summary>
    internal static double? NumberOrNull(this IReadOnlyDictionary<string, string> row, string column) =>
        row[column].Length == 0 ? null : row.Number(column);
}
