namespace MarineService.Core;

/// <summary>How well a figure or rule is known: what stands behind a <see cref="Citation"/>.</summary>
public enum CitationStanding
{
    /// <summary>Common practice of the trade; no document was found. The default value.</summary>
    CommonPractice = 0,

    /// <summary>Read in the named document, its official preview or abstract, or in several independent copies that agree.</summary>
    Published = 1,

    /// <summary>Read in somebody else's summary of the named document, not in the document itself.</summary>
    Secondary = 2,

    /// <summary>Worked out from first principles or from published figures, and checked by a second method.</summary>
    Derived = 3,

    /// <summary>Chosen by this project where nobody publishes a figure; a parameter that the caller may change.</summary>
    ProjectChoice = 4,

    /// <summary>From memory, not confirmed by any document.</summary>
    FromMemory = 5,

    /// <summary>Given by the caller: the engine's own manual, a label, a measurement.</summary>
    GivenByCaller = 6,
}
