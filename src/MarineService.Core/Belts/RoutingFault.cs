namespace MarineService.Core.Belts;

/// <summary>One geometric test that failed, or that lies too near its limit to tell.</summary>
/// <param name="Kind">The test.</param>
/// <param name="First">A pulley of a pair, a stop, or the stop that a span leaves.</param>
/// <param name="Second">The other pulley of a pair, the stop that another span leaves, or the pulley in the way.</param>
/// <param name="Margin">What is left to the limit, negative past it [mm, for a contact deg, for the turning number turns].</param>
/// <param name="Uncertainty">Expanded uncertainty of the margin, in the same unit; 0 when centres are exact.</param>
/// <param name="Fails">Whether the test fails when the coordinates are taken as they stand.</param>
/// <param name="Value">The value that was tested, in the margin's unit.</param>
/// <remarks>Pulleys are places in the list of routed stops, then of the pulleys passed by.</remarks>
internal readonly record struct RoutingFault(
    BeltVerdict Kind, int First, int Second, double Margin, double Uncertainty, bool Fails, double Value)
{
    /// <summary>The centres are not known well enough to say which side of the limit this is.</summary>
    internal bool IsAtLimit => Math.Abs(Margin) < Uncertainty;
}
