using MarineService.Core;
using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime.Text;

namespace MarineService.Reports.Tables;

/// <summary>The log as a table: a line for each entry.</summary>
internal static class LogTable
{
    internal static readonly string[] Columns =
    [
        "id", "date", "engine", "hours", "what", "task", "event", "fluid", "added L", "by", "checked by", "note",
        "detail", "evidence", "reconstructed", "corrects", "corrected by",
    ];

    internal static IEnumerable<CsvRow> Rows(ServiceLog log)
    {
        Dictionary<string, string> correctedBy = log.Entries.Where(entry => entry.Corrects is not null).ToDictionary(entry => entry.Corrects!, entry => entry.Id!, StringComparer.Ordinal);
        return log.Entries.Select(entry => Row(entry, correctedBy.TryGetValue(entry.Id!, out string? by) ? by : null));
    }

    /// <summary>What an entry says, in one word; every kind of fact has its own.</summary>
    internal static string What(ServiceFact? fact) => fact switch
    {
        MeterReading => "reading",
        Completion { Outcome: CompletionOutcome.Passed } => "passed",
        Completion { Outcome: CompletionOutcome.Failed } => "failed",
        Completion => "done",
        OilChangeRecord => "oil-change",
        ServiceEvent => "event",
        TopUp => "top-up",
        LaidUp => "laid-up",
        Commissioned => "commissioned",
        PlannedLayUp => "planned-lay-up",
        PlannedUse => "planned-use",
        MeterChange => "meter-change",
        EnteredService { Rebuilt: true } => "rebuilt",
        EnteredService => "entered-service",
        OpeningDuePoint => "opening-due-point",
        GridOrigin => "grid-origin",
        DutyChange => "duty",
        ImpellerInspection => "impeller-inspection",
        WinterWork => "winter-work",
        BucketTest => "bucket-test",
        AnodeInspection => "anode-inspection",
        null => "withdrawal",
        _ => throw new InvalidOperationException($"{fact.GetType().Name} has no word."),
    };

    private static CsvRow Row(LogEntry entry, string? correctedBy) => new CsvRow()
        .Text(entry.Id)
        .Date(entry.Date)
        .Text(entry.Scope)
        .Hours(entry.Fact?.Dial)
        .Text(What(entry.Fact))
        .Text(Task(entry.Fact))
        .Text((entry.Fact as ServiceEvent)?.Kind)
        .Text((entry.Fact as TopUp)?.Fluid)
        .Number(entry.Fact is TopUp topUp ? Liters(topUp) : null)
        .Text(entry.By)
        .Text(entry.CheckedBy)
        .Text(entry.Note)
        .Text(Detail(entry.Fact))
        .Text(string.Join("; ", entry.Evidence.Select(proof => $"{Kind(proof.Kind)} {proof.Reference}")))
        .Text(entry.IsReconstructed ? "yes" : null)
        .Text(entry.Corrects)
        .Text(correctedBy);

    private static string? Task(ServiceFact? fact) => fact switch
    {
        Completion completion => completion.TaskId,
        OilChangeRecord record => record.TaskId,
        OpeningDuePoint opening => opening.TaskId,
        GridOrigin grid => grid.TaskId,
        _ => null,
    };

    // To the microlitre: the binary rest of a conversion is nothing that was measured.
    private static decimal Liters(TopUp topUp) => Math.Round((decimal)topUp.Amount.Volume.Liters, 6);

    // What the other columns have no room for, in a few words.
    private static string? Detail(ServiceFact? fact) => fact switch
    {
        Completion { ExchangedFraction: decimal fraction } => FormattableString.Invariant($"{fraction:0.######} of the fluid exchanged"),
        MeterReading { Source: not ReadingSource.Dial } reading => reading.Source == ReadingSource.Log ? "copied from a log or an invoice" : "estimated",
        OilChangeRecord record => FormattableString.Invariant($"account of {record.Events.Count} events"),
        OpeningDuePoint opening => string.Join(" or ", new[] { opening.DueHours?.ToString(), Iso(opening.DueDate) }.Where(limb => limb is not null)),
        DutyChange duty => duty.Conditions.Count == 0 ? "ordinary duty" : string.Join(", ", duty.Conditions),
        PlannedLayUp plan => $"to {LocalDatePattern.Iso.Format(plan.To)}",
        PlannedUse plan => $"{plan.Hours} to {LocalDatePattern.Iso.Format(plan.To)}",
        WinterWork work => string.Join("; ", work.Works.Select(each => each.ToString())),
        ImpellerInspection or BucketTest or AnodeInspection => fact.ToString(),
        MeterChange change => Change(change),
        EnteredService { Rebuilt: true } entered => $"hours counted from {entered.EngineZero}",
        _ => null,
    };

    private static string Change(MeterChange change) => string.Join(", ", new[]
    {
        change.OldFinal is EngineHours old ? $"old meter ended at {old}" : null,
        $"new meter began at {change.NewInitial}",
        change.Unmetered > EngineHours.Zero ? $"{change.Unmetered} without a meter" : null,
    }.Where(part => part is not null));

    private static string Kind(EvidenceKind kind) => kind switch
    {
        EvidenceKind.Photo => "photo",
        EvidenceKind.DialPhoto => "photo of the dial",
        EvidenceKind.Receipt => "receipt",
        _ => "document",
    };

    private static string? Iso(NodaTime.LocalDate? date) => date is NodaTime.LocalDate known ? LocalDatePattern.Iso.Format(known) : null;
}
