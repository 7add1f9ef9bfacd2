using BenchmarkDotNet.Attributes;
using MarineService.Core.Belts;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace MarineService.Core.Benchmarks.Belts;

/// <summary>The length of a belt on grooved pulleys only, against the hull of sampled circles (576 points each: 5e-6 of the length short).</summary>
[MemoryDiagnoser]
public class HullBenchmarks
{
    private const int Points = 576;
    private static readonly GeometryFactory Factory = new();
    private BeltRouting _routing = null!;
    private StopGeometry[] _stops = null!;

    [GlobalSetup]
    public void Build()
    {
        _routing = PlateOfPulleys.RibsOnly().EngineRouting.Value;
        _stops = new StopGeometry[7];
        _routing.TryGetGeometry(_stops, out double length);
        if (Math.Abs(Hull() - length) > 1e-5 * length)
        {
            throw new InvalidOperationException("Hull and formula must agree before they are compared.");
        }
    }

    [Benchmark(Baseline = true)]
    public double Hull()
    {
        Coordinate[] rims = new Coordinate[_stops.Length * Points];
        for (int i = 0; i < rims.Length; i++)
        {
            StopGeometry stop = _stops[i / Points];
            double angle = 2 * Math.PI * (i % Points) / Points;
            rims[i] = new Coordinate(stop.CenterXMm + (stop.PitchRadiusMm * Math.Cos(angle)), stop.CenterYMm + (stop.PitchRadiusMm * Math.Sin(angle)));
        }

        return new ConvexHull(rims, Factory).GetConvexHull().Length;
    }

    [Benchmark]
    public double Length()
    {
        _routing.TryGetPitchLength(out double length);
        return length;
    }
}
