using MarineService.Core.Internal;

namespace MarineService.Core.Engines;

/// <summary>One engine of a boat: what it is called, what it burns, how it is cooled and which way it turns.</summary>
public sealed class Engine
{
    private Engine(string designation, Fuel fuel, CoolingKind cooling, HandOfRotation rotation, RawWaterPumpDrive pumpDrive, string? serialNumber) =>
        (Designation, Fuel, Cooling, Rotation, PumpDrive, SerialNumber) = (designation, fuel, cooling, rotation, pumpDrive, serialNumber);

    /// <summary>The maker's designation.</summary>
    public string Designation { get; }

    /// <summary>What it burns.</summary>
    public Fuel Fuel { get; }

    /// <summary>How the block is cooled.</summary>
    public CoolingKind Cooling { get; }

    /// <summary>Which way the crankshaft turns.</summary>
    public HandOfRotation Rotation { get; }

    /// <summary>What turns the raw-water pump.</summary>
    public RawWaterPumpDrive PumpDrive { get; }

    /// <summary>The serial number as typed on the plate, or null when it is not known.</summary>
    public string? SerialNumber { get; }

    /// <summary>An engine.</summary>
    /// <param name="designation">The maker's designation; not blank.</param>
    /// <param name="fuel">What it burns.</param>
    /// <param name="cooling">How the block is cooled.</param>
    /// <param name="rotation">Which way the crankshaft turns.</param>
    /// <param name="pumpDrive">What turns the raw-water pump.</param>
    /// <param name="serialNumber">The serial number as typed on the plate, or null.</param>
    /// <returns>The engine.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="designation"/> or <paramref name="serialNumber"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An enum value is not defined.</exception>
    public static Engine Of(
        string designation,
        Fuel fuel = Fuel.NotStated,
        CoolingKind cooling = CoolingKind.NotStated,
        HandOfRotation rotation = HandOfRotation.NotStated,
        RawWaterPumpDrive pumpDrive = RawWaterPumpDrive.NotStated,
        string? serialNumber = null) =>
        new(
            Guard.NotBlank(designation),
            Guard.Defined(fuel),
            Guard.Defined(cooling),
            Guard.Defined(rotation),
            Guard.Defined(pumpDrive),
            serialNumber is null ? null : Guard.NotBlank(serialNumber));

    /// <summary>The same engine under another designation, for variants that differ only in rating.</summary>
    /// <param name="designation">The maker's designation; not blank.</param>
    /// <returns>A copy with that designation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="designation"/> is blank.</exception>
    public Engine WithDesignation(string designation) =>
        new(Guard.NotBlank(designation), Fuel, Cooling, Rotation, PumpDrive, SerialNumber);

    /// <summary>The designation.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Designation;
}
