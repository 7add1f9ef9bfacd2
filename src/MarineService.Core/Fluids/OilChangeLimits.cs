using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>The figures that nobody publishes and that the account of an oil change needs: project choices, all of them yours to change.</summary>
/// <remarks>Every <c>With…</c> method returns a new value; <see cref="Default"/> never changes.</remarks>
public sealed class OilChangeLimits
{
    private readonly Terms _terms;

    private OilChangeLimits(Terms terms)
    {
        _terms = terms;
        OverfillDeviations = FluidMath.DeviationsLeavingAbove(terms.OverfillRisk);
    }

    /// <summary>The project's choices.</summary>
    public static OilChangeLimits Default { get; } = new(new Terms());

    /// <summary>The share of cases in which a pour may pass the full mark: 0.05.</summary>
    public double OverfillRiskFraction => _terms.OverfillRisk;

    /// <summary>The first pour after a drain as a share of the plan, at most: 0.85.</summary>
    public double FirstPourFraction => _terms.FirstPour;

    /// <summary>Later pours as a share of the range between the marks, at most: 0.5.</summary>
    public double LaterPourRangeFraction => _terms.LaterPour;

    /// <summary>The level that the plan aims for, as a share of the range: 0.9.</summary>
    public double TargetRangeFraction => _terms.Target;

    /// <summary>How many standard uncertainties count as noise: 2.</summary>
    public double NoiseCoverageRatio => _terms.Noise;

    /// <summary>A difference up to this is fine: 0.2 L, or <see cref="FineServiceFillFraction"/> of the service fill when that is more.</summary>
    public Volume FineVolume => Volume.FromLiters(_terms.FineLiters);

    /// <summary>See <see cref="FineVolume"/>: 0.04.</summary>
    public double FineServiceFillFraction => _terms.FineShare;

    /// <summary>A difference up to this is worth a second look: 0.5 L, or <see cref="DoubtfulServiceFillFraction"/> of the service fill when that is more.</summary>
    public Volume DoubtfulVolume => Volume.FromLiters(_terms.DoubtfulLiters);

    /// <summary>See <see cref="DoubtfulVolume"/>: 0.08.</summary>
    public double DoubtfulServiceFillFraction => _terms.DoubtfulShare;

    /// <summary>The least exchanged fraction that counts as a full change: 0.90.</summary>
    public double FullChangeFraction => _terms.FullChange;

    /// <summary>Above full by more than this share of the range is Stop even inside the noise of a reading: 0.25.</summary>
    public double AboveFullStopRangeFraction => _terms.AboveFullStop;

    /// <summary>Consumption above this many times the engine's own median of its last three changes is looked into: 2.</summary>
    public double ConsumptionTrendRatio => _terms.TrendRatio;

    /// <summary>The least time that warm oil (40 °C or more) settles before a reading counts: 2 minutes.</summary>
    public NodaTime.Duration SettlingWarm => NodaTime.Duration.FromMinutes(_terms.SettleWarmMinutes);

    /// <summary>The least time that cold oil, or oil of unknown temperature, settles before a reading counts: 10 minutes.</summary>
    public NodaTime.Duration SettlingCold => NodaTime.Duration.FromMinutes(_terms.SettleColdMinutes);

    /// <summary>Standard uncertainty of a volume that states none, as a share of it: 0.015, a workshop jug (common practice: 1 to 2 %).</summary>
    public double VolumeUncertaintyFraction => _terms.VolumeSigma;

    /// <summary>Standard uncertainty of an oil temperature that was taken: 3 K.</summary>
    public TemperatureDelta TemperatureUncertainty => TemperatureDelta.FromKelvins(_terms.TemperatureSigma);

    /// <summary>Standard uncertainty of the temperature correction itself, as a share of it: 0.05, half of the spread between oils.</summary>
    public double ExpansionUncertaintyFraction => _terms.ExpansionSigma;

    /// <summary>How many standard deviations leave <see cref="OverfillRiskFraction"/> above them.</summary>
    internal double OverfillDeviations { get; }

    internal double FineLiters => _terms.FineLiters;

    internal double DoubtfulLiters => _terms.DoubtfulLiters;

    internal double TemperatureSigmaKelvins => _terms.TemperatureSigma;

    internal double SettleWarmMinutes => _terms.SettleWarmMinutes;

    internal double SettleColdMinutes => _terms.SettleColdMinutes;

    /// <summary>What drained oil without a temperature is taken to be: 45 °C ± 20 K, anything from a cold to a hot drain.</summary>
    internal TemperatureAssumption DrainAssumption { get; } = new(45, 20);

    /// <summary>What poured oil without a temperature is taken to be: 15 °C ± 8 K.</summary>
    internal TemperatureAssumption PourAssumption { get; } = new(15, 8);

