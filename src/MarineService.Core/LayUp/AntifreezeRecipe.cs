using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>How much of an antifreeze and how much water make a fill.</summary>
public sealed class AntifreezeRecipe
{
    internal AntifreezeRecipe(double productLiters, double waterLiters) => (ProductLiters, WaterLiters) = (productLiters, waterLiters);

    /// <summary>The antifreeze as delivered.</summary>
    public Volume Product => Volume.FromLiters(ProductLiters);

    /// <summary>Clean fresh water to mix it with; none for a ready-mixed one.</summary>
    public Volume Water => Volume.FromLiters(WaterLiters);

    internal double ProductLiters { get; }

    internal double WaterLiters { get; }

    /// <summary>Both amounts, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToString(DisplayUnits.Metric);

    /// <summary>Both amounts, invariant.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string ToString(DisplayUnits units)
    {
        Guard.Defined(units);
        string product = FigureUnit.Liter.Write(ProductLiters, units);
        return WaterLiters > 0 ? $"{product} with {FigureUnit.Liter.Write(WaterLiters, units)} of water" : product;
    }
}
