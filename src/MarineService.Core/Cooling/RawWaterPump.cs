using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>The raw-water pump of one engine: its impeller, what it moves in one turn, and how fast it turns.</summary>
public sealed class RawWaterPump
{
    internal const double LeastRpm = 50;
    internal const double MostRpm = 15_000;

    private RawWaterPump(Impeller impeller, double? litersPerRevolution, double speedRatio) =>
        (Impeller, LitersPerRevolution, SpeedRatio) = (impeller, litersPerRevolution, speedRatio);

    /// <summary>The impeller.</summary>
    public Impeller Impeller { get; }

    /// <summary>What a pump with a new impeller moves in one turn; not known when it is not stated.</summary>
    public Answer<Volume> Displacement => LitersPerRevolution is double liters
        ? Answer.Known(Volume.FromLiters(liters))
        : Answer.NotKnown<Volume>("What the raw-water pump moves in one turn with a new impeller.");

    /// <summary>Turns of the pump for each turn of the crankshaft.</summary>
    public double SpeedRatio { get; }

    internal double? LitersPerRevolution { get; }

    /// <summary>A pump.</summary>
    /// <param name="impeller">The impeller.</param>
    /// <param name="displacement">What it moves in one turn with a new impeller, from 0.0005 to 5 L; null when it is not stated.</param>
    /// <param name="speedRatio">Turns of the pump for each turn of the crankshaft, from 0.1 to 5 (ratio).</param>
    /// <returns>The pump.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="impeller"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static RawWaterPump Of(Impeller impeller, Volume? displacement = null, double speedRatio = 1) =>
        new(
            Guard.NotNull(impeller),
            displacement is Volume volume ? Guard.InRange(Canonical.Liters(volume), 0.0005, 5, "L", nameof(displacement)) : null,
            Guard.InRange(speedRatio, 0.1, 5, "(ratio)"));

    /// <summary>What the pump gives at an engine speed.</summary>
    /// <param name="engineSpeed">From 50 to 15,000 revolutions a minute.</param>
    /// <param name="wearFraction">What slips past worn vanes, from 0 for a new impeller to 0.95 (fraction).</param>
    /// <returns>The flow; not known when the displacement is not stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Answer<VolumeFlow> FlowAt(RotationalSpeed engineSpeed, double wearFraction = 0)
    {
        double speed = CheckedSpeed(engineSpeed, nameof(engineSpeed));
        double wear = Guard.InRange(wearFraction, 0, 0.95, "(fraction)");
        return LitersPerRevolution is double liters
            ? Answer.Known(VolumeFlow.FromLitersPerMinute(WaterMath.PumpLitersPerMinute(liters, speed * SpeedRatio, wear)))
            : Answer.NotKnown<VolumeFlow>([.. Displacement.Missing]);
    }

    /// <summary>Impeller and displacement.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        Impeller.ToString() + (LitersPerRevolution is double liters ? FormattableString.Invariant($", {liters * 1000:0.#} mL a turn") : "");

    internal static double CheckedSpeed(RotationalSpeed speed, string argument) =>
        Guard.InRange(Canonical.RevolutionsPerMinute(speed), LeastRpm, MostRpm, "revolutions a minute", argument);
}
