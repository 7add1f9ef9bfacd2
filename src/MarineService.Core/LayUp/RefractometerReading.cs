using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>What a refractometer with a scale for one glycol showed of a sample.</summary>
/// <remarks>Valid for that glycol only; ethanol, dye and salt water falsify it.</remarks>
public sealed class RefractometerReading
{
    private RefractometerReading(GlycolKind scale, double celsius) => (Scale, Celsius) = (scale, celsius);

    /// <summary>The glycol of the scale that was read.</summary>
    public GlycolKind Scale { get; }

    /// <summary>The freezing point as read.</summary>
    public Temperature FreezingPoint => Temperature.FromDegreesCelsius(Celsius);

    internal double Celsius { get; }

    /// <summary>A reading.</summary>
    /// <param name="scale">The glycol of the scale that was read.</param>
    /// <param name="freezingPoint">From -60 to 0 °C.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="scale"/> is not defined, or <paramref name="freezingPoint"/> is outside its range.</exception>
    public static RefractometerReading Of(GlycolKind scale, Temperature freezingPoint) =>
        new(Guard.Defined(scale), Guard.InRange(Canonical.Celsius(freezingPoint), -60, 0, "°C", nameof(freezingPoint)));

    /// <summary>Scale and freezing point, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => FormattableString.Invariant($"{Celsius:0.#} °C on the {(Scale == GlycolKind.Ethylene ? "ethylene" : "propylene")} glycol scale");
}
