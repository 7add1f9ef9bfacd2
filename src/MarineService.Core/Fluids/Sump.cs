using System.Collections.ObjectModel;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>What an engine's oil system holds, and how its dipstick tells: the figures that an oil change is reckoned with.</summary>
/// <remarks>
/// The service fill counts from what a full drain leaves up to the full mark, filter included. All volumes are of oil at
/// 15 °C as it is poured. Figures that do not fit together are not refused here: <see cref="Validate"/> reports them,
/// and <see cref="OilChange.Begin(Sump, DipstickReading, OilChangeLimits?)"/> refuses a sump with such faults.
/// </remarks>
public sealed class Sump
{
    // Standard uncertainties of book figures, as shares of them: project choice. The plug leaves little, but not nothing.
    private const double ServiceFillSigma = 0.01;
    private const double FilterSigma = 0.10;
    private const double PlugResidualSigmaLiters = 0.05;
    private const double DeclaredResidualSigma = 0.20;
    private const double MaxLiters = 1000;

    private readonly Terms _terms;
    private IReadOnlyList<Finding>? _faults;

    private Sump(Terms terms) => _terms = terms;

    /// <summary>What goes in after a full drain with a new filter, up to the full mark.</summary>
    public Volume ServiceFill => Volume.FromLiters(_terms.ServiceFill);

    /// <summary>Standard uncertainty of <see cref="ServiceFill"/>.</summary>
    public Volume ServiceFillStandardUncertainty => Volume.FromLiters(_terms.ServiceFillSigma);

    /// <summary>What the filter holds.</summary>
    public Volume Filter => Volume.FromLiters(_terms.Filter);

    /// <summary>Standard uncertainty of <see cref="Filter"/>.</summary>
    public Volume FilterStandardUncertainty => Volume.FromLiters(_terms.FilterSigma);

    /// <summary>What goes in when the filter stays on, or null when the manual gives none.</summary>
    public Volume? ServiceFillWithoutFilter => _terms.WithoutFilter is double liters ? Volume.FromLiters(liters) : null;

    /// <summary>All the oil in a newly built engine, or null when the manual gives none.</summary>
    public Volume? DryCapacity => _terms.DryCapacity is double liters ? Volume.FromLiters(liters) : null;

    /// <summary>The dipstick.</summary>
    public Dipstick Dipstick => _terms.Dipstick;

    /// <summary>The oil's density and expansion.</summary>
    public OilDensity Oil => _terms.Oil;

    /// <summary>Oil cooler, remote filter and the like.</summary>
    public IReadOnlyList<OilPassage> Passages => _terms.Passages;

    /// <summary>Whether the oil is always drawn out, the plug being out of reach, and what that leaves is declared.</summary>
    public bool IsDrainedOnlyByExtractor => _terms.ExtractorOnly;

    internal double ServiceFillLiters => _terms.ServiceFill;

    internal double ServiceFillSigmaLiters => _terms.ServiceFillSigma;

    internal double FilterLiters => _terms.Filter;

    internal double FilterSigmaLiters => _terms.FilterSigma;

    /// <summary>More than this can hardly have come out of the engine: twice what it holds when dry.</summary>
    internal double MostThatCanDrainLiters => 2 * Math.Max(_terms.ServiceFill, _terms.DryCapacity ?? 0);

    internal double UndrainedPassagesLiters => _terms.Passages.Where(passage => !passage.Drains).Sum(passage => passage.Liters);

    /// <summary>A sump by the three figures that an account cannot do without.</summary>
    /// <param name="serviceFill">With a new filter, up to the full mark; above 0, at most 1,000 L.</param>
    /// <param name="filter">What the filter holds; 0 (a strainer only) to 1,000 L.</param>
    /// <param name="dipstick">The dipstick.</param>
    /// <returns>The sump.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="dipstick"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range.</exception>
    /// <example><code>Sump.Holding(Volume.FromLiters(6.0), filter: Volume.FromLiters(0.6), Dipstick.WithRange(Volume.FromLiters(1.0)));</code></example>
    public static Sump Holding(Volume serviceFill, Volume filter, Dipstick dipstick)
    {
        double fill = Liters(Guard.Positive(Canonical.Liters(serviceFill), "L", nameof(serviceFill)), nameof(serviceFill));
        double filterLiters = Liters(Canonical.Liters(filter), nameof(filter));
        return new(new Terms(
            fill, ServiceFillSigma * fill, filterLiters, FilterSigma * filterLiters, Guard.NotNull(dipstick), OilDensity.Typical, []));
    }

