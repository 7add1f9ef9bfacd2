namespace MarineService.Core.Parts;

/// <summary>What a spin-on filter filters.</summary>
public enum FilterKind
{
    /// <summary>Engine oil. The default value.</summary>
    EngineOil = 0,

    /// <summary>Fuel. It is never filled with unfiltered fuel before it goes on.</summary>
    Fuel = 1,
}
