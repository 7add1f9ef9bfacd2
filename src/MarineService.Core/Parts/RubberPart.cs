using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Parts;

/// <summary>A rubber part: what it is made of, when it was cured, how it was kept, and since when it is in service.</summary>
/// <remarks>Built by With methods; each returns a copy. Time in store and time in service are two different ages.</remarks>
public sealed class RubberPart
{
    private RubberPart(string name, Polymer polymer, CureQuarter? cured, bool? isKeptAsGuided, bool isInspected, LocalDate? fittedOn) =>
        (Name, Polymer, Cured, IsKeptAsGuided, IsInspected, FittedOn) = (name, polymer, cured, isKeptAsGuided, isInspected, fittedOn);

    /// <summary>The part by the caller's own number or name.</summary>
    public string Name { get; }

    /// <summary>What it is made of.</summary>
    public Polymer Polymer { get; }

    /// <summary>When it was cured, or null when that is not known.</summary>
    public CureQuarter? Cured { get; }

    /// <summary>Whether it was kept below 25 °C, dark, dry, away from ozone and unstrained; null when nobody knows.</summary>
    public bool? IsKeptAsGuided { get; }

    /// <summary>Whether it was inspected and passed for the extension.</summary>
    public bool IsInspected { get; }

    /// <summary>Since when it is in service, or null when it is on the shelf.</summary>
    public LocalDate? FittedOn { get; }

    /// <summary>A part on the shelf.</summary>
    /// <param name="name">The caller's own number or name; not blank.</param>
    /// <param name="polymer">What it is made of.</param>
    /// <param name="cured">When it was cured; null when that is not known.</param>
    /// <returns>The part.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="polymer"/> is not a defined value.</exception>
    public static RubberPart Of(string name, Polymer polymer, CureQuarter? cured = null) =>
        new(Guard.NotBlank(name), Guard.Defined(polymer), cured, null, false, null);

    /// <summary>A copy with how it was kept.</summary>
    /// <param name="asGuided">Whether below 25 °C, dark, dry, away from ozone and unstrained.</param>
    /// <returns>The copy.</returns>
    public RubberPart Kept(bool asGuided) => new(Name, Polymer, Cured, asGuided, IsInspected, FittedOn);

    /// <summary>A copy that was inspected and passed: no cracks, no set, no tack.</summary>
    /// <returns>The copy.</returns>
    public RubberPart Inspected() => new(Name, Polymer, Cured, IsKeptAsGuided, true, FittedOn);

    /// <summary>A copy that went into service.</summary>
    /// <param name="date">The day.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public RubberPart Fitted(LocalDate date) => new(Name, Polymer, Cured, IsKeptAsGuided, IsInspected, Guard.Date(date));

    /// <summary>Judges its ages on a day.</summary>
    /// <param name="today">The day.</param>
    /// <param name="guide">Whose storage limits; ISO 2230 when null.</param>
    /// <param name="serviceMonths">The part's service life by the engine's maker; from 1 to 600 months; null when nobody states it.</param>
    /// <returns>Both ages, the verdict on the shelf and in service, and what is missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public RubberAge AgeOn(LocalDate today, StorageGuide? guide = null, int? serviceMonths = null) => new(
        this,
        Guard.Date(today),
        guide ?? StorageGuide.Iso2230,
        serviceMonths is int months ? Guard.InRange(months, 1, 600, "months", nameof(serviceMonths)) : null);

    /// <summary>Name, polymer and quarter of cure.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Name}, {Polymer}, cured {Cured?.ToString() ?? "not known"}";
}
