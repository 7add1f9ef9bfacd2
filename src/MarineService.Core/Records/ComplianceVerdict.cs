namespace MarineService.Core.Records;

/// <summary>Whether a task was done on time.</summary>
public enum ComplianceVerdict
{
    /// <summary>Done at or before its due point. The default value.</summary>
    Kept = 0,

    /// <summary>Done after its due point, within the tolerance.</summary>
    KeptWithinTolerance = 1,

    /// <summary>Done after the tolerance.</summary>
    Exceeded = 2,

    /// <summary>The readings leave open whether it was in time.</summary>
    CannotBeShown = 3,

    /// <summary>Not done, and the tolerance has passed.</summary>
    Missing = 4,

    /// <summary>The first completion on record: nothing says when it was due. Not counted.</summary>
    FirstOnRecord = 5,
}
