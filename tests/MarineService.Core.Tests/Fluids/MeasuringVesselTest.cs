using MarineService.Core.Fluids;
using UnitsNet;

namespace MarineService.Core.Tests.Fluids;

public sealed class MeasuringVesselTest
{
    [Fact]
    public void Read_WorkshopJug_AddsShareAndGraduationAsSquares() =>
        // 1.5 % of 5.5 L is 0.0825 L; 0.1 L marks give 0.1/√12 = 0.028868 L (JCGM 100:2008, 4.3.7); together 0.087405 L.
        Assert.Equal(0.087405, MeasuringVessel.WorkshopJug.Read(Volume.FromLiters(5.5)).StandardUncertainty!.Value.Liters, 1e-6);

    [Fact]
    public void Read_OwnVessel_UsesItsFigures()
    {
        MeasuringVessel vessel = MeasuringVessel.Of("brass can", 0.01, Volume.Zero);
        MeasuredVolume reading = vessel.Read(Volume.FromLiters(4), Temperature.FromDegreesCelsius(20));
        Assert.Equal(0.04, reading.StandardUncertainty!.Value.Liters, 1e-12);
        Assert.Equal(20, reading.Temperature!.Value.DegreesCelsius, 1e-12);
        Assert.Equal("brass can", vessel.ToString());
    }

    [Fact]
    public void Vessels_BetterOnes_AreSurer()
    {
        static double Sigma(MeasuringVessel vessel) => vessel.Read(Volume.FromLiters(5)).StandardUncertainty!.Value.Liters;
        Assert.True(Sigma(MeasuringVessel.MeasuringCylinder) < Sigma(MeasuringVessel.Scale));
        Assert.True(Sigma(MeasuringVessel.SealedContainer) < Sigma(MeasuringVessel.WorkshopJug));
        Assert.True(Sigma(MeasuringVessel.WorkshopJug) < Sigma(MeasuringVessel.ByEye));
    }

    [Fact]
    public void Of_BadInput_IsRefusedByName()
    {
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => MeasuringVessel.Of(" ", 0.1, Volume.Zero)).ParamName);
        Assert.Throws<ArgumentNullException>(() => MeasuringVessel.Of(null!, 0.1, Volume.Zero));
        Assert.Equal("relativeUncertaintyFraction", Assert.Throws<ArgumentOutOfRangeException>(
            () => MeasuringVessel.Of("x", double.NaN, Volume.Zero)).ParamName);
        Assert.Equal("graduation", Assert.Throws<ArgumentOutOfRangeException>(
            () => MeasuringVessel.Of("x", 0.1, Volume.FromLiters(-1))).ParamName);
        Assert.Equal("volume", Assert.Throws<ArgumentOutOfRangeException>(
            () => MeasuringVessel.WorkshopJug.Read(Volume.FromLiters(-1))).ParamName);
    }
}
