using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using MarineService.Core.Belts;

namespace MarineService.Core.Benchmarks.Belts;

/// <summary>All routings of a drive with free faces: the demo's, and of 200 random drives the one whose search takes the median time.</summary>
/// <remarks>The baseline tests every complete routing of the same drive and cuts no branch; on nine pulleys it would look at ten million.</remarks>
[MemoryDiagnoser]
public class RecognitionBenchmarks
{
    private const int Drives = 200;
    private static readonly RoutingSearchOptions Either = RoutingSearchOptions.Default.WithFaces(FaceChoice.Either);
    private BeltDrive _demo = null!;
    private BeltDrive _seven = null!;
    private BeltDrive _nine = null!;

    [GlobalSetup]
    public void Build()
    {
        _demo = PlateOfPulleys.Demo;
        _seven = Median(7);
        _nine = Median(9);
        if (EveryCompleteRouting() != _demo.FindRoutings(Either).Candidates.Count)
        {
            throw new InvalidOperationException("Both must find the same set before they are compared.");
        }
    }

    [Benchmark(Baseline = true)]
    public int EveryCompleteRouting()
    {
        OrientedCircle[] path = new OrientedCircle[7];
        StopGeometry[] stops = new StopGeometry[7];
        path[0] = _demo.Circle(0, BeltFace.Ribs, BeltFace.Ribs);
        return Closed(1, 1, path, stops);
    }

    [Benchmark]
    public int DemoOfSeven() => _demo.FindRoutings(Either).Candidates.Count;

    [Benchmark]
    public int MedianOfSeven() => _seven.FindRoutings(Either).Candidates.Count;

    [Benchmark]
    public int MedianOfNine() => _nine.FindRoutings(Either).Candidates.Count;

    private int Closed(int depth, int used, OrientedCircle[] path, StopGeometry[] stops)
    {
        if (depth == path.Length)
        {
            return RoutingExaminer.Closes(path, [], _demo.CrankTurns.Sign, stops, out _) ? 1 : 0;
        }

        int found = 0;
        for (int pulley = 1; pulley < path.Length; pulley++)
        {
            for (int face = 0; face < 2 && (used & (1 << pulley)) == 0; face++)
            {
                path[depth] = _demo.Circle(pulley, (BeltFace)face, BeltFace.Ribs);
                found += Closed(depth + 1, used | (1 << pulley), path, stops);
            }
        }

        return found;
    }

    private static BeltDrive Median(int pulleys)
    {
        Random random = new(20261012);
        BeltDrive[] drives = [.. Enumerable.Range(0, Drives).Select(_ => PlateOfPulleys.Random(random, pulleys))];
        return drives.OrderBy(Fastest).ElementAt(Drives / 2);
    }

    private static long Fastest(BeltDrive drive)
    {
        long fastest = long.MaxValue;
        for (int i = 0; i < 10; i++)
        {
            long start = Stopwatch.GetTimestamp();
            _ = drive.FindRoutings(Either);
            fastest = Math.Min(fastest, Stopwatch.GetTimestamp() - start);
        }

        return fastest;
    }
}
