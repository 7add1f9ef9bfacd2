using MarineService.Core.Oils;
using NodaTime;
using UnitsNet;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class OilAllocationTest
{
    [Theory]
    [InlineData(UnitsNet.Units.TemperatureUnit.DegreeCelsius, 70)]
    [InlineData(UnitsNet.Units.TemperatureUnit.DegreeFahrenheit, 158)]
    [InlineData(UnitsNet.Units.TemperatureUnit.Kelvin, 343.15)]
    public void At_InAnyCommonUnit_AllocatesNothing(UnitsNet.Units.TemperatureUnit unit, double value)
    {
        ViscosityLine line = ViscosityLine.Through(Kv(110), C(40), Kv(14.5), C(100));
        Temperature at = new(value, unit);
        Assert.Equal(0, BytesOf(() => line.At(at).Centistokes));
    }

    [Fact]
    public void Classify_UntilTheExplanation_AllocatesNothing()
    {
        OilTestReport report = OilTestReport.Empty.WithCranking(Mu(6400), C(-30)).WithPumping(Mu(30000), C(-35), false)
            .WithViscosityAt100C(Kv(14.2)).WithHighShear(Mu(3.6));
        Assert.Equal("5W-40", report.Classify().Label!.Designation);
        Assert.Equal(0, BytesOf(() => report.Classify().Label!.Designation.Length + (int)report.Classify().ResultFor(SaeWGrade.Sae0W)));
    }

    [Fact]
    public void ForNights_EachFurtherNight_AllocatesNothing()
    {
        OilChoice choice = OilSelection.Among("15W-40", "10W-30", "5W-40").WithFitted(LabelledOil.Of("15W-40"))
            .LaidUpBetween(new LocalDate(2026, 12, 1), new LocalDate(2027, 3, 1));
        NightMinimum[] year = [.. Enumerable.Range(0, 365).Select(i => NightMinimum.Of(new LocalDate(2026, 10, 1).PlusDays(i), C(-19 + (i % 20))))];
        NightMinimum[] tenNights = [.. year.Take(10)];
        tenNights[9] = year[0];
        long ten = BytesOf(() => choice.ForNights(tenNights).Nights);
        long all = BytesOf(() => choice.ForNights(year).Nights);
        Assert.True(ten > 0);
        Assert.Equal(ten, all);
    }

    private static long BytesOf<T>(Func<T> call) => Allocation.Of(() => call());
}
