using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>A place where raw water stays when the engine stops, and what can be opened to let it out.</summary>
public sealed class LowPoint
{
    private LowPoint(string id, LowPointKind kind, string title, int drains, double? holdsLiters, double? trappedLiters) =>
        (Id, Kind, Title, Drains, HoldsLiters, StatedTrappedLiters) = (id, kind, title, drains, holdsLiters, trappedLiters);

    /// <summary>The id by which records name it.</summary>
    public string Id { get; }

    /// <summary>What it is.</summary>
    public LowPointKind Kind { get; }

    /// <summary>What people call it.</summary>
    public string Title { get; }

    /// <summary>How many drains, plugs, hoses or covers must be opened; 0 when it cannot be drained.</summary>
    public int Drains { get; }

    /// <summary>How much water it holds, or null when that is not known.</summary>
    public Volume? Holds => HoldsLiters is double liters ? Volume.FromLiters(liters) : null;

    /// <summary>How much water stays in it after draining.</summary>
    /// <remarks>As stated; else nothing where there is a drain, and all that it holds where there is none.</remarks>
    public Answer<Volume> Trapped =>
        TrappedLiters is double liters ? Answer.Known(Volume.FromLiters(liters)) : Answer.NotKnown<Volume>($"How much water stays in '{Title}', which has no drain.");

    internal double? HoldsLiters { get; }

    internal double? StatedTrappedLiters { get; }

    internal double? TrappedLiters => StatedTrappedLiters ?? (Drains > 0 ? 0 : HoldsLiters);

    /// <summary>A low point.</summary>
    /// <param name="id">The id by which records name it; not blank.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="drains">How many drains, plugs, hoses or covers must be opened, from 0 to 20.</param>
    /// <param name="holds">How much water it holds, above 0, at most 10,000 L; null when it is not known.</param>
    /// <param name="trapped">How much stays after draining, from 0 to what it holds; null when it was not measured.</param>
    /// <param name="title">What people call it, not blank; the kind in words when null.</param>
    /// <returns>The low point.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> or <paramref name="title"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static LowPoint Of(string id, LowPointKind kind, int drains, Volume? holds = null, Volume? trapped = null, string? title = null)
    {
        Guard.NotBlank(id);
        Guard.Defined(kind);
        double? holdsLiters = holds is Volume h ? LayUpGuard.LitersAbove0(h, nameof(holds)) : null;
        return new(
            id,
            kind,
            title is null ? Words(kind) : Guard.NotBlank(title),
            Guard.InRange(drains, 0, 20, "drains"),
            holdsLiters,
            trapped is Volume t ? Guard.InRange(Canonical.Liters(t), 0, holdsLiters ?? LayUpGuard.MaxLiters, "L", nameof(trapped)) : null);
    }

    /// <summary>What people call it.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Title;

    internal static string Words(LowPointKind kind) => kind switch
    {
        LowPointKind.EngineBlock => "engine block",
        LowPointKind.ExhaustManifold => "exhaust manifold",
        LowPointKind.ExhaustElbow => "exhaust elbow",
        LowPointKind.HeatExchanger => "heat exchanger",
        LowPointKind.RawWaterPump => "raw-water pump",
        LowPointKind.Strainer => "strainer",
        LowPointKind.SeacockBallValve => "cavity of the seacock's ball valve",
        LowPointKind.WaterLiftMuffler => "water-lift muffler",
        LowPointKind.OilCooler => "engine-oil cooler",
        LowPointKind.GearOilCooler => "gear-oil cooler",
        LowPointKind.SteeringCooler => "steering cooler",
        LowPointKind.Hose => "sagging hose",
        _ => "low point",
    };
}
