using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Belts;
using UnitsNet;

namespace MarineService.Core.Tests.Belts;

/// <summary>Layout S07 worked through: crank 3000 rpm, six ribs at 0.018 kg/m, 400 N at the tensioner. Worked out independently.</summary>
public sealed class TensionCheckTest
{
    private static readonly RotationalSpeed Crank = RotationalSpeed.FromRevolutionsPerMinute(3000);

    [Fact]
    public void S07_AtSpeed_GivesTheWorkedPullsAndRatios()
    {
        TensionCheck check = At(400);
        Assert.Equal(27.331856, check.BeltSpeed.MetersPerSecond, 5e-7);
        Assert.Equal(80.6793, check.CentrifugalPull.Newtons, 5e-5);
        (string Name, double Pull, double In, double Out, double Ratio, double Mu, double? Limit)[] rows =
        [
            ("CRK", -226.8415, 626.8415, 400, 1.567104, 0.157604, 3.5176),
            ("TEN", 0, 400, 400, 1, 0, null),
            ("RWP", 32.9286, 400.0000, 432.9286, 1.082322, 0.033355, 2.8478),
            ("ALT", 102.4446, 432.9286, 535.3732, 1.236632, 0.103120, 2.4815),
            ("WP", 25.6111, 535.3732, 560.9843, 1.047838, 0.026757, 1.6886),
            ("PS", 65.8572, 560.9843, 626.8415, 1.117396, 0.031111, 4.8278),
            ("IDL", 0, 626.8415, 626.8415, 1, 0, null),
        ];
        for (int i = 0; i < rows.Length; i++)
        {
            PulleyTension pulley = check.Pulleys[i];
            Assert.Equal(rows[i].Name, pulley.PulleyName);
            Assert.Equal(rows[i].Pull, pulley.TurningPull.Newtons, 5e-5);
            Assert.Equal(rows[i].In, pulley.ArrivingPull.Newtons, 6e-5);
            Assert.Equal(rows[i].Out, pulley.LeavingPull.Newtons, 6e-5);
            Assert.Equal(rows[i].Ratio, pulley.WorkingRatio, 6e-7);
            Assert.Equal(rows[i].Mu, pulley.FrictionNeededRatio, 6e-7);
            if (rows[i].Limit is double limit)
            {
                Assert.Equal(limit, pulley.LimitRatio, 6e-5);
            }
        }
    }

    [Fact]
    public void LeastPull_IsTheWorkedOne_AndTheCrankDecides()
    {
        TensionCheck check = At(400);
        Assert.Equal(90.10, check.LeastPull.Newtons, 0.005);
        Assert.Equal("CRK", check.DecidingPulley);
        Assert.True(check.Holds);
    }

    [Fact]
    public void LeastPull_ForTheAlternatorAlone_IsTheWorkedOne()
    {
        // 102.4446 N over a wrap of 118.0094 degrees, less the 32.9286 N that the pump adds before it: 36.22 N.
        double needed = TensionMath.LeastSlackNewtons(102.4446, Math.Log(4) / Math.PI, 118.009408320 * Math.PI / 180);
        Assert.Equal(36.22, needed - 32.9286, 0.01);
    }

