namespace MarineService.Core.Exchange;

/// <summary>What an entry of a log document is about.</summary>
internal enum EntryKind
{
    Reading,
    Completion,
    MeterChange,
    EnteredService,
    OpeningDuePoint,
    GridOrigin,
    Event,
    Duty,
    TopUp,
    LaidUp,
    Commissioned,
    PlannedLayUp,
    PlannedUse,
    OilChange,
    ImpellerInspection,
    WinterWork,
    BucketTest,
    AnodeInspection,
    Withdrawal,
}
