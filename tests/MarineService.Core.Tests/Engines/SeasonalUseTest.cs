using System.Globalization;
using MarineService.Core.Engines;
using MarineService.Core.Internal;
using MarineService.Core.Tests.Reference;
using MathNet.Numerics.Statistics;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Tests.Engines;

public sealed class SeasonalUseTest
{
    private static readonly EngineHours Due = EngineHours.FromHours(462.5m);

    private static readonly MeterReading[] Readings =
        [.. ReferenceTable.Read("use-forecast-readings.csv").Select(row => Read(LocalDatePattern.Iso.Parse(row["date"]).Value, (decimal)row.Number("hours")))];

    private static readonly SeasonalUse Example = Of(Readings);

    [Fact]
    public void WorkedExample_ByEachMethod_GivesItsDateAndSlope()
    {
        DateForecast forecast = Example.DateReaching(Due).Value;
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("use-forecast-checks.csv"))
        {
            LocalDate expected = LocalDatePattern.Iso.Parse(row["date"]).Value;
            UseMethod method = Enum.Parse<UseMethod>(row["method"]);
            if (row["year"].Length > 0)
            {
                int year = int.Parse(row["year"], CultureInfo.InvariantCulture);
                Assert.Equal(expected, forecast.BySeason.Single(season => season.Year == year).Date);
            }
            else
            {
                Assert.Equal(expected, Example.DateReaching(Due, method).Value);
            }

            if (row.NumberOrNull("slope") is double slope)
            {
                Assert.Equal(slope, Example.SlopePerDay(method)!.Value, 4);
            }
        }
    }

    [Fact]
    public void WorkedExample_OfEachMonth_GivesItsRate_AndTheYear()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("use-forecast-months.csv"))
        {
            Assert.Equal((decimal)row.Number("hours_per_day"), Example.Months[(int)row.Number("month") - 1].HoursPerDay.ToHours());
        }

        Assert.Equal(98.5m, decimal.Round(Example.HoursPerYear!.Value.ToHours(), 1));
        Assert.All(Example.Seasons, season => Assert.True(season.IsComplete, season.ToString()));
    }

    [Fact]
    public void WorkedExample_Answer_IsARangeWithItsCoverageAndBasis()
    {
        DateForecast forecast = Example.DateReaching(Due).Value;
        Assert.Equal("462.5 h about 2024-08-20, 2024-08-20 to 2024-08-26", forecast.ToString());
        Assert.Equal(0.5, forecast.CoverageFraction);
        Assert.Equal(ForecastBasis.PastSeasons, forecast.Basis);
        Assert.Equal(new LocalDate(2024, 8, 26), forecast.MedianOfSeasons);
        string why = forecast.Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("2024-06-05 by the mean rate", why, StringComparison.Ordinal);
        Assert.Contains("50 of 100 cases", why, StringComparison.Ordinal);
    }

    [Fact]
    public void LayUp_ToCome_CarriesNoHours()
    {
        LayUpPeriod[] layUps = [LayUpPeriod.Of(new(2023, 10, 21), new LocalDate(2024, 6, 1))];
        SeasonalUse use = Of(Readings, layUps);
        Assert.Equal(
            use.HoursOn(new LocalDate(2023, 10, 20)).Value.Expected, use.HoursOn(new LocalDate(2024, 5, 31)).Value.Expected);
        Assert.True(use.DateReaching(Due).Value.Expected > Example.DateReaching(Due).Value.Expected);
    }

    [Fact]
    public void LayUp_InThePast_TakesNoShareOfAGain()
    {
        LayUpPeriod[] layUps = [LayUpPeriod.Of(new(2022, 10, 23), new LocalDate(2023, 4, 15))];
        SeasonalUse use = Of(Readings, layUps);
        Assert.Equal(EngineHours.FromHours(290.5m), use.HoursOn(new LocalDate(2023, 4, 14)).Value.Expected);
        Assert.Equal(EngineHours.FromHours(291m), use.HoursOn(new LocalDate(2023, 4, 22)).Value.Expected);
        // Hours gained though it was laid up all the while: the readings count.
        SeasonalUse ran = Of([Read(new(2023, 1, 1), 10), Read(new(2023, 1, 11), 20)], [LayUpPeriod.Of(new(2022, 12, 1), new LocalDate(2023, 3, 1))]);
        Assert.Equal(EngineHours.FromHours(15m), ran.HoursOn(new LocalDate(2023, 1, 6)).Value.Expected);
    }

    [Fact]
    public void LayUps_BeyondTheRecord_ComeAgainEachYear_AndTheAnswerSaysSo()
    {
        LayUpPeriod[] layUps = [LayUpPeriod.Of(new(2022, 10, 23), new LocalDate(2023, 4, 15))];
        SeasonalUse use = Of(Readings, layUps);
        Assert.Equal(use.HoursOn(new LocalDate(2024, 10, 22)).Value.Expected, use.HoursOn(new LocalDate(2025, 4, 14)).Value.Expected);
        Assert.Contains("assumed to come again", use.DateReaching(EngineHours.FromHours(500m)).Value.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void DeclaredPlan_Overrides_AndCountsWhatWasRunAlready()
    {
        PlannedUse plan = PlannedUse.Between(new(2024, 4, 1), new(2024, 10, 31), EngineHours.FromHours(200m));
        SeasonalUse use = SeasonalUse.Of(History(Readings), [], [plan], new(2023, 10, 15));
        decimal before = use.HoursOn(new LocalDate(2024, 3, 31)).Value.Expected.ToHours();
        HoursForecast after = use.HoursOn(new LocalDate(2024, 10, 31)).Value;
        Assert.Equal(before + 200m, after.Expected.ToHours(), 2);
        Assert.True(after.RestsOnPlan);
        Assert.True(use.DateReaching(Due).Value.Expected < Example.DateReaching(Due).Value.Expected);

        // 40 h of it are on the meter by July: 160 h remain.
        SeasonalUse later = SeasonalUse.Of(
            History([.. Readings, Read(new(2024, 4, 1), 390), Read(new(2024, 7, 1), 430)]), [], [plan], new(2024, 7, 1));
        Assert.InRange(later.HoursOn(new LocalDate(2024, 10, 31)).Value.Expected.ToHours(), 589.0m, 590.1m);
    }

    [Fact]
    public void PlanOfOutings_IsTheirHours() =>
        Assert.Equal(EngineHours.FromHours(45m), PlannedUse.OfOutings(new(2027, 4, 1), new(2027, 9, 30), 30, EngineHours.FromHours(1.5m)).Hours);

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, false)]
    public void FewReadings_AreSaidToBeMissing(int count, bool known)
    {
        SeasonalUse use = Of([.. Readings.Take(count)]);
        Assert.Equal(known, use.DateReaching(Due).IsKnown);
        Assert.False(use.HoursOn(new LocalDate(2024, 1, 1)).IsKnown);
        Assert.False(use.DateReaching(Due, UseMethod.MeanRate).IsKnown);
    }

    [Fact]
    public void LessThanASeason_IsTheMeanRate_AndSaysSo()
    {
        SeasonalUse use = Of([.. Readings.Take(4)]);
        Assert.Equal(ForecastBasis.MeanRate, use.Basis);
        DateForecast forecast = use.DateReaching(EngineHours.FromHours(200m)).Value;
        Assert.Null(forecast.CoverageFraction);
        Assert.Equal(use.DateReaching(EngineHours.FromHours(200m), UseMethod.MeanRate).Value, forecast.Expected);
        Assert.Contains("winter counts like summer", forecast.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void OneSeason_HasNoRange_AndSaysSo()
    {
        SeasonalUse use = Of([.. Readings.Take(6)]);
        Assert.Equal(ForecastBasis.OneSeason, use.Basis);
        DateForecast forecast = use.DateReaching(EngineHours.FromHours(230m)).Value;
        Assert.Null(forecast.CoverageFraction);
        Assert.Contains("no range", forecast.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void IdleEngine_NeverGetsThere()
    {
        SeasonalUse use = Of([Read(new(2020, 1, 1), 50), Read(new(2023, 1, 1), 50)]);
        DateForecast forecast = use.DateReaching(EngineHours.FromHours(60m)).Value;
        Assert.Null(forecast.Expected);
        Assert.Null(forecast.MedianOfSeasons);
        Assert.Equal("60.0 h not within ten years", forecast.ToString());
    }

    [Law]
    public void Forecast_NeverPrecedesTheLastReading_AndGrowsWithTheHours(int seed)
    {
        MeterReading[] readings = RandomReadings(seed);
        SeasonalUse use = Of(readings);
        LocalDate last = readings[^1].Date;
        LocalDate? earlier = null;
        for (decimal more = -5; more <= 200; more += 13.7m)
        {
            DateForecast forecast = use.DateReaching(EngineHours.FromHours(Math.Max(0, readings[^1].Shown.ToHours() + more))).Value;
            Assert.True(forecast.Expected is null || forecast.Expected >= last);
            Assert.True(forecast.Earliest is null || forecast.Earliest >= last);
            Assert.True(forecast.Latest is null || (forecast.Earliest <= forecast.Expected && forecast.Expected <= forecast.Latest));
            Assert.True(earlier is null || forecast.Expected is null || forecast.Expected >= earlier);
            earlier = forecast.Expected ?? earlier;
        }
    }

    [Law]
    public void LaterReading_NeverMovesThePast(int seed)
    {
        MeterReading[] readings = RandomReadings(seed);
        SeasonalUse all = Of(readings);
        SeasonalUse fewer = Of(readings[..^1]);
        LocalDate last = readings[^2].Date;
        for (LocalDate day = readings[0].Date; day <= last; day = day.PlusDays(11))
        {
            Assert.Equal(fewer.HoursOn(day).Value.ToString(), all.HoursOn(day).Value.ToString());
        }
    }

    [Law]
    public void HoursOnTheDateReached_AreTheHours(int seed)
    {
        MeterReading[] readings = RandomReadings(seed);
        SeasonalUse use = Of(readings);
        EngineHours hours = EngineHours.FromHours(readings[^1].Shown.ToHours() + 40m);
        if (use.Basis != ForecastBasis.MeanRate && use.DateReaching(hours).Value.Expected is LocalDate date && date < readings[^1].Date.PlusDays(3600))
        {
            Assert.True(use.HoursOn(date).Value.Expected >= hours);
            Assert.True(use.HoursOn(date.PlusDays(-1)).Value.Expected <= hours);
        }
    }

    [Law]
    public void Quantile_IsThatOfTheLibrary(double[] values, byte at)
    {
        double[] sorted = [.. values.Where(value => double.IsFinite(value) && Math.Abs(value) < 1e6).Append(3.5).Order()];
        double fraction = at / 255.0;
        Assert.Equal(SortedArrayStatistics.QuantileCustom(sorted, fraction, QuantileDefinition.R7), QuantileMath.Type7(sorted, fraction), 1e-6);
    }

    [Fact]
    public void BadArguments_AreRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("missingLimitFraction", () => SeasonalUse.Of(History(Readings), [], [], new(2024, 1, 1), double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("hours", () => PlannedUse.Between(new(2024, 1, 1), new(2024, 1, 1), EngineHours.FromHours(25m)));
        Assert.Throws<ArgumentOutOfRangeException>("to", () => PlannedUse.Between(new(2024, 1, 2), new(2024, 1, 1), default));
        Assert.Throws<ArgumentOutOfRangeException>("outings", () => PlannedUse.OfOutings(new(2024, 1, 1), new(2024, 1, 2), -1, default));
    }

    internal static MeterHistory History(IEnumerable<MeterReading> readings) => MeterHistory.Of(HourMeter.Plain, readings, []);

    private static SeasonalUse Of(MeterReading[] readings, params LayUpPeriod[] layUps) =>
        SeasonalUse.Of(History(readings), layUps, [], readings.Length == 0 ? new(2024, 1, 1) : readings[^1].Date);

    private static MeterReading Read(LocalDate date, decimal hours) => MeterReading.Of(date, EngineHours.FromHours(hours));

    private static MeterReading[] RandomReadings(int seed)
    {
        Random random = new(seed);
        List<MeterReading> readings = [];
        LocalDate date = new(2018, 3, 1);
        decimal hours = 10;
        int count = 3 + random.Next(30);
        for (int i = 0; i < count; i++)
        {
            readings.Add(Read(date, hours));
            int days = 1 + random.Next(70);
            hours += date.Month is >= 5 and <= 9 ? Math.Round((decimal)random.NextDouble() * days, 1) : 0;
            date = date.PlusDays(days);
        }

        return [.. readings];
    }
}
