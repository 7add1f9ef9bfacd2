using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Lay-up and commissioning work through two winters, day by day: the table names every day on which a status begins.</summary>
public sealed class LayUpCycleTest
{
    [Theory]
    [InlineData("drain", "2023-05-01 NotDue, 2023-09-01 DueSoon, 2023-10-01 NotDue, 2024-09-01 DueSoon, 2024-10-01 Due, 2024-10-02 Overdue, 2024-10-05 NotDue")]
    [InlineData("impeller", "2023-05-01 NotDue, 2024-03-16 DueSoon, 2024-04-15 Due, 2024-04-16 Overdue, 2024-04-18 NotDue, 2025-03-16 DueSoon, 2025-04-10 NotDue")]
    public void LayUpTask_ThroughTwoWinters_ChangesOnTheseDays(string task, string expected)
    {
        TaskPlan plan = TaskPlan.Of([ServiceTask.AtLayUp("drain"), ServiceTask.AtCommissioning("impeller")]);
        ServiceFact[] facts =
        [
            PlannedLayUp.Between(new(2023, 10, 1), new(2024, 4, 15)),
            PlannedLayUp.Between(new(2024, 10, 1), new(2025, 4, 15)),
            Completion.Of("drain", new(2023, 10, 1)),
            Completion.Passed("impeller", new(2024, 4, 18)),
            Completion.Of("drain", new(2024, 10, 5)),
            Completion.Passed("impeller", new(2025, 4, 10)),
        ];
        List<string> changes = [];
        DueStatus? last = null;
        for (LocalDate day = new(2023, 5, 1); day < new LocalDate(2025, 6, 1); day = day.PlusDays(1))
        {
            DueStatus status = DueList.Evaluate(plan, ServiceHistory.Of(HourMeter.Plain, facts, day))[task].Status;
            if (status != last)
            {
                changes.Add($"{day.ToString("uuuu-MM-dd", null)} {status}");
                last = status;
            }
        }

        Assert.Equal(expected, string.Join(", ", changes));
    }

    [Theory]
    [InlineData(0, DueStatus.Due)]
    [InlineData(1, DueStatus.NotDue)]
    public void CommissioningTask_DoneOnTheLayUpDay_IsStillToDo(int daysAfter, DueStatus status)
    {
        ServiceHistory history = ServiceHistory.Of(
            HourMeter.Plain,
            [LaidUp.On(new(2023, 10, 1)), Completion.Passed("first-run", new LocalDate(2023, 10, 1).PlusDays(daysAfter)), Commissioned.On(new(2024, 4, 15))],
            new(2024, 4, 15));
        Assert.Equal(status, DueList.Evaluate(TaskPlan.Of([ServiceTask.AtCommissioning("first-run")]), history)["first-run"].Status);
    }

    [Fact]
    public void CommissioningTask_OfALayUpThatEndedOnItsFirstDay_IsDoneOnThatDay()
    {
        LocalDate day = new(2023, 10, 1);
        ServiceHistory history = ServiceHistory.Of(HourMeter.Plain, [LaidUp.On(day), Commissioned.On(day), Completion.Passed("first-run", day)], day);
        Assert.Equal(DueStatus.NotDue, DueList.Evaluate(TaskPlan.Of([ServiceTask.AtCommissioning("first-run")]), history)["first-run"].Status);
    }
}
