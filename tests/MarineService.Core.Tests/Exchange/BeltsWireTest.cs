using System.Text;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Belts;
using MarineService.Core.Exchange;
using MarineService.Core.Specifications;
using MarineService.Core.Tests.Belts;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

public sealed class BeltsWireTest
{
    private const string Crank = """{ "name": "crank", "rim": "grooved", "center": { "x": 0, "y": 0, "unit": "mm" }, "effectiveDiameter": { "value": 170, "unit": "mm" } }""";
    private const string Pump = """{ "name": "pump", "rim": "grooved", "center": { "x": 0, "y": 300, "unit": "mm" }, "effectiveDiameter": { "value": 120, "unit": "mm" } }""";
    private const string Idler = """{ "name": "idler", "rim": "smooth", "center": { "x": 200, "y": 150, "unit": "mm" }, "outsideDiameter": { "value": 80, "unit": "mm" } }""";
    private const string Turns = """ "crankTurns": { "sense": "clockwise", "seenFrom": "pulley-end" } """;
    private const string Arm = """ "pulley": "idler", "pivot": { "x": 250, "y": 100, "unit": "mm" }, "clockwiseStop": { "value": 100, "unit": "deg" }, "counterClockwiseStop": { "value": 170, "unit": "deg" } """;

    [Law]
    public Property Sheet_WithADrive_ReadsBackAsItWasWritten() => Prop.ForAll(RandomDrives.Seeds, seed =>
    {
        BeltDrive drive = Dressed(new Random(seed));
        string text = EngineSpecificationJson.ToText(EngineSpecification.Named("Brae 16D").WithBeltDrive(drive));
        ReadResult<EngineSpecification> back = EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(text));
        return (back.IsRead
            && EngineSpecificationJson.ToText(back.Value) == text
            && IsSame(back.Value.BeltDrive!, drive)).Label(text + "\n" + string.Join("\n", back.Faults));
    });

    [Fact]
    public void Sheet_AsPeopleWriteIt_IsRead()
    {
        BeltDrive drive = EngineSpecificationJson.Read(GoldenDocuments.Read("Documents/v1/engine-specification-belt.json")).Value.BeltDrive!;
        Assert.Equal("6PK1910", drive.Belt.ToString());
        Assert.Equal(Rotation.Of(Sense.CounterClockwise, Viewpoint.FlywheelEnd), drive.CrankTurns);
        Assert.Equal(0.5, drive.CenterUncertaintyMm);

        // Tips 0.885 mm below the effective diameter, balls 0.990 mm above it (SAE J1459-2022, as summarized by others); 1 in = 25.4 mm.
        Assert.Equal(120, drive.Find("raw-water pump")!.DiameterMm, 9);
        Assert.Equal((2.4 * 25.4) - 0.990, drive.Find("alternator")!.DiameterMm, 9);
        Assert.Equal(8.4646 * 25.4, drive.Find("steering pump")!.XMm, 9);
        Assert.Equal(0.0185, drive.Belt.MassPerRib.KilogramsPerMeter, 12);
        Assert.Equal(Sense.CounterClockwise, drive.Tensioner!.SpringPushes);
        Assert.Equal(
            "crank, tensioner(back), raw-water pump, alternator, circulating pump(back), steering pump, idler(back)", drive.EngineRouting.Value.ToString());
    }

    [Fact]
    public void Sheet_WithoutADrive_SaysNothingOfIt()
    {
        Assert.Null(EngineSpecification.Named("Brae 16D").BeltDrive);
        Assert.DoesNotContain("belt", EngineSpecificationJson.ToText(EngineSpecification.Named("Brae 16D")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Turns, "/beltDrive/pulleys: missing; expected this member")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank} ]", "/beltDrive/pulleys: 1 pulleys; expected from 2 to 12 pulleys, the crank's first")]
    [InlineData($"\"pulleys\": [ {Crank}, {Pump} ]", "/beltDrive/crankTurns: missing; expected this member")]
    [InlineData($"\"crankTurns\": {{ \"sense\": \"clockwise\" }}, \"pulleys\": [ {Crank}, {Pump} ]", "/beltDrive/crankTurns/seenFrom: missing; expected this member")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Crank} ]", "/beltDrive/pulleys/1/name: 'crank'; expected a name that no other pulley has")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Pump} ], \"routing\": [ \"crank\", \"alternator\" ]", "/beltDrive/routing/1: 'alternator'; expected one of crank, pump")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Pump} ], \"routing\": [ \"crank\", \"pump(left)\" ]", "/beltDrive/routing/1: 'pump(left)'; expected a pulley's name, then (ribs) or (back) where needed")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Pump} ], \"routing\": [ \"crank\", \"pump\", \"Pump(back)\" ]", "/beltDrive/routing/2: 'Pump'; expected each pulley once")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Pump} ], \"routing\": [ \"crank\" ]", "/beltDrive/routing: fewer than two names; expected at least two pulleys")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Pump}, {Idler} ], \"routing\": [ \"pump\", \"idler\" ]", "/beltDrive/routing: no 'crank'; expected a routing that comes to 'crank', which drives the belt")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Idler} ], \"tensioner\": {{ \"kind\": \"set-by-hand\", {Arm}, \"spring\": {{ \"torque\": {{ \"value\": 30, \"unit\": \"N.m\" }} }} }}", "/beltDrive/tensioner/spring: a spring; expected none on a tensioner that is set by hand")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Pump} ], \"tensioner\": {{ \"kind\": \"automatic\", {Arm} }}", "/beltDrive/tensioner/pulley: 'idler'; expected a pulley of the drive")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Pump} ], \"belt\": {{ \"tolerance\": {{ \"value\": 9, \"unit\": \"mm\" }} }}", "/beltDrive/belt/effectiveLength: missing; expected this member")]
    [InlineData($"{Turns}, \"pulleys\": [ {Crank}, {Pump} ], \"belt\": {{ \"thickness\": {{ \"value\": 1, \"unit\": \"mm\" }} }}", "/beltDrive/belt/thickness: 1 mm; expected a thickness (1 mm) of at least the way from the back to the pitch line (1.2 mm)")]
    public void Drive_ThatIsWrong_IsNotedWithItsPlace(string drive, string fault) =>
        Assert.Equal(fault, Assert.Single(Read(drive).Faults).ToString());

    [Theory]
    [InlineData("""{ "name": "p(1)", "rim": "smooth", "center": { "x": 0, "y": 300, "unit": "mm" }, "outsideDiameter": { "value": 80, "unit": "mm" } }""", "/name: 'p(1)'; expected a name without commas and brackets")]
    [InlineData("""{ "name": "p", "rim": "smooth", "center": { "x": 0, "y": 300, "unit": "mm" } }""", ": no diameter; expected one of effectiveDiameter, outsideDiameter, diameterOverBalls")]
    [InlineData("""{ "name": "p", "rim": "smooth", "center": { "x": 0, "y": 300, "unit": "mm" }, "effectiveDiameter": { "value": 80, "unit": "mm" } }""", "/effectiveDiameter: a diameter of grooves; expected outsideDiameter of a smooth rim")]
    [InlineData("""{ "name": "p", "rim": "grooved", "center": { "x": 0, "y": 300, "unit": "mm" }, "effectiveDiameter": { "value": 0, "unit": "mm" } }""", "/effectiveDiameter/value: 0; expected above 0 and up to 1000 mm")]
    [InlineData("""{ "name": "p", "rim": "grooved", "center": { "x": 0, "y": 300, "unit": "mm" }, "outsideDiameter": { "value": 1000, "unit": "mm" } }""", "/outsideDiameter: 1000 mm; expected an effective diameter of at most 1000 mm")]
    [InlineData("""{ "name": "p", "rim": "grooved", "center": { "x": 0, "y": 300, "unit": "cm" }, "effectiveDiameter": { "value": 80, "unit": "mm" } }""", "/center/unit: 'cm'; expected one of mm, [in_i]")]
    [InlineData("""{ "name": "p", "rim": "grooved", "center": { "x": 0, "y": 300, "unit": "[in_i]" }, "effectiveDiameter": { "value": 80, "unit": "mm" } }""", "/center: 0 mm, 7620 mm; expected a point within 5000 mm")]
    [InlineData("""{ "name": "p", "rim": "grooved", "center": { "x": 0, "y": 300, "unit": "mm" }, "effectiveDiameter": { "value": 80, "unit": "mm" }, "mustTurn": "clockwise" }""", "/mustTurn: 'clockwise'; expected a sense of rotation with the end from which it is seen")]
    public void Pulley_ThatIsWrong_IsNotedWithItsPlace(string pulley, string fault) =>
        Assert.StartsWith("/beltDrive/pulleys/1" + fault, Assert.Single(Read($"{Turns}, \"pulleys\": [ {Crank}, {pulley} ]").Faults).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Faults_OfAllParts_ComeAtOnce()
    {
        IReadOnlyList<ReadFault> faults = Read($$"""
            {{Turns}}, "centersKnownTo": { "value": 30, "unit": "mm" },
            "pulleys": [ {{Crank}}, { "name": "p", "rim": "flat", "center": { "x": 0, "unit": "mm" }, "effectiveDiameter": { "value": -1, "unit": "mm" } } ],
            "belt": { "ribs": 0 }, "tensioner": { "kind": "automatic" }, "routing": [ "" ]
            """).Faults;
        Assert.Equal(
            [
                "/beltDrive/centersKnownTo/value", "/beltDrive/pulleys/1/rim", "/beltDrive/pulleys/1/center/y", "/beltDrive/pulleys/1/effectiveDiameter/value",
                "/beltDrive/belt/ribs", "/beltDrive/tensioner/pulley", "/beltDrive/tensioner/pivot", "/beltDrive/tensioner/clockwiseStop",
                "/beltDrive/tensioner/counterClockwiseStop", "/beltDrive/routing/0",
            ],
            faults.Select(fault => fault.Place));
    }

    [Fact]
    public void Parts_ThatDoNotGoTogether_AreAllNoted()
    {
        IReadOnlyList<ReadFault> faults = Read($"{Turns}, \"pulleys\": [ {Crank}, {Pump}, {Pump} ], \"tensioner\": {{ \"kind\": \"automatic\", {Arm} }}").Faults;
        Assert.Equal(["/beltDrive/pulleys/2/name", "/beltDrive/tensioner/pulley"], faults.Select(fault => fault.Place));
        Assert.All(faults, fault => Assert.True(fault.IsMeaning));
    }

    private static ReadResult<EngineSpecification> Read(string drive) => EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(
        "{ \"format\": \"marine-service/engine-specification\", \"version\": 1, \"engine\": { \"designation\": \"Brae 16D\" }, \"tasks\": [], \"beltDrive\": { " + drive + " } }"));

    private static BeltDrive Dressed(Random random)
    {
        BeltDrive bare = RandomDrives.Any(random, 2 + random.Next(8));
        BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Rotation.Of((Sense)random.Next(2), (Viewpoint)random.Next(2))).WithCentersKnownTo(random.Next(3));
        foreach (Pulley pulley in bare.Pulleys)
        {
            Pulley dressed = pulley.WithDuty((PulleyDuty)random.Next(8));
            dressed = random.Next(2) == 0 ? dressed : dressed.WithRequiredRotation(Rotation.Of((Sense)random.Next(2), (Viewpoint)random.Next(2)));
            dressed = random.Next(2) == 0 ? dressed : dressed.WithLoad(Power.FromKilowatts(random.NextDouble()));
            dressed = random.Next(2) == 0 ? dressed : dressed.WithWidth(20 + random.NextDouble());
            dressed = random.Next(2) == 0 ? dressed : dressed.WithAxialPosition(random.NextDouble(), random.Next(2) * 0.01, random.Next(2) * -0.02);
            builder = builder.Add(random.Next(2) == 0 ? dressed : dressed.WithLeastWrap(120 * random.NextDouble()));
        }

        builder = random.Next(3) == 0 ? builder : builder.WithBelt(random.Next(2) == 0 ? bare.Belt : bare.Belt.OfEffectiveLength(Length.FromMillimeters(1500 + random.NextDouble())));
        builder = random.Next(3) == 0 ? builder : builder.RoutedAs([.. bare.Pulleys.Select(pulley => $"{pulley.Name}({(random.Next(2) == 0 ? "ribs" : "back")})")]);
        return random.Next(3) == 0 ? builder.Build() : builder.WithTensioner(Arms(random, bare.Pulleys[1].Name)).Build();
    }

    private static Tensioner Arms(Random random, string pulley)
    {
        double from = -300 + (500 * random.NextDouble());
        return random.Next(3) switch
        {
            0 => Tensioner.SetByHand(pulley, 1000, 1000, from, from + 60),
            1 => Tensioner.Automatic(pulley, 1000, 1000, from, from + 60),
            _ => Tensioner.Automatic(pulley, 1000, 1000, from, from + 60).WithSpring(Torque.FromNewtonMeters(33.3), random.Next(2) * 0.25, random.Next(2) == 0 ? null : (Sense)random.Next(2)),
        };
    }

    private static bool IsSame(BeltDrive a, BeltDrive b) =>
        a.CrankTurns == b.CrankTurns && a.CenterUncertaintyMm == b.CenterUncertaintyMm && a.Belt.ToString() == b.Belt.ToString()
        && a.Belt.Tolerance?.Millimeters == b.Belt.Tolerance?.Millimeters && a.Belt.BackToPitchLineMm == b.Belt.BackToPitchLineMm
        && a.EngineRouting.ToString() == b.EngineRouting.ToString() && a.Tensioner?.ToString() == b.Tensioner?.ToString()
        && a.Tensioner?.SpringPushes == b.Tensioner?.SpringPushes && a.Tensioner?.SpringRateNewtonMetersPerDegree == b.Tensioner?.SpringRateNewtonMetersPerDegree
        && a.Pulleys.Count == b.Pulleys.Count && a.Pulleys.Zip(b.Pulleys).All(pair => IsSame(pair.First, pair.Second));

    private static bool IsSame(Pulley a, Pulley b) =>
        a.Name == b.Name && a.Surface == b.Surface && a.XMm == b.XMm && a.YMm == b.YMm && a.DiameterMm == b.DiameterMm && a.Duty == b.Duty
        && a.MustTurn == b.MustTurn && a.Load?.Kilowatts == b.Load?.Kilowatts && a.WidthMm == b.WidthMm && a.AxialPositionMm == b.AxialPositionMm
        && a.LeanAcrossRatio == b.LeanAcrossRatio && a.LeanUpRatio == b.LeanUpRatio && a.LeastWrapDegrees == b.LeastWrapDegrees;
}
