using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Belts;
using static MarineService.Core.Tests.Belts.RandomDrives;

namespace MarineService.Core.Tests.Belts;

/// <summary>What holds for every belt that closes, whatever the pulleys; no figure here is worked out by a reference.</summary>
public sealed class BeltLawsTest
{
    private const int Drives = 2000;

    private const double ShortestSpanMm = 5;

    private const double LeastWrapRadians = 0.001;

    [Law(MaxTest = Drives)]
    public Property Length_GrowsByOneTurn_WhenTheLineMovesOutward() => ForAllClosing((routing, random) =>
    {
        double outward = 3 * random.NextDouble();
        OrientedCircle[] circles = routing.Circles.ToArray();
        OrientedCircle[] moved = Resized(circles, (circle, _) => circle.Sign == routing.ExpectedTurningNumber ? outward : -outward);
        return Math.Abs(Length(moved) - Length(circles) - (2 * Math.PI * outward)) < 1e-8;
    });

    [Law(MaxTest = Drives)]
    public Property EffectiveLength_IsPitchLengthLessOneTurnOfTheDifferential() => ForAllClosing((routing, _) =>
    {
        // The effective line itself: ribs at half the effective diameter, the back's circle outside the pitch line by the differential.
        double differential = routing.Drive.Belt.EffectiveLineDifferentialMm;
        OrientedCircle[] line = Resized(routing.Circles.ToArray(), (_, i) => routing.Faces[i] == BeltFace.Ribs ? -differential : differential);
        RoutingGeometry geometry = routing.Measure().Value;
        return Math.Abs(geometry.EffectiveLength.Millimeters - Length(line)) < 1e-8
            && Math.Abs(geometry.PitchLength.Millimeters - geometry.EffectiveLength.Millimeters - (2 * Math.PI * differential)) < 1e-9;
    });

    [Law(MaxTest = Drives)]
    public Property Wrap_IsTheGrowthOfLengthWithRadius() => ForAllClosing((routing, random) =>
    {
        const double Step = 1e-3;
        OrientedCircle[] circles = routing.Circles.ToArray();
        int at = random.Next(circles.Length);
        if (!IsSmooth(Geometry(circles)))
        {
            return true;
        }

        double growth = (Length(Resized(circles, (_, i) => i == at ? Step : 0)) - Length(Resized(circles, (_, i) => i == at ? -Step : 0))) / (2 * Step);
        return Math.Abs(growth - Geometry(circles)[at].WrapRadians) < 1e-6;
    });

    [Law(MaxTest = Drives)]
    public Property Length_MovesWithACentre_ByTheDifferenceOfItsSpans() => ForAllClosing((routing, random) =>
    {
        const double Step = 1e-3;
        OrientedCircle[] circles = routing.Circles.ToArray();
        int at = random.Next(circles.Length);
        if (!IsSmooth(Geometry(circles)))
        {
            return true;
        }

        StopGeometry[] stops = Geometry(circles);
        StopGeometry arriving = stops[(at + stops.Length - 1) % stops.Length];
        double across = (Length(Moved(circles, at, Step, 0)) - Length(Moved(circles, at, -Step, 0))) / (2 * Step);
        double up = (Length(Moved(circles, at, 0, Step)) - Length(Moved(circles, at, 0, -Step))) / (2 * Step);
        return Math.Abs(across - (arriving.ExitDirectionXRatio - stops[at].ExitDirectionXRatio)) < 1e-6
            && Math.Abs(up - (arriving.ExitDirectionYRatio - stops[at].ExitDirectionYRatio)) < 1e-6;
    });

    [Law(MaxTest = Drives)]
    public Property Mirror_WithSensesReversed_KeepsLengthAndWraps() => ForAllClosing((routing, _) =>
        Same(routing, [.. routing.Circles.ToArray().Select(c => new OrientedCircle(-c.XMm, c.YMm, c.RadiusMm, -c.Sign))], index => index));

    [Law(MaxTest = Drives)]
    public Property Reversal_OfOrderAndSenses_KeepsLengthAndWraps() => ForAllClosing((routing, _) =>
    {
        int last = routing.Circles.Length - 1;
        return Same(
            routing, [.. routing.Circles.ToArray().Reverse().Select(c => new OrientedCircle(c.XMm, c.YMm, c.RadiusMm, -c.Sign))], index => last - index);
    });

    [Law(MaxTest = Drives)]
    public Property Renumbering_FromAnotherStart_KeepsLengthAndWraps() => ForAllClosing((routing, random) =>
    {
        OrientedCircle[] circles = routing.Circles.ToArray();
        int start = random.Next(circles.Length);
        return Same(routing, [.. circles.Skip(start), .. circles.Take(start)], index => (index - start + circles.Length) % circles.Length);
    });

