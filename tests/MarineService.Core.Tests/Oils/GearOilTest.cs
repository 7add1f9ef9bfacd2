using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class GearOilTest
{
    [Fact]
    public void Of_EveryCheckRow_GivesItsLabel()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("sae-j306-checks.csv"))
        {
            GearOilClassification result = GearOilClassification.Of(
                Kv(row.Number("kv100")), row.NumberOrNull("cold_C") is double cold ? C(cold) : null, Enum.Parse<GearOilRevision>(row["revision"]));
            Assert.Equal($"{row["id"]} {row["label"]}", $"{row["id"]} {result.Label?.Designation}");
        }
    }

    [Fact]
    public void Of_EachPublishedBound_OneGrainDecides()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("sae-j306.csv"))
        {
            double min = row.Number("kv100_min_mm2_s");
            if (row["series"] == "W")
            {
                double cold = row.Number("max_temp_for_150000_mPa_s_C");
                Assert.Equal(row["grade"], GearOilClassification.Of(Kv(min), C(cold)).Label?.Winter);
                Assert.NotEqual(row["grade"], GearOilClassification.Of(Kv(min), C(cold + Grain)).Label?.Winter);
                Assert.NotEqual(row["grade"], GearOilClassification.Of(Kv(min - Grain), C(cold)).Label?.Winter);
                continue;
            }

            Assert.Equal(row["grade"], GearOilClassification.Of(Kv(min)).Label?.Hot);
            Assert.NotEqual(row["grade"], GearOilClassification.Of(Kv(min - Grain)).Label?.Hot);
            if (row.NumberOrNull("kv100_max_exclusive_mm2_s") is double max)
            {
                Assert.Equal(row["grade"], GearOilClassification.Of(Kv(max - Grain)).Label?.Hot);
                Assert.NotEqual(row["grade"], GearOilClassification.Of(Kv(max)).Label?.Hot);
            }
        }
    }

    [Theory]
    [InlineData("75W-90", "75W", "90")]
    [InlineData("SAE 250", null, "250")]
    [InlineData("80w", "80W", null)]
    public void Parse_OfADesignation_GivesItsParts(string text, string? winter, string? hot)
    {
        GearOilGrade grade = GearOilGrade.Parse(text);
        Assert.Equal((winter, hot), (grade.Winter, grade.Hot));
        Assert.Same(grade, GearOilGrade.Parse(grade.Designation));
    }

    [Theory]
    [InlineData("15W-40")]
    [InlineData("90-75W")]
    [InlineData("85W-65")]
    [InlineData("")]
    public void Parse_OfAnythingElse_NamesTheGearGrades(string text)
    {
        ArgumentException fault = Assert.Throws<ArgumentException>("designation", () => GearOilGrade.Parse(text));
        Assert.Contains("70W, 75W, 80W, 85W", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_SaysItDoesNotChooseAGearboxFluid() =>
        Assert.Contains("marine gearbox's fluid: that is its maker's", GearOilClassification.Of(Kv(14)).Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Of_BadInput_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("viscosityAt100C", () => GearOilClassification.Of(default));
        Assert.Throws<ArgumentOutOfRangeException>("reaches150000MillipascalSecondsAt", () => GearOilClassification.Of(Kv(14), default(UnitsNet.Temperature)));
        Assert.Throws<ArgumentOutOfRangeException>("revision", () => GearOilClassification.Of(Kv(14), null, (GearOilRevision)7));
        Assert.Throws<ArgumentNullException>("designation", () => GearOilGrade.Parse(null!));
        Assert.False(GearOilGrade.TryParse(null, out _));
    }
}
