namespace MarineService.Core.Fluids;

/// <summary>Strength, freezing point and density figures of glycol in water.</summary>
/// <remarks>
/// Strength and freezing point: ASHRAE tables (2001) for aqueous ethylene and propylene glycol, as held by an open library of
/// fluid properties. Density: Å. Melinder, Properties of Secondary Working Fluids for Indirect Systems, IIR (2010),
/// polynomials as coded by two open libraries.
/// </remarks>
internal sealed class GlycolTable
{
    private GlycolTable(double[] volumePercent, double[] massPercent, double[] freezingCelsius, DensityFit density) =>
        (VolumePercent, MassPercent, FreezingCelsius, Density) = (volumePercent, massPercent, freezingCelsius, density);

    internal static GlycolTable Ethylene { get; } = new(
        volumePercent:
        [
            0, 4.4, 8.9, 13.6, 18.1, 19.2, 20.1, 21, 22, 22.9, 23.9, 24.8,
            25.8, 26.7, 27.7, 28.7, 29.6, 30.6, 31.6, 32.6, 33.5, 34.5, 35.5, 36.5,
            37.5, 38.5, 39.5, 40.5, 41.5, 42.5, 43.5, 44.5, 45.5, 46.6, 47.6, 48.6,
            49.6, 50.6, 51.6, 52.7, 53.7, 54.7, 55.7, 56.8, 57.8,
        ],
        massPercent:
        [
            0, 5, 10, 15, 20, 21, 22, 23, 24, 25, 26, 27,
            28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39,
            40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 50, 51,
            52, 53, 54, 55, 56, 57, 58, 59, 60,
        ],
        freezingCelsius:
        [
            0, -1.4, -3.2, -5.4, -7.8, -8.4, -8.9, -9.5, -10.2, -10.7, -11.4, -12,
            -12.7, -13.3, -14.1, -14.8, -15.4, -16.2, -17, -17.9, -18.6, -19.4, -20.3, -21.3,
            -22.3, -23.2, -24.3, -25.3, -26.4, -27.5, -28.8, -29.8, -31.1, -32.6, -33.8, -35.1,
            -36.4, -37.9, -39.3, -41.1, -42.6, -44.2, -45.6, -47.1, -48.3,
        ],
        density: new DensityFit(
            centerMassPercent: 30.8462, centerCelsius: 31.728, minMassPercent: 0, maxMassPercent: 56, maxCelsius: 40,
            [
                [1034, -0.4781, -0.002692, 0.000004725],
                [1.311, -0.006876, 0.00004805, 0.0000000169],
                [0.0000749, 0.00007855, -0.0000003995, 0.000000004982],
                [-0.0001062, 0.000001229, -0.00000001153],
                [-0.0000009623, -0.00000007211],
                [0.00000004891],
            ]));

    internal static GlycolTable Propylene { get; } = new(
        volumePercent:
        [
            0, 4.8, 9.6, 14.5, 19.4, 20.4, 21.4, 22.4, 23.4, 24.4, 25.3, 26.4,
            27.4, 28.4, 29.4, 30.4, 31.4, 32.4, 33.5, 34.4, 35.5, 36.5, 37.5, 38.5,
            39.6, 40.6, 41.6, 42.6, 43.7, 44.7, 45.7, 46.8, 47.8, 48.9, 49.9, 50.9,
            51.9, 53, 54, 55, 56, 57, 58, 59, 60,
        ],
        massPercent:
        [
            0, 5, 10, 15, 20, 21, 22, 23, 24, 25, 26, 27,
            28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39,
            40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 50, 51,
            52, 53, 54, 55, 56, 57, 58, 59, 60,
        ],
        freezingCelsius:
        [
            0, -1.6, -3.3, -5.1, -7.1, -7.6, -8, -8.6, -9.1, -9.6, -10.2, -10.8,
            -11.4, -12, -12.7, -13.4, -14.1, -14.8, -15.6, -16.4, -17.3, -18.2, -19.1, -20.1,
            -21.1, -22.1, -23.2, -24.3, -25.5, -26.7, -27.9, -29.3, -30.6, -32.1, -33.5, -35,
            -36.6, -38.2, -39.8, -41.6, -43.3, -45.2, -47.1, -49, -51.1,
        ],
        density: new DensityFit(
            centerMassPercent: 30.7031, centerCelsius: 32.7083, minMassPercent: 15, maxMassPercent: 57, maxCelsius: 40,
            [
                [1018, -0.5406, -0.002666, 0.00001347],
                [0.7604, -0.00945, 0.00005541, -0.0000001343],
                [-0.002498, 0.000027, -0.0000004018, 0.000000003376],
                [-0.000155, 0.000002829, -0.000000007175],
                [-0.000001131, -0.00000002221],
                [0.00000002342],
            ]));

    /// <summary>Rising; index for index with the other two.</summary>
    internal double[] VolumePercent { get; }

    internal double[] MassPercent { get; }

    /// <summary>Falling with strength.</summary>
    internal double[] FreezingCelsius { get; }

    internal DensityFit Density { get; }

    internal double MaxVolumePercent => VolumePercent[VolumePercent.Length - 1];

    internal static GlycolTable Of(GlycolKind kind) => kind == GlycolKind.Ethylene ? Ethylene : Propylene;

    /// <summary>Density as a polynomial in strength and temperature, each counted from a center.</summary>
    internal sealed class DensityFit(
        double centerMassPercent, double centerCelsius, double minMassPercent, double maxMassPercent, double maxCelsius, double[][] coefficients)
    {
        // A strength that went through a table and back must not fall off its end by the last bit.
        private const double Grain = 1e-9;

        /// <summary>Whether the published data behind the fit reach this far.</summary>
        internal bool Covers(double massPercent, double celsius) =>
            massPercent >= minMassPercent - Grain && massPercent <= maxMassPercent + Grain && celsius <= maxCelsius + Grain;

        internal double KilogramsPerCubicMeter(double massPercent, double celsius)
        {
            double x = massPercent - centerMassPercent;
            double y = celsius - centerCelsius;
            double sum = 0;
            for (int i = coefficients.Length - 1; i >= 0; i--)
            {
                double row = 0;
                for (int j = coefficients[i].Length - 1; j >= 0; j--)
                {
                    row = row * y + coefficients[i][j];
                }

                sum = sum * x + row;
            }

            return sum;
        }
    }
}
