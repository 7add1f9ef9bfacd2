using MarineService.Core.Belts;
using MarineService.Core.Tests.Reference;

namespace MarineService.Core.Tests.Belts;

/// <summary>Against the reference layouts: closed form against polygons, 1e-6 mm and 1e-6 degrees.</summary>
public sealed class BeltRoutingTest
{
    private const double Tolerance = 1e-6;

    public static TheoryData<string> Measurable => Layouts.Measurable;

    [Theory]
    [MemberData(nameof(Measurable))]
    public void Measure_OfReferenceLayout_GivesItsTotals(string layout)
    {
        IReadOnlyDictionary<string, string> totals = Layouts.TotalsOf(layout);
        RoutingGeometry geometry = Layouts.Routing(layout).Measure().Value;
        Assert.Equal(totals.Number("pitch_length"), geometry.PitchLength.Millimeters, Tolerance);
        Assert.Equal(totals.Number("method_b_pitch_length"), geometry.PitchLength.Millimeters, Tolerance);
        Assert.Equal(totals.Number("effective_length"), geometry.EffectiveLength.Millimeters, Tolerance);
        Assert.Equal(totals.Number("sum_of_spans"), geometry.SumOfSpans.Millimeters, Tolerance);
        Assert.Equal(totals.Number("sum_of_arcs"), geometry.SumOfArcs.Millimeters, Tolerance);
        Assert.Equal((int)totals.Number("turning_number"), geometry.TurningNumber);
    }

    [Theory]
    [MemberData(nameof(Measurable))]
    public void Measure_OfReferenceLayout_GivesEachPulleysRow(string layout)
    {
        BeltRouting routing = Layouts.Routing(layout);
        IReadOnlyList<StopGeometry> stops = routing.Measure().Value.Stops;
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = Layouts.RoutedRows(layout);
        Assert.Equal(rows.Count, stops.Count);
        for (int i = 0; i < rows.Count; i++)
        {
            IReadOnlyDictionary<string, string> row = rows[i];
            Assert.Equal(row.Number("x"), stops[i].CenterXMm, Tolerance);
            Assert.Equal(row.Number("y"), stops[i].CenterYMm, Tolerance);
            Assert.Equal(row.Number("pitch_radius"), stops[i].PitchRadiusMm, Tolerance);
            Assert.Equal(row.Number("wrap_deg"), stops[i].WrapDegrees, Tolerance);
            Assert.Equal(row.Number("entry_x"), stops[i].EntryXMm, Tolerance);
            Assert.Equal(row.Number("entry_y"), stops[i].EntryYMm, Tolerance);
            Assert.Equal(row.Number("exit_x"), stops[i].ExitXMm, Tolerance);
            Assert.Equal(row.Number("exit_y"), stops[i].ExitYMm, Tolerance);
            Assert.Equal(row.Number("exit_span_length"), stops[i].ExitSpanMm, Tolerance);
            Assert.Equal(row.Number("sense") > 0, stops[i].TurnsCounterClockwise);
            Assert.Equal(row["turns_with_crank"] == "with", routing.TurningOf(i).IsSameTurningAs(routing.Drive.CrankTurns));
            Assert.Equal(row.Number("speed_ratio_to_first"), routing.SpeedRatio(i), Tolerance);
            Assert.Equal(stops[i].ArcMm, stops[i].PitchRadiusMm * row.Number("wrap_deg") * Math.PI / 180, 1e-5);
        }
    }

    [Theory]
    [MemberData(nameof(Measurable))]
    public void TryGetPitchLength_AndTryGetGeometry_AgreeWithTheTable(string layout)
    {
        BeltRouting routing = Layouts.Routing(layout);
        StopGeometry[] stops = new StopGeometry[routing.Stops.Count];
        Assert.True(routing.TryGetPitchLength(out double length));
        Assert.True(routing.TryGetGeometry(stops, out double again));
        Assert.Equal(Layouts.TotalsOf(layout).Number("pitch_length"), length, Tolerance);
        Assert.Equal(length, again, 1e-9);
        Assert.Equal(routing.Measure().Value.Stops, stops);
    }

