using MarineService.Core.Belts;
using UnitsNet;

namespace MarineService.Core.Tests.Belts;

/// <summary>The seven-pulley layout with everything known, right and with one mistake of each kind.</summary>
public sealed class BeltExaminationTest
{
    private static readonly string[] Order = ["CRK", "TEN", "RWP", "ALT", "WP", "PS", "IDL"];
    private static readonly RotationalSpeed Speed = RotationalSpeed.FromRevolutionsPerMinute(3000);

    [Fact]
    public void Right_IsFine_WithReleaseTakeUpAndLeastPull()
    {
        BeltExamination seen = BeltExamination.Of(Drive().EngineRouting.Value, Speed);
        Assert.True(seen.IsFine, seen.Explain(DisplayUnits.Metric).ToString());
        Assert.True(seen.Comparison.Value.IsSame);
        Assert.Equal(Rotation.Of(Sense.Clockwise, Viewpoint.PulleyEnd), seen.Check.Tensioner.Value.Release.Value);

        // 90.10 N by hand for the same loads; take-up from the tensioner table: 1937.526626 mm at the stop, 1910 mm of belt.
        Assert.Equal(90.10, seen.LeastPull.Value.Newtons, 0.005);
        Assert.Equal("CRK", seen.DecidingPulley.Value);
        Assert.Equal(1937.526626 - 1910, seen.Check.Tensioner.Value.TakeUpLeft.Value.Millimeters, 1e-5);
        Assert.True(seen.Tension.Value.Holds);
        Assert.True(seen.Alignment.Value.IsFine);
        Assert.StartsWith("The belt lies as the engine's routing says.", seen.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("TEN")]
    [InlineData("RWP")]
    [InlineData("ALT")]
    [InlineData("WP")]
    [InlineData("PS")]
    [InlineData("IDL")]
    public void Missed_IsFoundAndNamed(string missed)
    {
        BeltExamination seen = BeltExamination.Of(Drive().Route([.. Order.Where(name => name != missed)]), Speed);
        Assert.False(seen.IsFine);
        Assert.Contains(seen.Findings, finding => finding.Rule == ComparisonRules.Missed && finding.Subject == $"pulley '{missed}'");
        RoutingEdit edit = Assert.Single(seen.Comparison.Value.Edits);
        Assert.Equal((RoutingEditKind.Insert, missed), (edit.Kind, edit.PulleyName));
    }

    [Theory]
    [InlineData("TEN", "ribs")]
    [InlineData("RWP", "back")]
    [InlineData("ALT", "back")]
    [InlineData("WP", "ribs")]
    [InlineData("PS", "back")]
    [InlineData("IDL", "ribs")]
    public void WrongFace_IsFoundAndNamed(string pulley, string face)
    {
        BeltExamination seen = BeltExamination.Of(Drive().Route([.. Order.Select(name => name == pulley ? $"{name}({face})" : name)]), Speed);
        Assert.False(seen.IsFine);
        Assert.Contains(seen.Findings, finding => finding.Rule == ComparisonRules.FaceDiffers && finding.Subject == $"pulley '{pulley}'");
        Assert.Contains(seen.Findings, finding => finding.Rule == BeltRules.WrongFace && finding.Subject == $"pulley '{pulley}'");
        RoutingEdit edit = Assert.Single(seen.Comparison.Value.Edits);
        Assert.Equal((RoutingEditKind.TurnOver, pulley), (edit.Kind, edit.PulleyName));
    }

    [Theory]
    [InlineData("TEN", "RWP")]
    [InlineData("RWP", "ALT")]
    [InlineData("ALT", "WP")]
    [InlineData("WP", "PS")]
    [InlineData("PS", "IDL")]
    public void Swapped_IsFoundAndNamed(string first, string second)
    {
        BeltExamination seen = BeltExamination.Of(
            Drive().Route([.. Order.Select(name => name == first ? second : name == second ? first : name)]), Speed);
        Assert.False(seen.IsFine);
        Assert.Contains(seen.Findings, finding => finding.Rule == ComparisonRules.Swapped);
        RoutingEdit edit = Assert.Single(seen.Comparison.Value.Edits);
        Assert.Equal(RoutingEditKind.Swap, edit.Kind);
        Assert.Equal(new[] { first, second }.Order(), new[] { edit.PulleyName, edit.OtherName! }.Order());
    }

    [Fact]
    public void WrongSenseOfAPump_IsFound_WhereverItIsSeenFrom()
    {
        BeltDrive drive = Drive();
        BeltDrive backwards = drive.WithPulley(drive.Find("RWP")!.WithRequiredRotation(Rotation.Of(Sense.Clockwise, Viewpoint.FlywheelEnd)));
        Finding finding = Assert.Single(BeltExamination.Of(backwards.EngineRouting.Value, Speed).Findings, found => found.Rule == BeltRules.WrongRotation);
        Assert.Equal("pulley 'RWP'", finding.Subject);
        BeltDrive right = drive.WithPulley(drive.Find("RWP")!.WithRequiredRotation(Rotation.Of(Sense.CounterClockwise, Viewpoint.FlywheelEnd)));
        Assert.True(BeltExamination.Of(right.EngineRouting.Value, Speed).IsFine);
    }

    [Theory]
    [InlineData(1800, "BELT-013")]
    [InlineData(2000, "BELT-012")]
    public void WrongBelt_IsFound(double lengthMm, string code)
    {
        BeltDrive drive = Drive();
        BeltExamination seen = BeltExamination.Of(drive.WithBelt(drive.Belt.OfEffectiveLength(Length.FromMillimeters(lengthMm))).EngineRouting.Value, Speed);
        Assert.Contains(seen.Findings, finding => finding.Code == code);
        Assert.False(seen.Tension.IsKnown);
        Assert.True(seen.LeastPull.IsKnown);
    }

    [Fact]
    public void PulleyOutOfLine_IsFound()
    {
        // 0.58 mm for each 100 mm of span (SAE J1596, as summarized by others): 208.9 mm of span allow 1.21 mm.
        BeltDrive drive = Drive();
        Assert.True(BeltExamination.Of(drive.WithPulley(drive.Find("ALT")!.WithAxialPosition(1.20)).EngineRouting.Value, Speed).Alignment.Value.Findings.Count == 0);
        BeltExamination seen = BeltExamination.Of(drive.WithPulley(drive.Find("ALT")!.WithAxialPosition(1.22)).EngineRouting.Value, Speed);
        Assert.Contains(seen.Findings, finding => finding.Rule == AlignmentRules.EntryAngle && finding.Subject == "pulley 'ALT'");
    }

    [Fact]
    public void WeakSpring_IsFound()
    {
        BeltDrive drive = Drive(torqueNewtonMeters: 6);
        BeltExamination seen = BeltExamination.Of(drive.EngineRouting.Value, Speed);
        Assert.Contains(seen.Findings, finding => finding.Rule == TensionRules.Slips && finding.Subject == "pulley 'CRK'");
    }

    [Fact]
    public void UnknownParts_SayWhatIsMissing()
    {
        BeltDrive bare = Layouts.Drive("S07");
        BeltExamination seen = BeltExamination.Of(bare.Route(Order), Speed);
        Assert.True(seen.IsFine);
        Assert.False(seen.Comparison.IsKnown);
        Assert.False(seen.Alignment.IsKnown);
        Assert.Contains("The number of ribs of the belt.", seen.LeastPull.Missing);
        Assert.Contains("The power that 'RWP' takes from the belt.", seen.LeastPull.Missing);
        Assert.StartsWith("The belt closes; effective length 1907.7 mm.", seen.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ImpossibleBelt_HasNoPulls()
    {
        BeltExamination seen = BeltExamination.Of(Drive().Route("CRK", "TEN", "ALT", "RWP", "WP", "PS", "IDL"), Speed);
        Assert.Equal(["A routing that closes."], seen.LeastPull.Missing);
        Assert.Equal(["A routing that closes."], seen.Tension.Missing);
    }

    private static BeltDrive Drive(double torqueNewtonMeters = 33.307)
    {
        BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise).WithCentersKnownTo(0)
            .WithBelt(RibbedBelt.Pk(6, Length.FromMillimeters(1910)).WithThickness(2, 1.2, 4.8))
            .WithTensioner(Tensioner.Automatic("TEN", -222, -31, -20, 45).WithSpring(Torque.FromNewtonMeters(torqueNewtonMeters)))
            .RoutedAs(Order);
        Dictionary<string, double> kilowatts = new() { ["RWP"] = 0.9, ["ALT"] = 2.8, ["WP"] = 0.7, ["PS"] = 1.8, ["IDL"] = 0, ["TEN"] = 0 };
        foreach (Pulley pulley in Layouts.Drive("S07").Pulleys)
        {
            Pulley placed = pulley.WithAxialPosition(0);
            builder = builder.Add(kilowatts.TryGetValue(pulley.Name, out double load) ? placed.WithLoad(Power.FromKilowatts(load)) : placed);
        }

        return builder.Build();
    }
}
