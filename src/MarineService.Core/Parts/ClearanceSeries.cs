namespace MarineService.Core.Parts;

/// <summary>How much wider than the screw a hole is drilled, by ISO 273.</summary>
public enum ClearanceSeries
{
    /// <summary>Fine. The default value.</summary>
    Fine = 0,

    /// <summary>Medium, the usual one.</summary>
    Medium = 1,

    /// <summary>Coarse.</summary>
    Coarse = 2,
}
