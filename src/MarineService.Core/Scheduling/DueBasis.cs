namespace MarineService.Core.Scheduling;

/// <summary>What the due point stands on.</summary>
public enum DueBasis
{
    /// <summary>The last completion. The default value.</summary>
    LastDone = 0,

    /// <summary>The first service of a new or rebuilt engine.</summary>
    FirstService = 1,

    /// <summary>The day the engine entered service; nothing was done since.</summary>
    NewEngine = 2,

    /// <summary>What was stated as due when the record was opened.</summary>
    Opening = 3,

    /// <summary>A fixed grid of dates.</summary>
    Grid = 4,

    /// <summary>No record: counts as due now, never as fresh.</summary>
    NoRecord = 5,

    /// <summary>An inspection that failed.</summary>
    FailedInspection = 6,

    /// <summary>Something that happened.</summary>
    Event = 7,

    /// <summary>The engine ran after it was laid up.</summary>
    LayUpVoided = 8,

    /// <summary>The lay-up, planned or begun.</summary>
    LayUp = 9,

    /// <summary>The end of the lay-up.</summary>
    Commissioning = 10,

    /// <summary>Every use.</summary>
    EachUse = 11,
}
