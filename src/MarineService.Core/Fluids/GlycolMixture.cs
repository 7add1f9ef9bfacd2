using System.Globalization;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>Glycol in water by its strength: when it freezes, how it dilutes, how much to fill.</summary>
/// <remarks>
/// <para>Freezing points: ASHRAE tables (2001), linear between rows, up to 57.8 % ethylene and 60 % propylene glycol by
/// volume and never beyond. Other handbooks differ by up to 2.9 °C, so a margin belongs on top.</para>
/// <para>A freezing point is not a burst rating: burst ratings disagree between sources and are never worked out here;
/// take them from the container. A ready-mixed product is not 100 % glycol. Inhibitors, dyes and ethanol are left out.</para>
/// </remarks>
public sealed class GlycolMixture
{
    internal static readonly Citation FreezingSource =
        Citation.Secondary("ASHRAE tables of aqueous ethylene and propylene glycol", "2001", "freezing point by volume and by mass");

    internal static readonly Citation DensitySource =
        Citation.Secondary("Å. Melinder, Properties of Secondary Working Fluids for Indirect Systems, IIR", "2010", "density polynomials");

    private const double MaxLiters = 10_000;

    private readonly GlycolTable _table;
    private readonly double _volumePercent;

    private GlycolMixture(GlycolKind kind, double volumePercent) =>
        (Kind, _table, _volumePercent) = (kind, GlycolTable.Of(kind), volumePercent);

    /// <summary>Which glycol.</summary>
    public GlycolKind Kind { get; }

    /// <summary>Glycol's share of the volume, 0 to 1.</summary>
    public double VolumeFraction => _volumePercent / 100;

    /// <summary>Glycol's share of the mass; not known beyond the table.</summary>
    public Answer<double> MassFraction =>
        _volumePercent <= _table.MaxVolumePercent ? Answer.Known(MassPercent / 100) : BeyondTable<double>();

    /// <summary>Where the first ice forms; not known beyond the table, because strong mixtures freeze warmer again.</summary>
    public Answer<Temperature> FreezingPoint =>
        _volumePercent <= _table.MaxVolumePercent
            ? Answer.Known(Temperature.FromDegreesCelsius(FreezingCelsius))
            : BeyondTable<Temperature>();

    private double MassPercent => FluidMath.Interpolate(_table.VolumePercent, _table.MassPercent, _volumePercent);

    private double FreezingCelsius => FluidMath.Interpolate(_table.VolumePercent, _table.FreezingCelsius, _volumePercent);

    /// <summary>A mixture by glycol's share of the volume.</summary>
    /// <param name="kind">Which glycol.</param>
    /// <param name="volumeFraction">From 0 to 1.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not defined, or <paramref name="volumeFraction"/> is outside its range.</exception>
    public static GlycolMixture OfVolume(GlycolKind kind, double volumeFraction) =>
        new(Guard.Defined(kind), 100 * Guard.InRange(volumeFraction, 0, 1, "of the volume"));

    /// <summary>A mixture by glycol's share of the mass.</summary>
    /// <param name="kind">Which glycol.</param>
    /// <param name="massFraction">From 0 to 0.6, where the table ends.</param>
    /// <returns>The mixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not defined, or <paramref name="massFraction"/> is outside its range.</exception>
    public static GlycolMixture OfMass(GlycolKind kind, double massFraction)
    {
        GlycolTable table = GlycolTable.Of(Guard.Defined(kind));
        double percent = 100 * Guard.InRange(massFraction, 0, 0.6, "of the mass");
        return new(kind, FluidMath.Interpolate(table.MassPercent, table.VolumePercent, percent));
    }

