using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace MarineService.Core.Tests.Root;

public sealed class MeasuredVolumeTest
{
    [Law]
    public Property Unit_OfTheReading_NeverMatters() =>
        Prop.ForAll(Gen.Choose(0, 10_000_000).ToArbitrary(), milliliters =>
        {
            // 1 L and 1000 mL are the same reading; the last bit may differ, as the conversion rounds.
            double fromMilliliters = MeasuredVolume.Of(Volume.FromMilliliters(milliliters)).Volume.Liters;
            double fromLiters = MeasuredVolume.Of(Volume.FromLiters(milliliters / 1000.0)).Volume.Liters;
            return Math.Abs(fromMilliliters - fromLiters) <= 1e-12 * Math.Max(1, fromLiters);
        });

    [Fact]
    public void Equality_IsThatOfTheThreeParts()
    {
        MeasuredVolume five = MeasuredVolume.Of(Volume.FromLiters(5), Temperature.FromDegreesCelsius(70), Volume.FromLiters(0.05));
        Assert.Equal(five, MeasuredVolume.Of(Volume.FromMilliliters(5000), Temperature.FromDegreesCelsius(70), Volume.FromMilliliters(50)));
        Assert.NotEqual(five, MeasuredVolume.Of(Volume.FromLiters(5), Temperature.FromDegreesCelsius(71), Volume.FromLiters(0.05)));
        Assert.NotEqual(five, MeasuredVolume.Of(Volume.FromLiters(5), Temperature.FromDegreesCelsius(70)));
        Assert.NotEqual(five, MeasuredVolume.Of(Volume.FromLiters(5.1), Temperature.FromDegreesCelsius(70), Volume.FromLiters(0.05)));
        Assert.Equal(five.GetHashCode(), MeasuredVolume.Of(Volume.FromLiters(5), Temperature.FromDegreesCelsius(70), Volume.FromLiters(0.05)).GetHashCode());
    }

    [Fact]
    public void Temperature_AndUncertainty_NotTaken_StayNull()
    {
        MeasuredVolume bare = MeasuredVolume.Of(Volume.FromLiters(5));
        Assert.Null(bare.Temperature);
        Assert.Null(bare.StandardUncertainty);
        Assert.Equal("5.00 L", bare.ToString());
    }

    [Fact]
    public void Text_HasAmountUncertaintyAndTemperature_InBothSystems()
    {
        MeasuredVolume five = MeasuredVolume.Of(Volume.FromLiters(5.5), Temperature.FromDegreesCelsius(70), Volume.FromLiters(0.05));
        Assert.Equal("5.50 L ± 0.05 L at 70 °C", InCulture.Run("de-DE", five.ToString));
        Assert.Equal("5.81 US qt ± 0.05 US qt at 158 °F", five.ToString(DisplayUnits.UsCustomary));
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(10_000.001)]
    public void Volume_OutsideItsRange_IsRefusedByName(double liters)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredVolume.Of(Volume.FromLiters(liters)));
        Assert.Equal("volume", refusal.ParamName);
        Assert.Contains("10000 L", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Temperature_Default_IsRefusedByName() =>
        Assert.Equal("temperature", Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredVolume.Of(Volume.FromLiters(5), default(Temperature))).ParamName);

    [Fact]
    public void Uncertainty_Negative_IsRefusedByName() =>
        Assert.Equal(
            "standardUncertainty",
            Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredVolume.Of(Volume.FromLiters(5), null, Volume.FromLiters(-0.01))).ParamName);

    [Fact]
    public void Ends_OfEachRange_AreAccepted()
    {
        Assert.Equal(0, MeasuredVolume.Of(Volume.Zero).Volume.Liters);
        Assert.Equal(10_000, MeasuredVolume.Of(Volume.FromLiters(10_000)).Volume.Liters);
        Assert.Equal(-60, MeasuredVolume.Of(Volume.Zero, Temperature.FromDegreesCelsius(-60)).Temperature!.Value.DegreesCelsius, 9);
        Assert.Equal(200, MeasuredVolume.Of(Volume.Zero, Temperature.FromDegreesCelsius(200)).Temperature!.Value.DegreesCelsius, 9);
    }
}
