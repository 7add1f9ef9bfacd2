using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>The order of entry does not matter: not even between entries of one day.</summary>
public sealed class OrderOfEntryTest
{
    private static readonly LocalDate Day = new(2024, 5, 1);

    [Law]
    public void DueList_OfCrowdedDays_IsTheSameInEveryOrder(int seed)
    {
        Random random = new(seed);
        ServiceFact[] facts = [.. Enumerable.Range(0, random.Next(4, 16)).Select(_ => Crowded(random))];
        string[] expected = RandomHistory.Lines(RandomHistory.List(facts, Day.PlusDays(9)));
        for (int i = 0; i < 4; i++)
        {
            random.Shuffle(facts);
            Assert.Equal(expected, RandomHistory.Lines(RandomHistory.List(facts, Day.PlusDays(9))));
        }
    }

    [Fact]
    public void MeterChanges_OfOneDayWithEqualEnds_CountTheSameInEitherOrder() => Same(
        MeterReading.Of(Day.PlusDays(-9), Hours(490)),
        MeterChange.Of(Day, Hours(500), Hours(100)),
        MeterChange.Of(Day, Hours(500), Hours(0), Hours(2)),
        MeterReading.Of(Day.PlusDays(5), Hours(103)));

    [Fact]
    public void MeterChange_EnteredTwice_CountsOnceAndIsNoted()
    {
        MeterChange change = MeterChange.Of(Day, Hours(500), Hours(0), Hours(14));
        MeterHistory meter = MeterHistory.Of(
            HourMeter.Plain, [MeterReading.Of(Day.PlusDays(-9), Hours(490)), MeterReading.Of(Day.PlusDays(5), Hours(6))], [change, MeterChange.Of(Day, Hours(500), Hours(0), Hours(14))]);
        Assert.Equal(Hours(520), meter.HoursOn(Day.PlusDays(5)).Value.Estimate);
        Finding twice = Assert.Single(meter.Findings, finding => finding.Rule == EngineRules.ChangeEnteredTwice);
        Assert.Contains("2024-05-01", twice.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Rebuilds_OfOneDayWithDifferentZeros_CountFromTheSmaller()
    {
        ServiceFact[] facts = [EnteredService.AfterRebuild(Day, Hours(900)), EnteredService.AfterRebuild(Day, Hours(880)), MeterReading.Of(Day, Hours(900))];
        Same(facts);
        Assert.Equal(Hours(900), RandomHistory.List(facts, Day)["oil"].Due.Hours);
    }

    [Fact]
    public void Twins_ThatDifferInUncertaintyAlone_CountOnceWithTheLargerOne()
    {
        ServiceFact[] facts =
        [
            Completion.Partial("replace", Day, Hours(500), 0.93m, 0.001m),
            Completion.Partial("replace", Day, Hours(500), 0.93m, 0.02m),
            Completion.Partial("replace", Day, Hours(500), 0.93m),
        ];
        Same(facts);
        Assert.Contains(RandomHistory.List(facts, Day).Findings, finding => finding.Rule == SchedulingRules.FractionInsideNoise);
    }

    [Fact]
    public void Reading_TakenTwiceOnOneDay_CountsAsTheBetterOne()
    {
        MeterHistory meter = MeterHistory.Of(
            HourMeter.Plain, [MeterReading.Of(Day, Hours(500), ReadingSource.Estimate), MeterReading.Of(Day, Hours(500))], []);
        Assert.Equal(ReadingQuality.Measured, meter.HoursOn(Day).Value.Quality);
    }

    private static void Same(params ServiceFact[] facts) => Assert.Equal(
        RandomHistory.Lines(RandomHistory.List(facts, Day.PlusDays(9))),
        RandomHistory.Lines(RandomHistory.List(facts.Reverse(), Day.PlusDays(9))));

    // Few days, few values: entries meet on the same day at the same hours.
    private static ServiceFact Crowded(Random random)
    {
        LocalDate date = Day.PlusDays(random.Next(3));
        EngineHours dial = Hours(500 + (10 * random.Next(2)));
        EngineHours? read = random.Next(3) == 0 ? null : dial;
        string task = RandomHistory.Specification.Tasks[random.Next(RandomHistory.Specification.Tasks.Count)].Id;
        return random.Next(11) switch
        {
            0 => MeterReading.Of(date, dial, (ReadingSource)random.Next(3)),
            1 => MeterChange.Of(date, read, Hours(random.Next(2) * 100), Hours(random.Next(2)), random.Next(2) == 0 ? null : date, random.Next(2) == 0 ? null : HourMeter.Of(Hours(random.Next(1, 3) * 1000))),
            2 => EnteredService.AfterRebuild(date, Hours(random.Next(3) * 250), read),
            3 => random.Next(2) == 0 ? EnteredService.New(date, read) : GridOrigin.Of(date, task),
            4 => OpeningDuePoint.Of(date, task, date.PlusDays(random.Next(3)), random.Next(2) == 0 ? null : Hours(520)),
            5 => ServiceEvent.Of("overheat", date, read),
            6 => DutyChange.Of(date, random.Next(2) == 0 ? [] : ["salt"], read),
            7 => random.Next(2) == 0 ? LaidUp.On(date, read) : Commissioned.On(date, read),
            8 => random.Next(2) == 0 ? Completion.Failed("inspect", date, read) : Completion.Passed("inspect", date, read),
            9 => Completion.Partial(task, date, read, random.Next(2) == 0 ? 0.6m : 1m, random.Next(3) switch { 0 => null, 1 => 0.01m, _ => 0.3m }),
            _ => Completion.Of(task, date, read),
        };
    }

    private static EngineHours Hours(int hours) => EngineHours.FromHours(hours);
}
