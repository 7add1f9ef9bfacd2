using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>A spin-on filter as its maker describes it; what is not stated stays not known.</summary>
/// <remarks>Built by With methods; each returns a copy.</remarks>
/// <example><code>
/// FilterSpecification.Named("F1").WithThread(FilterThread.Inch(3, 4, 16)).WithGasket(Length.FromMillimeters(65));
/// </code></example>
public sealed class FilterSpecification
{
    internal const double MostSectionMm = 50;

    private readonly double?[] _values;

    private FilterSpecification(string name, FilterThread? thread, double?[] values, double? flow, double? micrometers) =>
        (Name, Thread, _values, FlowLitersPerMinute, ParticleMicrometers) = (name, thread, values, flow, micrometers);

    /// <summary>The filter by the caller's own number or name.</summary>
    public string Name { get; }

    /// <summary>The thread, or null when it is not stated.</summary>
    public FilterThread? Thread { get; }

    internal double? FlowLitersPerMinute { get; }

    internal double? ParticleMicrometers { get; }

    /// <summary>What is stated of an attribute.</summary>
    /// <param name="attribute">The attribute.</param>
    /// <returns>The figure, or null when it is not stated; a valve's is the word "yes" or "none".</returns>
    /// <exception cref="ArgumentNullException"><paramref name="attribute"/> is null.</exception>
    public Figure? FigureOf(FilterProperty attribute) =>
        Guard.NotNull(attribute) == FilterProperty.Thread ? Thread is null ? null : Figure.Of("has", Thread.ToString())
        : _values[attribute.Index] is not double value ? null
        : attribute.IsYesOrNo ? Figure.Of("has", value > 0 ? "yes" : "none")
        : Figure.Of("has", value, attribute.Unit);

    /// <summary>A filter of which nothing is stated yet.</summary>
    /// <param name="name">The caller's own number or name; not blank.</param>
    /// <returns>The filter.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public static FilterSpecification Named(string name) => new(Guard.NotBlank(name), null, new double?[FilterProperty.All.Count], null, null);

    /// <summary>A copy with the thread.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    public FilterSpecification WithThread(FilterThread thread) => new(Name, Guard.NotNull(thread), _values, FlowLitersPerMinute, ParticleMicrometers);

    /// <summary>A copy with the gasket's sizes.</summary>
    /// <param name="outer">Its outer diameter; above 0 and up to 500 mm.</param>
    /// <param name="inner">Its inner diameter; above 0 and below the outer one; null when not stated.</param>
    /// <param name="section">The thickness of its section; above 0 and up to 50 mm; null when not stated.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public FilterSpecification WithGasket(Length outer, Length? inner = null, Length? section = null)
    {
        double outside = FilterNeed.Size(outer, nameof(outer));
        double? inside = FilterNeed.Size(inner, nameof(inner));
        if (inside >= outside)
        {
            throw new ArgumentOutOfRangeException(nameof(inner), inside, "Must be below the outer diameter [mm].");
        }

        return With(
            (FilterProperty.GasketOuter, outside),
            (FilterProperty.GasketInner, inside),
            (FilterProperty.GasketSection, section is Length thick ? FilterNeed.Bounded(Canonical.Millimeters(thick), MostSectionMm, "mm", nameof(section)) : null));
    }

