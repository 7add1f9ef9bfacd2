using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>How little an oil thins with warmth: the viscosity index of ASTM D2270 (ISO 2909).</summary>
/// <remarks>
/// Rule: from the viscosity at 40 °C (U) and at 100 °C (Y), with L and H at Y by linear interpolation in the table up to 70 mm²/s and by
/// equations above. U ≥ H: 100(L - U)/(L - H). U &lt; H: (10ᴺ - 1)/0.00715 + 100 with N = log(H/U)/log Y. Rounded to a whole number, a
/// tie to the even one (ASTM E29). Not defined below 2 mm²/s at 100 °C.
/// </remarks>
public sealed class ViscosityIndex
{
    private readonly double _u;
    private readonly double _y;
    private readonly double _l;
    private readonly double _h;

    private ViscosityIndex(double u, double y, ViscosityIndexMethod method)
    {
        (_u, _y, Method) = (u, y, method);
        (_l, _h) = D2270Math.LAndH(y, method);
        UnroundedNumber = IsProcedureB ? D2270Math.ProcedureB(u, y, _h) : D2270Math.ProcedureA(u, _l, _h);
    }

    /// <summary>The index as it is reported: a whole number. It may be negative.</summary>
    public int Number => D2270Math.RoundE29(UnroundedNumber);

    /// <summary>The index before rounding.</summary>
    public Figure Unrounded => Figure.Of("viscosity index", UnroundedNumber, FigureUnit.Number);

    /// <summary>True when procedure B gave it: the oil is thinner at 40 °C than H, and the index is above 100.</summary>
    public bool IsProcedureB => _u < _h;

    /// <summary>Where L and H come from.</summary>
    public ViscosityIndexMethod Method { get; }

    /// <summary>Viscosity at 40 °C of an oil of index 0 with the same viscosity at 100 °C.</summary>
    public KinematicViscosity L => KinematicViscosity.FromCentistokes(_l);

    /// <summary>Viscosity at 40 °C of an oil of index 100 with the same viscosity at 100 °C.</summary>
    public KinematicViscosity H => KinematicViscosity.FromCentistokes(_h);

    internal double UnroundedNumber { get; }

    /// <summary>The viscosity index of an oil.</summary>
    /// <param name="at40C">From 0.21 to 100,000 mm²/s.</param>
    /// <param name="at100C">From 0.2 to 1,000 mm²/s, below <paramref name="at40C"/>.</param>
    /// <param name="method">Where L and H come from.</param>
    /// <returns>The index; not known below 2 mm²/s at 100 °C, where it is not defined.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The viscosity does not fall with temperature.</exception>
    /// <example><code>ViscosityIndex.Of(KinematicViscosity.FromCentistokes(73.3), KinematicViscosity.FromCentistokes(8.86)).Value.Number; // 92</code></example>
    public static Answer<ViscosityIndex> Of(
        KinematicViscosity at40C, KinematicViscosity at100C, ViscosityIndexMethod method = ViscosityIndexMethod.Table)
    {
        (double u, double y) = OilViscosity.Pair(at40C, at100C, 0.2);
        return Of(u, y, Guard.Defined(method));
    }

    /// <summary>The index, U, Y, L, H and the procedure.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        return new ExplanationBuilder(FormattableString.Invariant($"Viscosity index {Number}."))
            .Add("at 40 °C", FigureUnit.SquareMillimeterPerSecond.Write(_u, units))
            .Add("at 100 °C", FigureUnit.SquareMillimeterPerSecond.Write(_y, units))
            .Add("L", FigureUnit.SquareMillimeterPerSecond.Write(_l, units))
            .Add("H", FigureUnit.SquareMillimeterPerSecond.Write(_h, units))
            .Add("procedure", IsProcedureB ? "B, because U is below H" : "A, because U is at least H")
            .Add("unrounded", FigureUnit.Number.Write(UnroundedNumber, units))
            .Build(OilSources.D2270, OilSources.E29);
    }

    /// <summary>The index as it is reported, invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    internal static Answer<ViscosityIndex> Of(double u, double y, ViscosityIndexMethod method) =>
        y < D2270Table.LeastY
            ? Answer.NotKnown<ViscosityIndex>(FormattableString.Invariant($"ASTM D2270 defines no index below 2 mm²/s at 100 °C; this oil has {y} mm²/s."))
            : Answer.Known(new ViscosityIndex(u, y, method));
}
