using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Tests.Fleet;

public sealed class FleetSummaryTest
{
    private const int Engines = 300;

    private static readonly FleetResult[] Results = [.. Enumerable.Range(1, Engines).Select(number => RandomFleet.Evaluation.Evaluate(RandomFleet.Engine(number)))];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(64)]
    public void Partitions_ShuffledAndMerged_GiveTheSameBytes(int partitions)
    {
        Random random = new(partitions);
        FleetSummary[] parts =
        [
            .. Results
                .OrderBy(_ => random.Next())
                .GroupBy(result => PartitionKey.Of(result.EngineId!, partitions))
                .OrderBy(_ => random.Next())
                .Select(group => Count(group)),
        ];
        Assert.Equal(FleetSummaryJson.ToText(Count(Results)), FleetSummaryJson.ToText(parts.Aggregate(FleetSummary.Empty, (sum, part) => part.Merge(sum))));
    }

    [Law(MaxTest = 50)]
    public void Merge_IsAssociativeAndCommutative(int seed)
    {
        Random random = new(seed);
        FleetSummary[] three = [.. Enumerable.Range(0, 3).Select(_ => Count(Results.Where(_ => random.Next(3) == 0)))];
        string one = FleetSummaryJson.ToText(three[0].Merge(three[1]).Merge(three[2]));
        Assert.Equal(one, FleetSummaryJson.ToText(three[0].Merge(three[1].Merge(three[2]))));
        Assert.Equal(one, FleetSummaryJson.ToText(three[2].Merge(three[1]).Merge(three[0])));
    }

    [Fact]
    public void Result_TakenBackAndAddedAgain_ChangesNothing()
    {
        FleetTally tally = new();
        tally.Add(Count(Results));
        string before = FleetSummaryJson.ToText(tally.ToSummary());
        tally.TakeBack(Results[17]);
        Assert.NotEqual(before, FleetSummaryJson.ToText(tally.ToSummary()));
        tally.Add(Results[17]);
        Assert.Equal(before, FleetSummaryJson.ToText(tally.ToSummary()));
        foreach (FleetResult result in Results)
        {
            tally.TakeBack(result);
        }

        Assert.Equal(FleetSummaryJson.ToText(FleetSummary.Empty), FleetSummaryJson.ToText(tally.ToSummary()));
    }

    [Fact]
    public void Summary_CountsWhatThePartsOfEachResultSay()
    {
        FleetSummary summary = Count(Results);
        Assert.Equal(Engines, summary.Engines);
        Assert.Equal(0, summary.Refused);
        Assert.Equal(Results.SelectMany(result => result.Tasks).Count(task => task.Status == DueStatus.Overdue), summary.TasksThatAre(DueStatus.Overdue));
        Assert.Equal(Results.SelectMany(result => result.Tasks).Min(task => task.DueDate), summary.EarliestDue.Value);
        Assert.Equal(Results.SelectMany(result => result.Parts).Sum(part => part.Quantity), summary.Parts.Sum(part => part.Quantity));
        Assert.All(summary.Parts.Where(part => part.Week is not null), part => Assert.Equal(NodaTime.IsoDayOfWeek.Monday, part.Week!.Value.DayOfWeek));
        Assert.False(FleetSummary.Empty.EarliestDue.IsKnown);
    }

    private static FleetSummary Count(IEnumerable<FleetResult> results)
    {
        FleetTally tally = new();
        foreach (FleetResult result in results)
        {
            tally.Add(result);
        }

        return tally.ToSummary();
    }
}
