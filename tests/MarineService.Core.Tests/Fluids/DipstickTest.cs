using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Fluids;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Tests.Fluids;

public sealed class DipstickTest
{
    private static SumpShape Shape => SumpShape.Rectangular(Length.FromMeters(0.60), Length.FromMeters(0.30));

    private static SumpShape OffCenter => Shape.WithStickAt(Length.FromMeters(0.20), Length.FromMeters(0.10));

    private static Angle Degrees(double value) => Angle.FromDegrees(value);

    [Law]
    public Property Correction_StickAtTheCenter_IsNothingWhateverTheTilt() =>
        Prop.ForAll(
            Gen.Choose(-80, 80).Zip(Gen.Choose(-80, 80)).ToArbitrary(),
            t =>
            {
                (int pitch, int roll) = t;
                TiltCorrection correction = Shape.CorrectionFor(Degrees(pitch / 10.0), Degrees(roll / 10.0), Volume.FromLiters(20)).Value;
                return (correction.DepthError.Millimeters == 0 && correction.VolumeError.Liters == 0).Label($"{pitch} {roll}");
            });

    [Law]
    public Property Correction_OppositeTilt_IsOpposite() =>
        Prop.ForAll(
            Gen.Choose(-80, 80).Zip(Gen.Choose(-80, 80)).ToArbitrary(),
            t =>
            {
                (int pitch, int roll) = t;
                double one = OffCenter.CorrectionFor(Degrees(pitch / 10.0), Degrees(roll / 10.0), Volume.FromLiters(20)).Value.DepthError.Millimeters;
                double other = OffCenter.CorrectionFor(Degrees(-pitch / 10.0), Degrees(-roll / 10.0), Volume.FromLiters(20)).Value.DepthError.Millimeters;
                return (Math.Abs(one + other) < 1e-9).Label($"{one} {other}");
            });

    [Fact]
    public void VolumeBetweenMarks_RectangularSump_AgreesWithTheCheckValue() =>
        // DP-1.
        Assert.Equal(CheckValue.Numbers("DP-1")[0], Shape.VolumeBetweenMarks(Length.FromMillimeters(25)).Liters, 1e-9);

