using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Parts;
using UnitsNet;

namespace MarineService.Core.Tests.Parts;

/// <summary>What holds for every pattern, and the closed answer against trying every turn.</summary>
public sealed class CoverFitLawsTest
{
    private const double Degree = Math.PI / 180;

    [Law(MaxTest = 300)]
    public Property Pattern_AlwaysFitsItself() => ForPatterns((block, _, random) =>
    {
        CoverFit fit = block.Fit(block, Play(0.01), random.Next(2) == 0 ? CoverLocation.Centered : CoverLocation.Free);
        return fit.Rotations[0] is { Fits: true, WorstOffMm: < 1e-6 };
    });

    [Law(MaxTest = 300)]
    public Property TurnedPattern_FitsAsMuchAsBefore() => ForPatterns((block, cover, random) =>
    {
        double turn = 360 * random.NextDouble() - 180;
        BoltPattern turned = Turned(cover, turn);
        CoverFit before = block.Fit(cover, Play(0.5));
        CoverFit after = block.Fit(turned, Play(0.5));
        return before.Rotations.Zip(after.Rotations, (a, b) => Math.Abs(a.WorstOffMm - b.WorstOffMm) < 1e-8
            && Math.Abs(Math.IEEERemainder(a.TurnDegrees - turn - b.TurnDegrees, 360)) < 1e-7).All(same => same);
    });

    [Law(MaxTest = 300)]
    public Property MirroringBoth_ChangesNothing() => ForPatterns((block, cover, _) =>
        Offs(block.Fit(cover, Play(0.5)).Rotations).Zip(Offs(Mirrored(block).Fit(Mirrored(cover), Play(0.5)).Rotations), (a, b) => Math.Abs(a - b) < 1e-8).All(same => same)
        && Offs(block.Fit(cover, Play(0.5)).FaceDown).Zip(Offs(block.Fit(Mirrored(cover), Play(0.5)).Rotations), (a, b) => Math.Abs(a - b) < 1e-8).All(same => same));

    [Law(MaxTest = 300)]
    public Property MorePlay_NeverFitsLess() => ForPatterns((block, cover, random) =>
    {
        double play = random.NextDouble();
        return block.Fit(cover, Play(play + 0.3)).Fitting.Count >= block.Fit(cover, Play(play)).Fitting.Count;
    });

    [Law(MaxTest = 150)]
    public Property FreeCover_FitsWhereverACentredOneDoes() => ForPatterns((block, cover, random) =>
    {
        CoverFit centred = block.Fit(cover, Play(0.4));
        CoverFit free = block.Fit(cover, Play(0.4), CoverLocation.Free);
        return centred.Rotations.Zip(free.Rotations, (c, f) => f.WorstOffMm <= c.WorstOffMm + 1e-6).All(less => less);
    });

    /// <summary>Brute force: every turn in steps of 0.02 degrees, each hole to the block hole nearest to it.</summary>
    [Law(MaxTest = 10)]
    public Property ClosedAnswer_IsWhatTryingEveryTurnFinds() => ForPatterns((block, cover, random) =>
    {
        const double Step = 0.02;
        double play = 0.1 + (0.9 * random.NextDouble());
        CoverFit fit = block.Fit(cover, Play(play));
        double[] b = [.. block.AnglesDegrees.Select(angle => angle * Degree)];
        double[] c = [.. cover.AnglesDegrees.Select(angle => angle * Degree)];
        double radius = block.BoltCircleRadius.Millimeters;
        bool right = true;
        HashSet<CoverRotation> met = [];
        for (double turn = 0; turn < 360; turn += Step)
        {
            bool goes = WorstByScan(b, c, radius, turn * Degree) <= play;
            CoverRotation? closed = fit.Fitting.FirstOrDefault(rotation => Math.Abs(Math.IEEERemainder(rotation.TurnDegrees - turn, 360)) <= rotation.PlayDegrees);
            double nearestEdge = fit.Fitting.Select(rotation => Math.Abs(Math.Abs(Math.IEEERemainder(rotation.TurnDegrees - turn, 360)) - rotation.PlayDegrees)).DefaultIfEmpty(1).Min();
            right &= goes == (closed is not null) || nearestEdge < 1e-6;
            if (goes && closed is not null)
            {
                met.Add(closed);
            }
        }

        return right && fit.Fitting.All(rotation => met.Contains(rotation) || rotation.PlayDegrees < Step);
    });

