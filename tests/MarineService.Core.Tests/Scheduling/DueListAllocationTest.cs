using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

public sealed class DueListAllocationTest
{
    [Fact]
    public void Evaluate_PerTask_AllocatesTheResultAndItsSlotOnly()
    {
        LocalDate start = new(2020, 1, 1);
        ServiceHistory history = ServiceHistory.Of(
            HourMeter.Plain,
            Enumerable.Range(0, 300).Select(i => (ServiceFact)Completion.Of($"task-{i % 40}", start.PlusDays(i * 5), EngineHours.FromHours(i * 4))),
            start.PlusDays(1500));
        TaskPlan forty = Plan(40);
        TaskPlan eighty = Plan(80);
        long perTask = (Bytes(eighty, history) - Bytes(forty, history)) / 40;

        long result = ObjectSize(forty, history) + IntPtr.Size;
        Assert.Equal(result, perTask);
        Assert.Equal(Bytes(eighty, history), Bytes(eighty, history));
    }

    private static long ObjectSize(TaskPlan plan, ServiceHistory history)
    {
        TaskState state = default;
        TaskVerdict verdict = default;
        return Allocation.Of(() => GC.KeepAlive(new TaskDue(plan.Tasks[0], "main", in state, history, in verdict)));
    }

    private static TaskPlan Plan(int tasks) =>
        TaskPlan.Of(Enumerable.Range(0, tasks).Select(i => ServiceTask.Replace($"task-{i}", RandomHistory.Both(100, 12))));

    private static long Bytes(TaskPlan plan, ServiceHistory history) => Allocation.Of(() => DueList.Evaluate(plan, history));
}
