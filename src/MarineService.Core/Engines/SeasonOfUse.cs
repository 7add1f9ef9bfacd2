namespace MarineService.Core.Engines;

/// <summary>One calendar year of an engine's use, as far as the readings cover it.</summary>
public sealed class SeasonOfUse
{
    internal SeasonOfUse(int year, double hours, double missingFraction, bool isComplete) =>
        (Year, Hours, MissingFraction, IsComplete) = (year, UseMath.Kept(hours), missingFraction, isComplete);

    /// <summary>The calendar year.</summary>
    public int Year { get; }

    /// <summary>The hours that the readings show for it.</summary>
    public EngineHours Hours { get; }

    /// <summary>The share of a year's hours, from 0 to 1, that by the other years falls on days without readings.</summary>
    public double MissingFraction { get; }

    /// <summary>Whether so little is missing that the year can stand for a season to come.</summary>
    public bool IsComplete { get; }

    /// <summary>The year and its hours.</summary>
    /// <returns>Invariant text, such as "2023: 97.5 h".</returns>
    public override string ToString() => FormattableString.Invariant($"{Year}: {Hours}{(IsComplete ? "" : ", not covered whole")}");
}