    /// <summary>The same sump with how sure its two main figures are.</summary>
    /// <param name="serviceFill">Standard uncertainty of the service fill, 0 to 1,000 L.</param>
    /// <param name="filter">Standard uncertainty of the filter's volume, 0 to 1,000 L.</param>
    /// <returns>A new sump.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range.</exception>
    public Sump WithUncertainties(Volume serviceFill, Volume filter) =>
        new(_terms with
        {
            ServiceFillSigma = Liters(Canonical.Liters(serviceFill), nameof(serviceFill)),
            FilterSigma = Liters(Canonical.Liters(filter), nameof(filter)),
        });

    /// <summary>The same sump with the refill that the manual gives for a change without a new filter.</summary>
    /// <param name="serviceFillWithoutFilter">Above 0, at most 1,000 L.</param>
    /// <returns>A new sump.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is outside its range.</exception>
    public Sump WithServiceFillWithoutFilter(Volume serviceFillWithoutFilter) =>
        new(_terms with { WithoutFilter = Positive(serviceFillWithoutFilter, nameof(serviceFillWithoutFilter)) });

    /// <summary>The same sump with the engine's dry capacity.</summary>
    /// <param name="dryCapacity">Above 0, at most 1,000 L.</param>
    /// <returns>A new sump.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is outside its range.</exception>
    public Sump WithDryCapacity(Volume dryCapacity) =>
        new(_terms with { DryCapacity = Positive(dryCapacity, nameof(dryCapacity)) });

    /// <summary>The same sump with what a way of draining leaves in it, beyond what the service fill allows for.</summary>
    /// <param name="method">The way of draining.</param>
    /// <param name="residual">0 to 1,000 L.</param>
    /// <param name="standardUncertainty">0 to 1,000 L; null for 20 % of the residual (project choice).</param>
    /// <returns>A new sump.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not defined.</exception>
    public Sump WithResidual(DrainMethod method, Volume residual, Volume? standardUncertainty = null)
    {
        Guard.Defined(method);
        double liters = Liters(Canonical.Liters(residual), nameof(residual));
        double sigma = standardUncertainty is Volume u
            ? Liters(Canonical.Liters(u), nameof(standardUncertainty))
            : Math.Max(PlugResidualSigmaLiters, DeclaredResidualSigma * liters);
        Residual declared = new(liters, sigma);
        return new(method == DrainMethod.DrainPlug ? _terms with { Plug = declared } : _terms with { Extractor = declared });
    }

    /// <summary>The same sump on a boat whose drain plug cannot be reached: it is always drawn out, and each change counts pro rata.</summary>
    /// <param name="residual">What the extractor leaves; 0 to 1,000 L.</param>
    /// <param name="standardUncertainty">0 to 1,000 L; null for 20 % of the residual (project choice).</param>
    /// <returns>A new sump.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range.</exception>
    public Sump DrainedOnlyByExtractor(Volume residual, Volume? standardUncertainty = null)
    {
        Sump declared = WithResidual(DrainMethod.Extractor, residual, standardUncertainty);
        return new(declared._terms with { ExtractorOnly = true });
    }

    /// <summary>The same sump with an oil cooler, a remote filter or the like.</summary>
    /// <param name="passage">The passage.</param>
    /// <returns>A new sump.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="passage"/> is null.</exception>
    public Sump With(OilPassage passage) => new(_terms with { Passages = Array.AsReadOnly<OilPassage>([.. _terms.Passages, Guard.NotNull(passage)]) });

    /// <summary>The same sump with another oil in it.</summary>
    /// <param name="oil">Density and expansion.</param>
    /// <returns>A new sump.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="oil"/> is null.</exception>
    public Sump With(OilDensity oil) => new(_terms with { Oil = Guard.NotNull(oil) });

    /// <summary>The same sump with another dipstick, such as one calibrated by a fill.</summary>
    /// <param name="dipstick">The dipstick.</param>
    /// <returns>A new sump.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="dipstick"/> is null.</exception>
    public Sump With(Dipstick dipstick) => new(_terms with { Dipstick = Guard.NotNull(dipstick) });

    /// <summary>What a way of draining leaves.</summary>
    /// <param name="method">The way of draining.</param>
    /// <returns>The residual with its standard uncertainty; not known for an extractor unless it was declared.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not defined.</exception>
    public Answer<MeasuredVolume> ResidualOf(DrainMethod method) =>
        FindResidual(Guard.Defined(method)) is Residual residual
            ? Answer.Known(MeasuredVolume.Of(
                Volume.FromLiters(residual.Liters), Temperature.FromDegreesCelsius(15), Volume.FromLiters(residual.SigmaLiters)))
            : Answer.NotKnown<MeasuredVolume>("What the extractor leaves in the sump: draw once, then open the drain plug and measure.");

    /// <summary>Figures that do not fit together.</summary>
    /// <returns>All of them; empty when the sump can be reckoned with. Any finding at Act makes an account impossible.</returns>
    public IReadOnlyList<Finding> Validate() => _faults ??= FindFaults();

