using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>Dates of ISO 8601 in documents, without a detour by way of strings.</summary>
internal static class IsoDate
{
    internal const int Length = 10;

    internal static bool TryParse(ReadOnlySpan<byte> text, out LocalDate date)
    {
        date = default;
        if (text.Length != Length || text[4] != '-' || text[7] != '-'
            || !TryNumber(text.Slice(0, 4), out int year) || !TryNumber(text.Slice(5, 2), out int month) || !TryNumber(text.Slice(8, 2), out int day)
            || year < 1900 || year > 2199 || month < 1 || month > 12 || day < 1 || day > CalendarSystem.Iso.GetDaysInMonth(year, month))
        {
            return false;
        }

        date = new(year, month, day);
        return true;
    }

    internal static void Format(LocalDate date, Span<byte> text)
    {
        WriteNumber(date.Year, text.Slice(0, 4));
        text[4] = (byte)'-';
        WriteNumber(date.Month, text.Slice(5, 2));
        text[7] = (byte)'-';
        WriteNumber(date.Day, text.Slice(8, 2));
    }

    private static bool TryNumber(ReadOnlySpan<byte> text, out int number)
    {
        number = 0;
        foreach (byte digit in text)
        {
            if (digit is < (byte)'0' or > (byte)'9')
            {
                return false;
            }

            number = (number * 10) + (digit - '0');
        }

        return true;
    }

    private static void WriteNumber(int number, Span<byte> text)
    {
        for (int i = text.Length - 1; i >= 0; i--)
        {
            text[i] = (byte)('0' + (number % 10));
            number /= 10;
        }
    }
}
