using System.Globalization;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>Dates and numbers as people type them, in the one way that the caller stated.</summary>
internal static class SpreadsheetText
{
    private const int MostDigits = 20;

    private static readonly char[] DateMarks = ['.', '/', '-'];

    internal static string ExpectedDate(DateOrder order) => order switch
    {
        DateOrder.DayMonthYear => "a date from 1900 to 2199, day first and the year with four digits, such as 31.3.2026",
        DateOrder.MonthDayYear => "a date from 1900 to 2199, month first and the year with four digits, such as 3/31/2026",
        _ => "a date from 1900-01-01 to 2199-12-31, such as 2026-03-31; in another order only when the order is stated",
    };

    internal static LocalDate? Date(string text, DateOrder order)
    {
        if (Iso(text) is LocalDate date)
        {
            return date;
        }

        string[] parts = text.Split(DateMarks);
        if (order == DateOrder.YearMonthDay || parts.Length != 3 || parts[2].Length != 4 || text[parts[0].Length] != text[text.Length - 5])
        {
            return null;
        }

        (string day, string month) = order == DateOrder.DayMonthYear ? (parts[0], parts[1]) : (parts[1], parts[0]);
        return day.Length is 1 or 2 && month.Length is 1 or 2 ? Iso($"{parts[2]}-{month.PadLeft(2, '0')}-{day.PadLeft(2, '0')}") : null;
    }

    /// <summary>Digits with at most one decimal mark, the one that is stated; nothing else, so that 1,234 is never two things.</summary>
    internal static decimal? Number(string text, bool hasDecimalComma)
    {
        char mark = hasDecimalComma ? ',' : '.';
        if (text.Length is 0 or > MostDigits || text.Any(c => c is (< '0' or > '9') && c != mark) || !char.IsDigit(text[0]) || text[text.Length - 1] == mark)
        {
            return null;
        }

        return decimal.TryParse(text.Replace(mark, '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) ? number : null;
    }

    private static LocalDate? Iso(string text)
    {
        Span<byte> ascii = stackalloc byte[IsoDate.Length];
        if (text.Length != ascii.Length)
        {
            return null;
        }

        for (int i = 0; i < ascii.Length; i++)
        {
            ascii[i] = text[i] < 128 ? (byte)text[i] : (byte)0;
        }

        return IsoDate.TryParse(ascii, out LocalDate date) ? date : null;
    }
}
