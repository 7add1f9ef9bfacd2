namespace MarineService.Core.Parts;

/// <summary>How one attribute of a filter came out.</summary>
public enum AttributeOutcome
{
    /// <summary>The engine asks nothing of it. The default value.</summary>
    NotAsked = 0,

    /// <summary>It is what the engine needs.</summary>
    Passes = 1,

    /// <summary>It is asked, and the filter's or the engine's figure is not known.</summary>
    NotKnown = 2,

    /// <summary>It is not what the engine needs.</summary>
    Fails = 3,
}
