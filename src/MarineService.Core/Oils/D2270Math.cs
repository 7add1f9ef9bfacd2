namespace MarineService.Core.Oils;

/// <summary>The viscosity index of ASTM D2270; U at 40 °C and Y at 100 °C in mm²/s. Source: sections 5 and 6.</summary>
internal static class D2270Math
{
    internal static (double L, double H) LAndH(double y, ViscosityIndexMethod method) =>
        method == ViscosityIndexMethod.Quadratics ? D2270Table.Quadratic(y)
        : y <= D2270Table.GreatestY ? D2270Table.Interpolate(y)
        : ((((0.8353 * y) + 14.67) * y) - 216, (((0.1684 * y) + 11.85) * y) - 97);

    /// <summary>Procedure A: indices up to and with 100.</summary>
    internal static double ProcedureA(double u, double l, double h) => 100 * (l - u) / (l - h);

    /// <summary>Procedure B: indices from 100.</summary>
    internal static double ProcedureB(double u, double y, double h)
    {
        double n = Math.Log(h / u) / Math.Log(y);
        return ((Math.Pow(10, n) - 1) / 0.00715) + 100;
    }

    /// <summary>A whole number; a tie goes to the even one.</summary>
    internal static int RoundE29(double index) => (int)Math.Round(index, MidpointRounding.ToEven);
}
