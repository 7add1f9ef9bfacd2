using MarineService.Core.Engines;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>The raw-water side of one engine as frost sees it: how much it holds, every low point, and which kinds it does not have.</summary>
/// <remarks>What is neither listed nor stated absent is asked for: an engine cracks at the place that nobody thought of.</remarks>
public sealed class RawWaterSide
{
    // In order of flow; each is looked for unless something below rules it out.
    private static readonly LowPointKind[] LookedFor =
    [
        LowPointKind.SeacockBallValve, LowPointKind.Strainer, LowPointKind.RawWaterPump, LowPointKind.OilCooler, LowPointKind.GearOilCooler,
        LowPointKind.SteeringCooler, LowPointKind.HeatExchanger, LowPointKind.EngineBlock, LowPointKind.ExhaustManifold, LowPointKind.WaterLiftMuffler,
    ];

    private RawWaterSide(IReadOnlyList<LowPoint> lowPoints, IReadOnlyList<LowPointKind> absent, double? circuitLiters) =>
        (LowPoints, Absent, CircuitLiters) = (lowPoints, absent, circuitLiters);

    /// <summary>Every low point, in the order given.</summary>
    public IReadOnlyList<LowPoint> LowPoints { get; }

    /// <summary>The kinds that this engine is stated not to have.</summary>
    public IReadOnlyList<LowPointKind> Absent { get; }

    /// <summary>How much water the whole raw-water circuit holds, or null when that is not known.</summary>
    public Volume? Circuit => CircuitLiters is double liters ? Volume.FromLiters(liters) : null;

    /// <summary>How many drains, plugs, hoses and covers are opened, and must be shut again at commissioning.</summary>
    public int Drains => LowPoints.Sum(point => point.Drains);

    /// <summary>How much water stays after draining, over all low points.</summary>
    public Answer<Volume> Trapped =>
        TrappedLiters is double liters ? Answer.Known(Volume.FromLiters(liters)) : Answer.NotKnown<Volume>([.. TrappedMissing]);

    internal double? CircuitLiters { get; }

    internal double? TrappedLiters => LowPoints.Count == 0 || LowPoints.Any(point => point.TrappedLiters is null) ? null : LowPoints.Sum(point => point.TrappedLiters!.Value);

    internal IEnumerable<string> TrappedMissing => LowPoints.Count == 0
        ? ["The low points of the raw-water side."]
        : LowPoints.Where(point => point.TrappedLiters is null).SelectMany(point => point.Trapped.Missing);

    /// <summary>A raw-water side by its low points.</summary>
    /// <param name="lowPoints">Every low point; ids distinct.</param>
    /// <returns>The raw-water side.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="lowPoints"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, or an id is used twice.</exception>
    public static RawWaterSide Of(params LowPoint[] lowPoints)
    {
        IReadOnlyList<LowPoint> copy = Guard.Items(lowPoints);
        Names.Distinct(copy.Select(point => point.Id), nameof(lowPoints));
        return new(copy, [], null);
    }

    /// <summary>A copy with what the whole circuit holds.</summary>
    /// <param name="circuit">Above 0, at most 10,000 L, and at least the water that stays after draining.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circuit"/> is outside its range.</exception>
    public RawWaterSide WithCircuit(Volume circuit)
    {
        double liters = LayUpGuard.LitersAbove0(circuit);
        return new(LowPoints, Absent, Guard.InRange(liters, TrappedLiters ?? 0, LayUpGuard.MaxLiters, "L, at least what stays after draining", nameof(circuit)));
    }

    /// <summary>A copy that states which kinds of low points this engine does not have.</summary>
    /// <param name="kinds">The kinds; none of them listed.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="kinds"/> is null.</exception>
    /// <exception cref="ArgumentException">A kind is among the low points that are listed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A kind is not defined.</exception>
    public RawWaterSide Without(params LowPointKind[] kinds)
    {
        foreach (LowPointKind kind in Guard.NotNull(kinds))
        {
            Guard.Defined(kind, nameof(kinds));
            if (LowPoints.Any(point => point.Kind == kind))
            {
                throw new ArgumentException($"'{LowPoint.Words(kind)}' is listed and cannot be absent.", nameof(kinds));
            }
        }

        return new(LowPoints, Array.AsReadOnly<LowPointKind>([.. Absent.Concat(kinds).Distinct()]), CircuitLiters);
    }

    /// <summary>Which kinds are neither listed nor stated absent, though an engine of this kind may have them.</summary>
    /// <param name="engine">The engine.</param>
    /// <param name="boat">The boat, or null: a boat without a seacock has no ball valve.</param>
    /// <returns>The kinds to look for, in order of flow; empty when all are accounted for.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engine"/> is null.</exception>
    public IReadOnlyList<LowPointKind> NotAccountedFor(Engine engine, Boat? boat = null)
    {
        CoolingKind cooling = Guard.NotNull(engine).Cooling;
        return Array.AsReadOnly<LowPointKind>(
        [
            .. LookedFor.Where(kind => kind switch
            {
                LowPointKind.SeacockBallValve when boat?.HasSeacock == false => false,
                LowPointKind.HeatExchanger when cooling == CoolingKind.RawWater => false,
                LowPointKind.EngineBlock when cooling == CoolingKind.FreshWater => false,
                _ => !Absent.Contains(kind) && !LowPoints.Any(point => point.Kind == kind),
            }),
        ]);
    }
}
