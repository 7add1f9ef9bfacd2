namespace MarineService.Core.Procedures;

/// <summary>What can happen in the course of the work.</summary>
public enum WorkEventKind
{
    /// <summary>A step was done, or was refused. The default value.</summary>
    Step = 0,

    /// <summary>A circumstance was found to hold or not to hold.</summary>
    Found = 1,

    /// <summary>The work was put down before its end.</summary>
    PutDown = 2,

    /// <summary>The work was taken up again.</summary>
    TakenUp = 3,
}
