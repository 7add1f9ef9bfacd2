using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using UnitsNet;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class OilSelectionTest
{
    [Law]
    public Property ForColdestStart_Colder_NeverSelectsAThickerWinterGrade() =>
        Prop.ForAll(Shuffled().Zip(Gen.Choose(-45, 40)).Zip(Gen.Choose(0, 30)).Zip(Gen.Choose(0, 15)).ToArbitrary(), four =>
        {
            (((string[] grades, int warm), int colder), int margin) = four;
            OilChoice choice = OilSelection.Among(grades).WithMargin(K(margin));
            GradeVerdict? Best(int celsius) => choice.ForColdestStart(C(celsius)).Best.OrElse(null!);
            GradeVerdict? atWarm = Best(warm);
            GradeVerdict? atCold = Best(Math.Max(-60, warm - colder));

            // No winter grade at all is thicker in the cold than any: index beyond 25W.
            static int Thickness(GradeVerdict verdict) => verdict.Grade.Winter is null ? 6 : SaeWGrade.All.ToList().IndexOf(verdict.Grade.Winter);
            return (atCold is null || (atWarm is not null && Thickness(atCold) <= Thickness(atWarm)))
                .Label($"{string.Join(" ", grades)} {warm} - {colder}: {atWarm?.Designation} then {atCold?.Designation}");
        });

    [Law]
    public Property WithMargin_Raised_NeverAcceptsMore() =>
        Prop.ForAll(Shuffled().Zip(Gen.Choose(-45, 30)).Zip(Gen.Choose(0, 20)).Zip(Gen.Choose(0, 15)).ToArbitrary(), four =>
        {
            (((string[] grades, int start), int margin), int more) = four;
            Dictionary<string, Suitability> Verdicts(double soak, double m) => OilSelection.Among(grades).WithMargin(K(m)).WithColdSoak(K(soak))
                .ForColdestStart(C(start)).Ranked.ToDictionary(verdict => verdict.Designation, verdict => verdict.Suitability);
            Dictionary<string, Suitability> before = Verdicts(0, margin);
            Dictionary<string, Suitability> after = Verdicts(0, margin + more);
            Dictionary<string, Suitability> soaked = Verdicts(more, margin);
            return grades.All(grade => after[grade] <= before[grade] && soaked[grade] <= before[grade]).Label($"{string.Join(" ", grades)} at {start}, {margin} + {more}");
        });

    [Law]
    public Property Ranked_IsByVerdictThenTheMakersOrderThenMargin() =>
        Prop.ForAll(Shuffled().Zip(Gen.Choose(-45, 30)).Zip(Gen.ArrayOf(Gen.Choose(1, 2), 12)).ToArbitrary(), three =>
        {
            ((string[] grades, int start), int[] preferences) = three;
            PermittedOils permitted = PermittedOils.Of([.. grades.Select((grade, i) => PermittedGrade.Of(SaeGrade.Parse(grade), makersPreference: preferences[i]))]);
            IReadOnlyList<GradeVerdict> ranked = OilSelection.Among(permitted).ForColdestStart(C(start)).Ranked;
            return (ranked.Count == grades.Length && ranked.Zip(ranked.Skip(1), (a, b) =>
                a.Suitability > b.Suitability
                || (a.Suitability == b.Suitability && a.MakersPreference < b.MakersPreference)
                || (a.Suitability == b.Suitability && a.MakersPreference == b.MakersPreference && a.ColdMargin.Kelvins >= b.ColdMargin.Kelvins)).All(inOrder => inOrder))
                .Label(string.Join(" ", ranked.Select(verdict => $"{verdict.Designation} {verdict.Suitability} {verdict.MakersPreference} {verdict.ColdMargin.Kelvins}")));
        });

    [Fact]
    public void ForColdestStart_EveryCheckRow_GivesVerdictAndDecidingLimit()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = ReferenceTable.Read("cold-start-checks.csv");
        Assert.Equal(6, rows.Count);
        foreach (IReadOnlyDictionary<string, string> row in rows)
        {
            GradeVerdict verdict = OilSelection.Among(row["grade"]).ForColdestStart(C(row.Number("start_C"))).Ranked[0];
            Assert.Equal($"{row["id"]} {row["suitability"]} {row["decided_by"]}", $"{row["id"]} {verdict.Suitability} {verdict.DecidedBy.Kind}");
            Assert.Equal(row.Number("floor_C"), verdict.Floor.DegreesCelsius, 9);
            Assert.Equal(row.Number("start_C") - row.Number("floor_C"), verdict.ColdMargin.Kelvins, 9);
        }
    }

    [Fact]
    public void Floor_OfEveryGrade_IsTheTablesDefaultAndShowsTheCustomaryFigures()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("cold-start-customary.csv"))
        {
            GradeVerdict verdict = OilSelection.Among(row["grade"]).ForColdestStart(C(0)).Ranked[0];
            Assert.Equal(row.Number("suggested_default_floor_C"), verdict.Floor.DegreesCelsius, 9);
            if (row.NumberOrNull("optimistic_chart_C") is double chart)
            {
                Assert.Equal(chart, verdict.Limits.Single(limit => limit.Kind == TemperatureLimitKind.CustomaryChart).Temperature.DegreesCelsius, 9);
                Assert.Equal(row.Number("j300_ccs_temp_C"), verdict.Limits.Single(limit => limit.Kind == TemperatureLimitKind.Cranking).Temperature.DegreesCelsius, 9);
                Assert.Equal(row.Number("j300_mrv_temp_C"), verdict.Limits.Single(limit => limit.Kind == TemperatureLimitKind.Pumping).Temperature.DegreesCelsius, 9);
            }

            double? warmest = row["grade"].EndsWith('W') ? row.NumberOrNull("warmest_published_floor_seen_C") : null;
            TemperatureLimit? shown = verdict.Limits.SingleOrDefault(limit => limit.Kind == TemperatureLimitKind.WarmestPublished);
            Assert.Equal(warmest, shown?.Temperature.DegreesCelsius);
            Assert.NotEqual(true, shown?.TakesPart);
        }
    }

    [Theory]
    [InlineData(-15, Suitability.Accepted)]
    [InlineData(-15 - Grain, Suitability.Marginal)]
    [InlineData(-20, Suitability.Marginal)]
    [InlineData(-20 - Grain, Suitability.Refused)]
    public void ForColdestStart_AtEachBound_OneGrainDecides(double start, Suitability expected) =>
        Assert.Equal(expected, OilSelection.Among("15W-40").ForColdestStart(C(start)).Ranked[0].Suitability);

    [Fact]
    public void ForColdestStart_TheReadmeExample_ReadsAsWritten()
    {
        OilSelection oils = OilSelection.Among("10W-30", "15W-40").ForColdestStart(C(-17));
        Assert.Equal(
            ["10W-30: Accepted, margin 3 K, floor -20 °C = SAE J300 cranking -25 °C + 5 K", "15W-40: Marginal, margin -2 K, floor -15 °C = SAE J300 cranking -20 °C + 5 K"],
            oils.Ranked.Select(grade => FormattableString.Invariant($"{grade.Designation}: {grade.Suitability}, margin {grade.ColdMargin.Kelvins:0} K, {grade.DecidedBy}")));
    }

    [Fact]
    public void ForColdestStart_15W40AtTenDegrees_IsAccepted()
    {
        // Common practice, no source: in a warm climate owners use a 15W-40 from about 10 °C (50 °F) upwards.
        Assert.Equal(Suitability.Accepted, OilSelection.Among("15W-40").ForColdestStart(C(10)).Ranked[0].Suitability);
        Assert.Equal(Suitability.Accepted, OilSelection.Among("15W-40").ForColdestStart(F(50)).Ranked[0].Suitability);

        // SAE J300: 15W is cranked at -20 °C. Below the margin it is marginal, below the test refused.
        Assert.Equal(Suitability.Marginal, OilSelection.Among("15W-40").ForColdestStart(C(-18)).Ranked[0].Suitability);
        Assert.Equal(Suitability.Refused, OilSelection.Among("15W-40").ForColdestStart(C(-21)).Ranked[0].Suitability);
    }

    [Fact]
    public void ForColdestStart_InFahrenheit_MakesTheSameDecisionAtTheBound()
    {
        // 5 °F is -15 °C exactly; the conversion must not decide.
        Assert.Equal(Suitability.Accepted, OilSelection.Among("15W-40").ForColdestStart(F(5)).Ranked[0].Suitability);
        Assert.Equal(Suitability.Accepted, OilSelection.Among("15W-40").ForColdestStart(Temperature.FromKelvins(258.15)).Ranked[0].Suitability);
        OilSelection selection = OilSelection.Among("10W-30", "15W-40").ForColdestStart(F(1.4));
        Assert.Contains("floor -4 °F = SAE J300 cranking -13 °F + 9 °F", selection.Explain(DisplayUnits.UsCustomary).ToString(), StringComparison.Ordinal);
        Assert.StartsWith("10W-30 for a start at -17 °C", selection.Explain(DisplayUnits.Metric).Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Ranked_AllAccepted_FollowsTheMakerAndNotTheMargin()
    {
        OilSelection oils = OilSelection.Among("15W-40", "10W-30", "5W-30").ForColdestStart(C(0));
        Assert.Equal(["15W-40", "10W-30", "5W-30"], oils.Ranked.Select(verdict => verdict.Designation));
        Assert.Equal("15W-40", oils.Best.Value.Designation);
        Assert.Equal(ColdStartAdvice.StartWithAcceptedGrade, oils.Advice);
    }

    [Fact]
    public void MakersColdest_WarmerThanTheStandard_Refuses()
    {
        PermittedOils permitted = PermittedOils.Of(PermittedGrade.Of(SaeGrade.Parse("15W-40"), makersColdest: C(-10)));
        GradeVerdict verdict = OilSelection.Among(permitted).ForColdestStart(C(-12)).Ranked[0];
        Assert.Equal(Suitability.Refused, verdict.Suitability);
        Assert.Equal("maker's coldest -10 °C", verdict.DecidedBy.ToString());
        Assert.Equal(-2, verdict.DecidedBy.Margin.Value.Kelvins, 9);
        Assert.Equal(Suitability.Accepted, OilSelection.Among(permitted).ForColdestStart(C(-10)).Ranked[0].Suitability);
    }

    [Fact]
    public void MakersColdest_ColderThanTheFloor_DoesNotLoosenIt()
    {
        PermittedOils permitted = PermittedOils.Of(PermittedGrade.Of(SaeGrade.Parse("15W-40"), makersColdest: C(-25)));
        GradeVerdict verdict = OilSelection.Among(permitted).ForColdestStart(C(-17)).Ranked[0];
        Assert.Equal(Suitability.Marginal, verdict.Suitability);
        Assert.Contains(verdict.Limits, limit => limit.Kind == TemperatureLimitKind.MakersColdest);
    }

    [Fact]
    public void CustomaryFigures_WarmestPublished_TakePartWhenChosen()
    {
        // A small-diesel operator manual gives -10 °C for 15W-40; -12 °C is then inside no margin.
        GradeVerdict verdict = OilSelection.Among("15W-40").WithCustomaryFigures(CustomaryFigures.WarmestPublished).ForColdestStart(C(-12)).Ranked[0];
        Assert.Equal(Suitability.Marginal, verdict.Suitability);
        Assert.Equal(TemperatureLimitKind.WarmestPublished, verdict.DecidedBy.Kind);
        Assert.Contains("small-diesel operator manual", verdict.DecidedBy.Citation.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8")]
    [InlineData("20")]
    [InlineData("30")]
    [InlineData("40")]
    [InlineData("50")]
    [InlineData("60")]
    public void ForColdestStart_SingleGradeWithoutW_IsRefusedInFrost(string grade)
    {
        GradeVerdict verdict = OilSelection.Among(grade).ForColdestStart(C(-0.1)).Ranked[0];
        Assert.Equal(Suitability.Refused, verdict.Suitability);
        Assert.Contains("no W grade, so SAE J300 sets no cold limit", verdict.DecidedBy.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ForColdestStart_ThickSingleGradeInWarmth_IsMarginalUntilTheMakerSpeaks()
    {
        OilSelection unknown = OilSelection.Among("50").ForColdestStart(C(25));
        Assert.Equal(Suitability.Marginal, unknown.Ranked[0].Suitability);
        Assert.Equal(ColdStartAdvice.AskTheMaker, unknown.Advice);
        Assert.Contains("ask the maker", unknown.Ranked[0].ToString(), StringComparison.Ordinal);
        Assert.Contains(unknown.Findings, finding => finding.Code == "OIL-014");
        PermittedOils permitted = PermittedOils.Of(PermittedGrade.Of(SaeGrade.Parse("50"), makersColdest: C(10)));
        Assert.Equal(Suitability.Accepted, OilSelection.Among(permitted).ForColdestStart(C(25)).Ranked[0].Suitability);
    }

    [Fact]
    public void HotSide_IsTheMakersFigureOnly()
    {
        PermittedOils permitted = PermittedOils.Of(PermittedGrade.Of(SaeGrade.Parse("10W-30"), makersHottest: C(30)), PermittedGrade.Of(SaeGrade.Parse("15W-40")));
        OilSelection hot = OilSelection.Among(permitted).WithHottestAmbient(C(28), K(4)).ForColdestStart(C(5));
        Assert.Equal(["15W-40", "10W-30"], hot.Ranked.Select(verdict => verdict.Designation));
        Assert.Equal(Suitability.Refused, hot.Ranked[1].Suitability);
        Assert.Equal(TemperatureLimitKind.MakersHottest, hot.Ranked[1].DecidedBy.Kind);
        Assert.Equal(-2, hot.Ranked[1].HotMargin.Value.Kelvins, 9);
        Assert.False(hot.Ranked[0].HotMargin.IsKnown);
        Assert.Contains("maker's highest ambient for 15W-40", hot.Ranked[0].HotMargin.Missing[0], StringComparison.Ordinal);
        Assert.Equal(Suitability.Accepted, OilSelection.Among(permitted).WithHottestAmbient(C(30)).ForColdestStart(C(5)).Ranked[0].Suitability);
        Assert.Contains(OilSelection.Among("15W-40").ForColdestStart(C(5)).Findings, finding => finding.Code == "OIL-007" && finding.Severity == Severity.Note);
    }

    [Fact]
    public void ForRange_JudgesBothEnds()
    {
        PermittedOils permitted = PermittedOils.Of(PermittedGrade.Of(SaeGrade.Parse("10W-30"), makersHottest: C(30)));
        Assert.Equal(Suitability.Refused, OilSelection.Among(permitted).ForRange(C(-5), C(31)).Ranked[0].Suitability);
        Assert.Equal(Suitability.Accepted, OilSelection.Among(permitted).ForRange(C(-5), C(30)).Ranked[0].Suitability);
        Assert.Throws<ArgumentOutOfRangeException>("hottest", () => OilSelection.Among(permitted).ForRange(C(5), C(4)));
    }

    [Fact]
    public void Advice_WhenNoGradeFits_SaysHeatOrDoNotStartOrAsk()
    {
        OilSelection heat = OilSelection.Among("15W-40", "20W-50").ForColdestStart(C(-22));
        Assert.Equal(ColdStartAdvice.WarmTheOilFirst, heat.Advice);
        Assert.Equal(-15, heat.WarmOilTo.Value.DegreesCelsius, 9);
        Finding finding = Assert.Single(heat.Findings, f => f.Code == "OIL-001");
        Assert.Equal(Severity.Act, finding.Severity);
        Assert.Contains("never a flame", finding.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
        Assert.False(heat.Best.IsKnown);
        Assert.False(OilSelection.Among("15W-40").ForColdestStart(C(0)).WarmOilTo.IsKnown);

        OilSelection stop = OilSelection.Among("15W-40", "30").ForColdestStart(C(-26));
        Assert.Equal(ColdStartAdvice.DoNotStart, stop.Advice);
        Assert.Equal(Severity.Stop, stop.Findings[0].Severity);

        OilSelection marginal = OilSelection.Among("15W-40").ForColdestStart(C(-17));
        Assert.Equal(ColdStartAdvice.WarmTheOilFirst, marginal.Advice);
        Assert.Contains(marginal.Findings, f => f.Code == "OIL-012");

        PermittedOils hot = PermittedOils.Of(PermittedGrade.Of(SaeGrade.Parse("10W-30"), makersHottest: C(30)));
        OilSelection ask = OilSelection.Among(hot).ForRange(C(10), C(40));
        Assert.Equal(ColdStartAdvice.AskTheMaker, ask.Advice);
        Assert.Contains(ask.Findings, f => f.Code == "OIL-009");
        Assert.False(ask.WarmOilTo.IsKnown);

        PermittedOils both = PermittedOils.Of(PermittedGrade.Of(SaeGrade.Parse("5W-30"), makersHottest: C(30)), PermittedGrade.Of(SaeGrade.Parse("20W-50")));
        OilSelection neither = OilSelection.Among(both).ForRange(C(-20), C(40));
        Assert.Equal(ColdStartAdvice.WarmTheOilFirst, neither.Advice);
    }

    [Fact]
    public void WhileLaidUp_AsksForNoChange()
    {
        OilSelection frost = OilSelection.Among("15W-40").WithFitted(LabelledOil.Of("15W-40")).WhileLaidUp(C(-25));
        Assert.True(frost.IsLaidUp);
        Assert.Equal(ColdStartAdvice.NoStartWhileLaidUp, frost.Advice);
        Assert.All(frost.Findings, finding => Assert.Equal(Severity.Note, finding.Severity));
        Assert.Contains(frost.Findings, finding => finding.Code == "OIL-006");
        Assert.Equal("Laid up: -25 °C asks for no change of oil.", frost.Explain(DisplayUnits.Metric).Answer);
    }

    [Fact]
    public void Judge_ThinnerButNotPermitted_IsRefused()
    {
        // The second number is never traded: a 5W-30 cranks easily, but the maker asks for a 40.
        OilSelection oils = OilSelection.Among("15W-40").ForColdestStart(C(-22));
        OilVerdict thin = oils.Judge(LabelledOil.Of("5W-30"));
        Assert.Equal(Suitability.Refused, thin.Suitability);
        Assert.Contains(thin.Findings, finding => finding.Code == "OIL-004");
        Assert.Contains("not on the maker's list", thin.Grade.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("5W-30", oils.Ranked.Select(verdict => verdict.Designation));
    }

    [Fact]
    public void Judge_Categories_NeedEveryRequirementAndNothingForbidden()
    {
        PermittedOils permitted = PermittedOils.Of("15W-40").Requiring("CI-4").Requiring("E7", "E4").Forbidding("CJ-4");
        OilSelection oils = OilSelection.Among(permitted).ForColdestStart(C(10));
        OilVerdict right = oils.Judge(LabelledOil.Of("15W-40", "CK-4", "E7-22"));
        Assert.Equal(Suitability.Accepted, right.Suitability);
        Assert.Contains("API engine oil guide", right.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
        Assert.Equal([Coverage.Covered, Coverage.Covered], right.Categories.Select(category => category.Coverage));
        OilVerdict half = oils.Judge(LabelledOil.Of("15W-40", "CK-4"));
        Assert.Equal(Suitability.Refused, half.Suitability);
        Assert.Equal("OIL-005", Assert.Single(half.Findings).Code);
        OilVerdict forbidden = oils.Judge(LabelledOil.Of("15W-40", "CJ-4", "CK-4", "E7"));
        Assert.Contains(forbidden.Findings, finding => finding.Code == "OIL-008");
        OilVerdict silent = oils.Judge(LabelledOil.Of("15W-40"));
        Assert.Equal(2, silent.Findings.Count);
        Assert.Contains("the label claims no category", silent.Findings[0].Message(DisplayUnits.Metric), StringComparison.Ordinal);
        Assert.Contains("must claim E7 or E4", oils.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_WithADate_CautionsAboutTheClaim()
    {
        OilSelection oils = OilSelection.Among(PermittedOils.Of("15W-40").Requiring("CK-4")).WithClaimsAsOf(new NodaTime.LocalDate(2026, 10, 12)).ForColdestStart(C(10));
        OilVerdict early = oils.Judge(LabelledOil.Of("15W-40", "CL-4"));
        Assert.Contains(early.Categories[0].Cautions, caution => caution.Contains("2027-01-01", StringComparison.Ordinal));
    }

    [Fact]
    public void Explain_ShowsEveryGradeTheConditionsAndTheRevision()
    {
        string text = OilSelection.Among("15W-40", "30").WithColdSoak(K(3)).ForColdestStart(C(-3)).Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("15W-40 for a start at -6 °C, 9 K to spare.", text, StringComparison.Ordinal);
        Assert.Contains("refused: 10 K outside customary 4 °C (no W grade", text, StringComparison.Ordinal);
        Assert.Contains("J300_202405", text, StringComparison.Ordinal);
        Assert.Contains("the engine's own manual", text, StringComparison.Ordinal);
        string verdict = OilSelection.Among("15W-40").ForColdestStart(C(-3)).Ranked[0].Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("warmest published figure -10 °C", verdict, StringComparison.Ordinal);
        Assert.Contains("customary chart -20 °C", verdict, StringComparison.Ordinal);
        Assert.Contains("project choice", verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_UnderAGermanCulture_IsTheSame()
    {
        System.Globalization.CultureInfo before = System.Globalization.CultureInfo.CurrentCulture;
        OilSelection selection = OilSelection.Among("15W-40").ForColdestStart(C(-3.5));
        string invariant = selection.Explain(DisplayUnits.Metric).ToString();
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = System.Globalization.CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(invariant, selection.Explain(DisplayUnits.Metric).ToString());
            Assert.Contains("-3.5 °C", invariant, StringComparison.Ordinal);
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Among_BadLists_Throw()
    {
        Assert.Throws<ArgumentException>("designations", () => OilSelection.Among(Array.Empty<string>()));
        Assert.Throws<ArgumentException>("designations", () => OilSelection.Among("15W-40", "SAE 15W-40"));
        Assert.Throws<ArgumentException>("designations", () => OilSelection.Among("40W-15"));
        Assert.Throws<ArgumentNullException>("designations", () => OilSelection.Among((string[])null!));
        Assert.Throws<ArgumentNullException>("permitted", () => OilSelection.Among((PermittedOils)null!));
        Assert.Throws<ArgumentException>("grades", () => PermittedOils.Of(Array.Empty<PermittedGrade>()));
        Assert.Throws<ArgumentException>("anyOf", () => PermittedOils.Of("30").Requiring(Array.Empty<string>()));
        Assert.Throws<ArgumentException>("anyOf", () => PermittedOils.Of("30").Requiring("XY-9"));
        Assert.Throws<ArgumentException>("categories", () => PermittedOils.Of("30").Forbidding("XY-9"));
        Assert.Throws<ArgumentNullException>("oil", () => OilSelection.Among("30").WithFitted(null!));
        Assert.Throws<ArgumentNullException>("oil", () => OilSelection.Among("30").ForColdestStart(C(10)).Judge(null!));
    }

    [Fact]
    public void Numbers_OutOfRange_Throw()
    {
        OilChoice choice = OilSelection.Among("15W-40");
        Assert.Throws<ArgumentOutOfRangeException>("lowestAir", () => choice.ForColdestStart(default));
        Assert.Throws<ArgumentOutOfRangeException>("lowestAir", () => choice.ForColdestStart(C(-61)));
        Assert.Throws<ArgumentOutOfRangeException>("lowestAir", () => choice.ForColdestStart(C(61)));
        Assert.Throws<ArgumentOutOfRangeException>("lowestAir", () => choice.WhileLaidUp(default));
        Assert.Throws<ArgumentOutOfRangeException>("hottest", () => choice.WithHottestAmbient(default));
        Assert.Throws<ArgumentOutOfRangeException>("margin", () => choice.WithMargin(K(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("margin", () => choice.WithMargin(K(41)));
        Assert.Throws<ArgumentOutOfRangeException>("colderThanForecast", () => choice.WithColdSoak(K(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>("hotterThanShade", () => choice.WithHottestAmbient(C(30), K(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("figures", () => choice.WithCustomaryFigures((CustomaryFigures)3));
        Assert.Throws<ArgumentOutOfRangeException>("makersColdest", () => PermittedGrade.Of(SaeGrade.Parse("30"), makersColdest: default(Temperature)));
        Assert.Throws<ArgumentOutOfRangeException>("makersHottest", () => PermittedGrade.Of(SaeGrade.Parse("30"), C(10), C(9)));
        Assert.Throws<ArgumentOutOfRangeException>("makersPreference", () => PermittedGrade.Of(SaeGrade.Parse("30"), makersPreference: 0));
        foreach (double bad in NotNumbers)
        {
            Assert.ThrowsAny<ArgumentException>(() => choice.ForColdestStart(C(bad)));
            Assert.ThrowsAny<ArgumentException>(() => choice.WithMargin(K(bad)));
        }
    }

    internal static Gen<string[]> Shuffled() =>
        from order in Gen.Shuffle(new[] { "0W-20", "5W-30", "5W-40", "10W-30", "10W-40", "15W-40", "20W-50", "25W-60", "20", "30", "40", "50" })
        from count in Gen.Choose(1, 12)
        select order.Take(count).ToArray();
}
