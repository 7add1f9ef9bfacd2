using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>The raw-water side in an engine's data sheet: the circuit in the order of flow, the pump, and the maker's outlet limit.</summary>
public sealed class RawWaterSystem
{
    private RawWaterSystem(RawWaterCircuit circuit, RawWaterPump? pump, DischargeLimit? limit) => (Circuit, Pump, MakersLimit) = (circuit, pump, limit);

    /// <summary>The circuit in the order of flow.</summary>
    public RawWaterCircuit Circuit { get; }

    /// <summary>The pump, or null when it is not stated.</summary>
    public RawWaterPump? Pump { get; }

    /// <summary>The outlet limit that the engine's maker states, or null.</summary>
    public DischargeLimit? MakersLimit { get; }

    /// <summary>The raw-water side of an engine.</summary>
    /// <param name="circuit">The circuit in the order of flow.</param>
    /// <param name="pump">The pump, or null when it is not stated.</param>
    /// <param name="makersLimit">The outlet limit that the engine's maker states, or null.</param>
    /// <returns>The raw-water side.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="circuit"/> is null.</exception>
    public static RawWaterSystem Of(RawWaterCircuit circuit, RawWaterPump? pump = null, DischargeLimit? makersLimit = null) =>
        new(Guard.NotNull(circuit), pump, makersLimit);

    /// <summary>The circuit.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Circuit.ToString();
}
