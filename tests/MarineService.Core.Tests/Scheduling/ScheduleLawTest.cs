using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Laws that hold on every history.</summary>
public sealed class ScheduleLawTest
{
    [Law]
    public void DueList_OfFactsInAnyOrder_IsTheSame(int seed)
    {
        RandomHistory history = new(seed);
        Assert.Equal(
            RandomHistory.Lines(RandomHistory.List(history.Facts, history.Last)),
            RandomHistory.Lines(RandomHistory.List(history.Shuffled(), history.Last)));
    }

    [Law]
    public void DueTask_AsTodayMovesOn_StaysDue(int seed)
    {
        RandomHistory history = new(seed);
        LocalDate today = history.Last;
        DueList before = RandomHistory.List(history.Facts, today);
        foreach (int days in new[] { 1, 2, 30, 400 })
        {
            DueList after = RandomHistory.List(history.Facts, today.PlusDays(days));
            foreach (TaskDue task in before.Tasks.Where(task => task.Status >= DueStatus.Due))
            {
                Assert.True(after[task.TaskId].Status >= task.Status, $"{task}, {days} days later {after[task.TaskId]}");
            }

            before = after;
        }
    }

    [Law]
    public void Task_WithMoreHoursRead_IsNeverLessUrgent(int seed)
    {
        RandomHistory history = new(seed);
        LocalDate today = history.Last.PlusDays(20);
        DueStatus[] least = new DueStatus[RandomHistory.Specification.Tasks.Count];
        foreach (int more in new[] { 0, 1_000, 40_000, 90_000, 300_000 })
        {
            MeterReading reading = MeterReading.Of(today, EngineHours.FromHours((history.LastDial + more) / 1000m));
            DueList list = RandomHistory.List([.. history.Facts, reading], today);
            for (int i = 0; i < least.Length; i++)
            {
                Assert.True(list.Tasks[i].Status >= least[i], list.Tasks[i].ToString());
                least[i] = list.Tasks[i].Status;
            }
        }
    }

    [Law]
    public void CorrectedLog_GivesTheListOfOneWrittenRight(int seed)
    {
        RandomHistory history = new(seed);
        ServiceFact right = history.OneOf(history.Facts);
        ServiceFact[] others = [.. history.Facts.Where(fact => fact != right)];
        ServiceFact wrong = Completion.Of("replace", history.Last.PlusDays(-40));
        LogEntry[] entries = [.. others.Select(LogEntry.Of), LogEntry.Of(wrong).WithId("wrong")];
        Assert.Equal(
            RandomHistory.Lines(RandomHistory.List(history.Facts, history.Last)),
            RandomHistory.Lines(ServiceLog.Of([.. entries, LogEntry.Of(right).Correcting("wrong")]).DueList(RandomHistory.Specification, history.Last)));
        Assert.Equal(
            RandomHistory.Lines(RandomHistory.List(others, history.Last)),
            RandomHistory.Lines(ServiceLog.Of([.. entries, LogEntry.Withdrawing("wrong", history.Last)]).DueList(RandomHistory.Specification, history.Last)));
    }

    [Law]
    public void Completion_EnteredTwice_MovesNoDuePoint(int seed)
    {
        RandomHistory history = new(seed);
        ServiceFact[] completions = [.. history.Facts.Where(fact => fact is Completion)];
        ServiceFact again = history.OneOf(completions);
        Assert.Equal(
            RandomHistory.List(history.Facts, history.Last).Tasks.Select(task => task.ToString()),
            RandomHistory.List([.. history.Facts, again], history.Last).Tasks.Select(task => task.ToString()));
    }

    [Law]
    public void Task_Added_ChangesNoOther(int seed)
    {
        RandomHistory history = new(seed);
        DueList alone = RandomHistory.List(history.Facts, history.Last);
        ServiceTask added = ServiceTask.Replace("added", RandomHistory.Both(10, 1)).DueAfterEvents("overheat");
        DueList more = ServiceLog.Of(history.Facts.Select(LogEntry.Of)).DueList(RandomHistory.Specification.With(added), history.Last);
        Assert.Equal(RandomHistory.Lines(alone)[..alone.Tasks.Count], RandomHistory.Lines(more)[..alone.Tasks.Count]);
    }

    [Law]
    public void PassedInspection_OrLowerService_NeverMovesTheHigherTask(int seed)
    {
        RandomHistory history = new(seed);
        DueList before = RandomHistory.List(history.Facts, history.Last);
        DueList after = RandomHistory.List(
            [.. history.Facts, Completion.Passed("inspect", history.Last), Completion.Of("minor", history.Last), Completion.Of("charged", history.Last)],
            history.Last);
        Assert.Equal(before["replace"].ToString(), after["replace"].ToString());
        Assert.Equal(before["major"].ToString(), after["major"].ToString());
    }

    [Law]
    public void DuePoint_IsNeverLaterThanEitherLimbAlone(int seed)
    {
        RandomHistory history = new(seed);
        DueList list = RandomHistory.List(history.Facts, history.Last);
        foreach (ServiceInterval limb in new[] { ServiceInterval.OfHours(EngineHours.FromHours(80m)), ServiceInterval.OfMonths(7) })
        {
            ServiceTask alone = ServiceTask.Replace("snapped", limb).WithAnchorPolicy(AnchorPolicy.SnapWithinWindow);
            TaskDue one = ServiceLog.Of(history.Facts.Select(LogEntry.Of))
                .DueList(EngineSpecification.Named("Corrie 60P").With(alone), history.Last)["snapped"];
            Assert.True(list["snapped"].Status >= one.Status, $"{list["snapped"]} against {one}");
        }
    }

    [Law]
    public void Hours_OnEveryDay_LieBetweenTheirBounds_AndNeverFall(int seed)
    {
        RandomHistory history = new(seed);
        MeterHistory meter = ServiceLog.Of(history.Facts.Select(LogEntry.Of)).History(RandomHistory.Specification, history.Last).Meter;
        EngineHours last = EngineHours.Zero;
        for (LocalDate day = new(2018, 1, 1); day <= history.Last.PlusDays(60); day = day.PlusDays(1))
        {
            if (meter.FindHoursOn(Core.Internal.CalendarDay.Of(day)) is HoursEstimate hours)
            {
                Assert.True(hours.Lower <= hours.Estimate && hours.Estimate <= hours.Upper, hours.ToString());
                Assert.True(hours.Estimate >= last, hours.ToString());
                last = hours.Estimate;
            }
        }
    }
}
