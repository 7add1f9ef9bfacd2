namespace MarineService.Core.Procedures;

/// <summary>What is to be said of a step as it comes.</summary>
public enum StepVerdict
{
    /// <summary>It may be done now, and is proved. The default value.</summary>
    Allowed = 0,

    /// <summary>It was done already and nothing asks for it again.</summary>
    Repeated = 1,

    /// <summary>It is not needed on this boat.</summary>
    NotNeeded = 2,

    /// <summary>It may be done, but a hold point is not proved.</summary>
    Unproved = 3,

    /// <summary>Something has to be done or said before it.</summary>
    TooEarly = 4,

    /// <summary>It would do harm now.</summary>
    Forbidden = 5,

    /// <summary>The procedure has no such step.</summary>
    Unknown = 6,
}
