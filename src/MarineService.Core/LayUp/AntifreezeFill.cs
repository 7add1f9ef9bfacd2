using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>How much of an antifreeze, and how strong, a drained raw-water side needs against a temperature.</summary>
/// <remarks>
/// Wanted is the weakest mixture that freezes below the lowest temperature by the margin. What stayed in the low points thins the
/// fill. Perfect mixing is assumed; pockets mix less, so the proof is a refractometer at each drain, never a volume.
/// </remarks>
public sealed class AntifreezeFill
{
    private readonly LayUpLimits _limits;
    private readonly double? _trapped;
    private readonly double? _circuit;
    private readonly double? _throughLiters;
    private readonly IReadOnlyList<string> _throughMissing;

    private AntifreezeFill(Antifreeze antifreeze, RawWaterSide side, FreezeDecision freeze, LayUpLimits limits)
    {
        (Antifreeze, Side, Freeze, _limits) = (antifreeze, side, freeze, limits);
        _trapped = side.TrappedLiters;
        _circuit = side.CircuitLiters is double circuit && circuit >= (_trapped ?? 0) ? circuit : null;
        Wanted = WantedMixture();
        Strength = FillStrength();
        Fill = OneFill();
        _throughMissing = [.. ThroughMissing()];
        _throughLiters = _throughMissing.Count > 0 ? null : LitersThrough();
        Findings = Judge();
    }

    /// <summary>The antifreeze.</summary>
    public Antifreeze Antifreeze { get; }

    /// <summary>The raw-water side.</summary>
    public RawWaterSide Side { get; }

    /// <summary>The lowest temperature and where it comes from.</summary>
    public FreezeDecision Freeze { get; }

    /// <summary>The weakest mixture that may be found at any drain.</summary>
    public Answer<GlycolMixture> Wanted { get; }

    /// <summary>How strong the fill must be when it goes in, so that what stayed in the low points may thin it.</summary>
    /// <remarks>Of a ready-mixed antifreeze its own strength: it is never thinned on purpose.</remarks>
    public Answer<GlycolMixture> Strength { get; }

    /// <summary>What fills the drained circuit once at that strength.</summary>
    public Answer<AntifreezeRecipe> Fill { get; }

    /// <summary>How much of that mix to run through until the whole circuit is as strong as wanted, if all mixes perfectly; at least one fill.</summary>
    public Answer<Volume> PumpThrough =>
        _throughLiters is double liters ? Answer.Known(Volume.FromLiters(liters)) : Answer.NotKnown<Volume>([.. _throughMissing]);

    /// <summary>What speaks against this antifreeze, or is missing.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    internal double? ThroughLiters => _throughLiters;

    /// <summary>The amounts for an antifreeze.</summary>
    /// <param name="antifreeze">The antifreeze by its label.</param>
    /// <param name="side">The raw-water side.</param>
    /// <param name="freeze">The lowest temperature.</param>
    /// <param name="limits">The margin; <see cref="LayUpLimits.Default"/> when null.</param>
    /// <returns>The amounts, each known or not.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="antifreeze"/>, <paramref name="side"/> or <paramref name="freeze"/> is null.</exception>
    public static AntifreezeFill Of(Antifreeze antifreeze, RawWaterSide side, FreezeDecision freeze, LayUpLimits? limits = null) =>
        new(Guard.NotNull(antifreeze), Guard.NotNull(side), Guard.NotNull(freeze), limits ?? LayUpLimits.Default);

    /// <summary>What the circuit holds after some of the mix went in: by the fill first, by running through after that.</summary>
    /// <param name="passed">How much went in, from 0 to 10,000 L.</param>
    /// <returns>The mixture; not known without the strength, the circuit's volume and the trapped water.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="passed"/> is outside its range.</exception>
    public Answer<GlycolMixture> After(Volume passed)
    {
        double liters = LayUpGuard.LitersFrom0(passed);
        return Strength.IsKnown && _circuit is double circuit && _trapped is double trapped
            ? Answer.Known(GlycolMixture.OfVolume(Strength.Value.Kind, AntifreezeMath.FractionAfter(Strength.Value.VolumeFraction, circuit, trapped, liters)))
            : Answer.NotKnown<GlycolMixture>([.. Lacking(Strength)]);
    }

