using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>The figures of a lay-up that nobody publishes: project choices, all of them yours to change.</summary>
/// <remarks>Every <c>With…</c> method returns a new value; <see cref="Default"/> never changes.</remarks>
public sealed class LayUpLimits
{
    private readonly Terms _terms;

    private LayUpLimits(Terms terms) => _terms = terms;

    /// <summary>The project's choices.</summary>
    public static LayUpLimits Default { get; } = new(new Terms());

    /// <summary>How much colder than the site's record low it may become: 5 K.</summary>
    public TemperatureDelta SiteMargin => TemperatureDelta.FromKelvins(_terms.SiteKelvins);

    /// <summary>How far a freezing point must lie below the lowest temperature, because handbooks differ by up to 2.9 K: 3 K.</summary>
    public TemperatureDelta FreezingMargin => TemperatureDelta.FromKelvins(_terms.FreezingKelvins);

    /// <summary>How many winters of records a record low is expected to stand on: 10.</summary>
    public int LeastWinters => _terms.Winters;

    /// <summary>The most of a cylinder's clearance volume that fogging oil may fill: 0.5.</summary>
    public double MostFoggingFraction => _terms.Fogging;

    /// <summary>How full a fuel tank is laid up: 0.90, which two published figures both allow.</summary>
    public double TankFillFraction => _terms.Tank;

    /// <summary>A 12 V battery at rest is charged again under this: 12.4 V (common practice).</summary>
    public ElectricPotential RechargeBelow => ElectricPotential.FromVolts(_terms.RechargeVolts);

    /// <summary>How long a battery rests without charge or load before its voltage counts: 12 h.</summary>
    public NodaTime.Duration LeastRest => NodaTime.Duration.FromHours(_terms.RestHours);

    internal double SiteMarginKelvins => _terms.SiteKelvins;

    internal double FreezingMarginKelvins => _terms.FreezingKelvins;

    internal double RechargeBelowVolts => _terms.RechargeVolts;

    internal double LeastRestHours => _terms.RestHours;

    /// <summary>Other margins against frost.</summary>
    /// <param name="siteMargin">From 0 to 30 K.</param>
    /// <param name="freezingMargin">From 0 to 30 K.</param>
    /// <param name="leastWinters">From 1 to 100.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LayUpLimits WithFrost(TemperatureDelta siteMargin, TemperatureDelta freezingMargin, int leastWinters = 10) =>
        new(_terms with
        {
            SiteKelvins = Guard.InRange(Canonical.Kelvins(siteMargin), 0, 30, "K", nameof(siteMargin)),
            FreezingKelvins = Guard.InRange(Canonical.Kelvins(freezingMargin), 0, 30, "K", nameof(freezingMargin)),
            Winters = Guard.InRange(leastWinters, 1, 100, "winters"),
        });

    /// <summary>Another share of the clearance volume that fogging oil may fill.</summary>
    /// <param name="mostFraction">From 0.01 to 0.9.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mostFraction"/> is outside its range.</exception>
    public LayUpLimits WithFogging(double mostFraction) =>
        new(_terms with { Fogging = Guard.InRange(mostFraction, 0.01, 0.9, "of the clearance volume") });

    /// <summary>Another level for the fuel tank.</summary>
    /// <param name="fillFraction">From 0 to 0.95, which leaves room for the fuel to expand.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fillFraction"/> is outside its range.</exception>
    public LayUpLimits WithTank(double fillFraction) =>
        new(_terms with { Tank = Guard.InRange(fillFraction, 0, FuelLayUp.MostFullFraction, "of the tank") });

    /// <summary>Other limits for batteries.</summary>
    /// <param name="rechargeBelow">From 11 to 14 V, for a 12 V battery.</param>
    /// <param name="leastRestHours">From 0 to 100 h.</param>
    /// <returns>New limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LayUpLimits WithBattery(ElectricPotential rechargeBelow, double leastRestHours = 12) =>
        new(_terms with
        {
            RechargeVolts = Guard.InRange(Canonical.Volts(rechargeBelow), 11, 14, "V", nameof(rechargeBelow)),
            RestHours = Guard.InRange(leastRestHours, 0, 100, "h"),
        });

    private sealed record Terms
    {
        internal double SiteKelvins { get; init; } = 5;

        internal double FreezingKelvins { get; init; } = 3;

        internal int Winters { get; init; } = 10;

        internal double Fogging { get; init; } = 0.5;

        internal double Tank { get; init; } = 0.90;

        internal double RechargeVolts { get; init; } = 12.4;

        internal double RestHours { get; init; } = 12;
    }
}
