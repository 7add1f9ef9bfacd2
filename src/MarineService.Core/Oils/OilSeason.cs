using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Oils;

/// <summary>The permitted grades over a list of nights: the selection for the coldest start, and when each grade stops being accepted.</summary>
public sealed class OilSeason
{
    internal OilSeason(OilSelection selection, int nights, int nightsWithStart, NightMinimum coldest, IReadOnlyList<GradeSeason> grades, GradeSeason? fitted) =>
        (Selection, Nights, NightsWithStart, Coldest, Grades, FittedSeason) = (selection, nights, nightsWithStart, coldest, grades, fitted);

    /// <summary>The selection for the coldest night with a possible start; for the coldest night of all when the engine is laid up throughout.</summary>
    public OilSelection Selection { get; }

    /// <summary>How many nights were given.</summary>
    public int Nights { get; }

    /// <summary>How many of them are outside every lay-up.</summary>
    public int NightsWithStart { get; }

    /// <summary>The night that <see cref="Selection"/> is for.</summary>
    public NightMinimum Coldest { get; }

    /// <summary>Each permitted grade over the nights, in the maker's list order.</summary>
    public IReadOnlyList<GradeSeason> Grades { get; }

    /// <summary>The earliest date in the list on which the fitted oil's grade is no longer accepted.</summary>
    /// <remarks>Not known when no fitted oil was given, or when it is accepted for every start in the list.</remarks>
    public Answer<LocalDate> FittedStopsBeingAccepted =>
        FittedSeason is null ? Answer.NotKnown<LocalDate>("The grade of the oil that is in the sump.")
        : FittedSeason.FirstNotAccepted is LocalDate date ? Answer.Known(date)
        : Answer.NotKnown<LocalDate>($"A start colder than any in the list: {FittedSeason.Grade.Designation} is accepted for all of them.");

    /// <summary>The fitted oil's grade over the nights, or null when no fitted oil was given.</summary>
    public GradeSeason? FittedSeason { get; }

    /// <summary>The season's answer, each grade, the fitted oil, and the selection for the coldest start.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Explanation coldest = Selection.Explain(units);
        ExplanationBuilder lines = new(coldest.Answer);
        lines.Add("nights", FormattableString.Invariant($"{Nights} given, {NightsWithStart} with a possible start"))
            .Add("coldest", $"{LocalDatePattern.Iso.Format(Coldest.Date)}, air {FigureUnit.DegreeCelsius.Write(Coldest.Celsius, units)}");
        foreach (GradeSeason grade in Grades)
        {
            lines.Add("season", grade.ToString());
        }

        if (FittedSeason is not null)
        {
            lines.Add("fitted until", FittedSeason.FirstNotAccepted is LocalDate date ? $"not accepted from {LocalDatePattern.Iso.Format(date)}" : "accepted for every start in the list");
        }

        foreach (ExplanationLine line in coldest.Lines)
        {
            lines.Add(line.Label, line.Text);
        }

        return lines.Build([.. coldest.Citations]);
    }
}