    /// <summary>The weakest mixture whose freezing point is at or below a temperature.</summary>
    /// <param name="kind">Which glycol.</param>
    /// <param name="freezingPoint">At most 0 °C, at least -60 °C.</param>
    /// <returns>The mixture, or not known when the table does not reach that far.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not defined, or <paramref name="freezingPoint"/> is outside its range.</exception>
    public static Answer<GlycolMixture> FreezingAt(GlycolKind kind, Temperature freezingPoint)
    {
        GlycolTable table = GlycolTable.Of(Guard.Defined(kind));
        double celsius = Guard.InRange(Canonical.Celsius(freezingPoint), -60, 0, "°C", nameof(freezingPoint));
        double[] rising = Array.ConvertAll(table.FreezingCelsius, t => -t);
        return -celsius <= rising[rising.Length - 1]
            ? Answer.Known(new GlycolMixture(kind, FluidMath.Interpolate(rising, table.VolumePercent, -celsius)))
            : Answer.NotKnown<GlycolMixture>("A glycol table that reaches so low; the warmest answer is another fluid or a dry engine.");
    }

    /// <summary>How cold it may get: the freezing point with a margin for what handbooks disagree on.</summary>
    /// <param name="margin">0 to 30 K; null for 3 K (project choice).</param>
    /// <returns>The temperature, or not known beyond the table.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="margin"/> is outside its range.</exception>
    public Answer<Temperature> ProtectsDownTo(TemperatureDelta? margin = null)
    {
        double kelvins = margin is TemperatureDelta m ? Guard.InRange(Canonical.Kelvins(m), 0, 30, "K", nameof(margin)) : 3;
        return _volumePercent <= _table.MaxVolumePercent
            ? Answer.Known(Temperature.FromDegreesCelsius(FreezingCelsius + kelvins))
            : BeyondTable<Temperature>();
    }

    /// <summary>What this mixture becomes when it meets water; volumes taken as additive (error below about 1 %).</summary>
    /// <param name="own">How much of this mixture; above 0, at most 10,000 L.</param>
    /// <param name="water">How much water, such as what was trapped in a low point; 0 to 10,000 L.</param>
    /// <returns>The diluted mixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range.</exception>
    /// <example><code>GlycolMixture.OfVolume(GlycolKind.Propylene, 0.60).DilutedBy(Volume.FromLiters(4), Volume.FromLiters(1)); // 48 %</code></example>
    public GlycolMixture DilutedBy(Volume own, Volume water)
    {
        double ownLiters = Above0(own, nameof(own));
        double waterLiters = From0(water, nameof(water));
        return new(Kind, _volumePercent * ownLiters / (ownLiters + waterLiters));
    }

    /// <summary>How much of this mixture makes trapped water at least as strong as wanted, all of it staying in.</summary>
    /// <param name="trappedWater">0 to 10,000 L.</param>
    /// <param name="wantedVolumeFraction">From 0 to below this mixture's own strength.</param>
    /// <returns>The volume to add, or not known when this mixture is no stronger than what is wanted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Answer<Volume> FillNeeded(Volume trappedWater, double wantedVolumeFraction)
    {
        double water = From0(trappedWater, nameof(trappedWater));
        double wanted = 100 * Guard.InRange(wantedVolumeFraction, 0, 1, "of the volume");
        return wanted < _volumePercent
            ? Answer.Known(Volume.FromLiters(water * wanted / (_volumePercent - wanted)))
            : Answer.NotKnown<Volume>("A stronger antifreeze: this one is no stronger than what is wanted.");
    }

    /// <summary>How much of this mixture to run through until the outlet is as strong as wanted, if all mixes perfectly.</summary>
    /// <remarks>Plug flow would need only the volume of the circuit; the truth lies between, so prove it at the outlet.</remarks>
    /// <param name="circuit">Volume of the circuit, full of water at the start; above 0, at most 10,000 L.</param>
    /// <param name="wantedVolumeFraction">From 0 to below this mixture's own strength.</param>
    /// <returns>The volume to run through, or not known when this mixture is no stronger than what is wanted.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Answer<Volume> FlushNeeded(Volume circuit, double wantedVolumeFraction)
    {
        double liters = Above0(circuit, nameof(circuit));
        double wanted = 100 * Guard.InRange(wantedVolumeFraction, 0, 1, "of the volume");
        return wanted < _volumePercent
            ? Answer.Known(Volume.FromLiters(liters * Math.Log(_volumePercent / (_volumePercent - wanted))))
            : Answer.NotKnown<Volume>("A stronger antifreeze: this one is no stronger than what is wanted.");
    }

