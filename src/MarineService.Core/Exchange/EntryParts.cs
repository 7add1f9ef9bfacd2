using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>What a document says of one log entry, before it is put together.</summary>
/// <remarks>A struct, since most of its members stay empty: it lives no longer than the reading of its entry.</remarks>
internal struct EntryParts
{
    internal EntryKind? Kind { get; set; }

    internal string? Id { get; set; }

    internal string? Engine { get; set; }

    internal LocalDate? Date { get; set; }

    internal EngineHours? Dial { get; set; }

    internal ReadingSource? Source { get; set; }

    internal string? Task { get; set; }

    internal CompletionOutcome? Result { get; set; }

    internal decimal? Fraction { get; set; }

    internal decimal? FractionUncertainty { get; set; }

    internal LocalDate? DueDate { get; set; }

    internal EngineHours? DueHours { get; set; }

    internal string? Event { get; set; }

    internal List<string>? Conditions { get; set; }

    internal string? Fluid { get; set; }

    internal MeasuredVolume? Amount { get; set; }

    internal LocalDate? Until { get; set; }

    internal EngineHours? PlannedHours { get; set; }

    internal EngineHours? OldFinal { get; set; }

    internal EngineHours? NewInitial { get; set; }

    internal EngineHours? Unmetered { get; set; }

    internal LocalDate? DeadSince { get; set; }

    internal HourMeter? NewMeter { get; set; }

    internal EngineHours? EngineZero { get; set; }

    internal string? By { get; set; }

    internal string? CheckedBy { get; set; }

    internal List<Evidence>? Evidence { get; set; }

    internal string? Note { get; set; }

    internal string? Corrects { get; set; }

    internal bool? Reconstructed { get; set; }

    internal List<OilChangeEvent>? Account { get; set; }

    internal ImpellerParts? Impeller { get; set; }

    internal List<LowPointWork>? Works { get; set; }

    internal Func<LocalDate, EngineHours?, BucketTest>? Bucket { get; set; }

    internal Func<LocalDate, EngineHours?, AnodeInspection>? Anode { get; set; }

    internal readonly LogEntry Build() => LogEntry.Read(
        Kind == EntryKind.Withdrawal ? null : Fact(), Date!.Value, Id, Engine, By, CheckedBy, Evidence, Note, Corrects, Reconstructed == true);

    private readonly ServiceFact Fact() => Kind switch
    {
        EntryKind.Reading => MeterReading.Of(Date!.Value, Dial!.Value, Source ?? default),
        EntryKind.MeterChange => MeterChange.Of(Date!.Value, OldFinal, NewInitial ?? default, Unmetered ?? default, DeadSince, NewMeter),
        EntryKind.EnteredService => EngineZero is EngineHours zero
            ? EnteredService.AfterRebuild(Date!.Value, zero, Dial)
            : EnteredService.New(Date!.Value, Dial),
        EntryKind.OpeningDuePoint => OpeningDuePoint.Of(Date!.Value, Task!, DueDate, DueHours),
        EntryKind.GridOrigin => GridOrigin.Of(Date!.Value, Task!),
        EntryKind.Event => ServiceEvent.Of(Event!, Date!.Value, Dial),
        EntryKind.Duty => DutyChange.Of(Date!.Value, Conditions!, Dial),
        EntryKind.OilChange => OilChangeRecord.Of(Task!, Date!.Value, Account!, Dial),
        EntryKind.WinterWork => WinterWork.On(Date!.Value, Works!, Dial),
        EntryKind.TopUp => TopUp.Of(Fluid!, Date!.Value, Amount!, Dial),
        EntryKind.ImpellerInspection => Impeller!.Build(Date!.Value, Dial),
        EntryKind.BucketTest => Bucket!(Date!.Value, Dial),
        EntryKind.AnodeInspection => Anode!(Date!.Value, Dial),
        EntryKind.LaidUp => LaidUp.On(Date!.Value, Dial),
        EntryKind.Commissioned => Commissioned.On(Date!.Value, Dial),
        EntryKind.PlannedUse => PlannedUse.Between(Date!.Value, Until!.Value, PlannedHours!.Value),
        EntryKind.PlannedLayUp => PlannedLayUp.Between(Date!.Value, Until!.Value),
        _ => Result switch
        {
            CompletionOutcome.Passed => Completion.Passed(Task!, Date!.Value, Dial),
            CompletionOutcome.Failed => Completion.Failed(Task!, Date!.Value, Dial),
            _ => Fraction is decimal fraction
                ? Completion.Partial(Task!, Date!.Value, Dial, fraction, FractionUncertainty)
                : Completion.Of(Task!, Date!.Value, Dial),
        },
    };
}