    /// <summary>A copy with the sizes of the can.</summary>
    /// <param name="height">Its height; above 0 and up to 500 mm.</param>
    /// <param name="outerDiameter">Its outer diameter; above 0 and up to 500 mm; null when not stated.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public FilterSpecification WithSize(Length height, Length? outerDiameter = null) => With(
        (FilterProperty.Height, FilterNeed.Size(height, nameof(height))),
        (FilterProperty.OuterDiameter, FilterNeed.Size(outerDiameter, nameof(outerDiameter))));

    /// <summary>A copy with a bypass valve.</summary>
    /// <param name="opensAt">The pressure difference at which it opens; above 0 and up to 1,000 kPa; null when there is one and nobody knows when it opens.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="opensAt"/> is outside its range.</exception>
    public FilterSpecification WithBypass(Pressure? opensAt) => With(
        (FilterProperty.Bypass, 1),
        (FilterProperty.BypassOpening, opensAt is Pressure p ? FilterNeed.Bounded(Canonical.Kilopascals(p), FilterNeed.MostDifferenceKilopascals, "kPa", nameof(opensAt)) : null));

    /// <summary>A copy that has no bypass valve.</summary>
    /// <returns>The copy.</returns>
    public FilterSpecification WithoutBypass() => With((FilterProperty.Bypass, 0), (FilterProperty.BypassOpening, null));

    /// <summary>A copy with what is known of the anti-drain-back valve.</summary>
    /// <param name="hasOne">Whether there is one.</param>
    /// <param name="hottestOil">The hottest oil that its rubber bears; from 0 to 300 °C; null when not stated.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="hottestOil"/> is outside its range.</exception>
    public FilterSpecification WithAntiDrainBack(bool hasOne, Temperature? hottestOil = null) => With(
        (FilterProperty.AntiDrainBack, hasOne ? 1 : 0),
        (FilterProperty.AntiDrainTemperature, FilterNeed.Heat(hottestOil, nameof(hottestOil))));

    /// <summary>A copy with the burst pressure.</summary>
    /// <param name="burst">The static burst pressure; above 0 and up to 20,000 kPa.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="burst"/> is outside its range.</exception>
    public FilterSpecification WithBurst(Pressure burst) =>
        With((FilterProperty.Burst, FilterNeed.Strength(burst, nameof(burst))));

    /// <summary>A copy with the pressure drop at a flow.</summary>
    /// <param name="pressureDrop">The pressure drop; above 0 and up to 1,000 kPa.</param>
    /// <param name="at">The flow; above 0 and up to 1,000 L/min.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterSpecification WithFlow(Pressure pressureDrop, VolumeFlow at)
    {
        double flow = FilterNeed.Bounded(Canonical.LitersPerMinute(at), FilterNeed.MostLitersPerMinute, "L/min", nameof(at));
        double drop = FilterNeed.Bounded(Canonical.Kilopascals(pressureDrop), FilterNeed.MostDifferenceKilopascals, "kPa", nameof(pressureDrop));
        return new(Name, Thread, Changed((FilterProperty.PressureDrop, drop)), flow, ParticleMicrometers);
    }

    /// <summary>A copy with the efficiency at a particle size.</summary>
    /// <param name="efficiencyFraction">The share held back; above 0 and up to 1.</param>
    /// <param name="at">The particle size; above 0 and up to 1 mm.</param>
    /// <param name="capacity">The dirt it holds; above 0 and up to 10 kg; null when not stated.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterSpecification WithFiltering(double efficiencyFraction, Length at, Mass? capacity = null)
    {
        double share = FilterNeed.Bounded(efficiencyFraction, 1, "of the particles", nameof(efficiencyFraction));
        double size = 1000 * FilterNeed.Bounded(Canonical.Millimeters(at), 1, "mm", nameof(at));
        double? held = FilterNeed.Dirt(capacity, nameof(capacity));
        return new(Name, Thread, Changed((FilterProperty.Efficiency, share), (FilterProperty.Capacity, held)), FlowLitersPerMinute, size);
    }

    /// <summary>A copy with what the filter endures; null where it is not stated.</summary>
    /// <param name="collapse">The pressure at which the element collapses; above 0 and up to 20,000 kPa.</param>
    /// <param name="fatigueCycles">Cycles of pressure; from 1 to 1,000,000,000.</param>
    /// <param name="vibrationCycles">Cycles of vibration; from 1 to 1,000,000,000.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterSpecification WithEndurance(Pressure? collapse, int? fatigueCycles = null, int? vibrationCycles = null) => With(
        (FilterProperty.Collapse, collapse is Pressure p ? FilterNeed.Strength(p, nameof(collapse)) : null),
        (FilterProperty.Fatigue, FilterNeed.Cycles(fatigueCycles, nameof(fatigueCycles))),
        (FilterProperty.Vibration, FilterNeed.Cycles(vibrationCycles, nameof(vibrationCycles))));

    /// <summary>A copy with whether it passed the tests for aftermarket petrol filters (SAE/USCAR-36).</summary>
    /// <param name="passed">Whether it did.</param>
    /// <returns>The copy.</returns>
    public FilterSpecification WithAftermarketTests(bool passed) => With((FilterProperty.AftermarketTests, passed ? 1 : 0));

    /// <summary>The name.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;

    /// <summary>A filter whose figures were checked where they came in, in the units of the attributes.</summary>
    internal static FilterSpecification OfChecked(string name, FilterThread? thread, double?[] values, double? flow, double? micrometers) =>
        new(name, thread, values, flow, micrometers);

    internal double? Value(FilterProperty attribute) => _values[attribute.Index];

    private FilterSpecification With(params (FilterProperty Attribute, double? Value)[] changes) =>
        new(Name, Thread, Changed(changes), FlowLitersPerMinute, ParticleMicrometers);

    private double?[] Changed(params (FilterProperty Attribute, double? Value)[] changes)
    {
        double?[] values = (double?[])_values.Clone();
        foreach ((FilterProperty attribute, double? value) in changes)
        {
            values[attribute.Index] = value;
        }

        return values;
    }
}
