using System.Globalization;
using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Reports.Drawings;
using UnitsNet;

namespace MarineService.Reports.Tests.Drawings;

/// <summary>The picture says what the examination says, at the places where Core says it is.</summary>
public sealed class BeltDrawingTest
{
    private static readonly BeltDrive Drive = Club.Boat("curlew").Engines[0].Specification.BeltDrive!;

    private static readonly BeltRouting Right = Drive.EngineRouting.Value;

    public static TheoryData<string> Routings => new(
        Right.ToString(),
        "crank, raw-water pump, alternator, circulating pump(back), steering pump, idler(back)",
        "crank, tensioner(ribs), raw-water pump, alternator, circulating pump(ribs), steering pump, idler(back)",
        "crank, tensioner(back), alternator, raw-water pump, circulating pump(back), steering pump, idler(back)",
        "crank, idler(back), steering pump, alternator");

    [Theory]
    [MemberData(nameof(Routings))]
    public void Of_AnyRouting_DrawsPulleysAndTangentPointsWhereCoreHasThem(string lies)
    {
        BeltRouting routing = Drive.ReadRouting(lies).Value;
        XElement drive = Pictures.ByClass(BeltDrawing.Of(routing, DisplayUnits.Metric), "drive").Single();
        double scale = Number(drive, "data-units-per-mm");
        double X(double x) => (x - Number(drive, "data-origin-x")) / scale;
        double Y(double y) => (Number(drive, "data-origin-y") - y) / scale;
        foreach (Pulley pulley in Drive.Pulleys)
        {
            XElement circle = drive.Descendants().Single(one => (string?)one.Attribute("class") == "pulley" && (string?)one.Attribute("data-pulley") == pulley.Name);
            Assert.Equal(pulley.XMm, X(Number(circle, "cx")), 0.02);
            Assert.Equal(pulley.YMm, Y(Number(circle, "cy")), 0.02);
            Assert.Equal(pulley.DiameterMm, 2 * Number(circle, "r") / scale, 0.03);
        }

        IReadOnlyList<StopGeometry> stops = routing.Measure().Value.Stops;
        for (int i = 0; i < stops.Count; i++)
        {
            StopGeometry next = stops[(i + 1) % stops.Count];
            XElement span = drive.Descendants().Single(one => (string?)one.Attribute("class") == "span" && (string?)one.Attribute("data-from") == routing.Stops[i].PulleyName);
            Assert.Equal(stops[i].ExitXMm, X(Number(span, "x1")), 0.02);
            Assert.Equal(stops[i].ExitYMm, Y(Number(span, "y1")), 0.02);
            Assert.Equal(next.EntryXMm, X(Number(span, "x2")), 0.02);
            Assert.Equal(next.EntryYMm, Y(Number(span, "y2")), 0.02);
        }
    }

    [Theory]
    [MemberData(nameof(Routings))]
    public void Of_AnyExamination_SaysEveryFindingInPictureAndDescription(string lies)
    {
        foreach (DisplayUnits units in new[] { DisplayUnits.Metric, DisplayUnits.UsCustomary })
        {
            BeltExamination seen = Examine(Drive.ReadRouting(lies).Value);
            Drawing drawing = BeltDrawing.Of(seen, units);
            string words = Pictures.Words(drawing);
            foreach (Finding finding in seen.Findings)
            {
                Assert.Contains(finding.Message(units), drawing.Description, StringComparison.Ordinal);
                Assert.Contains(finding.Message(units), words, StringComparison.Ordinal);
                Assert.Contains(finding.Code, words, StringComparison.Ordinal);
            }

            Assert.Contains("seen from the pulley end", drawing.Title, StringComparison.Ordinal);
            Pictures.AssertTextStaysInside(drawing);
        }
    }

    [Fact]
    public void Of_RightRouting_TurnsEveryArrowAsCoreSays()
    {
        XElement svg = Pictures.Parse(BeltDrawing.Of(Right, DisplayUnits.Metric));
        string?[] senses = [.. svg.Descendants().Where(one => (string?)one.Attribute("class") == "sense").Select(one => (string?)one.Attribute("data-sense"))];
        string[] expected =
        [
            .. Drive.Pulleys.Select(pulley => Right.Stops.ToList().FindIndex(stop => stop.PulleyName == pulley.Name))
                .Select(stop => Right.TurningOf(stop).AsSeenFrom(Viewpoint.PulleyEnd) == Sense.Clockwise ? "clockwise" : "counter-clockwise"),
        ];
        Assert.Equal(expected, senses);
    }

