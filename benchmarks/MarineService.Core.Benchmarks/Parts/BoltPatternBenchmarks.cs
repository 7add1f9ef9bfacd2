using BenchmarkDotNet.Attributes;
using MarineService.Core.Parts;
using UnitsNet;

namespace MarineService.Core.Benchmarks.Parts;

/// <summary>At which rotations a cover fits: the closed answer against trying every turn in steps of a tenth of a degree.</summary>
[MemoryDiagnoser]
public class BoltPatternBenchmarks
{
    private BoltPattern _pattern = null!;
    private ScrewClearance _clearance = null!;
    private double[] _angles = null!;

    [Params(3, 6, 12)]
    public int Holes { get; set; }

    [GlobalSetup]
    public void Build()
    {
        double[] degrees = [.. Enumerable.Range(0, Holes).Select(i => (i * 360.0 / Holes) + (i % 3 == 1 ? 3 : 0))];
        _pattern = BoltPattern.Of(Length.FromMillimeters(34), degrees);
        _clearance = ScrewClearance.OfStandardHole(MetricThread.M5, ClearanceSeries.Medium).Value;
        _angles = [.. degrees.Select(angle => angle * Math.PI / 180)];
    }

    [Benchmark(Baseline = true)]
    public int TryEveryTurn()
    {
        int fits = 0;
        for (int step = 0; step < 3600; step++)
        {
            double turn = step * Math.PI / 1800;
            double worst = 0;
            foreach (double hole in _angles)
            {
                double least = double.PositiveInfinity;
                foreach (double other in _angles)
                {
                    least = Math.Min(least, Math.Abs(Math.Sin((hole + turn - other) / 2)));
                }

                worst = Math.Max(worst, 68 * least);
            }

            fits += worst <= 0.25 ? 1 : 0;
        }

        return fits;
    }

    [Benchmark]
    public int Centered() => _pattern.Fit(_pattern, _clearance).Fitting.Count;

    [Benchmark]
    public int Free() => _pattern.Fit(_pattern, _clearance, CoverLocation.Free).Fitting.Count;
}
