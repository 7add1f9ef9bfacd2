using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;
using UnitsNet;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class ViscosityLineTest
{
    private static readonly ViscosityLine Multigrade = ViscosityLine.Through(Kv(110), C(40), Kv(14.5), C(100));

    [Law]
    public Property At_WarmerByAKelvin_IsThinner() =>
        Prop.ForAll(Lines().Zip(Gen.Choose(-50, 190)).ToArbitrary(), pair =>
        {
            (ViscosityLine line, int t) = pair;
            bool isInside = C(t) >= line.Coldest && C(t + 1) <= line.Warmest;
            return (!isInside || line.At(C(t)).Centistokes > line.At(C(t + 1)).Centistokes).Label($"{line} at {t}");
        });

    [Law]
    public Property At_AMeasuredPoint_GivesItBack() =>
        Prop.ForAll(Pairs().ToArbitrary(), pair =>
        {
            (double kv40, double kv100) = pair;
            ViscosityLine line = ViscosityLine.Through(Kv(kv40), C(40), Kv(kv100), C(100));

            // The printed inverse of the short Z is a fit, off by up to 2·10⁻⁴ mm²/s near 2 mm²/s.
            return (Math.Abs(line.At(C(40)).Centistokes - kv40) < 2e-4
                && Math.Abs(line.At(C(100)).Centistokes - kv100) < 2e-4).Label($"{kv40} {kv100}");
        });

    [Law]
    public Property TemperatureFor_ViscosityAt_GivesTheTemperatureBack() =>
        Prop.ForAll(Lines().Zip(Gen.Choose(-20, 150)).ToArbitrary(), pair =>
        {
            (ViscosityLine line, int t) = pair;
            Answer<Temperature> back = line.TemperatureFor(line.At(C(t)));
            return (back.IsKnown && Math.Abs(back.Value.DegreesCelsius - t) < 0.02).Label($"{line} at {t}: {back}");
        });

    [Law]
    public Property EstimateAt_FartherOutside_IsLessSure() =>
        Prop.ForAll(Gen.Choose(1, 40).Zip(Gen.Choose(1, 30)).ToArbitrary(), pair =>
        {
            (int away, int more) = pair;
            double Sigma(double t) => Multigrade.EstimateAt(C(t)).StandardUncertaintyFraction;
            return (Sigma(40 - away - more) > Sigma(40 - away) && Sigma(100 + away + more) > Sigma(100 + away)
                && Sigma(40 - away) > Sigma(40) && Sigma(100 + away) > Sigma(100)).Label($"{away} {more}");
        });

    [Law]
    public Property Kernel_NaturalAndBase10Forms_AgreeTo1E12() =>
        Prop.ForAll(Pairs().Zip(Gen.Choose(-20, 150)).ToArbitrary(), pair =>
        {
            ((double kv40, double kv100), int t) = pair;
            double natural = ViscosityLine.Through(Kv(kv40), C(40), Kv(kv100), C(100)).At(C(t)).Centistokes;
            double base10 = Base10(kv40, kv100, t);
            return (Math.Abs(natural - base10) <= 1e-12 * base10).Label($"{kv40} {kv100} {t}: {natural} {base10}");
        });

    [Fact]
    public void At_EveryCheckRow_HoldsItsTolerance()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("astm-d341-checks.csv"))
        {
            double offset = row.Number("kelvin_offset");
            (double a, double b) = D341Math.Line(
                D341Math.LnLnZ(row.Number("kv40"), false), 40 + offset, D341Math.LnLnZ(row.Number("kv100"), false), 100 + offset);
            double published = offset == 273 ? 1e-4 : 1e-6;
            Assert.Equal(row.Number("a"), D341Math.Base10A(a), published);
            Assert.Equal(row.Number("b"), b, published);
            double value = D341Math.KinematicShort(a, b, row.Number("celsius") + offset);
            double expected = row.Number("viscosity");
            Assert.True(Math.Abs(value - expected) <= row.Number("relative") * expected, $"{row["id"]}: {value} against {expected}");
            if (offset == 273.15)
            {
                ViscosityLine line = ViscosityLine.Through(Kv(row.Number("kv40")), C(40), Kv(row.Number("kv100")), C(100));
                Assert.Equal(value, line.At(C(row.Number("celsius"))).Centistokes, 9);
                Assert.Equal(row.Number("a"), line.CoefficientA, 1e-6);
                Assert.Equal(row.Number("b"), line.CoefficientB, 1e-6);
            }
        }
    }

    [Fact]
    public void TemperatureFor_AgreesWithBrentsRoot()
    {
        foreach (double kv in new[] { 5.0, 30, 500, 3000 })
        {
            double root = Brent.FindRoot(t => Base10(110, 14.5, t) - kv, -40, 180, 1e-10);
            Assert.Equal(root, Multigrade.TemperatureFor(Kv(kv)).Value.DegreesCelsius, 1e-4);
        }
    }

    [Fact]
    public void At_AgreesWithALeastSquaresLineInLogLogCoordinates()
    {
        // Second method: MathNet's regression through both points of log log (ν + 0.7) against log T, for ν where 0.7 is enough.
        double Y(double kv) => Math.Log10(Math.Log10(kv + 0.7));
        (double intercept, double slope) = Fit.Line([Math.Log10(313.15), Math.Log10(373.15)], [Y(110), Y(14.5)]);
        Assert.Equal(Math.Pow(10, Math.Pow(10, intercept + (slope * Math.Log10(343.15)))) - 0.7, Multigrade.At(C(70)).Centistokes, 1e-6);
        Assert.Equal(-slope, Multigrade.CoefficientB, 1e-9);
        Assert.Equal(intercept, Multigrade.CoefficientA, 1e-8);
    }

    [Fact]
    public void ZShort_ItsPrintedInverse_StaysWithin2E4From022()
    {
        for (double kv = 0.22; kv < 10; kv *= 1.02)
        {
            Assert.Equal(kv, D341Math.KinematicFromZShort(D341Math.ZShort(kv)), 2e-4);
        }
    }

    [Fact]
    public void ZLong_RisesAndItsInverseIsExact()
    {
        double before = 0;
        for (double kv = 0.21; kv < 30; kv *= 1.003)
        {
            double z = D341Math.ZLong(kv);
            Assert.True(z > before);
            before = z;
            Assert.Equal(kv, D341Math.KinematicFromZLong(z), 1e-9);
        }
    }

    [Fact]
    public void ZLongAndShort_From03To5_AgreeWithin04Percent()
    {
        // Constants of the long form are from memory; the short form is published in several places.
        for (double kv = 0.3; kv <= 5; kv += 0.01)
        {
            Assert.InRange(D341Math.ZLong(kv) / D341Math.ZShort(kv), 0.996, 1.004);
        }
    }

    [Fact]
    public void At_LongForm_AgreesWithShortForAnEngineOil()
    {
        ViscosityLine longForm = ViscosityLine.Through(Kv(110), C(40), Kv(14.5), C(100), D341Form.LongZ);
        Assert.Equal(Multigrade.At(C(0)).Centistokes, longForm.At(C(0)).Centistokes, 1e-6);
        Assert.Equal(D341Form.LongZ, longForm.Form);
        ViscosityLine petrol = ViscosityLine.Through(Kv(0.6), C(20), Kv(0.45), C(50), D341Form.LongZ);
        Assert.Equal(0.6, petrol.At(C(20)).Centistokes, 1e-9);
    }

    [Fact]
    public void Through_InEitherOrderAndAnyUnit_IsTheSameLine()
    {
        ViscosityLine other = ViscosityLine.Through(
            KinematicViscosity.FromSquareMetersPerSecond(14.5e-6), F(212), KinematicViscosity.FromStokes(1.1), Temperature.FromKelvins(313.15));
        Assert.Equal(Multigrade.CoefficientA, other.CoefficientA, 12);
        Assert.Equal(Multigrade.At(C(-10)).Centistokes, other.At(F(14)).Centistokes, 6);
    }

    [Fact]
    public void DynamicAt_IsKinematicTimesDensity() =>
        // ν(15 °C) 447.271 mm²/s and 880 kg/m³: 393.598 mPa·s, worked out by hand.
        Assert.Equal(393.598, Multigrade.DynamicAt(C(15), Density.FromKilogramsPerCubicMeter(880)).MillipascalSeconds, 1e-3);

    [Fact]
    public void CrankingAndPumping_AreRefusedWithTheReason()
    {
        Answer<DynamicViscosity> cranking = Multigrade.CrankingViscosityAt(C(-20));
        Answer<DynamicViscosity> pumping = Multigrade.PumpingViscosityAt(C(-25));
        Assert.False(cranking.IsKnown || pumping.IsKnown);
        Assert.Contains("A measured cranking viscosity (ASTM D5293) at -20 °C.", cranking.Missing);
        Assert.Contains(cranking.Missing, text => text.Contains("shears the polymer", StringComparison.Ordinal) && text.Contains("9419 mm²/s", StringComparison.Ordinal));
        Assert.Contains("A measured pumping viscosity (ASTM D4684) at -25 °C.", pumping.Missing);
    }

    [Fact]
    public void EstimateAt_SaysWhereItLiesAndHowSure()
    {
        Assert.True(Multigrade.EstimateAt(C(70)).IsBetweenPoints);
        Assert.False(Multigrade.EstimateAt(C(20)).IsBetweenPoints);
        Assert.False(Multigrade.EstimateAt(C(20)).IsOnlyIndicative);
        Assert.True(Multigrade.EstimateAt(C(-5)).IsOnlyIndicative);
        Assert.Contains("outside the measured points", Multigrade.EstimateAt(C(-5)).Explain(DisplayUnits.UsCustomary).ToString(), StringComparison.Ordinal);

        // At a point only that point's 1 % and the equation's 1 % count: √2 %.
        Assert.Equal(0.01 * Math.Sqrt(2), Multigrade.EstimateAt(C(40)).StandardUncertaintyFraction, 1e-6);
        Assert.Equal(0, Multigrade.EstimateAt(C(-20), 0, 0).StandardUncertaintyFraction);
    }

    [Theory]
    [InlineData(40, 0.01)]
    [InlineData(70, 0.01)]
    [InlineData(100, 0.01)]
    [InlineData(0, 0.0255919)] // ln(273.15/313.15)/ln(373.15/313.15) = -0.779593: 1.779593 + 0.779593, worked out by hand
    [InlineData(130, 0.0188225)] // ln(403.15/313.15)/ln(373.15/313.15) = 1.441124: 0.441124 + 1.441124
    public void EstimateAt_TheEquationsOwnShare_GrowsWithTheLeverArm(double celsius, double expected) =>
        Assert.Equal(expected, Multigrade.EstimateAt(C(celsius), pointUncertaintyFraction: 0).StandardUncertaintyFraction, 1e-6);

    [Fact]
    public void EstimateAt_AgreesWithMovingEachPoint()
    {
        // Second method: shift each point by its 1 % and look at the viscosity, without the equation's share.
        double at = Multigrade.At(C(0)).Centistokes;
        double first = (ViscosityLine.Through(Kv(110 * 1.01), C(40), Kv(14.5), C(100)).At(C(0)).Centistokes / at) - 1;
        double second = (ViscosityLine.Through(Kv(110), C(40), Kv(14.5 * 1.01), C(100)).At(C(0)).Centistokes / at) - 1;
        double expected = Math.Sqrt((first * first) + (second * second));
        Assert.Equal(expected, Multigrade.EstimateAt(C(0), 0.01, 0).StandardUncertaintyFraction, expected * 0.03);
    }

    [Fact]
    public void Through_OneTemperature_Throws()
    {
        ArgumentException fault = Assert.Throws<ArgumentException>("secondAt", () => ViscosityLine.Through(Kv(110), C(40), Kv(14.5), F(104)));
        Assert.Contains("one temperature gives no line", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(14.5, 110)]
    [InlineData(50, 50)]
    public void Through_NotFalling_Throws(double cold, double warm)
    {
        ArgumentException fault = Assert.Throws<ArgumentException>("second", () => ViscosityLine.Through(Kv(cold), C(40), Kv(warm), C(100)));
        Assert.Contains("must fall with temperature", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("second", () => ViscosityLine.Through(Kv(warm), C(100), Kv(cold), C(40)));
    }

    [Fact]
    public void Through_BelowTheRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("second", () => ViscosityLine.Through(Kv(1), C(40), Kv(0.2), C(100)));
        Assert.Throws<ArgumentOutOfRangeException>("first", () => ViscosityLine.Through(default, C(40), Kv(14.5), C(100)));
        Assert.Throws<ArgumentOutOfRangeException>("at", () => ViscosityLine.Through(Kv(110), default, Kv(14.5), C(100)));
        Assert.Throws<ArgumentOutOfRangeException>("secondAt", () => ViscosityLine.Through(Kv(110), C(40), Kv(14.5), C(201)));
        Assert.Throws<ArgumentOutOfRangeException>("form", () => ViscosityLine.Through(Kv(110), C(40), Kv(14.5), C(100), (D341Form)5));
    }

    [Fact]
    public void At_OutsideTheLine_ThrowsAndNamesItsRange()
    {
        ArgumentOutOfRangeException fault = Assert.Throws<ArgumentOutOfRangeException>("temperature", () => Multigrade.At(C(201)));
        Assert.Contains("from -60 to 200 °C", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => Multigrade.At(default));
        ViscosityLine petrol = ViscosityLine.Through(Kv(0.6), C(20), Kv(0.45), C(50));
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => petrol.At(C(199)));
        Assert.False(petrol.TemperatureFor(Kv(5000)).IsKnown);
        foreach (double bad in NotNumbers)
        {
            Assert.ThrowsAny<ArgumentException>(() => Multigrade.At(C(bad)));
            Assert.ThrowsAny<ArgumentException>(() => Multigrade.TemperatureFor(Kv(bad)));
            Assert.Throws<ArgumentOutOfRangeException>("pointUncertaintyFraction", () => Multigrade.EstimateAt(C(20), bad));
            Assert.Throws<ArgumentOutOfRangeException>("modelUncertaintyFraction", () => Multigrade.EstimateAt(C(20), 0.01, bad));
        }

        Assert.Throws<ArgumentOutOfRangeException>("densityAtTemperature", () => Multigrade.DynamicAt(C(20), default));
    }

    internal static Gen<(double Kv40, double Kv100)> Pairs() =>
        from kv100 in Gen.Choose(20, 300)
        from ratio in Gen.Choose(25, 120)
        select (kv100 / 10.0 * ratio / 10.0, kv100 / 10.0);

    private static Gen<ViscosityLine> Lines() => Pairs().Select(pair => ViscosityLine.Through(Kv(pair.Kv40), C(40), Kv(pair.Kv100), C(100)));

    /// <summary>The equation as ASTM D341 prints it, in base 10.</summary>
    private static double Base10(double kv40, double kv100, double celsius)
    {
        double Y(double kv) => Math.Log10(Math.Log10(kv + 0.7 + Math.Exp(-1.47 - (1.84 * kv) - (0.51 * kv * kv))));
        double b = (Y(kv40) - Y(kv100)) / (Math.Log10(373.15) - Math.Log10(313.15));
        double a = Y(kv40) + (b * Math.Log10(313.15));
        double w = Math.Pow(10, Math.Pow(10, a - (b * Math.Log10(celsius + 273.15)))) - 0.7;
        return w - Math.Exp(-0.7487 - (3.295 * w) + (0.6119 * w * w) - (0.3193 * w * w * w));
    }
}
