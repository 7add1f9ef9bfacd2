namespace MarineService.Core.Engines;

/// <summary>The engine's hours on a date if a past year comes again.</summary>
public sealed class SeasonHours
{
    internal SeasonHours(int year, double hours) => (Year, Hours) = (year, UseMath.Kept(hours));

    /// <summary>The past year that is repeated.</summary>
    public int Year { get; }

    /// <summary>The engine's hours in all.</summary>
    public EngineHours Hours { get; }

    /// <summary>The year and the hours.</summary>
    /// <returns>Invariant text, such as "462.5 h if 2022 comes again".</returns>
    public override string ToString() => FormattableString.Invariant($"{Hours} if {Year} comes again");
}
