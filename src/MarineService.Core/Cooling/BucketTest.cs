using MarineService.Core.Internal;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>Buckets held under every exhaust outlet for a measured time at a steady engine speed.</summary>
/// <remarks>Litres in ten seconds times six are litres a minute. Keep hands and face clear of the exhaust; carbon monoxide kills at the stern.</remarks>
public sealed class BucketTest : ServiceFact
{
    private const double WearLimit = 0.25;
    private const double TimingSeconds = 0.3;

    private readonly double _rpm;

    private BucketTest(LocalDate date, EngineHours? dial, double revolutionsPerMinute, IReadOnlyList<BucketCatch> catches)
        : base(date, dial) => (_rpm, Catches) = (revolutionsPerMinute, catches);

    /// <summary>The engine speed.</summary>
    public RotationalSpeed EngineSpeed => RotationalSpeed.FromRevolutionsPerMinute(_rpm);

    /// <summary>What was caught, one for each outlet.</summary>
    public IReadOnlyList<BucketCatch> Catches { get; }

    /// <summary>The flow out of all outlets together.</summary>
    public VolumeFlow Flow => VolumeFlow.FromLitersPerMinute(LitersPerMinute);

    internal double LitersPerMinute => Catches.Sum(bucket => bucket.LitersPerMinute);

    internal double Rpm => _rpm;

    /// <summary>A test.</summary>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="engineSpeed">From 50 to 15,000 revolutions a minute.</param>
    /// <param name="catches">What was caught; at least one, each outlet once.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="catches"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">Nothing was caught, or an outlet is named twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The date or the speed is outside its range.</exception>
    public static BucketTest Of(LocalDate date, RotationalSpeed engineSpeed, IEnumerable<BucketCatch> catches, EngineHours? dial = null)
    {
        IReadOnlyList<BucketCatch> all = Guard.Items(catches);
        return all.Count == 0
            ? throw new ArgumentException("Must hold at least one catch.", nameof(catches))
            : all.GroupBy(bucket => bucket.Outlet).FirstOrDefault(group => group.Skip(1).Any()) is { } doubled
            ? throw new ArgumentException($"'{doubled.Key}' is named twice.", nameof(catches))
            : new(Guard.Date(date), dial, RawWaterPump.CheckedSpeed(engineSpeed, nameof(engineSpeed)), all);
    }

    /// <summary>Compares with what the engine needs and with what the pump should give.</summary>
    /// <remarks>The flow of a positive pump goes with the speed, so the flow at rated speed is scaled up from the test.</remarks>
    /// <param name="need">What the engine needs at rated power.</param>
    /// <param name="ratedSpeed">The engine speed at that power, from 50 to 15,000 revolutions a minute.</param>
    /// <param name="pump">The pump; null when it is not stated.</param>
    /// <param name="circuit">The circuit whose outlets are expected; null when it is not stated.</param>
    /// <param name="wearLimitFraction">From which wear on it is worth saying, from 0.01 to 0.95 (fraction); project choice.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="need"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public BucketCheck Judge(
        WaterNeed need, RotationalSpeed ratedSpeed, RawWaterPump? pump = null, RawWaterCircuit? circuit = null, double wearLimitFraction = WearLimit) =>
        new(
            this,
            Guard.NotNull(need),
            RawWaterPump.CheckedSpeed(ratedSpeed, nameof(ratedSpeed)),
            pump,
            circuit,
            Guard.InRange(wearLimitFraction, 0.01, 0.95, "(fraction)"),
            Math.Sqrt(Catches.Sum(bucket => bucket.Variance(TimingSeconds))));

    /// <summary>The flow and the speed.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{LitersPerMinute:0.0} L/min at {_rpm:0} rpm");

    internal override ServiceFact WithoutDial() => new BucketTest(Date, null, _rpm, Catches);
}
