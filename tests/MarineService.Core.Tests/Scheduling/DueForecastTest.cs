using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>When tasks are expected to fall due. The dates of the worked example were worked out independently.</summary>
public sealed class DueForecastTest
{
    private static readonly LocalDate Today = new(2023, 10, 15);

    private static readonly ServiceFact[] Readings =
    [
        Read(2021, 4, 20, 100.0m), Read(2021, 6, 13, 121.5m), Read(2021, 8, 2, 158.0m), Read(2021, 9, 26, 189.5m), Read(2021, 10, 30, 197.0m),
        Read(2022, 4, 16, 197.0m), Read(2022, 6, 5, 214.0m), Read(2022, 7, 24, 246.5m), Read(2022, 9, 11, 281.0m), Read(2022, 10, 22, 290.5m),
        Read(2023, 4, 22, 291.0m), Read(2023, 6, 18, 315.0m), Completion.Of("oil", new(2023, 8, 13), EngineHours.FromHours(362.5m)), Read(2023, 10, 15, 388.0m),
    ];

    /// <summary>Worked example: due 2024-08-13 by calendar, the hours close behind, 20 to 26 August if next season is like the last three.</summary>
    [Fact]
    public void WorkedExample_IsDueByCalendar_WithTheHoursCloseBehind()
    {
        DueForecast forecast = Of(ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12), Readings);
        Assert.Equal(new LocalDate(2024, 8, 13), forecast.Expected);
        Assert.Equal(GoverningLimb.Calendar, forecast.Governs);
        Assert.Equal(new LocalDate(2024, 8, 20), forecast.Hours.Value.Earliest);
        Assert.Equal(new LocalDate(2024, 8, 26), forecast.Hours.Value.Latest);
        Assert.Equal((forecast.Expected, forecast.Expected), (forecast.Earliest, forecast.Latest));
        Assert.Equal(0, forecast.SeasonsByHours);
        Assert.Equal("expected 2024-08-13 by calendar; by hours 2024-08-20 to 2024-08-26", forecast.ToString());
        Assert.False(forecast.ReadAgain().IsKnown);
    }

    /// <summary>The same hours without a calendar limb: the range of three seasons holds in half of the cases.</summary>
    [Fact]
    public void HoursAlone_GiveTheRangeOfTheSeasons_AndHowOftenItHolds()
    {
        DueForecast forecast = Of(ServiceInterval.OfHours(EngineHours.FromHours(100m)), Readings);
        Assert.Equal(GoverningLimb.Hours, forecast.Governs);
        Assert.Equal((new LocalDate(2024, 8, 20), new LocalDate(2024, 8, 20), new LocalDate(2024, 8, 26)), (forecast.Expected, forecast.Earliest, forecast.Latest));
        Assert.Equal(3, forecast.SeasonsByHours);
        Assert.Equal(0.5, forecast.CoverageFraction);
        string why = forecast.Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("2024-08-26 if 2021 comes again", why, StringComparison.Ordinal);
        Assert.Contains("in 50 of 100 cases", why, StringComparison.Ordinal);
    }

    /// <summary>
    /// By hand: 1 h a day from May to September in one season, 2 h in the other, so 100 h from the winter on are run 100 or 50 days after
    /// 1 May. Two weeks before the earlier date 45 h of May and 9 h of June are expected; the other 46 h take 46 or 23 days.
    /// </summary>
    [Fact]
    public void Reading_IsAskedForInTime_WithWhatItIsWorth()
    {
        ServiceFact[] facts =
        [
            Read(2021, 5, 1, 0m), Read(2021, 9, 30, 152m), Read(2022, 5, 1, 152m), Read(2022, 9, 30, 456m),
            Completion.Of("oil", new(2022, 12, 31), EngineHours.FromHours(456m)),
        ];
        DueForecast forecast = Due(ServiceInterval.OfHours(EngineHours.FromHours(100m)), facts, new(2023, 1, 2)).Forecast;
        Assert.Equal((new LocalDate(2023, 6, 20), new LocalDate(2023, 8, 9)), (forecast.Earliest, forecast.Latest));
        ReadingAdvice advice = forecast.ReadAgain().Value;
        Assert.Equal(new LocalDate(2023, 6, 6), advice.Date);
        Assert.Equal((50, 23), (advice.RangeDays, advice.RangeDaysAfter));
        Assert.Equal("read the meter again by 2023-06-06: the range shrinks from 50 to 23 days if it shows what is expected", advice.ToString());
        Assert.Equal(new LocalDate(2023, 5, 21), forecast.ReadAgain(30).Value.Date);
    }

    /// <summary>In the worked example the seasons make up for each other: a month ahead, what is left differs as much as the whole.</summary>
    [Fact]
    public void Reading_ThatWouldNotSharpen_IsNotAskedFor() =>
        Assert.Contains("would not change the range", Assert.Single(Of(ServiceInterval.OfHours(EngineHours.FromHours(100m)), Readings).ReadAgain(noticeDays: 30).Missing), StringComparison.Ordinal);

    /// <summary>Plan: 200 h from May to August instead of the usual 85 or so; the 74.5 h that are left run out in the first half of it.</summary>
    [Fact]
    public void DeclaredPlan_OverridesPastSeasons()
    {
        PlannedUse plan = PlannedUse.Between(new(2024, 5, 1), new(2024, 8, 31), EngineHours.FromHours(200m));
        DueForecast forecast = Of(ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12), [.. Readings, plan]);
        Assert.Equal(GoverningLimb.Hours, forecast.Governs);
        Assert.InRange(forecast.Expected!.Value, new LocalDate(2024, 5, 15), new LocalDate(2024, 7, 1));
        Assert.True(forecast.Hours.Value.RestsOnPlan);
        Assert.Equal(3, forecast.SeasonsByHours);
    }

    [Fact]
    public void HoursNotKnown_LeaveTheCalendarAsTheLatest_AndAskForAReading()
    {
        DueForecast forecast = Of(ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12), [Completion.Of("oil", new(2023, 8, 13), null)]);
        Assert.Equal(new LocalDate(2024, 8, 13), forecast.Expected);
        Assert.Null(forecast.Earliest);
        Assert.Equal(GoverningLimb.None, forecast.Governs);
        Assert.Null(forecast.CoverageFraction);
        Assert.NotEmpty(forecast.Missing);
        Assert.Equal(Today, forecast.ReadAgain().Value.Date);
        Assert.EndsWith("at the latest; by hours not known", forecast.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void NoRecord_IsExpectedToday_AndOneReadingStatesNoRange()
    {
        DueForecast none = Of(ServiceInterval.OfMonths(12), []);
        Assert.Equal(Today, none.Expected);
        Assert.Equal(GoverningLimb.UnknownHistory, none.Governs);
        DueForecast thin = Of(
            ServiceInterval.OfHours(EngineHours.FromHours(100m)), [Completion.Of("oil", new(2023, 7, 1), EngineHours.FromHours(10m)), Read(2023, 8, 1, 41m)]);
        Assert.Null(thin.CoverageFraction);
        Assert.Equal(ForecastBasis.MeanRate, thin.Hours.Value.Basis);
        Assert.Contains("too few seasons", thin.ReadAgain().Value.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void DueList_NamesTheReadingThatSharpensMost()
    {
        ServiceFact[] facts =
        [
            Read(2021, 5, 1, 0m), Read(2021, 9, 30, 152m), Read(2022, 5, 1, 152m), Read(2022, 9, 30, 456m),
            Completion.Of("oil", new(2022, 12, 31), EngineHours.FromHours(456m)), Completion.Of("gear", new(2022, 12, 31), EngineHours.FromHours(456m)),
        ];
        TaskPlan plan = TaskPlan.Of(
            [ServiceTask.Replace("gear", ServiceInterval.OfHours(EngineHours.FromHours(60m))), ServiceTask.Replace("oil", ServiceInterval.OfHours(EngineHours.FromHours(100m)))]);
        DueList list = DueList.Evaluate(plan, ServiceHistory.Of(HourMeter.Plain, facts, new(2023, 1, 2)));
        Assert.Equal("oil", list.ReadAgain().Value.Task.TaskId);
        Assert.Throws<ArgumentOutOfRangeException>("noticeDays", () => list.ReadAgain(-1));
    }

    /// <summary>Law: no forecast lies before the last reading unless that shows it reached, the limbs keep their order, and the earliest is never late.</summary>
    [Law]
    public void Forecast_IsInOrder_AndNeverPrecedesTheLastReading(int seed)
    {
        Random random = new(seed);
        ServiceFact[] facts = History(random, out LocalDate last);
        ServiceInterval interval = ServiceInterval.FirstOf(EngineHours.FromHours(20 + random.Next(300)), 1 + random.Next(36));
        TaskDue due = Due(interval, facts, last.PlusDays(random.Next(0, 40)));
        DueForecast forecast = due.Forecast;
        Assert.True(!forecast.Hours.IsKnown || forecast.Hours.Value.Expected is null || forecast.Hours.Value.Expected >= last);
        Assert.True(forecast.Earliest is null || (forecast.Earliest <= forecast.Expected && (forecast.Latest is null || forecast.Expected <= forecast.Latest)));
        Assert.True(forecast.Calendar is null || forecast.Expected <= forecast.Calendar);
        if (forecast.ReadAgain() is { IsKnown: true } advice)
        {
            Assert.True(advice.Value.Date >= last);
            Assert.True(advice.Value.RangeDaysAfter is null || advice.Value.RangeDays is null || advice.Value.RangeDaysAfter < advice.Value.RangeDays);
        }
    }

    /// <summary>Law: what the readings say of a past day does not change when a later reading comes in.</summary>
    [Law]
    public void LaterReading_NeverMovesThePast(int seed)
    {
        Random random = new(seed);
        ServiceFact[] facts = History(random, out LocalDate last);
        EngineHours read = facts[^1].Dial!.Value;
        LocalDate later = last.PlusDays(1 + random.Next(60));
        ServiceFact more = MeterReading.Of(later, EngineHours.FromThousandths(read.Thousandths + random.Next(0, 20_000)));
        SeasonalUse before = ServiceHistory.Of(HourMeter.Plain, facts, last).Use;
        SeasonalUse after = ServiceHistory.Of(HourMeter.Plain, [.. facts, more], later).Use;
        for (LocalDate day = facts[0].Date; day <= last; day = day.PlusDays(7))
        {
            Assert.Equal(before.HoursOn(day).Value.Expected, after.HoursOn(day).Value.Expected);
        }
    }

    private static ServiceFact[] History(Random random, out LocalDate last)
    {
        List<ServiceFact> facts = [];
        LocalDate day = new(2020, 4, 1);
        long hours = 0;
        int count = 3 + random.Next(25);
        for (int i = 0; i < count; i++)
        {
            facts.Add(i == count / 2 ? Completion.Of("oil", day, EngineHours.FromThousandths(hours)) : MeterReading.Of(day, EngineHours.FromThousandths(hours)));
            last = day;
            day = day.PlusDays(1 + random.Next(90));
            hours += random.Next(0, 40_000) % (1 + (Period.DaysBetween(last, day) * 8_000));
        }

        last = facts[^1].Date;
        return [.. facts];
    }

    private static DueForecast Of(ServiceInterval interval, ServiceFact[] facts) => Due(interval, facts, Today).Forecast;

    private static TaskDue Due(ServiceInterval interval, ServiceFact[] facts, LocalDate today) =>
        DueList.Evaluate(TaskPlan.Of([ServiceTask.Replace("oil", interval)]), ServiceHistory.Of(HourMeter.Plain, facts, today))["oil"];

    private static MeterReading Read(int year, int month, int day, decimal hours) => MeterReading.Of(new(year, month, day), EngineHours.FromHours(hours));
}
