using System.Globalization;
using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>Binary numbers with as few digits as tell them from their neighbours, also on .NET Framework, which writes 0.4 with seventeen.</summary>
internal static class ShortestDigits
{
    private static readonly bool AreWrittenByTheFramework = BytesByTheFramework(0.4) == 3;

    internal static void Write(Utf8JsonWriter writer, double value)
    {
        if (AreWrittenByTheFramework)
        {
            WriteByTheFramework(writer, value);
            return;
        }

        string text = Of(value);
        if (decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal exact))
        {
            // A decimal number keeps the digits that it was made from; a raw value would not be indented.
            writer.WriteNumberValue(exact);
        }
        else
        {
            writer.WriteRawValue(text, skipInputValidation: true);
        }
    }

    internal static string Of(double value)
    {
        // "R" gives the fewest digits on .NET. On .NET Framework it gives 15 or 17, and some of its 17 do not read back.
        string text = value.ToString("R", CultureInfo.InvariantCulture);
        string shorter = value.ToString("G16", CultureInfo.InvariantCulture);
        return shorter.Length < text.Length && ReadsBack(shorter, value) ? shorter
            : ReadsBack(text, value) ? text
            : value.ToString("G17", CultureInfo.InvariantCulture);
    }

#pragma warning disable RS0030 // The one place that all others are sent to.
    private static void WriteByTheFramework(Utf8JsonWriter writer, double value) => writer.WriteNumberValue(value);
#pragma warning restore RS0030

    private static long BytesByTheFramework(double value)
    {
        using ByteBuffer buffer = new();
        using Utf8JsonWriter writer = new(buffer);
        WriteByTheFramework(writer, value);
        return writer.BytesPending;
    }

    private static bool ReadsBack(string text, double value) => double.Parse(text, CultureInfo.InvariantCulture).Equals(value);
}
