namespace MarineService.Core.Parts;

/// <summary>Whether a filter may stand in for what the engine needs.</summary>
public enum FilterVerdict
{
    /// <summary>A safety attribute is not known: thread, gasket, bypass or burst. The default value.</summary>
    Unknown = 0,

    /// <summary>An attribute fails.</summary>
    NotEquivalent = 1,

    /// <summary>All safety attributes pass, another one is not known.</summary>
    Conditional = 2,

    /// <summary>Everything that is asked is known and passes.</summary>
    Equivalent = 3,
}