    /// <summary>The ribs lie against the grooved pulleys: each tooth on such an arc points to the pulley's middle.</summary>
    [Fact]
    public void Of_RightRouting_PutsTheCombOnTheGroovedSide()
    {
        XElement drive = Pictures.ByClass(BeltDrawing.Of(Right, DisplayUnits.Metric), "drive").Single();
        string teeth = (string)drive.Descendants().Single(one => (string?)one.Attribute("class") == "ribs").Attribute("d")!;
        double[] numbers = [.. teeth.Split(' ', 'M', 'L').Where(text => text.Length > 0).Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
        Pulley[] grooved = [.. Drive.Pulleys.Where(pulley => pulley.Surface == PulleySurface.Grooved)];
        int seen = 0;
        foreach (XElement circle in drive.Descendants().Where(one => (string?)one.Attribute("class") == "pulley"))
        {
            bool isGrooved = (string?)circle.Attribute("data-surface") == "grooved";
            (double cx, double cy, double r) = (Number(circle, "cx"), Number(circle, "cy"), Number(circle, "r"));
            for (int i = 0; i < numbers.Length; i += 4)
            {
                double foot = Math.Sqrt(Math.Pow(numbers[i] - cx, 2) + Math.Pow(numbers[i + 1] - cy, 2));
                double tip = Math.Sqrt(Math.Pow(numbers[i + 2] - cx, 2) + Math.Pow(numbers[i + 3] - cy, 2));
                if (foot < r + 3)
                {
                    Assert.Equal(isGrooved, tip < foot);
                    seen++;
                }
            }
        }

        Assert.True(seen > 60 && grooved.Length > 2, $"{seen} teeth on pulleys");
    }

    [Fact]
    public void Of_MissedPulley_MarksItsPlaceAndTellsTheSteps()
    {
        BeltExamination seen = Examine(Drive.ReadRouting("crank, raw-water pump, alternator, circulating pump(back), steering pump, idler(back)").Value);
        Drawing drawing = BeltDrawing.Of(seen);
        string words = Pictures.Words(drawing);
        Assert.All(seen.Comparison.Value.Edits, edit => Assert.Contains(edit.ToString(), words, StringComparison.Ordinal));
        Assert.NotEmpty(Pictures.ByClass(drawing, "mark"));
        Assert.Single(Pictures.ByClass(drawing, "should-lie"));
    }

    /// <summary>Told apart without colour: full where something must be put right, a ring where it is advice.</summary>
    [Theory]
    [MemberData(nameof(Routings))]
    public void Of_Findings_FillTheMarkOnlyWhereSomethingMustBePutRight(string lies)
    {
        BeltExamination seen = Examine(Drive.ReadRouting(lies).Value);
        bool[] full = [.. Pictures.ByClass(BeltDrawing.Of(seen), "marks").Single().Elements().Where(one => (string?)one.Attribute("class") == "mark")
            .Select(mark => (string?)mark.Elements().First().Attribute("fill") == (string?)mark.Elements().First().Attribute("stroke"))];
        IGrouping<string, Finding>[] places = [.. seen.Findings.GroupBy(finding => finding.Subject).Where(place => place.Key != "belt")];
        Assert.Equal(places.Select(place => place.Max(finding => finding.Severity) >= Severity.Act), full);
        Assert.NotEmpty(full);
    }

    [Fact]
    public void Of_UnmeasurableRouting_SaysWhatIsMissing()
    {
        BeltDrive inside = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise)
            .Grooved("crank", 0, 0, 200).Grooved("small", 10, 0, 60).Build();
        Drawing drawing = BeltDrawing.Of(inside.Route("crank", "small"), DisplayUnits.Metric);
        Assert.Contains("Its way is not known", Pictures.Words(drawing), StringComparison.Ordinal);
        Assert.Empty(Pictures.ByClass(drawing, "belt"));
    }

    [Fact]
    public void Of_HostileNames_StayText() => Pictures.AssertHostileWordsStayText(name =>
    {
        name = name.Replace(",", "", StringComparison.Ordinal).Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal).Trim();
        BeltDrive drive = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise).Grooved("crank", 0, 0, 120).Grooved(name.Length == 0 ? "a" : name, 300, 40, 60).Build();
        return BeltDrawing.Of(drive.Route("crank", drive.Pulleys[1].Name), DisplayUnits.Metric);
    });

    [Fact]
    public void Of_AnyCulture_GivesTheSameBytes() => Pictures.AssertSameEverywhere(() => BeltDrawing.Of(Examine(Right)));

    [Fact]
    public void Of_BadInput_IsRefusedByName()
    {
        Assert.Equal("examination", Assert.Throws<ArgumentNullException>(() => BeltDrawing.Of((BeltExamination)null!)).ParamName);
        Assert.Equal("check", Assert.Throws<ArgumentNullException>(() => BeltDrawing.Of((BeltCheck)null!, DisplayUnits.Metric)).ParamName);
        Assert.Equal("routing", Assert.Throws<ArgumentNullException>(() => BeltDrawing.Of((BeltRouting)null!, DisplayUnits.Metric)).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => BeltDrawing.Of(Right, (DisplayUnits)9)).ParamName);
    }

    private static BeltExamination Examine(BeltRouting routing) => BeltExamination.Of(routing, RotationalSpeed.FromRevolutionsPerMinute(3000));

    private static double Number(XElement element, string attribute) => double.Parse((string)element.Attribute(attribute)!, CultureInfo.InvariantCulture);
}
