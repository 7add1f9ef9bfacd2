using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>What a document says of one log entry, before it is put together.</summary>
/// <remarks>A struct, since it lives no longer than the reading of its entry.</remarks>
internal struct EntryParts
{
    private RareEntryParts? _rare;

    internal EntryKind? Kind { get; set; }

    internal string? Id { get; set; }

    internal string? Engine { get; set; }

    internal LocalDate? Date { get; set; }

    internal EngineHours? Dial { get; set; }

    internal ReadingSource? Source { get; set; }

    internal string? Task { get; set; }

    internal string? By { get; set; }

    /// <summary>What few entries say, as this one says it.</summary>
    internal readonly RareEntryParts Rare => _rare ?? RareEntryParts.None;

    /// <summary>What few entries say, to be written to.</summary>
    internal RareEntryParts WithRare() => _rare ??= new();

    internal readonly LogEntry Build()
    {
        RareEntryParts rare = Rare;
        ServiceFact? fact = Kind == EntryKind.Withdrawal ? null : Fact(rare);
        return LogEntry.Read(fact, Date!.Value, Id, Engine, By, rare.CheckedBy, rare.Evidence, rare.Note, rare.Corrects, rare.Reconstructed == true);
    }

    private readonly ServiceFact Fact(RareEntryParts rare) => Kind switch
    {
        EntryKind.Reading => MeterReading.Of(Date!.Value, Dial!.Value, Source ?? default),
        EntryKind.MeterChange => MeterChange.Of(Date!.Value, rare.OldFinal, rare.NewInitial ?? default, rare.Unmetered ?? default, rare.DeadSince, rare.NewMeter),
        EntryKind.EnteredService => rare.EngineZero is EngineHours zero
            ? EnteredService.AfterRebuild(Date!.Value, zero, Dial)
            : EnteredService.New(Date!.Value, Dial),
        EntryKind.OpeningDuePoint => OpeningDuePoint.Of(Date!.Value, Task!, rare.DueDate, rare.DueHours),
        EntryKind.GridOrigin => GridOrigin.Of(Date!.Value, Task!),
        EntryKind.Event => ServiceEvent.Of(rare.Event!, Date!.Value, Dial),
        EntryKind.Duty => DutyChange.Of(Date!.Value, rare.Conditions!, Dial),
        EntryKind.OilChange => OilChangeRecord.Of(Task!, Date!.Value, rare.Account!, Dial),
        EntryKind.WinterWork => WinterWork.On(Date!.Value, rare.Works!, Dial),
        EntryKind.TopUp => TopUp.Of(rare.Fluid!, Date!.Value, rare.Amount!, Dial),
        EntryKind.ImpellerInspection => rare.Impeller!.Build(Date!.Value, Dial),
        EntryKind.BucketTest => rare.Bucket!(Date!.Value, Dial),
        EntryKind.AnodeInspection => rare.Anode!(Date!.Value, Dial),
        EntryKind.LaidUp => LaidUp.On(Date!.Value, Dial),
        EntryKind.Commissioned => Commissioned.On(Date!.Value, Dial),
        EntryKind.PlannedUse => PlannedUse.Between(Date!.Value, rare.Until!.Value, rare.PlannedHours!.Value),
        EntryKind.PlannedLayUp => PlannedLayUp.Between(Date!.Value, rare.Until!.Value),
        _ => rare.Result switch
        {
            CompletionOutcome.Passed => Completion.Passed(Task!, Date!.Value, Dial),
            CompletionOutcome.Failed => Completion.Failed(Task!, Date!.Value, Dial),
            _ => rare.Fraction is decimal fraction
                ? Completion.Partial(Task!, Date!.Value, Dial, fraction, rare.FractionUncertainty)
                : Completion.Of(Task!, Date!.Value, Dial),
        },
    };
}
