using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using UnitsNet;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class OilClassificationTest
{
    [Law]
    public Property Classify_AGradesOwnLimits_ReturnsThatGrade() =>
        Prop.ForAll(Gen.Elements(SaeGrade.All.ToArray()).ToArbitrary(), grade =>
        {
            SaeGrade? label = AtItsLimits(grade).Classify().Label;
            return ReferenceEquals(label, grade).Label($"{grade} was labelled {label?.ToString() ?? "nothing"}");
        });

    [Law]
    public Property Classify_OneGrainOutsideAnyLimit_LosesTheGrade() =>
        Prop.ForAll(Gen.Elements(SaeGrade.All.ToArray()).ToArbitrary(), grade =>
        {
            OilTestReport at = AtItsLimits(grade);
            List<OilTestReport> outside = [];
            if (grade.Winter is SaeWGrade w)
            {
                outside.Add(at.WithCranking(w.CrankingLimit + Mu(Grain), w.CrankingTestTemperature));
                outside.Add(at.WithPumping(w.PumpingLimit + Mu(Grain), w.PumpingTestTemperature, yieldStressFound: false));
                outside.Add(at.WithPumping(Mu(1000), w.PumpingTestTemperature, yieldStressFound: true));
            }

            if (grade.Hot is SaeNonWGrade hot)
            {
                outside.Add(at.WithHighShear(hot.HighShearLimit(grade.Winter) - Mu(Grain)));
                outside.Add(at.WithViscosityAt100C(hot.ViscosityAt100CBelow));
            }

            outside.Add(at.WithViscosityAt100C(Kv(LeastKv100(grade) - Grain)));
            return outside.All(report => !ReferenceEquals(report.Classify().Label, grade)).Label(grade.Designation);
        });

    [Law]
    public Property Classify_EveryLabel_NamesOnlyMetGradesAndTheLowestWinterOne() =>
        Prop.ForAll(Reports().ToArbitrary(), report =>
        {
            OilClassification result = report.Classify();
            SaeGrade? label = result.Label;
            SaeWGrade? lowest = SaeWGrade.All.FirstOrDefault(w => result.ResultFor(w) == GradeResult.Met);
            bool holds = label?.Winter == lowest
                && (label?.Hot is null || result.ResultFor(label.Hot) == GradeResult.Met)
                && (label is not null || (lowest is null && SaeNonWGrade.All.All(hot => result.ResultFor(hot) != GradeResult.Met)));
            return holds.Label(result.Explain(DisplayUnits.Metric).ToString());
        });

    [Fact]
    public void Classify_EveryCheckRow_GivesItsLabel()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = ReferenceTable.Read("sae-j300-checks.csv");
        Assert.Equal(9, rows.Count);
        foreach (IReadOnlyDictionary<string, string> row in rows)
        {
            OilTestReport report = OilTestReport.Empty;
            foreach ((double celsius, double viscosity, _) in Readings(row["cranking"]))
            {
                report = report.WithCranking(Mu(viscosity), C(celsius));
            }

            foreach ((double celsius, double viscosity, bool yieldStress) in Readings(row["pumping"]))
            {
                report = report.WithPumping(Mu(viscosity), C(celsius), yieldStress);
            }

            report = row.NumberOrNull("kv100") is double kv ? report.WithViscosityAt100C(Kv(kv)) : report;
            report = row.NumberOrNull("hths") is double hths ? report.WithHighShear(Mu(hths)) : report;
            Assert.Equal($"{row["id"]} {row["label"]}", $"{row["id"]} {report.Classify().Label?.Designation ?? "-"}");
        }
    }

    [Fact]
    public void Classify_HighShear36Beside15W_RefusesSae40AndSaysWhy()
    {
        // SAE J300 table 1: SAE 40 needs 3.7 mPa·s with 15W.
        OilClassification result = OilTestReport.Empty.WithCranking(Mu(6800), C(-20)).WithPumping(Mu(40000), C(-25), false)
            .WithViscosityAt100C(Kv(14.5)).WithHighShear(Mu(3.6)).Classify();
        Assert.Equal(GradeResult.NotMet, result.ResultFor(SaeNonWGrade.Sae40));
        Assert.Contains("below 3.7 mPa·s (beside 15W)", result.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
        Assert.Contains(result.Missing, text => text.Contains("-25 °C for 10W", StringComparison.Ordinal));
    }

    [Fact]
    public void Classify_HighShear36WithoutColdData_LeavesSae40Open()
    {
        OilClassification result = OilTestReport.Empty.WithViscosityAt100C(Kv(14.5)).WithHighShear(Mu(3.6)).Classify();
        Assert.Equal(GradeResult.NotKnown, result.ResultFor(SaeNonWGrade.Sae40));
        Assert.Null(result.Label);
        Assert.NotEmpty(result.Missing);
    }

    [Fact]
    public void Classify_Above60_IsNoGradeAndNothingIsMissingForTheHotSide()
    {
        OilClassification result = OilTestReport.Empty.WithViscosityAt100C(Kv(27)).WithHighShear(Mu(5)).Classify();
        Assert.All(SaeNonWGrade.All, grade => Assert.Equal(GradeResult.NotMet, result.ResultFor(grade)));
        Assert.DoesNotContain(result.Missing, text => text.Contains("150 °C", StringComparison.Ordinal));
    }

    [Fact]
    public void Default_IsTheEmptyReport()
    {
        OilClassification nothing = default;
        Assert.Equal(OilTestReport.Empty.Classify(), nothing);
        Assert.Null(nothing.Label);
        Assert.Equal("no SAE J300 grade", nothing.ToString());
        Assert.Contains("Kinematic viscosity at 100 °C.", nothing.Missing);
        Assert.Contains("No grade may be labelled", nothing.Explain(DisplayUnits.Metric).Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_NamesTheRevision() =>
        Assert.Contains("J300_202405", OilTestReport.Empty.Classify().Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Explain_InUsUnits_KeepsTheDecision()
    {
        OilClassification result = AtItsLimits(SaeGrade.Parse("10W-30")).Classify();
        Assert.Equal(result.Explain(DisplayUnits.Metric).Answer, result.Explain(DisplayUnits.UsCustomary).Answer);
        Assert.Contains("-13 °F", result.Explain(DisplayUnits.UsCustomary).ToString(), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("units", () => result.Explain((DisplayUnits)9));
    }

    [Fact]
    public void WithCranking_InFahrenheit_FindsTheSameTest() =>
        Assert.Equal(
            GradeResult.NotMet,
            OilTestReport.Empty.WithCranking(DynamicViscosity.FromPascalSeconds(7.0001), F(-4)).Classify().ResultFor(SaeWGrade.Sae15W));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(1e9)]
    public void With_AbsurdViscosity_Throws(double value)
    {
        Assert.ThrowsAny<ArgumentException>(() => OilTestReport.Empty.WithCranking(Mu(value), C(-20)));
        Assert.ThrowsAny<ArgumentException>(() => OilTestReport.Empty.WithPumping(Mu(value), C(-25), false));
        Assert.ThrowsAny<ArgumentException>(() => OilTestReport.Empty.WithViscosityAt100C(Kv(value)));
        Assert.ThrowsAny<ArgumentException>(() => OilTestReport.Empty.WithHighShear(Mu(value)));
    }

    [Fact]
    public void With_Defaults_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>("viscosity", () => OilTestReport.Empty.WithCranking(default, C(-20)));
        Assert.Throws<ArgumentOutOfRangeException>("at", () => OilTestReport.Empty.WithCranking(Mu(5000), default));
        Assert.Throws<ArgumentOutOfRangeException>("viscosity", () => OilTestReport.Empty.WithViscosityAt100C(default));
    }

    [Fact]
    public void WithCranking_NotATestTemperature_NamesTheTestTemperatures()
    {
        ArgumentOutOfRangeException fault = Assert.Throws<ArgumentOutOfRangeException>("at", () => OilTestReport.Empty.WithCranking(Mu(5000), C(-40)));
        Assert.Contains("-35, -30, -25, -20, -15, -10 °C", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("at", () => OilTestReport.Empty.WithPumping(Mu(5000), C(-10), false));
    }

    [Fact]
    public void ResultFor_Null_Throws()
    {
        Assert.Throws<ArgumentNullException>("grade", () => OilTestReport.Empty.Classify().ResultFor((SaeWGrade)null!));
        Assert.Throws<ArgumentNullException>("grade", () => OilTestReport.Empty.Classify().ResultFor((SaeNonWGrade)null!));
    }

    private static double LeastKv100(SaeGrade grade) =>
        Math.Max(grade.Winter?.LeastViscosityAt100C.Centistokes ?? 0, grade.Hot?.LeastViscosityAt100C.Centistokes ?? 0);

    private static OilTestReport AtItsLimits(SaeGrade grade)
    {
        OilTestReport report = OilTestReport.Empty.WithViscosityAt100C(Kv(LeastKv100(grade)));
        if (grade.Winter is SaeWGrade w)
        {
            report = report.WithCranking(w.CrankingLimit, w.CrankingTestTemperature).WithPumping(w.PumpingLimit, w.PumpingTestTemperature, yieldStressFound: false);
        }

        return grade.Hot is SaeNonWGrade hot ? report.WithHighShear(hot.HighShearLimit(grade.Winter)) : report;
    }

    private static Gen<OilTestReport> Reports() =>
        from kv in Gen.Choose(30, 280)
        from hths in Gen.Choose(14, 45)
        from cranking in Gen.ArrayOf(Gen.Choose(1, 16000), 6)
        from pumping in Gen.ArrayOf(Gen.Choose(1, 90000), 6)
        from known in Gen.ArrayOf(Gen.Choose(0, 5), 6)
        select Enumerable.Range(0, 6).Aggregate(
            OilTestReport.Empty.WithViscosityAt100C(Kv(kv / 10.0)).WithHighShear(Mu(hths / 10.0)),
            (report, i) => known[i] == 0 ? report
                : report.WithCranking(Mu(cranking[i]), SaeWGrade.All[i].CrankingTestTemperature)
                    .WithPumping(Mu(pumping[i]), SaeWGrade.All[i].PumpingTestTemperature, yieldStressFound: known[i] == 1));

    private static IEnumerable<(double Celsius, double Viscosity, bool YieldStress)> Readings(string cell) =>
        from reading in cell.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        let parts = reading.TrimEnd('y').Split(':')
        select (double.Parse(parts[0], CultureInfo.InvariantCulture), double.Parse(parts[1], CultureInfo.InvariantCulture), reading.EndsWith('y'));
}
