namespace MarineService.Core.Belts;

/// <summary>The belt from one grooved pulley to the next, over smooth ones where they lie between.</summary>
public sealed class GroovedRun
{
    private const double Degrees = 180 / Math.PI;

    internal GroovedRun(string from, string to, IReadOnlyList<string> over, double lengthMm, double offsetMm, double leavingRad, double enteringRad)
    {
        (FromPulley, ToPulley, OverSmooth) = (from, to, over);
        (FreeLengthMm, OffsetMm) = (lengthMm, offsetMm);
        (LeavingAngleDegrees, EntryAngleDegrees) = (leavingRad * Degrees, enteringRad * Degrees);
    }

    /// <summary>The grooved pulley that the belt leaves.</summary>
    public string FromPulley { get; }

    /// <summary>The grooved pulley that it enters.</summary>
    public string ToPulley { get; }

    /// <summary>The smooth pulleys between them, which do not hold the belt sideways.</summary>
    public IReadOnlyList<string> OverSmooth { get; }

    /// <summary>The sum of the straight spans between them [mm].</summary>
    public double FreeLengthMm { get; }

    /// <summary>How far the entry point stands out beyond the leaving point, away from the engine [mm].</summary>
    public double OffsetMm { get; }

    /// <summary>The angle of the belt to the groove plane of the pulley that it leaves [degrees].</summary>
    public double LeavingAngleDegrees { get; }

    /// <summary>The angle of the belt to the groove plane of the pulley that it enters [degrees].</summary>
    public double EntryAngleDegrees { get; }

    /// <summary>The larger of the two angles, without sign [degrees].</summary>
    public double WorstAngleDegrees => Math.Max(Math.Abs(LeavingAngleDegrees), Math.Abs(EntryAngleDegrees));

    /// <summary>Both pulleys and the entry angle.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"'{FromPulley}' to '{ToPulley}': entry angle {EntryAngleDegrees:0.00} deg");
}
