using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>What an engine needs of its spin-on filter; what is not stated is not asked, except thread, gasket, bypass and burst, without which nothing is equal.</summary>
/// <remarks>Built by With methods; each returns a copy. The engine's manual states the figures.</remarks>
public sealed class FilterNeed
{
    internal const double MostMm = 500;
    internal const double MostDifferenceKilopascals = 1_000;
    internal const double MostStrengthKilopascals = 20_000;
    internal const double MostCelsius = 300;
    internal const double MostLitersPerMinute = 1_000;
    internal const double MostMicrometers = 1_000;
    internal const double MostGrams = 10_000;
    internal const int MostCycles = 1_000_000_000;

    private readonly double?[] _least;
    private readonly double?[] _most;

    private FilterNeed(FilterKind kind, FilterOrientation mounted, FilterThread? thread, double?[] least, double?[] most, double? flow, double? micrometers) =>
        (Kind, Mounted, Thread, _least, _most, FlowLitersPerMinute, ParticleMicrometers) = (kind, mounted, thread, least, most, flow, micrometers);

    /// <summary>What the filter filters.</summary>
    public FilterKind Kind { get; }

    /// <summary>How it sits on its base.</summary>
    public FilterOrientation Mounted { get; }

    /// <summary>The thread of the base, or null when it is not stated.</summary>
    public FilterThread? Thread { get; }

    /// <summary>Whether the filter may be filled before it goes on: an oil filter with its gasket up, through the outer holes, counted as poured (common practice).</summary>
    public bool MayBePrefilled => Kind == FilterKind.EngineOil && Mounted == FilterOrientation.GasketUp;

    internal double? FlowLitersPerMinute { get; }

    internal double? ParticleMicrometers { get; }

    /// <summary>A need of which only kind and mounting are stated.</summary>
    /// <param name="kind">What the filter filters.</param>
    /// <param name="mounted">How it sits on its base.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not a defined value.</exception>
    public static FilterNeed Of(FilterKind kind, FilterOrientation mounted = FilterOrientation.NotStated) => new(
        Guard.Defined(kind), Guard.Defined(mounted), null, new double?[FilterProperty.All.Count], new double?[FilterProperty.All.Count], null, null);

    /// <summary>A copy with another mounting.</summary>
    /// <param name="mounted">How the filter sits on its base.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mounted"/> is not a defined value.</exception>
    public FilterNeed WithMounting(FilterOrientation mounted) =>
        new(Kind, Guard.Defined(mounted), Thread, _least, _most, FlowLitersPerMinute, ParticleMicrometers);

    /// <summary>A copy with the thread of the base.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    public FilterNeed WithThread(FilterThread thread) =>
        new(Kind, Mounted, Guard.NotNull(thread), _least, _most, FlowLitersPerMinute, ParticleMicrometers);

    /// <summary>A copy with the land of the base on which the gasket's outer edge must lie.</summary>
    /// <param name="least">The least outer diameter; above 0 and up to 500 mm.</param>
    /// <param name="most">The greatest; from <paramref name="least"/> to 500 mm.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterNeed WithGasketOuter(Length least, Length most) => WithRange(FilterProperty.GasketOuter, least, most);

    /// <summary>A copy with the land of the base on which the gasket's inner edge must lie.</summary>
    /// <param name="least">The least inner diameter; above 0 and up to 500 mm.</param>
    /// <param name="most">The greatest; from <paramref name="least"/> to 500 mm.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterNeed WithGasketInner(Length least, Length most) => WithRange(FilterProperty.GasketInner, least, most);

    /// <summary>A copy with the section that the gasket must have.</summary>
    /// <param name="least">The least thickness; above 0 and up to 500 mm.</param>
    /// <param name="most">The greatest; from <paramref name="least"/> to 500 mm.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterNeed WithGasketSection(Length least, Length most) => WithRange(FilterProperty.GasketSection, least, most);

