namespace MarineService.Core.Parts;

/// <summary>Threads, stress areas and tightening torques.</summary>
/// <remarks>Sources: ISO 724 and ISO 68-1 for the diameters, ISO 898-1 for the stress area, machine design texts for the torque.</remarks>
internal static class TorqueMath
{
    /// <summary>Pitch diameter d2 = d - 3/4 H of the basic profile, H = P sqrt(3)/2. Source: ISO 724, ISO 68-1.</summary>
    internal static double PitchDiameterMm(double diameterMm, double pitchMm) => diameterMm - (3.0 / 8 * Math.Sqrt(3) * pitchMm);

    /// <summary>Diameter at the rounded root, d3 = d - 17/12 H. Source: ISO 898-1 with the profile of ISO 68-1.</summary>
    internal static double RootDiameterMm(double diameterMm, double pitchMm) => diameterMm - (17.0 / 24 * Math.Sqrt(3) * pitchMm);

    /// <summary>Stress area of the mean of both. Source: ISO 898-1.</summary>
    internal static double StressAreaSquareMm(double diameterMm, double pitchMm)
    {
        double mean = (PitchDiameterMm(diameterMm, pitchMm) + RootDiameterMm(diameterMm, pitchMm)) / 2;
        return Math.PI / 4 * mean * mean;
    }

    /// <summary>T = K F d. Source: machine design texts.</summary>
    internal static double TorqueNewtonMeters(double nutFactor, double clampNewtons, double diameterMm) =>
        nutFactor * clampNewtons * diameterMm / 1000;

    /// <summary>The same turned round. Source: machine design texts.</summary>
    internal static double ClampNewtons(double nutFactor, double torqueNewtonMeters, double diameterMm) =>
        torqueNewtonMeters * 1000 / (nutFactor * diameterMm);

    /// <summary>K from friction: pitch, thread (flanks at 30 degrees) and head. Source: the work balance of a screw thread in machine design texts.</summary>
    internal static double NutFactor(double diameterMm, double pitchMm, double threadFriction, double headFriction, double headMeanDiameterMm) =>
        ((pitchMm / (2 * Math.PI))
            + (threadFriction * PitchDiameterMm(diameterMm, pitchMm) / 2 / Math.Cos(Math.PI / 6))
            + (headFriction * headMeanDiameterMm / 2)) / diameterMm;
}
