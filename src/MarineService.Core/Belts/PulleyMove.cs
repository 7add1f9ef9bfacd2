namespace MarineService.Core.Belts;

/// <summary>Which pulley to move, which way, and how far.</summary>
public sealed class PulleyMove
{
    internal PulleyMove(string pulleyName, double awayFromEngineMm, bool isCrank) =>
        (PulleyName, AwayFromEngineMm, IsCrank) = (pulleyName, awayFromEngineMm, isCrank);

    /// <summary>The pulley to move.</summary>
    public string PulleyName { get; }

    /// <summary>How far to move it away from the engine [mm]; negative towards the engine.</summary>
    public double AwayFromEngineMm { get; }

    /// <summary>True for the crank's pulley, which is seldom moved: check its seat and its bolts first.</summary>
    public bool IsCrank { get; }

    /// <summary>The move in a mechanic's words.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"move '{PulleyName}' {Math.Abs(AwayFromEngineMm):0.0#} mm {(AwayFromEngineMm > 0 ? "away from" : "towards")} the engine")
        + (IsCrank ? ", after checking that it sits home on the crankshaft" : string.Empty);
}
