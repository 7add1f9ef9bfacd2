using System.Globalization;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>An antifreeze by its label: what it is made of, how strong, ready mixed or to be mixed.</summary>
/// <remarks>
/// A burst rating is kept and shown, and never used: slush forms long before, and published burst figures disagree by tens of kelvins.
/// </remarks>
public sealed class Antifreeze
{
    private readonly double? _burstCelsius;

    private Antifreeze(string name, AntifreezeBase madeOf, double? glycolFraction, bool isReadyMixed, double? burstCelsius)
    {
        (Name, Base, GlycolFraction, IsReadyMixed, _burstCelsius) = (name, madeOf, glycolFraction, isReadyMixed, burstCelsius);
    }

    /// <summary>What people call it.</summary>
    public string Name { get; }

    /// <summary>What keeps it from freezing.</summary>
    public AntifreezeBase Base { get; }

    /// <summary>Whether it is sold to be used as it is; thinning it takes away what its label promises.</summary>
    public bool IsReadyMixed { get; }

    /// <summary>The temperature down to which the label promises that pipes do not burst, or null when it says nothing of it.</summary>
    public Temperature? BurstRating => _burstCelsius is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The glycol in it as delivered; not known without a strength, or when anything but one glycol keeps it from freezing.</summary>
    public Answer<GlycolMixture> Mixture =>
        Kind is not GlycolKind kind
            ? Answer.NotKnown<GlycolMixture>(Base == AntifreezeBase.NotStated
                ? $"What '{Name}' is made of."
                : $"An antifreeze of propylene glycol alone: the freezing point of '{Name}' is not worked out, because it holds ethanol.")
        : GlycolFraction is not double fraction ? Answer.NotKnown<GlycolMixture>($"How much glycol is in '{Name}', by volume.")
        : Answer.Known(GlycolMixture.OfVolume(kind, fraction));

    internal double? GlycolFraction { get; }

    internal double? BurstCelsius => _burstCelsius;

    /// <summary>The glycol whose scale a refractometer must have; null when no refractometer reads this antifreeze.</summary>
    internal GlycolKind? Kind => Base switch
    {
        AntifreezeBase.PropyleneGlycol => GlycolKind.Propylene,
        AntifreezeBase.EthyleneGlycol => GlycolKind.Ethylene,
        _ => null,
    };

    internal bool HasEthanol => Base is AntifreezeBase.Ethanol or AntifreezeBase.PropyleneGlycolWithEthanol;

    /// <summary>An antifreeze.</summary>
    /// <param name="name">What people call it; not blank.</param>
    /// <param name="madeOf">What keeps it from freezing.</param>
    /// <param name="glycolVolumeFraction">Glycol's share of the volume as delivered, above 0, at most 1; null when the label does not say.</param>
    /// <param name="isReadyMixed">Whether it is sold to be used as it is.</param>
    /// <returns>The antifreeze.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="madeOf"/> is not defined, or <paramref name="glycolVolumeFraction"/> is outside its range.</exception>
    /// <example><code>Antifreeze.Of("winter mix", AntifreezeBase.PropyleneGlycol, 0.50, isReadyMixed: true);</code></example>
    public static Antifreeze Of(string name, AntifreezeBase madeOf, double? glycolVolumeFraction = null, bool isReadyMixed = false) =>
        new(
            Guard.NotBlank(name),
            Guard.Defined(madeOf),
            glycolVolumeFraction is double share ? Guard.InRange(Guard.Positive(share, "of the volume", nameof(glycolVolumeFraction)), 0, 1, "of the volume", nameof(glycolVolumeFraction)) : null,
            isReadyMixed,
            null);

    /// <summary>A copy with the burst rating of its label.</summary>
    /// <param name="rating">From -100 to 0 °C.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rating"/> is outside its range.</exception>
    public Antifreeze WithBurstRating(Temperature rating) =>
        new(Name, Base, GlycolFraction, IsReadyMixed, Guard.InRange(Canonical.Celsius(rating), -100, 0, "°C", nameof(rating)));

    /// <summary>Name and strength.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        GlycolFraction is double fraction ? $"{Name} ({(100 * fraction).ToString("0.#", CultureInfo.InvariantCulture)} % glycol)" : Name;
}
