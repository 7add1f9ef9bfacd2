namespace MarineService.Core.Belts;

/// <summary>A place where the tensioner's arm can stand with a belt on.</summary>
public sealed class ArmPosition
{
    private const double Degrees = 180 / Math.PI;

    internal ArmPosition(in ArmSweep.State state, bool tightens)
    {
        (ArmDegrees, CenterXMm, CenterYMm) = (state.ArmRad * Degrees, state.XMm, state.YMm);
        TakeUpMmPerDegree = state.SlopeMmPerRad / Degrees;
        WrapDegrees = state.WrapRad * Degrees;
        SlopeMmPerRad = state.SlopeMmPerRad;
        IsTightenedBySpring = tightens;
    }

    /// <summary>The arm's angle [degrees], counter-clockwise from the x axis, seen from the pulley end.</summary>
    public double ArmDegrees { get; }

    /// <summary>The centre of the tensioner's pulley, across [mm].</summary>
    public double CenterXMm { get; }

    /// <summary>The centre of the tensioner's pulley, up [mm].</summary>
    public double CenterYMm { get; }

    /// <summary>How much longer the belt's path gets for each degree that the arm turns counter-clockwise [mm]; negative when shorter.</summary>
    public double TakeUpMmPerDegree { get; }

    /// <summary>The wrap on the tensioner's pulley [degrees].</summary>
    public double WrapDegrees { get; }

    /// <summary>True when the spring, or the hand that sets it, takes up the belt here; false where a spring would slacken it.</summary>
    public bool IsTightenedBySpring { get; }

    internal double SlopeMmPerRad { get; }

    /// <summary>Angle and take-up.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"arm at {ArmDegrees:0.0} deg, {TakeUpMmPerDegree:0.00} mm per degree");
}
