namespace MarineService.Core;

/// <summary>How much a finding matters. Not the signal word of a caution, which warns people of a hazard.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing to do. The default value.</summary>
    Note = 0,

    /// <summary>Worth doing when convenient.</summary>
    Advice = 1,

    /// <summary>Must be put right; the engine may run meanwhile.</summary>
    Act = 2,

    /// <summary>Do not run the engine until it is put right.</summary>
    Stop = 3,
}
