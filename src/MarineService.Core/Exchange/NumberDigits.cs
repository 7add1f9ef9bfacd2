namespace MarineService.Core.Exchange;

/// <summary>How many digits a number of a document has: more than a type keeps would be rounded away without a word.</summary>
internal static class NumberDigits
{
    private const int OutOfReach = 1_000_000;

    /// <summary>Whether a decimal number keeps every digit: at most 28 of them, none further than 28 places behind the point.</summary>
    internal static bool FitDecimal(ReadOnlySpan<byte> number)
    {
        Count(number, out int significant, out int lastPlace);
        return significant <= 28 && (significant == 0 || lastPlace >= -28);
    }

    /// <summary>Whether a binary number of 64 bits tells this one from its neighbours: at most 17 digits, and not so small that it becomes 0.</summary>
    internal static bool FitDouble(ReadOnlySpan<byte> number, double value)
    {
        Count(number, out int significant, out _);
        return significant <= 17 && (significant == 0 || Math.Abs(value) > 0);
    }

    // From the first digit that is not 0 to the last, and the power of ten of the last; 0 and 0 for a number that is 0.
    private static void Count(ReadOnlySpan<byte> number, out int significant, out int lastPlace)
    {
        int mark = number.IndexOfAny((byte)'e', (byte)'E');
        int exponent = mark < 0 ? 0 : Exponent(number.Slice(mark + 1));
        ReadOnlySpan<byte> digits = mark < 0 ? number : number.Slice(0, mark);
        int decimals = 0;
        int zeros = 0;
        bool isBehindPoint = false;
        significant = 0;
        foreach (byte c in digits)
        {
            if (c == (byte)'.')
            {
                isBehindPoint = true;
            }
            else if (c != (byte)'-')
            {
                decimals += isBehindPoint ? 1 : 0;
                zeros = c == (byte)'0' ? zeros + 1 : 0;
                significant += significant > 0 || c != (byte)'0' ? 1 : 0;
            }
        }

        significant = significant == 0 ? 0 : significant - zeros;
        lastPlace = significant == 0 ? 0 : exponent + zeros - decimals;
    }

    private static int Exponent(ReadOnlySpan<byte> text)
    {
        int value = 0;
        foreach (byte c in text)
        {
            if (c is >= (byte)'0' and <= (byte)'9')
            {
                value = Math.Min(OutOfReach, (value * 10) + (c - '0'));
            }
        }

        return text[0] == (byte)'-' ? -value : value;
    }
}