    /// <summary>Brute force: turns and shifts on a grid that closes in on the best of them; the convex answer is never worse, and hardly better.</summary>
    [Law(MaxTest = 8)]
    public Property FreeCover_IsAsFarOffAsAGridOfTurnsAndShiftsFinds() => ForPatterns((block, _, random) =>
    {
        BoltPattern cover = Jittered(block, 2.5, random);
        CoverRotation found = block.Fit(cover, Play(0.4), CoverLocation.Free).Rotations[0];
        double[] b = [.. block.AnglesDegrees.Select(angle => angle * Degree)];
        double[] c = [.. cover.AnglesDegrees.Select(angle => angle * Degree)];
        double radius = block.BoltCircleRadius.Millimeters;
        (double turn, double x, double y, double best) = (0, 0, 0, double.PositiveInfinity);
        (double turnStep, double step) = (0.5 * Degree, 0.5);
        while (step > 1e-5)
        {
            (double t0, double x0, double y0) = (turn, x, y);
            for (int i = -6; i <= 6; i++)
            {
                for (int j = -6; j <= 6; j++)
                {
                    for (int k = -6; k <= 6; k++)
                    {
                        double off = Worst(b, c, radius, t0 + (i * turnStep), x0 + (j * step), y0 + (k * step));
                        if (off < best)
                        {
                            (turn, x, y, best) = (t0 + (i * turnStep), x0 + (j * step), y0 + (k * step), off);
                        }
                    }
                }
            }

            if (turn == t0 && x == x0 && y == y0)
            {
                (turnStep, step) = (turnStep / 2, step / 2);
            }
        }

        return found.WorstOffMm <= best + 1e-6 && found.WorstOffMm > best - 0.01;
    });

    private static Property ForPatterns(Func<BoltPattern, BoltPattern, Random, bool> holds) => Prop.ForAll(
        Gen.Choose(0, int.MaxValue - 1).ToArbitrary(),
        seed =>
        {
            Random random = new(seed);
            BoltPattern block = Pattern(random);
            BoltPattern cover = random.Next(3) == 0 ? Pattern(random, block.HoleCount) : Turned(Jittered(block, 0.8, random), 360 * random.NextDouble() - 180);
            return holds(block, cover, random).Label(
                FormattableString.Invariant($"seed {seed}: block {string.Join(' ', block.AnglesDegrees)}, cover {string.Join(' ', cover.AnglesDegrees)}"));
        });

    // Gaps of 20 degrees at least, so that on a radius of 20 mm or more no two holes come within twice the greatest play.
    private static BoltPattern Pattern(Random random, int? holes = null)
    {
        int count = holes ?? random.Next(2, 9);
        bool regular = random.Next(3) == 0;
        double[] gaps = [.. Enumerable.Range(0, count).Select(_ => regular ? 1 : 0.2 + random.NextDouble())];
        double spread = (360 - (20 * count)) / gaps.Sum();
        double[] angles = new double[count];
        for (int i = 1; i < count; i++)
        {
            angles[i] = angles[i - 1] + 20 + (spread * gaps[i - 1]);
        }

        return BoltPattern.Of(Length.FromMillimeters(30), angles);
    }

    private static BoltPattern Jittered(BoltPattern pattern, double degrees, Random random) =>
        BoltPattern.Of(pattern.BoltCircleRadius, [.. pattern.AnglesDegrees.Select(angle => angle + (degrees * ((2 * random.NextDouble()) - 1)))]);

    private static BoltPattern Turned(BoltPattern pattern, double degrees) =>
        BoltPattern.Of(pattern.BoltCircleRadius, [.. pattern.AnglesDegrees.Select(angle => angle + degrees)]);

    private static BoltPattern Mirrored(BoltPattern pattern) =>
        BoltPattern.Of(pattern.BoltCircleRadius, [.. pattern.AnglesDegrees.Reverse().Select(angle => 180 - angle)]);

    private static IEnumerable<double> Offs(IEnumerable<CoverRotation> rotations) => rotations.Select(rotation => rotation.WorstOffMm).Order();

    private static ScrewClearance Play(double mm) => ScrewClearance.OnClearHole(Length.FromMillimeters(5 + mm), Length.FromMillimeters(5));

    // Each cover hole to the nearest hole of the block: no pairing is assumed.
    private static double WorstByScan(double[] block, double[] cover, double radius, double turn)
    {
        double worst = 0;
        foreach (double hole in cover)
        {
            double x = radius * Math.Cos(hole + turn);
            double y = radius * Math.Sin(hole + turn);
            worst = Math.Max(worst, block.Min(at => ((x - (radius * Math.Cos(at))) * (x - (radius * Math.Cos(at)))) + ((y - (radius * Math.Sin(at))) * (y - (radius * Math.Sin(at))))));
        }

        return Math.Sqrt(worst);
    }

    private static double Worst(double[] block, double[] cover, double radius, double turn, double x, double y)
    {
        double worst = 0;
        for (int i = 0; i < block.Length; i++)
        {
            double dx = (radius * (Math.Cos(block[i]) - Math.Cos(cover[i] + turn))) - x;
            double dy = (radius * (Math.Sin(block[i]) - Math.Sin(cover[i] + turn))) - y;
            worst = Math.Max(worst, Math.Sqrt((dx * dx) + (dy * dy)));
        }

        return worst;
    }
}
