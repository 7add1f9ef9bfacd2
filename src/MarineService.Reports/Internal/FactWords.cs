using MarineService.Core;
using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;

namespace MarineService.Reports.Internal;

/// <summary>What a log's entries say, in a line each. Tasks are named as the data sheet names them; one that it does not know, by its id.</summary>
internal sealed class FactWords
{
    private readonly Dictionary<string, ServiceTask> _tasks;

    internal FactWords(IEnumerable<ServiceTask> tasks) =>
        _tasks = tasks.GroupBy(task => task.Id, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);

    internal string Of(LogEntry entry, DisplayUnits lead) => entry.Fact is ServiceFact fact ? Of(fact, lead) : $"Withdrawn: entry {entry.Corrects} does not stand";

    internal string Of(ServiceFact fact, DisplayUnits lead) => fact switch
    {
        Completion completion => $"{Title(completion.TaskId)} \u2013 {Outcome(completion)}",
        OilChangeRecord record => $"{Title(record.TaskId)} \u2013 changed, with its account: {string.Join(", ", record.Events.Select(one => Event(one, lead)).Where(text => text.Length > 0))}",
        MeterReading reading => reading.Source switch
        {
            ReadingSource.Dial => "Hour meter read",
            ReadingSource.Log => "Hour meter's reading, from another record",
            _ => "Hours estimated",
        },
        MeterChange change => Change(change),
        EnteredService entered => entered.Rebuilt ? $"Entered service after a rebuild, counted from {entered.EngineZero}" : "Entered service, new",
        LaidUp => "Laid up",
        Commissioned => "Commissioned out of lay-up",
        PlannedLayUp plan => $"Lay-up planned until {Words.Iso(plan.To)}",
        PlannedUse plan => $"Use planned until {Words.Iso(plan.To)}: {plan.Hours}",
        ServiceEvent happened => $"Happened: {happened.Kind}",
        DutyChange duty => duty.Conditions.Count == 0 ? "Duty: ordinary again" : $"Duty: {string.Join(", ", duty.Conditions)}",
        TopUp topUp => $"Topped up {topUp.Fluid}: {Words.InBoth(topUp.Amount.ToString, lead)}",
        OpeningDuePoint opening => $"{Title(opening.TaskId)} \u2013 stated due {Due(opening)} as the record was opened",
        GridOrigin grid => $"{Title(grid.TaskId)} \u2013 counted from this day on, by a fixed grid",
        ImpellerInspection impeller => $"Impeller looked at: {impeller}",
        AnodeInspection anode => $"Anode looked at: {anode}",
        BucketTest bucket => $"Raw water caught: {Flow(bucket, lead)}",
        WinterWork winter => $"Winter work: {string.Join("; ", winter.Works)}",
        _ => throw new ArgumentException($"{fact.GetType().Name} has no words.", nameof(fact)),
    };

    private string Title(string taskId) => _tasks.TryGetValue(taskId, out ServiceTask? task) ? task.Title : taskId;

    private static string Outcome(Completion completion) => completion.Outcome switch
    {
        CompletionOutcome.Passed => "looked at, passed",
        CompletionOutcome.Failed => "looked at, failed",
        _ when completion.ExchangedFraction is decimal fraction => FormattableString.Invariant($"done in part, {fraction * 100:0.#} % exchanged"),
        _ => "done",
    };

    private static string Event(OilChangeEvent one, DisplayUnits lead) => one.Step switch
    {
        OilChangeStep.Begun => one.Reading is null ? "level before not read" : $"level before {one.Reading}",
        OilChangeStep.Looked => $"looked at: {one.Appearance}",
        OilChangeStep.Drained => $"drained {Volume(one, lead)}",
        OilChangeStep.FilterChanged => one.OldFilterEmptiedIntoMeasure == true ? "filter changed, the old one emptied into the measure" : "filter changed",
        OilChangeStep.FilterKept => "filter kept",
        OilChangeStep.FilterPrimed => $"filter filled with {Volume(one, lead)}",
        OilChangeStep.Poured => $"poured {Volume(one, lead)}",
        OilChangeStep.Settled => $"level after {one.Reading}",
        OilChangeStep.DrawnOff => $"drawn off {Volume(one, lead)}",
        OilChangeStep.Ran => "ran",
        _ => "",
    };

    private static string Volume(OilChangeEvent one, DisplayUnits lead) => Words.InBoth(one.Measured!.ToString, lead);

    private static string Flow(BucketTest bucket, DisplayUnits lead) => Words.InBoth(
        units => $"{Figure.Of("flow", bucket.Flow.LitersPerMinute, FigureUnit.LiterPerMinute).ToString(units)} at {Figure.Of("speed", bucket.EngineSpeed.RevolutionsPerMinute, FigureUnit.RevolutionPerMinute).ToString(units)}", lead);

    private static string Change(MeterChange change) => string.Concat(
        "Hour meter changed: the old one showed ",
        change.OldFinal is EngineHours last ? last.ToString() : "nothing that could be read",
        $", the new one began at {change.NewInitial}",
        change.Unmetered > EngineHours.Zero ? $", {change.Unmetered} ran without a meter" : "",
        change.DeadSince is { } dead ? $", dead since {Words.Iso(dead)}" : "");

    private static string Due(OpeningDuePoint opening) => string.Join(
        " or ", new[] { opening.DueHours?.ToString(), opening.DueDate is { } date ? Words.Iso(date) : null }.Where(part => part is not null));
}
