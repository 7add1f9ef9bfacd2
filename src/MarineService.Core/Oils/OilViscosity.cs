using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>The two figures that an oil's data sheet gives: kinematic viscosity at 40 and at 100 °C.</summary>
public sealed record OilViscosity
{
    internal const double Most40 = 100_000;
    internal const double Most100 = 1_000;

    private OilViscosity(double at40, double at100) => (Kv40, Kv100) = (at40, at100);

    /// <summary>The viscosity at 40 °C.</summary>
    public KinematicViscosity At40C => KinematicViscosity.FromCentistokes(Kv40);

    /// <summary>The viscosity at 100 °C.</summary>
    public KinematicViscosity At100C => KinematicViscosity.FromCentistokes(Kv100);

    internal double Kv40 { get; }

    internal double Kv100 { get; }

    /// <summary>An oil's data.</summary>
    /// <param name="at40C">From 0.4 to 100,000 mm²/s.</param>
    /// <param name="at100C">From 0.4 to 1,000 mm²/s, below <paramref name="at40C"/>.</param>
    /// <returns>The data.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The viscosity does not fall with temperature.</exception>
    public static OilViscosity Of(KinematicViscosity at40C, KinematicViscosity at100C)
    {
        (double kv40, double kv100) = Pair(at40C, at100C, BlendMath.LeastKinematic);
        return new(kv40, kv100);
    }

    /// <summary>The viscosity line through both figures.</summary>
    /// <returns>The line, short form.</returns>
    public ViscosityLine ToLine() =>
        ViscosityLine.Through(At40C, Temperature.FromDegreesCelsius(40), At100C, Temperature.FromDegreesCelsius(100));

    /// <summary>The viscosity index.</summary>
    /// <returns>The index; not known below 2 mm²/s at 100 °C.</returns>
    public Answer<ViscosityIndex> Index() => ViscosityIndex.Of(Kv40, Kv100, ViscosityIndexMethod.Table);

    /// <summary>Both figures, invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => FormattableString.Invariant($"{Kv40:0.###} mm²/s at 40 °C, {Kv100:0.###} mm²/s at 100 °C");

    internal static OilViscosity FromKernel(double kv40, double kv100) => new(kv40, kv100);

    internal static (double Kv40, double Kv100) Pair(KinematicViscosity at40C, KinematicViscosity at100C, double least)
    {
        double kv40 = OilGuard.Kinematic(at40C, least, Most40);
        double kv100 = OilGuard.Kinematic(at100C, least, Most100);
        return kv40 > kv100
            ? (kv40, kv100)
            : throw new ArgumentException(
                FormattableString.Invariant($"Viscosity must fall with temperature, but is {kv40} mm²/s at 40 °C and {kv100} mm²/s at 100 °C."), nameof(at100C));
    }
}