    /// <summary>The density at a temperature.</summary>
    /// <param name="temperature">From -60 to 200 °C.</param>
    /// <returns>
    /// The density; not known below the freezing point, above 40 °C (100 °C for plain water), or where the published
    /// data do not reach (ethylene glycol above 56 % by mass, propylene glycol below 15 % or above 57 %).
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside its range.</exception>
    public Answer<Density> DensityAt(Temperature temperature) => DensityAtCelsius(Celsius(temperature, nameof(temperature)));

    /// <summary>What a volume of the mixture becomes when it is heated or cooled.</summary>
    /// <param name="volume">0 to 10,000 L.</param>
    /// <param name="from">Where it was measured, -60 to 200 °C.</param>
    /// <param name="to">Where it is asked about, -60 to 200 °C.</param>
    /// <returns>The volume, or not known where the density is not.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Answer<Volume> Brought(Volume volume, Temperature from, Temperature to)
    {
        double liters = From0(volume, nameof(volume));
        Answer<Density> before = DensityAtCelsius(Celsius(from, nameof(from)));
        Answer<Density> after = DensityAtCelsius(Celsius(to, nameof(to)));
        return !before.IsKnown ? Answer.NotKnown<Volume>([.. before.Missing])
            : !after.IsKnown ? Answer.NotKnown<Volume>([.. after.Missing])
            : Answer.Known(Volume.FromLiters(
                liters * Canonical.KilogramsPerCubicMeter(before.Value) / Canonical.KilogramsPerCubicMeter(after.Value)));
    }

    /// <summary>Strength, freezing point and their source.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        bool inTable = _volumePercent <= _table.MaxVolumePercent;
        string answer = inTable
            ? $"{this} begins to freeze at {FigureUnit.DegreeCelsius.Write(FreezingCelsius, units)}."
            : $"{this}: freezing point not known, the table ends at {FigureUnit.Fraction.Write(_table.MaxVolumePercent / 100, units)}.";
        return new ExplanationBuilder(answer)
            .AddIf(inTable, "by mass", () => FigureUnit.Fraction.Write(MassPercent / 100, units))
            .AddIf(inTable, "with margin", () => $"{FigureUnit.DegreeCelsius.Write(FreezingCelsius + 3, units)}, because handbooks differ by up to {FigureUnit.Kelvin.Write(2.9, units)}")
            .Add("not asked", "a burst rating: take it from the container")
            .Build(FreezingSource, Citation.ProjectChoice);
    }

    /// <summary>Kind and strength, invariant: "48.0 % propylene glycol by volume".</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{_volumePercent.ToString("0.0", CultureInfo.InvariantCulture)} % {(Kind == GlycolKind.Ethylene ? "ethylene" : "propylene")} glycol by volume";

    private Answer<Density> DensityAtCelsius(double celsius)
    {
        if (_volumePercent == 0)
        {
            return Water.DensityAtCelsius(celsius);
        }

        if (_volumePercent > _table.MaxVolumePercent)
        {
            return BeyondTable<Density>();
        }

        if (celsius < FreezingCelsius)
        {
            return Answer.NotKnown<Density>("A temperature above the freezing point of the mixture.");
        }

        double mass = MassPercent;
        return _table.Density.Covers(mass, celsius)
            ? Answer.Known(Density.FromKilogramsPerCubicMeter(_table.Density.KilogramsPerCubicMeter(mass, celsius)))
            : Answer.NotKnown<Density>("Published density of this strength at this temperature; a weighed litre would settle it.");
    }

    private static double Celsius(Temperature temperature, string name) =>
        Guard.InRange(Canonical.Celsius(temperature), -60, 200, "°C", name);

    private static double From0(Volume volume, string name) => Guard.InRange(Canonical.Liters(volume), 0, MaxLiters, "L", name);

    private static double Above0(Volume volume, string name) => From0(Volume.FromLiters(Guard.Positive(Canonical.Liters(volume), "L", name)), name);

    private static Answer<T> BeyondTable<T>() =>
        Answer.NotKnown<T>("A mixture inside the table: at most 57.8 % ethylene or 60 % propylene glycol by volume.");
}
