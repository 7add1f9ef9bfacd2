using MarineService.Core.Parts;
using MarineService.Core.Tests.Reference;
using UnitsNet;

namespace MarineService.Core.Tests.Parts;

/// <summary>Every row of the table, and each attribute on both sides of its limit.</summary>
public sealed class FilterComparisonTest
{
    [Fact]
    public void Compare_EveryRowOfTheTable_GivesItsVerdictAndWhatDecided()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("filter-equivalence.csv"))
        {
            FilterSpecification filter = FilterSpecification.Named(row["filter"])
                .WithThread(FilterThread.Read(row["thread"]).Value)
                .WithGasket(Mm(row.Number("outer")))
                .WithSize(Mm(row.Number("height")))
                .WithAntiDrainBack(row["antidrain"] == "yes")
                .WithBurst(Pressure.FromKilopascals(row.Number("burst")));
            filter = row["bypass"] switch
            {
                "none" => filter.WithoutBypass(),
                "?" => filter,
                _ => filter.WithBypass(Pressure.FromKilopascals(row.Number("bypass"))),
            };
            FilterOrientation mounted = Enum.Parse<FilterOrientation>(row["mounted"]);
            FilterComparison comparison = Need().WithMounting(mounted).Compare(filter);
            Assert.Equal((row["filter"], row["mounted"], row["verdict"], row["decided"]),
                (row["filter"], row["mounted"], comparison.Verdict.ToString(), comparison.DecidedBy?.Name ?? ""));
        }
    }

    [Fact]
    public void Thread_InchAgainstMetric_IsANearMissAndSaysSo()
    {
        FilterComparison comparison = Need().Compare(Good().WithThread(FilterThread.Metric(20, 1.5)));
        Assert.True(comparison.IsThreadNearMiss);
        Finding finding = Assert.Single(comparison.Findings);
        Assert.Equal("FILTER-002", finding.Code);
        Assert.Contains("M20x1.5", finding.ToString(), StringComparison.Ordinal);
        Assert.Contains("3/4-16", finding.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3/4-16", "M18x1.5", true)]
    [InlineData("13/16-16", "M20x1.5", true)]
    [InlineData("5/8-18", "M16x1.5", true)]
    [InlineData("3/4-16", "3/4-16", false)]
    [InlineData("3/4-16", "M22x1.5", false)]
    [InlineData("1-12", "M20x1.5", false)]
    public void IsNearMiss_OfTwoThreads_IsTheSameBothWays(string one, string other, bool near)
    {
        FilterThread a = FilterThread.Read(one).Value;
        FilterThread b = FilterThread.Read(other).Value;
        Assert.Equal(near, a.IsNearMissOf(b));
        Assert.Equal(near, b.IsNearMissOf(a));
    }

    [Theory]
    [InlineData("3/4-16", 19.05, 1.5875)]
    [InlineData("6/8-16", 19.05, 1.5875)]
    [InlineData("1 1/2-16", 38.1, 1.5875)]
    [InlineData("1-12", 25.4, 25.4 / 12)]
    [InlineData("M20x1.5", 20, 1.5)]
    public void Read_Designation_GivesDiameterAndPitch(string text, double diameterMm, double pitchMm)
    {
        FilterThread thread = FilterThread.Read(text).Value;
        Assert.Equal(diameterMm, thread.Diameter.Millimeters, 9);
        Assert.Equal(pitchMm, thread.Pitch.Millimeters, 9);
        Assert.Equal(thread, FilterThread.Read(thread.ToString()).Value);
    }

    [Theory]
    [InlineData("3/5-16")]
    [InlineData("M20")]
    [InlineData("M20x9")]
    [InlineData("3/4-16\n")]
    [InlineData("0/4-16")]
    [InlineData("M99x1.5")]
    [InlineData("3/4-99")]
    [InlineData("3 31/32-16")]
    public void Read_OtherText_IsNotKnown(string text) => Assert.False(FilterThread.Read(text).IsKnown);

    [Theory]
    [InlineData(61.9, FilterVerdict.NotEquivalent)]
    [InlineData(62, FilterVerdict.Equivalent)]
    [InlineData(72, FilterVerdict.Equivalent)]
    [InlineData(72.1, FilterVerdict.NotEquivalent)]
    public void Gasket_OnEachSideOfTheLand_IsJudged(double outerMm, FilterVerdict verdict) =>
        Assert.Equal(verdict, Need().Compare(Good().WithGasket(Mm(outerMm))).Verdict);

    [Theory]
    [InlineData(54.9, FilterVerdict.NotEquivalent)]
    [InlineData(55, FilterVerdict.Equivalent)]
    [InlineData(90, FilterVerdict.Equivalent)]
    [InlineData(90.1, FilterVerdict.NotEquivalent)]
    public void Bypass_OnEachSideOfTheRange_IsJudged(double kilopascals, FilterVerdict verdict) =>
        Assert.Equal(verdict, Need().Compare(Good().WithBypass(Pressure.FromKilopascals(kilopascals))).Verdict);

    [Fact]
    public void Bypass_WhereTheEngineHasItsOwn_MustBeAbsent()
    {
        FilterNeed need = Need().WithoutBypass();
        Assert.Equal(FilterProperty.Bypass, need.Compare(Good()).DecidedBy);
        Assert.Equal(FilterVerdict.Equivalent, need.Compare(Good().WithoutBypass()).Verdict);
    }

    [Fact]
    public void Bypass_WhoseOpeningNobodyKnows_LeavesItUnknown() =>
        Assert.Equal((FilterVerdict.Unknown, FilterProperty.BypassOpening), Decided(Need().Compare(Good().WithBypass(null))));

    [Fact]
    public void SafetyAttribute_ThatTheEngineDoesNotState_LeavesItUnknown()
    {
        FilterComparison comparison = FilterNeed.Of(FilterKind.EngineOil, FilterOrientation.Sideways).Compare(Good());
        Assert.Equal(FilterVerdict.Unknown, comparison.Verdict);
        Assert.Equal(["thread", "gasket outer diameter", "bypass valve", "burst pressure"], comparison.UnknownSafety.Select(attribute => attribute.Name));
    }

    [Fact]
    public void OtherAttributes_AskedAndNotStated_MakeItConditional()
    {
        FilterNeed need = Need().WithFlow(Pressure.FromKilopascals(30), VolumeFlow.FromLitersPerMinute(40));
        Assert.Equal((FilterVerdict.Conditional, FilterProperty.PressureDrop), Decided(need.Compare(Good())));
        Assert.Equal(FilterVerdict.Equivalent, need.Compare(Good().WithFlow(Pressure.FromKilopascals(30), VolumeFlow.FromLitersPerMinute(40))).Verdict);
        Assert.Equal(FilterVerdict.NotEquivalent, need.Compare(Good().WithFlow(Pressure.FromKilopascals(30.1), VolumeFlow.FromLitersPerMinute(40))).Verdict);

        // A drop at another flow cannot be compared, however small it is.
        Assert.Equal(FilterVerdict.Conditional, need.Compare(Good().WithFlow(Pressure.FromKilopascals(5), VolumeFlow.FromLitersPerMinute(20))).Verdict);
    }

    [Fact]
    public void Efficiency_IsComparedAtTheSameParticleSizeOnly()
    {
        FilterNeed need = Need().WithFiltering(0.95, Length.FromMicrometers(20), Mass.FromGrams(10));
        Assert.Equal(FilterVerdict.Equivalent, need.Compare(Good().WithFiltering(0.95, Length.FromMicrometers(20), Mass.FromGrams(10))).Verdict);
        Assert.Equal(FilterProperty.Efficiency, need.Compare(Good().WithFiltering(0.94, Length.FromMicrometers(20), Mass.FromGrams(10))).DecidedBy);
        Assert.Equal(FilterProperty.Capacity, need.Compare(Good().WithFiltering(0.95, Length.FromMicrometers(20), Mass.FromGrams(9))).DecidedBy);
        Assert.Equal(FilterVerdict.Conditional, need.Compare(Good().WithFiltering(0.99, Length.FromMicrometers(30), Mass.FromGrams(10))).Verdict);
    }

    [Fact]
    public void Failure_OutranksWhatIsNotKnown() => Assert.Equal(
        (FilterVerdict.NotEquivalent, FilterProperty.Height),
        Decided(Need().Compare(FilterSpecification.Named("bare").WithSize(Mm(101)))));

    [Theory]
    [InlineData(FilterKind.EngineOil, FilterOrientation.GasketUp, true)]
    [InlineData(FilterKind.EngineOil, FilterOrientation.Sideways, false)]
    [InlineData(FilterKind.EngineOil, FilterOrientation.NotStated, false)]
    [InlineData(FilterKind.Fuel, FilterOrientation.GasketUp, false)]
    public void Prefilling_IsForUprightOilFiltersOnly_CommonPractice(FilterKind kind, FilterOrientation mounted, bool may) =>
        Assert.Equal(may, FilterNeed.Of(kind, mounted).MayBePrefilled);

    [Fact]
    public void Explain_NamesAttributesStandardsAndUnits()
    {
        string text = Need().Compare(Good().WithSize(Mm(125))).Explain(DisplayUnits.Metric).ToString();
        Assert.StartsWith("F1: not equivalent, decided by height.", text, StringComparison.Ordinal);
        Assert.Contains("ISO 4548-6 Static burst pressure test", text, StringComparison.Ordinal);
        Assert.Contains("fails: has 125.0 mm, needs at most 100.0 mm", text, StringComparison.Ordinal);
    }

    internal static FilterNeed Need() => FilterNeed.Of(FilterKind.EngineOil, FilterOrientation.Sideways)
        .WithThread(FilterThread.Inch(3, 4, 16))
        .WithGasketOuter(Mm(62), Mm(72))
        .WithRoom(Mm(100))
        .WithBypass(Pressure.FromKilopascals(55), Pressure.FromKilopascals(90))
        .WithBurst(Pressure.FromKilopascals(1400));

    internal static FilterSpecification Good() => FilterSpecification.Named("F1")
        .WithThread(FilterThread.Inch(3, 4, 16))
        .WithGasket(Mm(65))
        .WithSize(Mm(95))
        .WithBypass(Pressure.FromKilopascals(70))
        .WithAntiDrainBack(true)
        .WithBurst(Pressure.FromKilopascals(1900));

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static (FilterVerdict Verdict, FilterProperty? By) Decided(FilterComparison comparison) => (comparison.Verdict, comparison.DecidedBy);
}
