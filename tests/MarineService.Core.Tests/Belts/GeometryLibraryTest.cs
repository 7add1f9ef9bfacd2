using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Belts;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace MarineService.Core.Tests.Belts;

/// <summary>A general-purpose geometry library as second opinion: hulls, crossings and distances, from the pulleys alone.</summary>
public sealed class GeometryLibraryTest
{
    private const int Points = 20_000;
    private static readonly GeometryFactory Factory = new();

    [Theory]
    [InlineData("G01")]
    [InlineData("G02")]
    [InlineData("G04")]
    [InlineData("G05")]
    [InlineData("G06")]
    [InlineData("G08")]
    public void PitchLength_OfRibsOnly_IsTheHullOfTheCircles(string layout) => AssertHull(Layouts.Routing(layout));

    [Law(MaxTest = 60)]
    public Property PitchLength_OfRandomRibsOnly_IsTheHullOfTheCircles() =>
        Prop.ForAll(RandomDrives.Seeds, seed => AssertHull(RandomDrives.Feasible(seed, ribsOnly: true)));

    [Law(MaxTest = 1000)]
    public Property Verdicts_OfRandomRoutings_AgreeWithIntersectionsAndDistances() =>
        Prop.ForAll(RandomDrives.Seeds, seed =>
        {
            Random random = new(seed);
            BeltDrive drive = RandomDrives.Any(random, 3 + random.Next(5));
            BeltRouting routing = RandomDrives.Scrambled(random, drive, 2 + random.Next(drive.Pulleys.Count - 1));
            BeltCheck check = routing.Check();
            HashSet<string> found = [.. check.Findings.Select(Written).OfType<string>()];
            return found.SetEquals(SecondOpinion(routing, check)).Label($"seed {seed}: {routing}");
        });

    [Law(MaxTest = 1000)]
    public Property ClosingBelts_WindRoundEveryRibPulley_AndRoundNoneOnTheBack() =>
        Prop.ForAll(RandomDrives.Seeds, seed =>
        {
            BeltRouting routing = RandomDrives.Feasible(seed);
            Polygon inside = Factory.CreatePolygon([.. Path(routing)]);
            bool holds = inside.IsValid;
            for (int i = 0; i < routing.Stops.Count; i++)
            {
                Point centre = Factory.CreatePoint(new Coordinate(routing.Circles[i].XMm, routing.Circles[i].YMm));
                holds &= inside.Contains(centre) == (routing.Faces[i] == BeltFace.Ribs);
            }

            return holds.Label($"seed {seed}: {routing}");
        });

    private static void AssertHull(BeltRouting routing)
    {
        Coordinate[] rims =
        [
            .. routing.Circles.ToArray().SelectMany(circle => Enumerable.Range(0, Points).Select(i =>
            {
                (double sine, double cosine) = Math.SinCos(2 * Math.PI * i / Points);
                return new Coordinate(circle.XMm + (circle.RadiusMm * cosine), circle.YMm + (circle.RadiusMm * sine));
            })),
        ];
        double hull = new ConvexHull(rims, Factory).GetConvexHull().Length;
        Assert.True(routing.TryGetPitchLength(out double length));

        // A polygon of so many corners falls short of its circle by 4e-9 of it.
        Assert.InRange(length - hull, 0, 2e-8 * length);
    }

    /// <summary>The findings that a library of segments and points would write, from the tangent points as they are drawn.</summary>
    private static IEnumerable<string> SecondOpinion(BeltRouting routing, BeltCheck check)
    {
        OrientedCircle[] all = [.. routing.Circles.ToArray(), .. routing.Obstacles(routing.UnroutedPulleys())];
        string[] names = [.. routing.Stops.Select(stop => stop.PulleyName), .. routing.UnroutedPulleys().Select(i => routing.Drive.Pulleys[i].Name)];
        for (int i = 0; i < all.Length; i++)
        {
            for (int j = i + 1; j < all.Length; j++)
            {
                double apart = Factory.CreatePoint(new Coordinate(all[i].XMm, all[i].YMm))
                    .Distance(Factory.CreatePoint(new Coordinate(all[j].XMm, all[j].YMm)));
                if (apart < all[i].RadiusMm + all[j].RadiusMm)
                {
                    yield return $"{(apart <= Math.Abs(all[i].RadiusMm - all[j].RadiusMm) ? "BELT-001" : "BELT-002")} {names[i]} {names[j]}";
                }
            }
        }

        if (!check.Geometry.IsKnown)
        {
            yield break;
        }

        IReadOnlyList<StopGeometry> stops = check.Geometry.Value.Stops;
        LineString[] spans =
        [
            .. stops.Select((stop, i) => Factory.CreateLineString(
            [
                new Coordinate(stop.ExitXMm, stop.ExitYMm),
                new Coordinate(stops[(i + 1) % stops.Count].EntryXMm, stops[(i + 1) % stops.Count].EntryYMm),
            ])),
        ];
        for (int i = 0; i < spans.Length; i++)
        {
            for (int k = 0; k < all.Length; k++)
            {
                if (k != i && k != (i + 1) % spans.Length && spans[i].Distance(Factory.CreatePoint(new Coordinate(all[k].XMm, all[k].YMm))) < all[k].RadiusMm)
                {
                    yield return $"BELT-007 {names[i]} {names[k]}";
                }
            }

            for (int j = i + 1; j < spans.Length; j++)
            {
                if (spans[i].Intersects(spans[j]))
                {
                    yield return $"BELT-008 {names[i]} {names[j]}";
                }
            }
        }
    }

    private static string? Written(Finding finding)
    {
        string[] names = [.. finding.Subject.Split('\'').Where((_, i) => i % 2 == 1)];
        return finding.Code switch
        {
            "BELT-001" or "BELT-002" => $"{finding.Code} {names[0]} {finding["other"]!.Word}",
            "BELT-007" => $"{finding.Code} {names[0]} {finding["pulley"]!.Word}",
            "BELT-008" => $"{finding.Code} {names[0]} {finding["from"]!.Word}",
            _ => null,
        };
    }

    private static List<Coordinate> Path(BeltRouting routing)
    {
        List<Coordinate> path = [];
        foreach (StopGeometry stop in routing.Measure().Value.Stops)
        {
            double start = Math.Atan2(stop.EntryYMm - stop.CenterYMm, stop.EntryXMm - stop.CenterXMm);
            double turn = stop.TurnsCounterClockwise ? stop.WrapRadians : -stop.WrapRadians;
            for (int i = 0; i <= 100; i++)
            {
                (double sine, double cosine) = Math.SinCos(start + (turn * i / 100));
                path.Add(new Coordinate(stop.CenterXMm + (stop.PitchRadiusMm * cosine), stop.CenterYMm + (stop.PitchRadiusMm * sine)));
            }
        }

        path.Add(path[0].Copy());
        return path;
    }
}
