namespace MarineService.Core.Belts;

/// <summary>Belt friction, centrifugal pull, and vibrating spans. Newtons, metres, kilograms, seconds, radians.</summary>
/// <remarks>
/// Sources: textbook belt friction (exp(mu x wrap)), centrifugal pull m v², stretched string f = sqrt(T/m) / 2L; as worked in the examples of
/// theory-of-machines and physics texts that the tests name. Static balance of a pressed span is worked out from statics.
/// </remarks>
internal static class TensionMath
{
    /// <summary>The largest ratio of pulls on the two sides of a pulley before the belt slips.</summary>
    internal static double LimitRatio(double friction, double wrapRad) => Math.Exp(friction * wrapRad);

    /// <summary>The friction at which a pulley with these pulls is just about to slip.</summary>
    internal static double FrictionNeeded(double ratio, double wrapRad) => Math.Log(ratio) / wrapRad;

    /// <summary>The least pull on the slack side that carries a turning pull.</summary>
    internal static double LeastSlackNewtons(double turningNewtons, double friction, double wrapRad) =>
        turningNewtons / (LimitRatio(friction, wrapRad) - 1);

    /// <summary>The part of the pull that only bends the belt round at speed and presses on nothing.</summary>
    internal static double CentrifugalNewtons(double kilogramsPerMeter, double metersPerSecond) =>
        kilogramsPerMeter * metersPerSecond * metersPerSecond;

    internal static double SpeedMetersPerSecond(double pitchRadiusMm, double turnsPerMinute) =>
        2 * Math.PI * turnsPerMinute / 60 * (pitchRadiusMm / 1000);

    /// <summary>The lowest frequency of a standing span.</summary>
    internal static double Hertz(double tensionNewtons, double kilogramsPerMeter, double spanMeters) =>
        Math.Sqrt(tensionNewtons / kilogramsPerMeter) / (2 * spanMeters);

    /// <summary>The pull in a standing span that sounds at a frequency.</summary>
    internal static double TensionNewtons(double hertz, double kilogramsPerMeter, double spanMeters) =>
        4 * kilogramsPerMeter * spanMeters * spanMeters * hertz * hertz;

    /// <summary>The lowest frequency of a running span: the pull is the whole one, centrifugal part included.</summary>
    internal static double RunningHertz(double tensionNewtons, double kilogramsPerMeter, double spanMeters, double metersPerSecond)
    {
        double squared = tensionNewtons / kilogramsPerMeter;
        return Math.Sqrt(squared) / (2 * spanMeters) * (1 - (metersPerSecond * metersPerSecond / squared));
    }

    /// <summary>The pull in a span that a force pressed at its middle deflects: the two halves pull back along themselves.</summary>
    internal static double TensionFromDeflectionNewtons(double forceNewtons, double deflectionMm, double spanMm)
    {
        double half = Math.Sqrt((spanMm * spanMm / 4) + (deflectionMm * deflectionMm));
        return forceNewtons * half / (2 * deflectionMm);
    }
}