    [Theory]
    [InlineData("X01")]
    [InlineData("X02")]
    public void Measure_WithoutRoomForASpan_IsNotKnown(string layout)
    {
        BeltRouting routing = Layouts.Routing(layout);
        Assert.False(routing.Measure().IsKnown);
        Assert.NotEmpty(routing.Measure().Missing);
        Assert.False(routing.TryGetPitchLength(out double length));
        Assert.True(double.IsNaN(length));
        Assert.False(routing.TryGetGeometry(new StopGeometry[3], out double again));
        Assert.True(double.IsNaN(again));
    }

    // Closed forms of the layouts with round numbers, worked by hand.
    [Theory]
    [InlineData("G01", 480, 120, 0)]
    [InlineData("G02", 160, 80, 120)]
    [InlineData("G03", 160, 60, 120)]
    [InlineData("G04", 1200, 100, 0)]
    [InlineData("G05", 1200, 60, 0)]
    [InlineData("G08", 28, 2, 0)]
    public void PitchLength_OfRoundLayout_IsItsClosedForm(string layout, double straight, double timesPi, double timesAsin)
    {
        Layouts.Routing(layout).TryGetPitchLength(out double length);
        Assert.Equal(straight + (timesPi * Math.PI) + (timesAsin * Math.Asin(0.6)), length, 1e-9);
    }

    [Fact]
    public void SpeedRatio_ByEffectiveDiameters_WouldBeFourPercentOut()
    {
        // SAE J1459, as summarized by others: effective diameters are a known mistake.
        BeltRouting s07 = Layouts.Routing("S07");
        Assert.Equal(2.718750, s07.SpeedRatio(3), 1e-6);
        Assert.NotEqual(170.0 / 60, s07.SpeedRatio(3), 0.1);
    }

    [Fact]
    public void SpeedRatio_At3000CrankTurns_GivesTheWorkedSpeeds()
    {
        BeltRouting s07 = Layouts.Routing("S07");
        double[] turns = [3000, -5649.35, 4209.68, 8156.25, -3942.60, 3625.00, -5359.34];
        for (int i = 0; i < turns.Length; i++)
        {
            Assert.Equal(turns[i], 3000 * s07.SpeedRatio(i), 0.005);
        }
    }

    [Fact]
    public void Equality_IsByStops()
    {
        BeltDrive drive = Layouts.Drive("S07");
        BeltRouting a = drive.Route("CRK", "TEN", "RWP");
        BeltRouting b = drive.Route("RWP", "CRK", "TEN");
        Assert.Equal(a, b);
        Assert.True(a.Equals((object)b));
        Assert.Equal(a.GetHashCode(), b.GetHashCode());
        Assert.NotEqual(a, drive.Route("CRK", "TEN(ribs)", "RWP"));
        Assert.False(a.Equals(null));
    }

    [Fact]
    public void ToString_CanBeReadAgain()
    {
        BeltDrive drive = Layouts.Drive("S07");
        BeltRouting routing = drive.Route("CRK", "TEN(ribs)", "RWP(back)", "ALT");
        Assert.Equal("CRK, TEN(ribs), RWP(back), ALT", routing.ToString());
        Assert.Equal(routing, drive.ReadRouting(routing.ToString()).Value);
    }

    [Fact]
    public void Places_OutsideTheList_AreRefused()
    {
        BeltRouting routing = Layouts.Routing("G04");
        Assert.Throws<ArgumentOutOfRangeException>("stop", () => routing.TurningOf(3));
        Assert.Throws<ArgumentOutOfRangeException>("stop", () => routing.SpeedRatio(-1));
        Assert.Throws<ArgumentException>("into", () => routing.TryGetGeometry(new StopGeometry[2], out _));
    }
}