    /// <summary>Other limits for pouring.</summary>
    /// <param name="overfillRiskFraction">From 0.000001 to 0.5.</param>
    /// <param name="firstPourFraction">From 0.1 to 1.</param>
    /// <param name="laterPourRangeFraction">From 0.01 to 1.</param>
    /// <param name="targetRangeFraction">From 0 to 1.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public OilChangeLimits WithPours(
        double overfillRiskFraction = 0.05, double firstPourFraction = 0.85, double laterPourRangeFraction = 0.5, double targetRangeFraction = 0.9) =>
        new(_terms with
        {
            OverfillRisk = Guard.InRange(overfillRiskFraction, 1e-6, 0.5, "of the cases"),
            FirstPour = Guard.InRange(firstPourFraction, 0.1, 1, "of the plan"),
            LaterPour = Guard.InRange(laterPourRangeFraction, 0.01, 1, "of the range"),
            Target = Guard.InRange(targetRangeFraction, 0, 1, "of the range"),
        });

    /// <summary>Other bands for what does not add up.</summary>
    /// <param name="fine">From 0 to 1,000 L.</param>
    /// <param name="fineServiceFillFraction">From 0 to 1.</param>
    /// <param name="doubtful">From <paramref name="fine"/> to 1,000 L.</param>
    /// <param name="doubtfulServiceFillFraction">From <paramref name="fineServiceFillFraction"/> to 1.</param>
    /// <param name="noiseCoverageRatio">From 1 to 5.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public OilChangeLimits WithBands(
        Volume fine, double fineServiceFillFraction, Volume doubtful, double doubtfulServiceFillFraction, double noiseCoverageRatio = 2)
    {
        double fineLiters = Guard.InRange(Canonical.Liters(fine), 0, 1000, "L", nameof(fine));
        Guard.InRange(fineServiceFillFraction, 0, 1, "of the service fill");
        return new(_terms with
        {
            FineLiters = fineLiters,
            FineShare = fineServiceFillFraction,
            DoubtfulLiters = Guard.InRange(Canonical.Liters(doubtful), fineLiters, 1000, "L", nameof(doubtful)),
            DoubtfulShare = Guard.InRange(doubtfulServiceFillFraction, fineServiceFillFraction, 1, "of the service fill"),
            Noise = Guard.InRange(noiseCoverageRatio, 1, 5, "standard uncertainties"),
        });
    }

    /// <summary>Other limits for judging the change and the consumption.</summary>
    /// <param name="fullChangeFraction">From 0.5 to 1.</param>
    /// <param name="aboveFullStopRangeFraction">From 0 to 1.</param>
    /// <param name="consumptionTrendRatio">From 1 to 10.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public OilChangeLimits WithJudgement(
        double fullChangeFraction = 0.90, double aboveFullStopRangeFraction = 0.25, double consumptionTrendRatio = 2) =>
        new(_terms with
        {
            FullChange = Guard.InRange(fullChangeFraction, 0.5, 1, "of the oil"),
            AboveFullStop = Guard.InRange(aboveFullStopRangeFraction, 0, 1, "of the range"),
            TrendRatio = Guard.InRange(consumptionTrendRatio, 1, 10, "times the median"),
        });

    /// <summary>Other waiting times before a reading counts.</summary>
    /// <param name="warm">For oil of 40 °C or more, 0 to 24 hours.</param>
    /// <param name="cold">For colder oil, 0 to 24 hours.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public OilChangeLimits WithSettling(NodaTime.Duration warm, NodaTime.Duration cold) =>
        new(_terms with
        {
            SettleWarmMinutes = Guard.InRange(warm.TotalMinutes, 0, 1440, "min", nameof(warm)),
            SettleColdMinutes = Guard.InRange(cold.TotalMinutes, 0, 1440, "min", nameof(cold)),
        });

    /// <summary>Other uncertainties for what states none of its own.</summary>
    /// <param name="volumeUncertaintyFraction">From 0 to 0.5 of the reading.</param>
    /// <param name="temperatureUncertainty">From 0 to 50 K.</param>
    /// <param name="expansionUncertaintyFraction">From 0 to 0.5 of the correction.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public OilChangeLimits WithUncertainties(
        double volumeUncertaintyFraction, TemperatureDelta temperatureUncertainty, double expansionUncertaintyFraction) =>
        new(_terms with
        {
            VolumeSigma = Guard.InRange(volumeUncertaintyFraction, 0, 0.5, "of the reading"),
            TemperatureSigma = Guard.InRange(Canonical.Kelvins(temperatureUncertainty), 0, 50, "K", nameof(temperatureUncertainty)),
            ExpansionSigma = Guard.InRange(expansionUncertaintyFraction, 0, 0.5, "of the correction"),
        });

    internal double FineBandLiters(double serviceFillLiters) => Math.Max(FineLiters, FineServiceFillFraction * serviceFillLiters);

    internal double DoubtfulBandLiters(double serviceFillLiters) =>
        Math.Max(DoubtfulLiters, DoubtfulServiceFillFraction * serviceFillLiters);

    private readonly record struct Terms(
        double OverfillRisk,
        double FirstPour,
        double LaterPour,
        double Target,
        double Noise,
        double FineLiters,
        double FineShare,
        double DoubtfulLiters,
        double DoubtfulShare,
        double FullChange,
        double AboveFullStop,
        double TrendRatio,
        double SettleWarmMinutes,
        double SettleColdMinutes,
        double VolumeSigma,
        double TemperatureSigma,
        double ExpansionSigma)
    {
        public Terms()
            : this(0.05, 0.85, 0.5, 0.9, 2, 0.2, 0.04, 0.5, 0.08, 0.90, 0.25, 2, 2, 10, 0.015, 3, 0.05)
        {
        }
    }
}
