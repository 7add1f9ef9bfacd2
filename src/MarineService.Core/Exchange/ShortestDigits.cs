using System.Buffers.Text;
using System.Globalization;

namespace MarineService.Core.Exchange;

/// <summary>Binary numbers with as few digits as tell them from their neighbours, also on .NET Framework, which writes 0.4 with seventeen.</summary>
internal static class ShortestDigits
{
    internal static bool AreWrittenByTheFramework { get; } = Utf8Formatter.TryFormat(0.4, stackalloc byte[32], out int length) && length == 3;

    internal static string Of(double value)
    {
        // "R" gives the fewest digits on .NET. On .NET Framework it gives 15 or 17, and some of its 17 do not read back.
        string text = value.ToString("R", CultureInfo.InvariantCulture);
        string shorter = value.ToString("G16", CultureInfo.InvariantCulture);
        return shorter.Length < text.Length && ReadsBack(shorter, value) ? shorter
            : ReadsBack(text, value) ? text
            : value.ToString("G17", CultureInfo.InvariantCulture);
    }

    private static bool ReadsBack(string text, double value) => double.Parse(text, CultureInfo.InvariantCulture).Equals(value);
}