    // DP-2 and DP-3, derived: 200·tan 3° = 10.4816 mm; 100·tan 2° more.
    [Theory]
    [InlineData("DP-2", 3.0, 0.0)]
    [InlineData("DP-3", 3.0, 2.0)]
    public void Correction_OffCenterStick_AgreesWithTheCheckValue(string id, double pitch, double roll)
    {
        double[] expected = CheckValue.Numbers(id);
        TiltCorrection correction = OffCenter.CorrectionFor(Degrees(pitch), Degrees(roll), Volume.FromLiters(8)).Value;
        Assert.Equal(expected[0], correction.DepthError.Millimeters, 1e-4);
        Assert.Equal(expected[1], correction.VolumeError.Liters, 2e-5);
        Assert.Contains("too high", correction.Explain(DisplayUnits.Metric).Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Correction_HighCornerDryOrLowCornerFull_IsNotKnown()
    {
        // At 5° the corners differ from the center by 300·tan 5° = 26.247 mm, which is 4.724 L over 0.18 m².
        Assert.True(OffCenter.CorrectionFor(Degrees(5), Degrees(0), Volume.FromLiters(4.73)).IsKnown);
        Assert.False(OffCenter.CorrectionFor(Degrees(5), Degrees(0), Volume.FromLiters(4.72)).IsKnown);
        SumpShape low = SumpShape.Rectangular(Length.FromMeters(0.60), Length.FromMeters(0.30), Length.FromMillimeters(60));
        Assert.True(low.CorrectionFor(Degrees(5), Degrees(0), Volume.FromLiters(6.07)).IsKnown);
        Assert.False(low.CorrectionFor(Degrees(5), Degrees(0), Volume.FromLiters(6.08)).IsKnown);
        Assert.False(OffCenter.CorrectionFor(Degrees(15.1), Degrees(0), Volume.FromLiters(50)).IsKnown);
    }

    [Fact]
    public void LeaningStick_CoversLessDepthThanLength()
    {
        SumpShape leaning = Shape.WithStickAt(Length.Zero, Length.Zero, Degrees(60));
        Assert.Equal(2.25, leaning.VolumeBetweenMarks(Length.FromMillimeters(25)).Liters, 1e-9);
    }

    [Fact]
    public void KeptByTilt_OneSlope_IsTheWedge()
    {
        // Drain at the aft edge, bow down 2°: wedge of 600 mm run, 300 mm wide: 300·600²·tan 2°/2 mm³ = 1.8857 L.
        Volume kept = Shape.KeptByTilt(Length.FromMeters(0.30), Length.Zero, Degrees(-2), Degrees(0));
        Assert.Equal(0.300 * 0.600 * 0.600 * Math.Tan(2 * Math.PI / 180) / 2 * 1000, kept.Liters, 1e-9);
        Assert.Equal(0, Shape.KeptByTilt(Length.FromMeters(0.30), Length.Zero, Degrees(2), Degrees(0)).Liters, 1e-12);
        Assert.Equal(0, Shape.KeptByTilt(Length.FromMeters(0.10), Length.Zero, Degrees(0), Degrees(0)).Liters, 1e-12);
    }

    [Law]
    public Property KeptByTilt_BothSlopes_AgreesWithAGridSum() =>
        Prop.ForAll(
            Gen.Choose(-100, 100).Four().ToArbitrary(),
            t =>
            {
                (int a, int b, int c, int d) = t;
                double xDrain = 300.0 * a / 100;
                double yDrain = 150.0 * b / 100;
                double pitch = 5.0 * c / 100;
                double roll = 5.0 * d / 100;
                double kept = Shape.KeptByTilt(Length.FromMillimeters(xDrain), Length.FromMillimeters(yDrain), Degrees(pitch), Degrees(roll)).Liters;
                double p = Math.Tan(pitch * Math.PI / 180);
                double q = Math.Tan(roll * Math.PI / 180);
                const int N = 120;
                double sum = 0;
                for (int i = 0; i < N; i++)
                {
                    for (int j = 0; j < N; j++)
                    {
                        double x = -300 + (i + 0.5) * 600 / N;
                        double y = -150 + (j + 0.5) * 300 / N;
                        // Positive pitch puts the stern (+x) down, so the floor lies deeper there.
                        sum += Math.Max(0, p * (x - xDrain) + q * (y - yDrain));
                    }
                }

                double byGrid = sum * 600 * 300 / (N * N) / 1e6;
                return (Math.Abs(kept - byGrid) < 0.002 * byGrid + 0.0005).Label($"{kept} {byGrid}");
            });

    [Fact]
    public void ReadAt_HeightOnTheStick_GivesItsPlaceBetweenTheMarks()
    {
        Dipstick stick = Dipstick.FromMarks(Length.FromMillimeters(20), Length.FromMillimeters(45), Shape);
        Assert.Equal(4.5, stick.RangeVolume.Liters, 1e-9);
        DipstickReading reading = stick.ReadAt(Length.FromMillimeters(35)).Value;
        Assert.Equal(0.6, reading.RangeFraction, 1e-12);
        Assert.Equal(1.0 / 25, reading.StandardUncertaintyFraction, 1e-12);
        Assert.False(Dipstick.WithRange(Volume.FromLiters(1)).ReadAt(Length.FromMillimeters(35)).IsKnown);
        Assert.False(Dipstick.FromMarks(Length.FromMillimeters(45), Length.FromMillimeters(20), Shape).ReadAt(Length.FromMillimeters(35)).IsKnown);
    }

    [Fact]
    public void CalibratedBy_GoodFill_OutweighsTheBook()
    {
        // Book 1.0 ± 0.2 L; 0.60 ± 0.01 L moved the level by 0.5: 1.2 L ± √(0.01² + (0.01·√2·1.2)²)/0.5 = ± 0.0394 L.
        // Weights 1/0.04 and 1/0.001552: (1.0·25 + 1.2·644.3)/669.3 = 1.19253 L ± 0.03865 L.
        Dipstick book = Dipstick.WithRange(Volume.FromLiters(1.0), Volume.FromLiters(0.2));
        MeasuredVolume fill = MeasuredVolume.Of(Volume.FromLiters(0.6), Temperature.FromDegreesCelsius(15), Volume.FromLiters(0.01));
        Dipstick measured = book.CalibratedBy(fill, DipstickReading.OfRange(0.2, 0.01), DipstickReading.OfRange(0.7, 0.01)).Value;
        Assert.Equal(1.19253, measured.RangeVolume.Liters, 0.0002);
        Assert.Equal(0.03865, measured.RangeStandardUncertainty.Liters, 0.0002);
        Assert.True(measured.RangeStandardUncertainty.Liters < book.RangeStandardUncertainty.Liters);
        Assert.False(book.CalibratedBy(fill, DipstickReading.OfRange(0.2), DipstickReading.OfRange(0.4)).IsKnown);
    }

    [Fact]
    public void WallFilm_CheckValue_Agrees()
    {
        // FL-11: ν 33.638 mm²/s, 0.30 m, 600 s: 41.41 µm; two thirds of it is 27.61 mL/m².
        WallFilm film = WallFilm.Of(KinematicViscosity.FromCentistokes(33.638), Length.FromMeters(0.30), Area.FromSquareMeters(1));
        Assert.Equal(41.41, film.ThicknessAfter(Duration.FromSeconds(600)).Micrometers, 0.01);
        Assert.Equal(27.61, film.VolumeAfter(Duration.FromSeconds(600)).Milliliters, 0.01);
        Assert.Equal(600, film.TimeUntil(film.VolumeAfter(Duration.FromSeconds(600))).TotalSeconds, 0.001);
        Assert.Contains("clings", film.Explain(Duration.FromMinutes(10), DisplayUnits.Metric).Answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-5.01)]
    [InlineData(10.01)]
    public void OfRange_PlaceOutsideItsRange_IsRefused(double place) =>
        Assert.Equal("rangeFraction", Assert.Throws<ArgumentOutOfRangeException>(() => DipstickReading.OfRange(place)).ParamName);

    [Fact]
    public void Readings_OtherBadInput_IsRefusedByName()
    {
        DipstickReading reading = DipstickReading.OfRange(0.5);
        Assert.Equal("standardUncertaintyFraction", Assert.Throws<ArgumentOutOfRangeException>(() => DipstickReading.OfRange(0.5, -0.1)).ParamName);
        Assert.Equal("temperature", Assert.Throws<ArgumentOutOfRangeException>(() => reading.WithOilAt(default)).ParamName);
        Assert.Equal("settled", Assert.Throws<ArgumentOutOfRangeException>(() => reading.SettledFor(Duration.FromSeconds(-1))).ParamName);
        Assert.Equal("seating", Assert.Throws<ArgumentOutOfRangeException>(() => reading.With((StickSeating)9)).ParamName);
        Assert.Equal("attitude", Assert.Throws<ArgumentOutOfRangeException>(() => reading.With((BoatAttitude)9)).ParamName);
        Assert.Equal("pitch", Assert.Throws<ArgumentOutOfRangeException>(() => reading.Tilted(Degrees(46), Degrees(0))).ParamName);
    }

    [Fact]
    public void Sticks_OtherBadInput_IsRefusedByName()
    {
        Assert.Equal("range", Assert.Throws<ArgumentOutOfRangeException>(() => Dipstick.WithRange(Volume.Zero)).ParamName);
        Assert.Equal("standardUncertainty", Assert.Throws<ArgumentOutOfRangeException>(
            () => Dipstick.WithRange(Volume.FromLiters(1), Volume.FromLiters(-1))).ParamName);
        Assert.Equal("oilTemperature", Assert.Throws<ArgumentOutOfRangeException>(
            () => Dipstick.WithRange(Volume.FromLiters(1)).MarkedForHotOil(Temperature.FromDegreesCelsius(20))).ParamName);
        Assert.Throws<ArgumentNullException>(() => Dipstick.FromMarks(Length.Zero, Length.FromMillimeters(1), null!));
        Assert.Equal("length", Assert.Throws<ArgumentOutOfRangeException>(() => SumpShape.Rectangular(Length.Zero, Length.FromMeters(1))).ParamName);
        Assert.Equal("aft", Assert.Throws<ArgumentOutOfRangeException>(() => Shape.WithStickAt(Length.FromMeters(0.31), Length.Zero)).ParamName);
        Assert.Equal("pitch", Assert.Throws<ArgumentOutOfRangeException>(
            () => Shape.CorrectionFor(Degrees(90), Degrees(0), Volume.FromLiters(5))).ParamName);
        Assert.Equal("oil", Assert.Throws<ArgumentOutOfRangeException>(() => Shape.CorrectionFor(Degrees(1), Degrees(0), Volume.Zero)).ParamName);
        Assert.Equal("viscosity", Assert.Throws<ArgumentOutOfRangeException>(
            () => WallFilm.Of(default, Length.FromMeters(0.3), Area.FromSquareMeters(1))).ParamName);
        Assert.Equal("after", Assert.Throws<ArgumentOutOfRangeException>(
            () => WallFilm.Of(KinematicViscosity.FromCentistokes(30), Length.FromMeters(0.3), Area.FromSquareMeters(1)).VolumeAfter(Duration.Zero)).ParamName);
    }
}
