using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class SaeGradeTest
{
    [Law]
    public Property Parse_OfWhatWasPrinted_GivesTheSameGrade() =>
        Prop.ForAll(Gen.Elements(SaeGrade.All.ToArray()).ToArbitrary(), grade =>
            (ReferenceEquals(SaeGrade.Parse(grade.Designation), grade)
                && ReferenceEquals(SaeGrade.Parse(grade.ToString()), grade)
                && ReferenceEquals(SaeGrade.Parse(" " + grade.Designation.Replace('W', 'w') + " "), grade)).Label(grade.Designation));

    [Fact]
    public void Table_HasExactlyThePublishedLimits()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("sae-j300.csv"))
        {
            if (row["series"] == "W")
            {
                SaeWGrade grade = SaeWGrade.All.Single(g => g.Designation == row["grade"]);
                Assert.Equal(row.Number("ccs_max_mPa_s"), grade.CrankingLimit.MillipascalSeconds);
                Assert.Equal(row.Number("ccs_temp_C"), grade.CrankingTestTemperature.DegreesCelsius);
                Assert.Equal(row.Number("mrv_max_mPa_s"), grade.PumpingLimit.MillipascalSeconds);
                Assert.Equal(row.Number("mrv_temp_C"), grade.PumpingTestTemperature.DegreesCelsius);
                Assert.Equal(row.Number("kv100_min_mm2_s"), grade.LeastViscosityAt100C.Centistokes);
            }
            else
            {
                bool thin = row["grade"] == "40a";
                SaeNonWGrade grade = SaeNonWGrade.All.Single(g => g.Designation == row["grade"].TrimEnd('a', 'b'));
                Assert.Equal(row.Number("kv100_min_mm2_s"), grade.LeastViscosityAt100C.Centistokes);
                Assert.Equal(row.Number("kv100_max_exclusive_mm2_s"), grade.ViscosityAt100CBelow.Centistokes);
                SaeWGrade[] beside = thin ? [SaeWGrade.Sae0W, SaeWGrade.Sae5W, SaeWGrade.Sae10W]
                    : row["grade"] == "40b" ? [SaeWGrade.Sae15W, SaeWGrade.Sae20W, SaeWGrade.Sae25W]
                    : [.. SaeWGrade.All];
                Assert.All(beside, w => Assert.Equal(row.Number("hths150_min_mPa_s"), grade.HighShearLimit(w).MillipascalSeconds));
                if (!thin)
                {
                    Assert.Equal(row.Number("hths150_min_mPa_s"), grade.HighShearLimit(null).MillipascalSeconds);
                }
            }
        }

        Assert.Equal(6 + 8, SaeWGrade.All.Count + SaeNonWGrade.All.Count);
        Assert.Equal(15, ReferenceTable.Read("sae-j300.csv").Count);
    }

    [Fact]
    public void All_LeavesOutOnlyPairsThatNoOilCanMeet()
    {
        // 6 winter grades, 8 without W, 48 pairs less 25W with 8, 12, 16 and 20 (25W from 9.3 mm²/s, those end at 9.3 or below).
        Assert.Equal(6 + 8 + 48 - 4, SaeGrade.All.Count);
        Assert.Equal(SaeGrade.All.Count, SaeGrade.All.Select(g => g.Designation).Distinct().Count());
    }

    [Theory]
    [InlineData("15W-40", "15W", "40")]
    [InlineData("0w-8", "0W", "8")]
    [InlineData("SAE 10W", "10W", null)]
    [InlineData("SAE30", null, "30")]
    public void Parse_OfADesignation_GivesItsParts(string text, string? winter, string? hot)
    {
        SaeGrade grade = SaeGrade.Parse(text);
        Assert.Equal(winter, grade.Winter?.Designation);
        Assert.Equal(hot, grade.Hot?.Designation);
    }

    [Theory]
    [InlineData("40W-15", "winter grade first")]
    [InlineData("40-15W", "winter grade first")]
    [InlineData("15W40W", "such as 15W-40")]
    [InlineData("15W40", "a hyphen between the two grades: 15W-40")]
    [InlineData("15W-45", "8, 12, 16, 20, 30, 40, 50, 60")]
    [InlineData("13W-40", "0W, 5W, 10W, 15W, 20W, 25W")]
    [InlineData("15W-40-50", "one winter grade and one grade without W")]
    [InlineData("25W-20", "25W asks for at least 9.3 mm²/s")]
    [InlineData("", "such as 15W-40")]
    [InlineData("SAE", "such as 15W-40")]
    [InlineData("thick", "such as 15W-40")]
    [InlineData("75W-90", "0W, 5W, 10W, 15W, 20W, 25W")]
    public void Parse_OfWhatIsNoGrade_SaysWhatWasExpected(string text, string expected)
    {
        ArgumentException fault = Assert.Throws<ArgumentException>("designation", () => SaeGrade.Parse(text));
        Assert.Contains($"'{text}'", fault.Message, StringComparison.Ordinal);
        Assert.Contains(expected, fault.Message, StringComparison.Ordinal);
        Assert.False(SaeGrade.TryParse(text, out SaeGrade? none));
        Assert.Null(none);
    }

    [Fact]
    public void Parse_OfNull_Throws()
    {
        Assert.Throws<ArgumentNullException>("designation", () => SaeGrade.Parse(null!));
        Assert.False(SaeGrade.TryParse(null, out _));
    }

    [Fact]
    public void Of_NoPartOrAnImpossiblePair_Throws()
    {
        Assert.Throws<ArgumentException>("hot", () => SaeGrade.Of(null, null));
        Assert.Throws<ArgumentException>("hot", () => SaeGrade.Of(SaeWGrade.Sae25W, SaeNonWGrade.Sae20));
        Assert.Same(SaeGrade.Parse("10W-30"), SaeGrade.Of(SaeWGrade.Sae10W, SaeNonWGrade.Sae30));
    }

    [Fact]
    public void Holding_AtEachBound_OneGrainDecides()
    {
        foreach (SaeNonWGrade grade in SaeNonWGrade.All)
        {
            double min = grade.LeastViscosityAt100C.Centistokes;
            double max = grade.ViscosityAt100CBelow.Centistokes;
            Assert.Contains(grade, SaeNonWGrade.Holding(Kv(min)));
            Assert.DoesNotContain(grade, SaeNonWGrade.Holding(Kv(min - Grain)));
            Assert.Contains(grade, SaeNonWGrade.Holding(Kv(max - Grain)));
            Assert.DoesNotContain(grade, SaeNonWGrade.Holding(Kv(max)));
        }
    }

    [Fact]
    public void Holding_TheThinGrades_Overlap() =>
        Assert.Equal(["16", "20"], SaeNonWGrade.Holding(Kv(7.5)).Select(g => g.Designation));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1001)]
    public void Holding_OfAnAbsurdViscosity_Throws(double kv) =>
        Assert.ThrowsAny<ArgumentException>(() => SaeNonWGrade.Holding(Kv(kv)));
}
