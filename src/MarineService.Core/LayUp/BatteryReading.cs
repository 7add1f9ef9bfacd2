using System.Globalization;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>What was read of a battery: its voltage at rest, or the density of its acid.</summary>
public sealed class BatteryReading
{
    private BatteryReading(BatteryKind kind, int cells, double? volts, double? restedHours, double? densityRatio) =>
        (Kind, Cells, RestVolts, RestedHours, DensityRatio) = (kind, cells, volts, restedHours, densityRatio);

    /// <summary>How the battery is made.</summary>
    public BatteryKind Kind { get; }

    /// <summary>How many cells stand in a row: 6 for 12 V.</summary>
    public int Cells { get; }

    /// <summary>The voltage at rest, or null when the density was read.</summary>
    public ElectricPotential? Voltage => RestVolts is double volts ? ElectricPotential.FromVolts(volts) : null;

    /// <summary>How long it had rested without charge or load in hours, or null when that is not known.</summary>
    public double? RestedHours { get; }

    /// <summary>The density of the acid relative to water, corrected to 25 °C, or null when the voltage was read.</summary>
    public double? DensityRatio { get; }

    internal double? RestVolts { get; }

    /// <summary>The voltage of a battery at rest.</summary>
    /// <param name="kind">How the battery is made.</param>
    /// <param name="voltage">From 1 to 4 V for each cell.</param>
    /// <param name="restedHours">How long it had rested without charge or load, from 0 to 10,000 h; null when that is not known.</param>
    /// <param name="cells">How many cells stand in a row, from 1 to 24; 6 for a 12 V lead battery.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <example><code>BatteryReading.OfVoltage(BatteryKind.FloodedLead, ElectricPotential.FromVolts(12.5), restedHours: 24);</code></example>
    public static BatteryReading OfVoltage(BatteryKind kind, ElectricPotential voltage, double? restedHours = null, int cells = 6)
    {
        Guard.Defined(kind);
        Guard.InRange(cells, 1, 24, "cells");
        double volts = Guard.InRange(Canonical.Volts(voltage), cells, 4 * cells, "V", nameof(voltage));
        return new(kind, cells, volts, restedHours is double hours ? Guard.InRange(hours, 0, 10_000, "h", nameof(restedHours)) : null, null);
    }

    /// <summary>The density of the acid of a flooded lead battery.</summary>
    /// <param name="densityRatio">Relative to water and corrected to 25 °C, as the hydrometer's own table tells; from 1 to 1.4.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="densityRatio"/> is outside its range.</exception>
    public static BatteryReading OfDensity(double densityRatio) =>
        new(BatteryKind.FloodedLead, 6, null, null, Guard.InRange(densityRatio, 1, 1.4, "relative to water"));

    /// <summary>What was read.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => DensityRatio is double density
        ? $"density {density.ToString("0.000", CultureInfo.InvariantCulture)}"
        : FigureUnit.Volt.Write(RestVolts!.Value, DisplayUnits.Metric);
}
