namespace MarineService.Core.Parts;

/// <summary>Whether a rubber part from the shelf may still go on.</summary>
public enum StorageVerdict
{
    /// <summary>Not known: the polymer, the quarter of cure, the limit or the way it was kept. The default value.</summary>
    NotKnown = 0,

    /// <summary>Within the limit.</summary>
    Good = 1,

    /// <summary>Past the initial limit, within the extension: good when an inspection passes it.</summary>
    Inspect = 2,

    /// <summary>Past every limit.</summary>
    TooOld = 3,
}