    [Theory]
    [InlineData(91, true)]
    [InlineData(89, false)]
    public void Findings_EachSideOfTheLeastPull_AreNoneOrSlip(double newtons, bool holds)
    {
        TensionCheck check = At(newtons);
        Assert.Equal(holds, check.Holds);
        if (!holds)
        {
            Finding finding = Assert.Single(check.Findings);
            Assert.Equal("BELT-060", finding.Code);
            Assert.Contains("CRK", finding.Subject, StringComparison.Ordinal);
            Assert.Contains("90 N", finding.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void StandingFrequencies_AreTheWorkedOnes()
    {
        double[] hertz = [529.0797, 365.852, 145.6869, 156.9638, 157.3432, 199.4264, 474.6137];
        TensionCheck check = At(400);
        for (int i = 0; i < hertz.Length; i++)
        {
            Assert.Equal(hertz[i], check.StandingFrequency(i).Value.Hertz, i == 1 ? 5e-4 : 5e-5);
        }
    }

    [Fact]
    public void RunningSpan_SoundsLower_AsWorked()
    {
        Assert.Equal(159.705, TensionMath.Hertz(480.6793, 0.108, 0.208865985742), 5e-4);
        Assert.Equal(132.899, TensionMath.RunningHertz(480.6793, 0.108, 0.208865985742, 27.331856), 5e-4);
    }

    [Fact]
    public void Note_OfTheLongestSpan_GivesTheSpringsPullBack()
    {
        BeltRouting routing = Routing();
        SpanTensionReading reading = routing.TensionFromNote(2, Frequency.FromHertz(145.6869)).Value;
        Assert.Equal(400, reading.Pull.Newtons, 5e-4);
        Assert.False(reading.StandardUncertainty.IsKnown);
        Assert.Empty(reading.CompareWith(At(400)));
    }

    [Fact]
    public void Note_OnePercentOut_IsTwoPercentOfPull()
    {
        SpanTensionReading reading = Routing().TensionFromNote(2, Frequency.FromHertz(145.6869 * 1.01)).Value;
        Assert.Equal(400 * 1.0201, reading.Pull.Newtons, 1e-3);
    }

    [Fact]
    public void Notes_OfSeveralReadings_TakeTheMedianAndSayTheirSpread()
    {
        SpanTensionReading reading = Routing().TensionFromNote(
            2, Frequency.FromHertz(144), Frequency.FromHertz(145.6869), Frequency.FromHertz(290)).Value;
        Assert.Equal(400, reading.Pull.Newtons, 5e-4);
        Assert.True(reading.StandardUncertainty.Value.Newtons > 100);
        Assert.Equal("BELT-064", Assert.Single(reading.CompareWith(At(400))).Code);
    }

    [Fact]
    public void Note_TooLow_IsTooLoose()
    {
        SpanTensionReading reading = Routing().TensionFromNote(2, Frequency.FromHertz(60)).Value;
        Assert.Equal("BELT-063", Assert.Single(reading.CompareWith(At(400))).Code);
    }

    [Theory]
    [InlineData(300, 20, 3)]
    [InlineData(500, 45, 12)]
    public void Deflection_BalancesTheForce(double spanMm, double newtons, double deflectionMm)
    {
        // Statics by angles: each half pulls with the sine of its slope.
        double slope = Math.Atan(deflectionMm / (spanMm / 2));
        double pull = newtons / (2 * Math.Sin(slope));
        SpanTensionReading reading = SpanTensionReading.FromDeflection(
            Length.FromMillimeters(spanMm), Force.FromNewtons(newtons), Length.FromMillimeters(deflectionMm));
        Assert.Equal(pull, reading.Pull.Newtons, 1e-9 * pull);
    }

    [Fact]
    public void Missing_Loads_AreNamed_AndIdlersNeedNone()
    {
        BeltDrive drive = Layouts.S07WithArm().WithBelt(RibbedBelt.Pk(6).WithThickness(2, 1.2, 4.8));
        Answer<TensionCheck> check = drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL").CheckTension(Crank, Force.FromNewtons(400));
        Assert.False(check.IsKnown);
        Assert.Equal(5, check.Missing.Count);
        Assert.Contains(check.Missing, text => text.Contains("'RWP'", StringComparison.Ordinal));
        Assert.DoesNotContain(check.Missing, text => text.Contains("'TEN'", StringComparison.Ordinal));
    }

    [Fact]
    public void Spring_GivesTheSameCheckAsItsPull()
    {
        BeltDrive drive = Drive(Tensioner.Automatic("TEN", -222, -31, -20, 45).WithSpring(Torque.FromNewtonMeters(33.3069299396)))
            .WithBelt(RibbedBelt.Pk(6, Length.FromMillimeters(1907.658958675)).WithThickness(2, 1.2, 4.8));
        TensionCheck check = Whole(drive).CheckSpringTension(Crank).Value;
        Assert.Equal(400, check.GivenPull.Newtons, 1e-5);
        Assert.Equal(90.10, check.LeastPull.Newtons, 0.005);
    }

    [Fact]
    public void FixedCenters_TwoEqualSpans_KeepTheTextbookSum()
    {
        // T1' + T2' = 2 (T0 - m v²) for two pulleys: textbook.
        BeltDrive drive = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise)
            .Grooved("crank", 0, 0, 150)
            .Add(Pulley.Grooved("pump", 400, 0, 90).WithLoad(Power.FromKilowatts(2)))
            .WithBelt(RibbedBelt.Pk(5))
            .Build();
        TensionCheck check = drive.Route("crank", "pump").CheckTension(Crank, Force.FromNewtons(500)).Value;
        Assert.False(check.IsHeldBySpring);
        double sum = check.Pulleys[1].ArrivingPull.Newtons + check.Pulleys[1].LeavingPull.Newtons;
        Assert.Equal(2 * (500 - check.CentrifugalPull.Newtons), sum, 1e-9);
        Assert.Equal(2000 / check.BeltSpeed.MetersPerSecond, check.Pulleys[1].LeavingPull.Newtons - check.Pulleys[1].ArrivingPull.Newtons, 1e-9);

        TensionCheck least = drive.Route("crank", "pump").CheckTension(Crank, check.LeastPull).Value;
        Assert.Equal(0, least.Pulleys.Min(pulley => pulley.SlipMarginRatio), 1e-9);
    }

    [Fact]
    public void Speed_AboveFifty_IsFound() =>
        Assert.Contains(
            Whole(Drive(Arm())).CheckTension(RotationalSpeed.FromRevolutionsPerMinute(5600), Force.FromNewtons(900)).Value.Findings,
            finding => finding.Code == "BELT-062");

    [Law]
    public Property MorePull_NeverLosesSlipMargin() =>
        Prop.ForAll(
            Gen.Choose(0, 2000).Two().Zip(Gen.Choose(100, 500).Two()).ToArbitrary(),
            sample =>
            {
                ((int a, int b), (int alternator, int pump)) = sample;
                BeltDrive drive = Drive(Arm(), alternator / 100.0, pump / 100.0);
                TensionCheck slack = Whole(drive).CheckTension(Crank, Force.FromNewtons(Math.Min(a, b))).Value;
                TensionCheck tight = Whole(drive).CheckTension(Crank, Force.FromNewtons(Math.Max(a, b))).Value;
                bool holds = slack.LeastPull.Newtons >= 0;
                for (int i = 0; i < slack.Pulleys.Count; i++)
                {
                    holds &= tight.Pulleys[i].SlipMarginRatio >= slack.Pulleys[i].SlipMarginRatio - 1e-12;
                }

                return holds.Label($"{a} N, {b} N, loads {alternator} and {pump}");
            });

    [Law]
    public Property LeastPull_IsWhereTheWorstMarginIsZero() =>
        Prop.ForAll(
            Gen.Choose(50, 500).Two().ToArbitrary(),
            loads =>
            {
                BeltDrive drive = Drive(Arm(), loads.Item1 / 100.0, loads.Item2 / 100.0);
                Force least = Whole(drive).CheckTension(Crank, Force.FromNewtons(400)).Value.LeastPull;
                double worst = Whole(drive).CheckTension(Crank, least).Value.Pulleys.Min(pulley => pulley.SlipMarginRatio);
                return (Math.Abs(worst) < 1e-9).Label($"loads {loads}: margin {worst} at {least}");
            });

    private static Tensioner Arm() => Tensioner.Automatic("TEN", -222, -31, -20, 45);

    private static BeltDrive Drive(Tensioner tensioner, double alternator = 2.8, double pump = 0.9)
    {
        BeltDrive drive = Layouts.Builder("S07").WithTensioner(tensioner).WithBelt(RibbedBelt.Pk(6).WithThickness(2, 1.2, 4.8)).Build();
        (string Name, double Kilowatts)[] loads = [("RWP", pump), ("ALT", alternator), ("WP", 0.7), ("PS", 1.8), ("IDL", 0)];
        return loads.Aggregate(drive, (built, load) => built.WithPulley(built.Find(load.Name)!.WithLoad(Power.FromKilowatts(load.Kilowatts))));
    }

    private static BeltRouting Whole(BeltDrive drive) => drive.Route("CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL");

    private static BeltRouting Routing() => Whole(Drive(Arm()));

    private static TensionCheck At(double newtons) => Routing().CheckTension(Crank, Force.FromNewtons(newtons)).Value;
}
