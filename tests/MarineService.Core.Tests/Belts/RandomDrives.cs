using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Belts;

namespace MarineService.Core.Tests.Belts;

/// <summary>Drives that nobody drew: pulleys thrown on a plate, kept when a belt can lie over them.</summary>
internal static class RandomDrives
{
    internal static Arbitrary<int> Seeds => Gen.Choose(0, int.MaxValue - 1).ToArbitrary();

    /// <summary>Any drive at all, feasible or not; pulleys may overlap.</summary>
    internal static BeltDrive Any(Random random, int pulleys)
    {
        BeltDriveBuilder builder = BeltDrive
            .SeenFromPulleyEnd(random.Next(2) == 0 ? Sense.Clockwise : Sense.CounterClockwise)
            .WithBelt(RibbedBelt.Pk(6).WithThickness(random.NextDouble() * 2.5, random.NextDouble() * 1.5, 4.8))
            .WithCentersKnownTo(0)
            .Grooved("p0", 0, 0, 120 + (60 * random.NextDouble()));
        for (int i = 1; i < pulleys; i++)
        {
            double x = 700 * (random.NextDouble() - 0.5);
            double y = 700 * (random.NextDouble() - 0.5);
            double diameter = 50 + (90 * random.NextDouble());
            builder = random.Next(3) == 0 ? builder.Smooth($"p{i}", x, y, diameter) : builder.Grooved($"p{i}", x, y, diameter);
        }

        return builder.Build();
    }

    /// <summary>A belt that closes, on three to seven pulleys; the same for the same seed.</summary>
    internal static BeltRouting Feasible(int seed, bool ribsOnly = false)
    {
        Random random = new(seed);
        while (true)
        {
            BeltDrive drive = Any(random, 3 + random.Next(ribsOnly ? 3 : 5));
            if (ribsOnly && drive.Pulleys.Any(pulley => pulley.Surface == PulleySurface.Smooth))
            {
                continue;
            }

            IReadOnlyList<RoutingCandidate> candidates = drive.FindRoutings().Candidates;
            if (candidates.Count > 0)
            {
                return candidates[random.Next(candidates.Count)].Routing;
            }
        }
    }

    /// <summary>A routing in any order with any faces, feasible or not.</summary>
    internal static BeltRouting Scrambled(Random random, BeltDrive drive, int stops)
    {
        int[] order = [.. Enumerable.Range(1, drive.Pulleys.Count - 1)];
        for (int i = order.Length - 1; i > 0; i--)
        {
            int j = random.Next(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }

        return drive.Route(
            order.Take(stops - 1).Prepend(0).Select(pulley => RoutingStop.On(
                drive.Pulleys[pulley].Name, random.Next(4) == 0 ? (BeltFace)random.Next(2) : drive.Pulleys[pulley].IntendedFace)));
    }

    internal static double Length(OrientedCircle[] circles)
    {
        Assert.True(BeltMath.TryPitchLengthMm(circles, out double length));
        return length;
    }

    internal static StopGeometry[] Geometry(OrientedCircle[] circles)
    {
        StopGeometry[] stops = new StopGeometry[circles.Length];
        Assert.True(BeltMath.TryGeometry(circles, stops, out _));
        return stops;
    }
}
