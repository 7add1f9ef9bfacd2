using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Benchmarks;

/// <summary>A made-up launch with forty tasks and three hundred entries of seven years: what a club's busiest boat comes to.</summary>
internal static class ClubRecord
{
    internal const int Tasks = 40;
    internal const int Entries = 300;

    internal static readonly LocalDate Today = new(2026, 10, 12);

    internal static EngineSpecification Specification { get; } = EngineSpecification.Named("Corrie 60P")
        .WithMeter(HourMeter.Of(EngineHours.FromHours(10_000m), MeterDrive.Key))
        .With([.. Enumerable.Range(0, Tasks).Select(TaskOf)]);

    internal static ServiceLog Log { get; } = ServiceLog.Of(Enumerable.Range(0, Entries).Select(EntryOf));

    private static ServiceTask TaskOf(int i)
    {
        ServiceInterval interval = ServiceInterval.FirstOf(EngineHours.FromHours(25 * (1 + (i % 8))), months: 6 + (i % 4 * 6));
        ServiceTask task = i % 4 == 1 ? ServiceTask.Inspect($"task-{i}", interval).IfFailedDo($"task-{i - 1}").DueAfterEvents("overheat") : ServiceTask.Replace($"task-{i}", interval);
        task = task.WithTitle($"Task number {i}").WithAnchorPolicy((AnchorPolicy)(i % 3));
        task = i % 5 == 0 ? task.WithSevereDuty("towing", 0.5m).WithPartialExchange(PartialExchange.ProRata) : task;
        return i % 8 == 7 ? task.Including($"task-{i - 1}").WithLayUpRule(LayUpRule.PullForward) : task;
    }

    private static LogEntry EntryOf(int i)
    {
        LocalDate date = new LocalDate(2020, 1, 10).PlusDays(i * 8);
        EngineHours dial = EngineHours.FromHours(100m + (i * 2.1m));
        return (i % 10) switch
        {
            0 => LogEntry.Of(MeterReading.Of(date, dial, ReadingSource.Log)),
            1 => LogEntry.Of(ServiceEvent.Of("overheat", date, dial)),
            2 => LogEntry.Of(DutyChange.Of(date, i % 20 == 2 ? ["towing"] : [], dial)),
            3 => LogEntry.Of(Completion.Of($"task-{i % Tasks}", date)).WithNote("Nobody read the meter."),
            4 => LogEntry.Of(Completion.Passed($"task-{(i % 10 * 4) + 1}", date, dial)).DoneBy("M. Kerr"),
            _ => LogEntry.Of(Completion.Of($"task-{i % Tasks}", date, dial)).DoneBy("M. Kerr").WithChecker("J. Tait")
                .WithEvidence(Evidence.Of(EvidenceKind.DialPhoto, $"photos/{i}.jpg"), Evidence.Of(EvidenceKind.Receipt, $"chandler {i}")),
        };
    }
}