    /// <summary>The main figures, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"service fill {FigureUnit.Liter.Write(_terms.ServiceFill, DisplayUnits.Metric)} with filter {FigureUnit.Liter.Write(_terms.Filter, DisplayUnits.Metric)}, {Dipstick}";

    internal Residual? FindResidual(DrainMethod method) => method == DrainMethod.DrainPlug ? _terms.Plug : _terms.Extractor;

    private ReadOnlyCollection<Finding> FindFaults()
    {
        const string Subject = "sump";
        List<Finding> findings = [];
        if (_terms.Filter >= _terms.ServiceFill)
        {
            findings.Add(SumpRules.FilterLargerThanFill.On(
                Subject, Figure.Of("filter", _terms.Filter, FigureUnit.Liter), Figure.Of("service fill", _terms.ServiceFill, FigureUnit.Liter)));
        }

        if (Dipstick is { AddMarkMm: double low, FullMarkMm: double high } && high <= low)
        {
            findings.Add(SumpRules.MarksReversed.On(
                "dipstick",
                Figure.Of("add mark", low, FigureUnit.Millimeter),
                Figure.Of("full mark", high, FigureUnit.Millimeter)));
        }
        else if (Dipstick.RangeLiters >= _terms.ServiceFill - _terms.Filter)
        {
            findings.Add(SumpRules.RangeLargerThanSump.On(
                "dipstick",
                Figure.Of("range", Dipstick.RangeLiters, FigureUnit.Liter),
                Figure.Of("sump", _terms.ServiceFill - _terms.Filter, FigureUnit.Liter)));
        }

        if (Dipstick is { Shape: SumpShape shape, AddMarkMm: double add, FullMarkMm: double full }
            && full > add
            && Math.Abs(shape.LitersAlongStick(full - add) - Dipstick.RangeLiters) > 0.15 * Dipstick.RangeLiters)
        {
            findings.Add(SumpRules.RangeDisagreesWithMarks.On(
                "dipstick",
                Figure.Of("range", Dipstick.RangeLiters, FigureUnit.Liter),
                Figure.Of("by the marks", shape.LitersAlongStick(full - add), FigureUnit.Liter)));
        }

        if (_terms.WithoutFilter is double without)
        {
            double difference = _terms.ServiceFill - without;
            double doubt = 2 * FluidMath.RootSumSquare(_terms.FilterSigma, _terms.ServiceFillSigma);
            if (without >= _terms.ServiceFill)
            {
                findings.Add(SumpRules.FillsReversed.On(
                    Subject, Figure.Of("without filter", without, FigureUnit.Liter), Figure.Of("with filter", _terms.ServiceFill, FigureUnit.Liter)));
            }
            else if (Math.Abs(difference - _terms.Filter) > Math.Max(0.1, doubt))
            {
                findings.Add(SumpRules.FillsDisagree.On(
                    Subject, Figure.Of("difference", difference, FigureUnit.Liter), Figure.Of("filter", _terms.Filter, FigureUnit.Liter)));
            }
        }

        if (_terms.DryCapacity is double dry && dry < _terms.ServiceFill)
        {
            findings.Add(SumpRules.DryCapacityBelowFill.On(
                Subject, Figure.Of("dry capacity", dry, FigureUnit.Liter), Figure.Of("service fill", _terms.ServiceFill, FigureUnit.Liter)));
        }

        foreach (Residual residual in new[] { _terms.Plug, _terms.Extractor ?? default })
        {
            if (residual.Liters >= _terms.ServiceFill - _terms.Filter)
            {
                findings.Add(SumpRules.ResidualTooLarge.On(
                    Subject,
                    Figure.Of("residual", residual.Liters, FigureUnit.Liter),
                    Figure.Of("sump", _terms.ServiceFill - _terms.Filter, FigureUnit.Liter)));
            }
        }

        return findings.AsReadOnly();
    }

    private static double Liters(double liters, string name) => Guard.InRange(liters, 0, MaxLiters, "L", name);

    private static double Positive(Volume volume, string name) => Liters(Guard.Positive(Canonical.Liters(volume), "L", name), name);

    /// <summary>What a way of draining leaves, and how sure.</summary>
    internal readonly record struct Residual(double Liters, double SigmaLiters);

    private readonly record struct Terms(
        double ServiceFill,
        double ServiceFillSigma,
        double Filter,
        double FilterSigma,
        Dipstick Dipstick,
        OilDensity Oil,
        IReadOnlyList<OilPassage> Passages)
    {
        public double? WithoutFilter { get; init; }

        public double? DryCapacity { get; init; }

        public Residual Plug { get; init; } = new(0, PlugResidualSigmaLiters);

        public Residual? Extractor { get; init; }

        public bool ExtractorOnly { get; init; }
    }
}