    /// <summary>Amounts and strengths, what speaks against them, and the sources.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Fill.IsKnown ? $"Fill with {Fill.Value.ToString(units)}, {Strength.Value}." : $"Amount not known: {string.Join(" ", Fill.Missing)}");
        lines.Add("antifreeze", Antifreeze.ToString())
            .Add("wanted", Wanted.IsKnown ? $"{Wanted.Value} at every drain, freezing at {FigureUnit.DegreeCelsius.Write(Wanted.Value.FreezingPoint.Value.DegreesCelsius, units)}" : Wanted.ToString())
            .AddIf(Freeze.LowCelsius is not null, "lowest", () => $"{FigureUnit.DegreeCelsius.Write(Freeze.LowCelsius!.Value, units)}, margin {FigureUnit.Kelvin.Write(_limits.FreezingMarginKelvins, units)}")
            .Add("circuit", _circuit is double circuit ? FigureUnit.Liter.Write(circuit, units) : "not known")
            .Add("trapped", _trapped is double trapped ? FigureUnit.Liter.Write(trapped, units) : "not known")
            .Add("run through", PumpThrough.IsKnown ? $"{FigureUnit.Liter.Write(PumpThrough.Value.Liters, units)}, if all mixes perfectly" : PumpThrough.ToString())
            .AddIf(Antifreeze.BurstCelsius is not null, "burst rating", () => $"{FigureUnit.DegreeCelsius.Write(Antifreeze.BurstCelsius!.Value, units)} by the label, not used");
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, finding.Message(units));
        }

        return lines.Build(GlycolMixture.FreezingSource, Citation.Derived("the balance of glycol in a well-mixed vessel"), Citation.ProjectChoice);
    }

    private Answer<GlycolMixture> WantedMixture() =>
        Antifreeze.Kind is not GlycolKind kind ? Answer.NotKnown<GlycolMixture>([.. Antifreeze.Mixture.Missing])
        : Freeze.LowCelsius is not double low ? Answer.NotKnown<GlycolMixture>([.. Freeze.Missing])
        : GlycolMixture.FreezingAt(kind, Temperature.FromDegreesCelsius(Math.Min(0, Math.Max(-60, low - _limits.FreezingMarginKelvins))));

    private Answer<GlycolMixture> FillStrength()
    {
        if (!Antifreeze.Mixture.IsKnown || Antifreeze.IsReadyMixed)
        {
            return Antifreeze.Mixture;
        }

        if (!Wanted.IsKnown || _circuit is not double circuit || _trapped is not double trapped)
        {
            return Answer.NotKnown<GlycolMixture>([.. Lacking(Wanted)]);
        }

        // A glycol table ends where strong mixtures freeze warmer again: no fill is mixed beyond it, whatever the concentrate would allow.
        GlycolMixture product = Antifreeze.Mixture.Value;
        double strongest = Math.Min(product.VolumeFraction, GlycolTable.Of(product.Kind).MaxVolumePercent / 100);
        double wanted = AntifreezeMath.FillFractionFor(Wanted.Value.VolumeFraction, circuit, trapped);
        return Answer.Known(GlycolMixture.OfVolume(product.Kind, Math.Min(wanted, strongest)));
    }

    private Answer<AntifreezeRecipe> OneFill()
    {
        if (!Strength.IsKnown || _circuit is not double circuit || _trapped is not double trapped)
        {
            return Answer.NotKnown<AntifreezeRecipe>([.. Lacking(Strength)]);
        }

        double fill = circuit - trapped;
        double product = fill * Strength.Value.VolumeFraction / Antifreeze.Mixture.Value.VolumeFraction;
        return Answer.Known(new AntifreezeRecipe(product, Math.Max(0, fill - product)));
    }

    private IEnumerable<string> ThroughMissing() =>
        !Strength.IsKnown || !Wanted.IsKnown || _circuit is null || _trapped is not double trapped ? Lacking(Strength).Concat(Wanted.Missing).Distinct()
        : Strength.Value.VolumeFraction <= Wanted.Value.VolumeFraction && !IsEnoughUndiluted(trapped) ? [$"A stronger antifreeze than '{Antifreeze}', or a raw-water side that drains dry."]
        : [];

    private double LitersThrough() => _trapped!.Value == 0
        ? _circuit!.Value
        : AntifreezeMath.LitersFor(Strength.Value.VolumeFraction, Wanted.Value.VolumeFraction, _circuit!.Value, _trapped.Value);

    private bool IsEnoughUndiluted(double trapped) => trapped == 0 && Strength.Value.VolumeFraction >= Wanted.Value.VolumeFraction;

    private IEnumerable<string> Lacking(Answer<GlycolMixture> strength)
    {
        IEnumerable<string> missing = strength.Missing;
        missing = _circuit is null ? missing.Append("How much the whole raw-water circuit holds.") : missing;
        return _trapped is null ? missing.Concat(Side.TrappedMissing) : missing;
    }

    private List<Finding> Judge()
    {
        string subject = $"antifreeze '{Antifreeze.Name}'";
        List<Finding> findings = [];
        if (Antifreeze.Base == AntifreezeBase.EthyleneGlycol)
        {
            findings.Add(LayUpRules.EthyleneOnRawSide.On(subject));
        }

        if (Antifreeze.HasEthanol)
        {
            findings.Add(LayUpRules.EthanolNotProvable.On(subject));
        }

        if (Antifreeze.BurstCelsius is double burst)
        {
            findings.Add(LayUpRules.BurstRating.On(subject, Figure.Of("rating", burst, FigureUnit.DegreeCelsius)));
        }

        if (!Antifreeze.Mixture.IsKnown || !Wanted.IsKnown)
        {
            if (!Antifreeze.HasEthanol)
            {
                findings.Add(LayUpRules.StrengthNotKnown.On(subject, Figure.Of("missing", string.Join(" ", Antifreeze.Mixture.Missing.Concat(Wanted.Missing).Distinct()))));
            }

            return findings;
        }

        Figure wanted = Figure.Of("wanted", Wanted.Value.VolumeFraction, FigureUnit.Fraction);
        if (Antifreeze.Mixture.Value.VolumeFraction < Wanted.Value.VolumeFraction)
        {
            findings.Add(LayUpRules.TooWeakAsDelivered.On(subject, Figure.Of("strength", Antifreeze.Mixture.Value.VolumeFraction, FigureUnit.Fraction), wanted));
        }
        else if (Strength.IsKnown && _circuit is double circuit && _trapped is double trapped)
        {
            double filled = AntifreezeMath.FractionAfter(Strength.Value.VolumeFraction, circuit, trapped, circuit - trapped);
            if (filled < Wanted.Value.VolumeFraction - 1e-9)
            {
                findings.Add(LayUpRules.ThinnedTooMuch.On(subject, Figure.Of("trapped", trapped, FigureUnit.Liter), Figure.Of("filled", filled, FigureUnit.Fraction), wanted));
            }
        }

        return findings;
    }
}
