using MarineService.Core.Fluids;
using UnitsNet;
using static MarineService.Core.Tests.Fluids.Changes;

namespace MarineService.Core.Tests.Fluids;

public sealed class SumpTest
{
    private static string[] Codes(Sump sump) => [.. sump.Validate().Select(finding => finding.Code)];

    [Fact]
    public void Validate_FiguresThatFit_FindsNothing() =>
        Assert.Empty(SixLiters
            .WithServiceFillWithoutFilter(L(5.4))
            .WithDryCapacity(L(6.8))
            .WithResidual(DrainMethod.Extractor, L(0.5))
            .With(OilPassage.Of("oil cooler", L(0.7), drains: false))
            .Validate());

    [Fact]
    public void Validate_FilterLargerThanTheFill_IsReported()
    {
        Assert.Contains("FLUID-040", Codes(Sump.Holding(L(6.0), L(6.0), Dipstick.WithRange(L(1)))));
        Assert.DoesNotContain("FLUID-040", Codes(Sump.Holding(L(6.0), L(5.999), Dipstick.WithRange(L(1)))));
    }

    [Fact]
    public void Validate_MarksReversed_IsReported()
    {
        SumpShape shape = SumpShape.Rectangular(Length.FromMeters(0.6), Length.FromMeters(0.3));
        Dipstick reversed = Dipstick.FromMarks(Length.FromMillimeters(45), Length.FromMillimeters(40), shape);
        Assert.Equal(["FLUID-041"], Codes(Sump.Holding(L(6.0), L(0.6), reversed)));
    }

    [Fact]
    public void Validate_EachOtherMisfit_IsReportedByItsOwnCode()
    {
        SumpShape shape = SumpShape.Rectangular(Length.FromMeters(0.6), Length.FromMeters(0.3));
        Assert.Equal(["FLUID-042"], Codes(Sump.Holding(L(6.0), L(0.6), Dipstick.WithRange(L(5.4)))));
        // 5 mm over 0.18 m² is 0.9 L between the marks.
        Assert.Empty(Codes(SixLiters.With(Dipstick.FromMarks(Length.FromMillimeters(25), Length.FromMillimeters(30), shape))));
        Assert.Equal(["FLUID-045"], Codes(SixLiters.WithServiceFillWithoutFilter(L(5.0))));
        Assert.Equal(["FLUID-044"], Codes(SixLiters.WithServiceFillWithoutFilter(L(6.0))));
        Assert.Equal(["FLUID-046"], Codes(SixLiters.WithDryCapacity(L(5.9))));
        Assert.Equal(["FLUID-047"], Codes(SixLiters.WithResidual(DrainMethod.Extractor, L(5.4))));
        Assert.Equal(["FLUID-047"], Codes(SixLiters.WithResidual(DrainMethod.DrainPlug, L(5.4))));
    }

    [Fact]
    public void Validate_RangeAgainstMarks_IsAdviceOnly()
    {
        SumpShape shape = SumpShape.Rectangular(Length.FromMeters(0.6), Length.FromMeters(0.3));
        Dipstick stick = Dipstick.FromMarks(Length.FromMillimeters(25), Length.FromMillimeters(30), shape);
        // 0.9 ± 0.045 L by the marks; a fill of 1.2 L over the whole range says 1.2 ± 0.01 L or so.
        Dipstick calibrated = stick.CalibratedBy(At15(1.2, 0.005), DipstickReading.OfRange(0, 0.001), DipstickReading.OfRange(1, 0.001)).Value;
        Finding finding = Assert.Single(SixLiters.With(calibrated).Validate());
        Assert.Equal("FLUID-043", finding.Code);
        Assert.Equal(Severity.Advice, finding.Severity);
        Assert.NotNull(OilChange.Begin(SixLiters.With(calibrated), DipstickReading.OfRange(0.5)));
    }

    [Fact]
    public void Validate_SeveralMisfits_AreAllReported() =>
        Assert.Equal(
            ["FLUID-040", "FLUID-042", "FLUID-046", "FLUID-047", "FLUID-047"],
            Codes(Sump.Holding(L(5), L(6), Dipstick.WithRange(L(1))).WithDryCapacity(L(4)).WithResidual(DrainMethod.Extractor, L(1))));

    [Fact]
    public void Begin_SumpWithFaults_IsRefusedWithTheReasons()
    {
        Sump sump = Sump.Holding(L(6.0), L(7.0), Dipstick.WithRange(L(1)));
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => OilChange.Begin(sump, DipstickReading.OfRange(0.5)));
        Assert.Equal("sump", refusal.ParamName);
        Assert.Contains("FLUID-040", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => OilChange.BeginWithoutReading(sump));
    }

    [Fact]
    public void ResidualOf_Extractor_IsNotKnownUnlessDeclared()
    {
        Assert.False(SixLiters.ResidualOf(DrainMethod.Extractor).IsKnown);
        Assert.Equal(0, SixLiters.ResidualOf(DrainMethod.DrainPlug).Value.Volume.Liters);
        Assert.Equal(0.5, SixLiters.WithResidual(DrainMethod.Extractor, L(0.5)).ResidualOf(DrainMethod.Extractor).Value.Volume.Liters);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1001)]
    public void Holding_FillOutsideItsRange_IsRefused(double liters) =>
        Assert.Equal("serviceFill", Assert.Throws<ArgumentOutOfRangeException>(
            () => Sump.Holding(L(liters), L(0.6), Dipstick.WithRange(L(1)))).ParamName);

    [Fact]
    public void Sump_OtherBadInput_IsRefusedByName()
    {
        Assert.Equal("filter", Assert.Throws<ArgumentOutOfRangeException>(() => Sump.Holding(L(6), L(-0.1), Dipstick.WithRange(L(1)))).ParamName);
        Assert.Equal("dipstick", Assert.Throws<ArgumentNullException>(() => Sump.Holding(L(6), L(0.6), null!)).ParamName);
        Assert.Equal("dryCapacity", Assert.Throws<ArgumentOutOfRangeException>(() => SixLiters.WithDryCapacity(default)).ParamName);
        Assert.Equal("residual", Assert.Throws<ArgumentOutOfRangeException>(() => SixLiters.WithResidual(DrainMethod.Extractor, L(-1))).ParamName);
        Assert.Equal("method", Assert.Throws<ArgumentOutOfRangeException>(() => SixLiters.WithResidual((DrainMethod)5, L(1))).ParamName);
        Assert.Equal("method", Assert.Throws<ArgumentOutOfRangeException>(() => SixLiters.ResidualOf((DrainMethod)5)).ParamName);
        Assert.Equal("volume", Assert.Throws<ArgumentOutOfRangeException>(() => OilPassage.Of("cooler", default, true)).ParamName);
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => OilPassage.Of("", L(1), true)).ParamName);
        Assert.Throws<ArgumentNullException>(() => SixLiters.With((OilPassage)null!));
        Assert.Throws<ArgumentNullException>(() => SixLiters.With((OilDensity)null!));
        Assert.Throws<ArgumentNullException>(() => SixLiters.With((Dipstick)null!));
    }
}
