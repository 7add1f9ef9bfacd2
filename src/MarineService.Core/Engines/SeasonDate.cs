using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Engines;

/// <summary>When hours are reached if a past year comes again.</summary>
public sealed class SeasonDate
{
    internal SeasonDate(int year, LocalDate? date) => (Year, Date) = (year, date);

    /// <summary>The past year that is repeated.</summary>
    public int Year { get; }

    /// <summary>The date, or null when the hours are not reached within ten years.</summary>
    public LocalDate? Date { get; }

    /// <summary>The year and the date.</summary>
    /// <returns>Invariant text, such as "2024-08-26 if 2022 comes again".</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{(Date is LocalDate date ? LocalDatePattern.Iso.Format(date) : "not within ten years")} if {Year} comes again");
}
