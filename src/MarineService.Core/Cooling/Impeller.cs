using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>The flexible impeller of a raw-water pump: vanes, hub, rubber, and which way it turns.</summary>
public sealed class Impeller
{
    internal const int FewestVanes = 3;
    internal const int MostVanes = 24;

    private Impeller(int vanes, ImpellerHub hub, ImpellerRubber rubber, PumpRotation? rotation) =>
        (Vanes, Hub, Rubber, Rotation) = (vanes, hub, rubber, rotation);

    /// <summary>How many vanes a new one has.</summary>
    public int Vanes { get; }

    /// <summary>How the hub takes the shaft's turning.</summary>
    public ImpellerHub Hub { get; }

    /// <summary>What it is made of.</summary>
    public ImpellerRubber Rubber { get; }

    /// <summary>Which way it turns in this engine; null when it is not stated.</summary>
    public PumpRotation? Rotation { get; }

    /// <summary>An impeller.</summary>
    /// <param name="vanes">How many vanes a new one has, from 3 to 24.</param>
    /// <param name="hub">How the hub takes the shaft's turning.</param>
    /// <param name="rubber">What it is made of.</param>
    /// <param name="rotation">Which way it turns in this engine; null when it is not stated.</param>
    /// <returns>The impeller.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range, or an enum value is not defined.</exception>
    public static Impeller Of(
        int vanes,
        ImpellerHub hub = ImpellerHub.NotStated,
        ImpellerRubber rubber = ImpellerRubber.NotStated,
        PumpRotation? rotation = null) =>
        new(Guard.InRange(vanes, FewestVanes, MostVanes, "vanes"), Guard.Defined(hub), Guard.Defined(rubber), rotation);

    /// <summary>Number of vanes and rotation.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{Vanes} vanes") + (Rotation is PumpRotation turning ? $", turning {turning}" : "");
}
