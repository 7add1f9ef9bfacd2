using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.LayUp;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.LayUp;

public sealed class FreezeDecisionTest
{
    private static readonly LocalDate From = new(2026, 10, 24);
    private static readonly LocalDate To = new(2027, 4, 15);

    private static SiteMinimum Record(int year, int month, int day, double celsius) =>
        SiteMinimum.Of(new LocalDate(year, month, day), Temperature.FromDegreesCelsius(celsius));

    // One night of each month from October to April of a winter, so that no month lacks a record.
    private static IEnumerable<SiteMinimum> Winter(int year, double celsius) =>
        [Record(year, 10, 28, celsius), Record(year, 11, 28, celsius), Record(year, 12, 28, celsius), .. Enumerable.Range(1, 4).Select(month => Record(year + 1, month, 10, celsius))];

    [Law]
    public Property ForSite_OneMoreRecord_NeverGivesAWarmerWinter() =>
        Prop.ForAll(
            Gen.Choose(0, 364).Zip(Gen.Choose(-300, 150)).ListOf().Zip(Gen.Choose(0, 364).Zip(Gen.Choose(-300, 150))).ToArbitrary(),
            t =>
            {
                (IList<(int Day, int Tenths)> some, (int Day, int Tenths) more) = (t.Item1, t.Item2);
                static SiteMinimum Of((int Day, int Tenths) r) => SiteMinimum.Of(new LocalDate(2019, 7, 1).PlusDays(r.Day), Temperature.FromDegreesCelsius(r.Tenths / 10.0));
                SiteMinimum[] records = [.. Winter(2020, 5), .. some.Select(Of)];
                double before = FreezeDecision.ForSite(From, To, records).Low.Value.DegreesCelsius;
                double after = FreezeDecision.ForSite(From, To, [.. records, Of(more)]).Low.Value.DegreesCelsius;
                return (after <= before).Label($"{before} then {after}");
            });

    [Fact]
    public void ForSite_ColdestNightOnTheDaysOfTheLayUp_LessTheMargin_Decides()
    {
        // The night of 23 October is colder, but the boat is still in commission on that day of the year.
        FreezeDecision decision = FreezeDecision.ForSite(From, To, [.. Winter(2021, 1), Record(2018, 10, 23, -19), Record(2012, 2, 29, -12.5), Record(2015, 4, 15, -18)]);
        Assert.Equal(FreezeVerdict.Protect, decision.Verdict);
        Assert.Equal(-17.5, decision.Low.Value.DegreesCelsius, 1e-9);
        Assert.Equal(new LocalDate(2012, 2, 29), decision.Coldest!.Date);
        Assert.Contains(decision.Findings, finding => finding.Rule == LayUpRules.FewWinters && finding["winters"]!.Number == 2);
    }

    [Theory]
    [InlineData(5.0, FreezeVerdict.Protect)]
    [InlineData(5.1, FreezeVerdict.NoFrostExpected)]
    public void ForSite_AtZeroAfterTheMargin_Protects(double coldest, FreezeVerdict expected) =>
        Assert.Equal(expected, FreezeDecision.ForSite(From, To, Winter(2021, coldest)).Verdict);

    [Fact]
    public void ForSite_MonthWithoutARecord_LeavesTheTemperatureNotKnown()
    {
        SiteMinimum[] gap = [.. Winter(2021, 8).Where(record => record.Date.Month != 1)];
        FreezeDecision mild = FreezeDecision.ForSite(From, To, gap);
        Assert.Equal(FreezeVerdict.NotKnown, mild.Verdict);
        Assert.Contains("2027-01", mild.Low.Missing[0], StringComparison.Ordinal);

        // Frost that is on record is frost, whatever January was like; how cold it gets is still not known.
        FreezeDecision cold = FreezeDecision.ForSite(From, To, [.. gap, Record(2010, 12, 5, -4)]);
        Assert.Equal(FreezeVerdict.Protect, cold.Verdict);
        Assert.False(cold.Low.IsKnown);
    }

    [Fact]
    public void ForSite_WithoutRecords_IsNotKnown_AndAsksForThem()
    {
        FreezeDecision decision = FreezeDecision.ForSite(From, To, [Record(2020, 7, 1, 12)]);
        Assert.Equal(FreezeVerdict.NotKnown, decision.Verdict);
        Assert.Equal(LayUpRules.NoRecords, Assert.Single(decision.Findings).Rule);
        Assert.StartsWith("Not known whether it will freeze: protect.", decision.Explain(DisplayUnits.Metric).Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void ForSite_WholeYearOrMore_TakesEveryRecord() =>
        Assert.Equal(-10, FreezeDecision.ForSite(new LocalDate(2026, 5, 1), new LocalDate(2027, 5, 1),
            [.. Enumerable.Range(1, 12).Select(month => Record(2020, month, 15, month == 7 ? -5 : 3))]).Low.Value.DegreesCelsius, 1e-9);

    [Theory]
    [InlineData(-20, FreezeVerdict.Protect)]
    [InlineData(0, FreezeVerdict.Protect)]
    [InlineData(2, FreezeVerdict.NoFrostExpected)]
    public void ForLow_IsTakenAsGiven(double celsius, FreezeVerdict expected)
    {
        FreezeDecision decision = FreezeDecision.ForLow(Temperature.FromDegreesCelsius(celsius));
        Assert.Equal(expected, decision.Verdict);
        Assert.Equal(celsius, decision.Low.Value.DegreesCelsius, 1e-9);
    }

    [Fact]
    public void MildWinter_IsNoReasonToLeaveWaterIn() =>
        // Freeze claims: warm states claim more than cold ones (summaries of claim files).
        Assert.Equal(LayUpRules.MildWinter, Assert.Single(FreezeDecision.ForLow(Temperature.FromDegreesCelsius(3)).Findings).Rule);

    [Fact]
    public void ForSite_EndNotAfterBegin_IsRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("to", () => FreezeDecision.ForSite(From, From, []));
        Assert.Throws<ArgumentOutOfRangeException>("to", () => FreezeDecision.ForLow(Temperature.FromDegreesCelsius(-5)).Between(To, From));
        Assert.Throws<ArgumentOutOfRangeException>("low", () => FreezeDecision.ForLow(default));
    }
}
