using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>What was prepared once says on every day that it is good for what a new due list says.</summary>
public sealed class PreparedDueTest
{
    private static readonly DueLimitTable Limits = new();

    [Law(MaxTest = 300)]
    public void Prepared_SaysWhatTheDueListSays_OnEveryDayThatItIsGoodFor(int seed)
    {
        RandomHistory random = new(seed);
        ServiceLog log = ServiceLog.Of(random.Facts.Select(LogEntry.Of));
        PreparedDue prepared = PreparedDue.Of(RandomHistory.Specification.Plan, log.History(RandomHistory.Specification, random.Last), Limits);
        DueStatus[] statuses = new DueStatus[prepared.Plan.Tasks.Count];
        Assert.True(prepared.IsGoodFor(random.Last, null));
        foreach (int days in new[] { 0, 1, 2, 25, 90, 400 })
        {
            LocalDate today = random.Last.PlusDays(days);
            Compare(log, null, today);
            foreach (int more in new[] { 0, 1, 2_000, 20_000 })
            {
                Compare(log.With(MeterReading.Of(today, EngineHours.FromHours((random.LastDial + (days == 0 ? 0 : more)) / 1000m))), "read", today);
            }
        }

        void Compare(ServiceLog later, string? read, LocalDate today)
        {
            EngineHours? reading = read is null ? null : later.History(RandomHistory.Specification, today).Meter.HoursOn(today).Value.Estimate;
            if (prepared.IsGoodFor(today, reading))
            {
                prepared.Evaluate(today, reading, statuses);
                Assert.Equal(later.DueList(RandomHistory.Specification, today).Tasks.Select(task => task.Status), statuses);
            }
        }
    }

    [Fact]
    public void Prepared_WithLayUpWork_IsGoodUntilTheLayUpBegins()
    {
        LocalDate from = new(2026, 11, 1);
        TaskPlan plan = TaskPlan.Of([ServiceTask.AtLayUp("drain", TaskAction.Clean), ServiceTask.AtCommissioning("refill", TaskAction.Clean), ServiceTask.EachUse("look", TaskAction.Inspect)]);
        ServiceFact[] facts = [PlannedLayUp.Between(from, new(2027, 4, 1)), MeterReading.Of(new(2026, 9, 1), EngineHours.FromHours(100m))];
        PreparedDue prepared = PreparedDue.Of(plan, ServiceHistory.Of(HourMeter.Plain, facts, new(2026, 9, 1)), Limits);
        DueStatus[] statuses = new DueStatus[3];
        for (LocalDate today = new(2026, 9, 1); today < from; today = today.PlusDays(1))
        {
            prepared.Evaluate(today, null, statuses);
            Assert.Equal(DueList.Evaluate(plan, ServiceHistory.Of(HourMeter.Plain, facts, today)).Tasks.Select(task => task.Status), statuses);
        }

        Assert.False(prepared.IsGoodFor(from, null));
        Assert.Equal("today", Assert.Throws<ArgumentOutOfRangeException>(() => prepared.Evaluate(from, null, statuses)).ParamName);
        Assert.False(prepared.IsGoodFor(new(2026, 8, 31), null));
    }

    [Fact]
    public void Judging_AllocatesNothing()
    {
        RandomHistory random = new(7);
        ServiceLog log = ServiceLog.Of(random.Facts.Select(LogEntry.Of));
        PreparedDue prepared = PreparedDue.Of(RandomHistory.Specification.Plan, log.History(RandomHistory.Specification, random.Last), Limits);
        DueStatus[] statuses = new DueStatus[prepared.Plan.Tasks.Count];
        Assert.Equal(0, Allocation.Of(() => prepared.Evaluate(random.Last, null, statuses)));
    }

    [Fact]
    public void Rows_CopiedToColumns_SayTheSame()
    {
        RandomHistory random = new(11);
        ServiceLog log = ServiceLog.Of(random.Facts.Select(LogEntry.Of)).With(MeterReading.Of(random.Last, EngineHours.FromHours(random.LastDial / 1000m)));
        ServiceHistory history = log.History(RandomHistory.Specification, random.Last);
        PreparedDue prepared = PreparedDue.Of(RandomHistory.Specification.Plan, history, Limits);
        int count = prepared.Plan.Tasks.Count;
        ushort[] codes = new ushort[count];
        int[] days = new int[count];
        int[] hours = new int[count];
        int[] now = [.. Enumerable.Repeat((int)history.Meter.HoursOn(random.Last).Value.Estimate.Thousandths, count)];
        DueStatus[] statuses = new DueStatus[count];
        prepared.CopyTo(codes, days, hours);
        DueColumns.Evaluate(Limits, codes, days, hours, now, random.Last, statuses);
        Assert.Equal(log.DueList(RandomHistory.Specification, random.Last).Tasks.Select(task => task.Status), statuses);
    }
}
