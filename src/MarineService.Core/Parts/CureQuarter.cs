using System.Globalization;
using System.Text.RegularExpressions;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Parts;

/// <summary>The quarter of the year in which rubber was cured, as its bag or date code says.</summary>
/// <remarks>Storage is counted from the end of the quarter, as one seal maker's guide does. Two are equal when year and quarter are.</remarks>
/// <example><code>CureQuarter.Of(2017, 2).End; // 2017-06-30</code></example>
public sealed record CureQuarter
{
    private static readonly Regex Code = new(
        @"^(?:(?<year>[0-9]{4})-?Q(?<quarter>[1-4])|(?<quarter>[1-4])Q(?<year>[0-9]{2}|[0-9]{4}))$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);

    private CureQuarter(int year, int quarter) => (Year, Quarter) = (year, quarter);

    /// <summary>The year.</summary>
    public int Year { get; }

    /// <summary>The quarter, from 1 to 4.</summary>
    public int Quarter { get; }

    /// <summary>The last day of the quarter, from which storage is counted.</summary>
    public LocalDate End => EndAfter(0);

    /// <summary>A quarter.</summary>
    /// <param name="year">The year; from 1950 to 2150.</param>
    /// <param name="quarter">The quarter; from 1 to 4.</param>
    /// <returns>The quarter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static CureQuarter Of(int year, int quarter) =>
        new(Guard.InRange(year, 1950, 2150, "as a year"), Guard.InRange(quarter, 1, 4, "as a quarter"));

    /// <summary>Reads a date code: "2017-Q2", "2Q2017" or "2Q17".</summary>
    /// <param name="code">The code as it is printed; not blank.</param>
    /// <param name="seenOn">The day on which it was read: a year of two digits is the latest one not after it.</param>
    /// <returns>The quarter, or not known when the code is another or lies after that day.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="code"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="code"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="seenOn"/> is outside 1900 to 2199.</exception>
    public static Answer<CureQuarter> Read(string code, LocalDate seenOn)
    {
        Match match = Code.Match(Guard.NotBlank(code));
        Guard.Date(seenOn);
        if (match.Success)
        {
            string digits = match.Groups["year"].Value;
            int quarter = match.Groups["quarter"].Value[0] - '0';
            int year = int.Parse(digits, CultureInfo.InvariantCulture);
            int now = (seenOn.Year * 4) + ((seenOn.Month - 1) / 3);
            if (digits.Length == 2)
            {
                year += seenOn.Year / 100 * 100;
                year -= (year * 4) + quarter - 1 > now ? 100 : 0;
            }

            if (year is >= 1950 and <= 2150 && (year * 4) + quarter - 1 <= now)
            {
                return Answer.Known(new CureQuarter(year, quarter));
            }
        }

        return Answer.NotKnown<CureQuarter>("The quarter of cure, such as 2Q17 or 2017-Q2, not after the day on which it was read.");
    }

    /// <summary>Year and quarter, such as "2017-Q2".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Year}-Q{Quarter}");

    internal LocalDate EndAfter(int years) => new LocalDate(Year + years, 3 * Quarter, 1).PlusMonths(1).PlusDays(-1);
}
