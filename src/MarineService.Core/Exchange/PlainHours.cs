using System.Buffers.Text;

namespace MarineService.Core.Exchange;

/// <summary>Hours as nearly every document writes them, such as 412 or 412.5, without decimal arithmetic; other ways of writing a number are left to the decimal reader.</summary>
internal static class PlainHours
{
    private const int MostDigits = 6;

    private const int MostDecimals = 3;

    // A dial shows 1,000,000 h at most, but sums over many meters may be as large as 64 bits hold: 16 digits, a point, three decimals.
    internal const int MostBytes = 20;

    /// <summary>Up to six digits, then up to three decimals; false for anything else, right or wrong.</summary>
    /// <param name="number">A number of a document.</param>
    /// <param name="hours">The hours, exact.</param>
    internal static bool TryParse(ReadOnlySpan<byte> number, out EngineHours hours)
    {
        hours = default;
        if (!Utf8Parser.TryParse(number, out uint whole, out int digits) || digits > MostDigits)
        {
            return false;
        }

        uint decimals = 0;
        int places = number.Length - digits - 1;
        if (places >= 0)
        {
            ReadOnlySpan<byte> behindPoint = number.Slice(digits + 1);
            if (number[digits] != (byte)'.' || places is 0 or > MostDecimals
                || !Utf8Parser.TryParse(behindPoint, out decimals, out int read) || read != places)
            {
                return false;
            }
        }

        for (; places is >= 0 and < MostDecimals; places++)
        {
            decimals *= 10;
        }

        hours = EngineHours.FromThousandths((whole * 1000L) + decimals);
        return true;
    }

    /// <summary>The hours with no more decimals than they have.</summary>
    /// <param name="hours">The hours.</param>
    /// <param name="text">Where to write them, at least <see cref="MostBytes"/> long.</param>
    /// <returns>How many bytes were written.</returns>
    internal static int Format(EngineHours hours, Span<byte> text)
    {
        int decimals = (int)(hours.Thousandths % 1000);
        Utf8Formatter.TryFormat(hours.Thousandths / 1000, text, out int length);
        if (decimals > 0)
        {
            text[length++] = (byte)'.';
        }

        for (int unit = 100; decimals > 0; decimals %= unit, unit /= 10)
        {
            text[length++] = (byte)('0' + (decimals / unit));
        }

        return length;
    }
}
