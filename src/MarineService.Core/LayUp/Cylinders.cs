using System.Globalization;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>How many cylinders an engine has, what they sweep, and how far they compress.</summary>
public sealed class Cylinders
{
    private readonly double _displacementMilliliters;

    private Cylinders(int count, double displacementMilliliters, double? compressionRatio) =>
        (Count, _displacementMilliliters, CompressionRatio) = (count, displacementMilliliters, compressionRatio);

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>What all of them sweep together.</summary>
    public Volume Displacement => Volume.FromMilliliters(_displacementMilliliters);

    /// <summary>Volume at the bottom to volume at the top of the stroke, or null when it is not known.</summary>
    public double? CompressionRatio { get; }

    /// <summary>What one of them sweeps.</summary>
    public Volume SweptEach => Volume.FromMilliliters(SweptMilliliters);

    /// <summary>What is left above the piston at the top of its stroke: swept volume / (compression ratio - 1).</summary>
    public Answer<Volume> ClearanceEach =>
        ClearanceMilliliters is double clearance ? Answer.Known(Volume.FromMilliliters(clearance)) : Answer.NotKnown<Volume>("The engine's compression ratio.");

    internal double SweptMilliliters => _displacementMilliliters / Count;

    internal double? ClearanceMilliliters => CompressionRatio is double ratio ? FoggingMath.ClearanceMilliliters(SweptMilliliters, ratio) : null;

    internal double DisplacementMilliliters => _displacementMilliliters;

    /// <summary>The cylinders of an engine.</summary>
    /// <param name="count">From 1 to 24.</param>
    /// <param name="displacement">What all of them sweep together, from 0.02 to 200 L.</param>
    /// <param name="compressionRatio">From 4 to 30, or null when it is not known.</param>
    /// <returns>The cylinders.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <example><code>Cylinders.Of(8, Volume.FromLiters(5.7), compressionRatio: 9.4);</code></example>
    public static Cylinders Of(int count, Volume displacement, double? compressionRatio = null) =>
        new(
            Guard.InRange(count, 1, 24, "cylinders"),
            1000 * Guard.InRange(Canonical.Liters(displacement), 0.02, 200, "L", nameof(displacement)),
            compressionRatio is double ratio ? Guard.InRange(ratio, 4, 30, "to 1", nameof(compressionRatio)) : null);

    /// <summary>Count and displacement, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => $"{Count.ToString(CultureInfo.InvariantCulture)} cylinders, {FigureUnit.Liter.Write(_displacementMilliliters / 1000, DisplayUnits.Metric)}";
}
