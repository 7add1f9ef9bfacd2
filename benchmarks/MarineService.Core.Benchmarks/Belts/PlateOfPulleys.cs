using MarineService.Core.Belts;

namespace MarineService.Core.Benchmarks.Belts;

/// <summary>The drives that the belts benchmarks share: the demo's seven pulleys, and random ones that do not overlap.</summary>
internal static class PlateOfPulleys
{
    internal static BeltDrive Demo { get; } = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise)
        .Grooved("crank", 0, 0, 170)
        .Smooth("tensioner", -145, 5, 90)
        .Grooved("raw-water pump", -265, 70, 120)
        .Grooved("alternator", -215, 275, 60)
        .Smooth("circulating pump", -15, 190, 130)
        .Grooved("steering pump", 215, 250, 140)
        .Smooth("idler", 130, 75, 95)
        .RoutedAs("crank", "tensioner", "raw-water pump", "alternator", "circulating pump", "steering pump", "idler")
        .Build();

    /// <summary>Seven grooved pulleys in a ring: the belt's pitch line is the hull of the circles.</summary>
    internal static BeltDrive RibsOnly()
    {
        BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Sense.CounterClockwise);
        for (int i = 0; i < 7; i++)
        {
            double angle = 2 * Math.PI * i / 7;
            builder = builder.Grooved($"p{i}", 300 * Math.Cos(angle), 300 * Math.Sin(angle), 60 + (10 * i));
        }

        return builder.RoutedAs([.. Enumerable.Range(0, 7).Select(i => $"p{i}")]).Build();
    }

    /// <summary>Pulleys thrown on a plate until none overlaps another; a third are smooth.</summary>
    internal static BeltDrive Random(Random random, int pulleys)
    {
        List<(double X, double Y, double Diameter)> placed = [(0, 0, 120 + (60 * random.NextDouble()))];
        BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise).Grooved("p0", 0, 0, placed[0].Diameter);
        while (placed.Count < pulleys)
        {
            double x = 800 * (random.NextDouble() - 0.5);
            double y = 800 * (random.NextDouble() - 0.5);
            double diameter = 50 + (90 * random.NextDouble());
            if (placed.Exists(other => Math.Sqrt(((x - other.X) * (x - other.X)) + ((y - other.Y) * (y - other.Y))) < ((diameter + other.Diameter) / 2) + 10))
            {
                continue;
            }

            string name = FormattableString.Invariant($"p{placed.Count}");
            builder = random.Next(3) == 0 ? builder.Smooth(name, x, y, diameter) : builder.Grooved(name, x, y, diameter);
            placed.Add((x, y, diameter));
        }

        return builder.Build();
    }
}