    [Law(MaxTest = Drives)]
    public Property MoveTurnAndScale_ScaleTheLengthAndKeepWraps() => ForAllClosing((routing, random) =>
    {
        double angle = 2 * Math.PI * random.NextDouble();
        double scale = 0.2 + (5 * random.NextDouble());
        double x = 1000 * random.NextDouble();
        (double sine, double cosine) = Math.SinCos(angle);
        OrientedCircle[] moved =
        [
            .. routing.Circles.ToArray().Select(c => new OrientedCircle(
                x + (scale * ((c.XMm * cosine) - (c.YMm * sine))),
                scale * ((c.XMm * sine) + (c.YMm * cosine)),
                scale * c.RadiusMm,
                c.Sign)),
        ];
        StopGeometry[] before = Geometry(routing.Circles.ToArray());
        StopGeometry[] after = Geometry(moved);
        return Math.Abs((Length(moved) / scale) - Length(routing.Circles.ToArray())) < 1e-8
            && before.Zip(after).All(pair => Math.Abs(pair.First.WrapRadians - pair.Second.WrapRadians) < 1e-9);
    });

    [Law(MaxTest = Drives)]
    public Property SignedWraps_MakeOneTurn() => ForAllClosing((routing, _) =>
        Math.Abs(Geometry(routing.Circles.ToArray()).Sum(stop => stop.TurnsCounterClockwise ? stop.WrapRadians : -stop.WrapRadians)
            - (2 * Math.PI * routing.ExpectedTurningNumber)) < 1e-9);

    [Law(MaxTest = Drives)]
    public Property VanishingIdler_OnAStraightSpan_ChangesNothing() => ForAllClosing((routing, random) =>
    {
        OrientedCircle[] circles = routing.Circles.ToArray();
        int at = random.Next(circles.Length);
        StopGeometry stop = Geometry(circles)[at];
        double along = stop.ExitSpanMm * (0.2 + (0.6 * random.NextDouble()));
        const double Radius = 1e-4;
        OrientedCircle idler = new(
            stop.ExitXMm + (along * stop.ExitDirectionXRatio), stop.ExitYMm + (along * stop.ExitDirectionYRatio), Radius, random.Next(2) == 0 ? 1 : -1);
        OrientedCircle[] with = [.. circles.Take(at + 1), idler, .. circles.Skip(at + 1)];
        return Math.Abs(Length(with) - Length(circles)) < 1e-6;
    });

    [Law(MaxTest = Drives)]
    public Property Wraps_LieBetweenNothingAndAFullTurn_AndSpansAreTangent() => ForAllClosing((routing, _) =>
        Geometry(routing.Circles.ToArray()).All(stop =>
            stop.WrapRadians is > 0 and < 2 * Math.PI
            && Math.Abs(Math.Sqrt(Square(stop.ExitXMm - stop.CenterXMm) + Square(stop.ExitYMm - stop.CenterYMm)) - stop.PitchRadiusMm) < 1e-9
            && Math.Abs(((stop.ExitXMm - stop.CenterXMm) * stop.ExitDirectionXRatio) + ((stop.ExitYMm - stop.CenterYMm) * stop.ExitDirectionYRatio)) < 1e-9));

    [Law(MaxTest = Drives)]
    public Property SpeedRatios_MakeTheRimsRunTogether() => ForAllClosing((routing, _) =>
    {
        double belt = routing.Circles[0].SignedRadiusMm;
        return Enumerable.Range(0, routing.Stops.Count).All(i =>
            Math.Abs((routing.SpeedRatio(i) * routing.Circles[i].SignedRadiusMm) - belt) < 1e-9
            && routing.SpeedRatio(i) > 0 == routing.TurningOf(i).IsSameTurningAs(routing.Drive.CrankTurns));
    });

    private static double Square(double value) => value * value;

    private static Property ForAllClosing(Func<BeltRouting, Random, bool> law) =>
        Prop.ForAll(Seeds, seed =>
        {
            BeltRouting routing = Feasible(seed);
            return law(routing, new Random(seed)).Label($"seed {seed}: {routing}");
        });

    private static bool Same(BeltRouting routing, OrientedCircle[] other, Func<int, int> place)
    {
        StopGeometry[] before = Geometry(routing.Circles.ToArray());
        StopGeometry[] after = Geometry(other);
        return Math.Abs(Length(other) - Length(routing.Circles.ToArray())) < 1e-8
            && Enumerable.Range(0, before.Length).All(i => Math.Abs(before[i].WrapRadians - after[place(i)].WrapRadians) < 1e-9);
    }

    private static OrientedCircle[] Resized(OrientedCircle[] circles, Func<OrientedCircle, int, double> growth) =>
        [.. circles.Select((c, i) => new OrientedCircle(c.XMm, c.YMm, c.RadiusMm + growth(c, i), c.Sign))];

    private static OrientedCircle[] Moved(OrientedCircle[] circles, int at, double x, double y) =>
        [.. circles.Select((c, i) => i == at ? c.MovedTo(c.XMm + x, c.YMm + y) : c)];

    // A difference quotient says nothing where a span all but vanishes, for its curvature grows with the square of 1/span,
    // nor where the belt all but leaves a pulley, for a step takes the wrap through zero and a whole turn is added.
    private static bool IsSmooth(StopGeometry[] stops) =>
        stops.All(stop => stop.ExitSpanMm >= ShortestSpanMm && stop.WrapRadians is > LeastWrapRadians and < (2 * Math.PI) - LeastWrapRadians);
}
