using MarineService.Core.Fleet;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Core.Tests.Scheduling;

namespace MarineService.Core.Tests.Fleet;

public sealed class FleetEvaluationTest
{
    [Fact]
    public void Result_OfEachEngine_IsItsDueList()
    {
        foreach (int number in Enumerable.Range(1, 50))
        {
            FleetEngine engine = RandomFleet.Engine(number);
            FleetResult result = RandomFleet.Evaluation.Evaluate(engine);
            EngineSpecification sheet = RandomFleet.Evaluation.Catalogue.Find(engine.Specification)!.Specification;
            DueList due = engine.Log.DueList(sheet, RandomFleet.Today);
            Assert.Equal(due.Tasks.Select(task => (task.TaskId, task.Status, task.Governs, task.Due.Date, task.Due.Hours)), result.Tasks.Select(task => (task.TaskId, task.Status, task.Governs, task.DueDate, task.DueHours)));
            Assert.Equal(due.Tasks.Max(task => task.Status), result.MostUrgent);
        }
    }

    [Fact]
    public void Engine_OfAnUnknownDataSheet_IsRefused_AndStopsNobodyElse()
    {
        FleetResult result = RandomFleet.Evaluation.Evaluate(FleetEngine.Of("E-1", "nobody's", ServiceLog.Empty, "north"));
        Assert.False(result.IsEvaluated);
        Assert.Equal("/specification", Assert.Single(result.Faults).Place);
        Assert.Equal("E-1", result.EngineId);
        Assert.Empty(result.Tasks);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    public async Task Results_AreInTheOrderOfTheEngines_OnAnyNumberOfWorkers(int workers)
    {
        int number = 0;
        await foreach (FleetResult result in RandomFleet.Evaluation.EvaluateAsync(Engines(200), workers, TestContext.Current.CancellationToken))
        {
            Assert.Equal($"E-{++number}", result.EngineId);
        }

        Assert.Equal(200, number);
    }

    [Fact]
    public async Task Work_ThatIsCancelled_Stops()
    {
        using CancellationTokenSource cancel = new();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () =>
        {
            await foreach (FleetResult result in RandomFleet.Evaluation.EvaluateAsync(Engines(1_000_000), 2, cancel.Token))
            {
                await cancel.CancelAsync();
            }
        });
    }

    [Fact]
    public void Part_OfATaskThatIsNotThere_IsRefused() =>
        Assert.Equal("parts", Assert.Throws<ArgumentException>(() => FleetSpecification.Of("x", RandomHistory.Specification, PartNeed.Of("nothing", "part"))).ParamName);

    [Fact]
    public void Reference_UsedTwice_IsRefused() => Assert.Equal(
        "specifications",
        Assert.Throws<ArgumentException>(() => FleetCatalogue.Of(FleetSpecification.Of("x", RandomHistory.Specification), FleetSpecification.Of("x", RandomHistory.Specification))).ParamName);

    private static async IAsyncEnumerable<FleetEngine> Engines(int count)
    {
        for (int number = 1; number <= count; number++)
        {
            yield return RandomFleet.Engine(number);
            await Task.Yield();
        }
    }
}