    /// <summary>A copy with the room that the filter has.</summary>
    /// <param name="height">The room above the base; above 0 and up to 500 mm.</param>
    /// <param name="outerDiameter">The widest can that goes in and takes the wrench; above 0 and up to 500 mm; null when not asked.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterNeed WithRoom(Length height, Length? outerDiameter = null) => With(
        (FilterProperty.Height, null, Size(height, nameof(height))),
        (FilterProperty.OuterDiameter, null, Size(outerDiameter, nameof(outerDiameter))));

    /// <summary>A copy that needs a bypass valve in the filter.</summary>
    /// <param name="opensFrom">The least pressure difference at which it may open; above 0 and up to 1,000 kPa.</param>
    /// <param name="opensTo">The greatest; from <paramref name="opensFrom"/> to 1,000 kPa.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterNeed WithBypass(Pressure opensFrom, Pressure opensTo)
    {
        double from = Bounded(Canonical.Kilopascals(opensFrom), MostDifferenceKilopascals, "kPa", nameof(opensFrom));
        double to = Guard.InRange(Canonical.Kilopascals(opensTo), from, MostDifferenceKilopascals, "kPa", nameof(opensTo));
        return With((FilterProperty.Bypass, 1, 1), (FilterProperty.BypassOpening, from, to));
    }

    /// <summary>A copy whose engine has a bypass of its own, or must not have one: the filter has none.</summary>
    /// <returns>The copy.</returns>
    public FilterNeed WithoutBypass() => With((FilterProperty.Bypass, 0, 0), (FilterProperty.BypassOpening, null, null));

    /// <summary>A copy with the hottest oil that the anti-drain-back valve must bear.</summary>
    /// <param name="hottestOil">From 0 to 300 °C.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="hottestOil"/> is outside its range.</exception>
    public FilterNeed WithHottestOil(Temperature hottestOil) =>
        With((FilterProperty.AntiDrainTemperature, Heat(hottestOil, nameof(hottestOil)), null));

    /// <summary>A copy with the least burst pressure.</summary>
    /// <param name="burst">Above 0 and up to 20,000 kPa.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="burst"/> is outside its range.</exception>
    public FilterNeed WithBurst(Pressure burst) => With((FilterProperty.Burst, Strength(burst, nameof(burst)), null));

    /// <summary>A copy with the greatest pressure drop at the rated flow.</summary>
    /// <param name="pressureDrop">Above 0 and up to 1,000 kPa.</param>
    /// <param name="at">The rated flow; above 0 and up to 1,000 L/min.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterNeed WithFlow(Pressure pressureDrop, VolumeFlow at)
    {
        double flow = Bounded(Canonical.LitersPerMinute(at), MostLitersPerMinute, "L/min", nameof(at));
        FilterNeed asked = With((FilterProperty.PressureDrop, null, Bounded(Canonical.Kilopascals(pressureDrop), MostDifferenceKilopascals, "kPa", nameof(pressureDrop))));
        return new(Kind, Mounted, Thread, asked._least, asked._most, flow, ParticleMicrometers);
    }

    /// <summary>A copy with the least efficiency at a particle size.</summary>
    /// <param name="efficiencyFraction">The least share held back; above 0 and up to 1.</param>
    /// <param name="at">The particle size; above 0 and up to 1 mm.</param>
    /// <param name="capacity">The least dirt that it must hold; above 0 and up to 10 kg; null when not asked.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterNeed WithFiltering(double efficiencyFraction, Length at, Mass? capacity = null)
    {
        double share = Bounded(efficiencyFraction, 1, "of the particles", nameof(efficiencyFraction));
        double size = 1000 * Bounded(Canonical.Millimeters(at), 1, "mm", nameof(at));
        FilterNeed asked = With((FilterProperty.Efficiency, share, null), (FilterProperty.Capacity, Dirt(capacity, nameof(capacity)), null));
        return new(Kind, Mounted, Thread, asked._least, asked._most, FlowLitersPerMinute, size);
    }

    /// <summary>A copy with what the filter must endure; null where nothing is asked.</summary>
    /// <param name="collapse">The least collapse pressure; above 0 and up to 20,000 kPa.</param>
    /// <param name="fatigueCycles">The fewest cycles of pressure; from 1 to 1,000,000,000.</param>
    /// <param name="vibrationCycles">The fewest cycles of vibration; from 1 to 1,000,000,000.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilterNeed WithEndurance(Pressure? collapse, int? fatigueCycles = null, int? vibrationCycles = null) => With(
        (FilterProperty.Collapse, collapse is Pressure p ? Strength(p, nameof(collapse)) : null, null),
        (FilterProperty.Fatigue, Cycles(fatigueCycles, nameof(fatigueCycles)), null),
        (FilterProperty.Vibration, Cycles(vibrationCycles, nameof(vibrationCycles)), null));

    /// <summary>A copy that asks for the tests for aftermarket petrol filters (SAE/USCAR-36).</summary>
    /// <returns>The copy.</returns>
    public FilterNeed WithAftermarketTests() => With((FilterProperty.AftermarketTests, 1, 1));

    /// <summary>Holds a filter against the need, attribute by attribute.</summary>
    /// <param name="filter">The filter.</param>
    /// <returns>The verdict with what decided it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="filter"/> is null.</exception>
    public FilterComparison Compare(FilterSpecification filter) => new(this, Guard.NotNull(filter));

    /// <summary>A need whose figures were checked where they came in, in the units of the attributes.</summary>
    internal static FilterNeed OfChecked(FilterKind kind, FilterOrientation mounted, FilterThread? thread, double?[] least, double?[] most, double? flow, double? micrometers) =>
        new(kind, mounted, thread, least, most, flow, micrometers);

    internal double? Least(FilterProperty attribute) => _least[attribute.Index];

    internal double? Most(FilterProperty attribute) => _most[attribute.Index];

    internal static double Bounded(double value, double most, string unit, string argument) =>
        Guard.InRange(Guard.Positive(value, unit, argument), 0, most, unit, argument);

    internal static double Size(Length size, string argument) => Bounded(Canonical.Millimeters(size), MostMm, "mm", argument);

    internal static double? Size(Length? size, string argument) => size is Length given ? Size(given, argument) : null;

    internal static double Strength(Pressure pressure, string argument) => Bounded(Canonical.Kilopascals(pressure), MostStrengthKilopascals, "kPa", argument);

    internal static double? Heat(Temperature? temperature, string argument) =>
        temperature is Temperature given ? Guard.InRange(Canonical.Celsius(given), 0, MostCelsius, "°C", argument) : null;

    internal static double? Dirt(Mass? mass, string argument) =>
        mass is Mass given ? Bounded(Canonical.Grams(given), MostGrams, "g", argument) : null;

    internal static double? Cycles(int? cycles, string argument) =>
        cycles is int given ? Guard.InRange(given, 1, MostCycles, "cycles", argument) : null;

    private FilterNeed WithRange(FilterProperty attribute, Length least, Length most)
    {
        double from = Size(least, nameof(least));
        return With((attribute, from, Guard.InRange(Canonical.Millimeters(most), from, MostMm, "mm", nameof(most))));
    }

    private FilterNeed With(params (FilterProperty Attribute, double? Least, double? Most)[] changes)
    {
        double?[] least = (double?[])_least.Clone();
        double?[] most = (double?[])_most.Clone();
        foreach ((FilterProperty attribute, double? from, double? to) in changes)
        {
            least[attribute.Index] = from;
            most[attribute.Index] = to;
        }

        return new(Kind, Mounted, Thread, least, most, FlowLitersPerMinute, ParticleMicrometers);
    }
}
