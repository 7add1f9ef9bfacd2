using BenchmarkDotNet.Attributes;
using MarineService.Core.Belts;

namespace MarineService.Core.Benchmarks.Belts;

/// <summary>The length and the whole geometry of the demo's seven-pulley belt against the bare formula on arrays of doubles.</summary>
[MemoryDiagnoser]
public class GeometryBenchmarks
{
    private readonly StopGeometry[] _stops = new StopGeometry[7];
    private BeltRouting _routing = null!;
    private double[] _x = null!;
    private double[] _y = null!;
    private double[] _signed = null!;

    [GlobalSetup]
    public void Build()
    {
        _routing = PlateOfPulleys.Demo.EngineRouting.Value;
        _routing.TryGetGeometry(_stops, out _);
        _x = [.. _stops.Select(stop => stop.CenterXMm)];
        _y = [.. _stops.Select(stop => stop.CenterYMm)];
        _signed = [.. _stops.Select(stop => stop.TurnsCounterClockwise ? stop.PitchRadiusMm : -stop.PitchRadiusMm)];
    }

    [Benchmark(Baseline = true)]
    public double BareFormula()
    {
        int last = _x.Length - 1;
        double length = Span(last, 0, out double first);
        double arriving = first;
        for (int i = 0; i <= last; i++)
        {
            double leaving = first;
            length += i < last ? Span(i, i + 1, out leaving) : 0;
            double wrap = (leaving - arriving) * Math.Sign(_signed[i]);
            length += Math.Abs(_signed[i]) * (wrap - (2 * Math.PI * Math.Floor(wrap / (2 * Math.PI))));
            arriving = leaving;
        }

        return length;
    }

    [Benchmark]
    public double Length()
    {
        _routing.TryGetPitchLength(out double length);
        return length;
    }

    [Benchmark]
    public double Geometry()
    {
        _routing.TryGetGeometry(_stops, out double length);
        return length;
    }

    private double Span(int from, int to, out double direction)
    {
        double dx = _x[to] - _x[from];
        double dy = _y[to] - _y[from];
        double delta = _signed[to] - _signed[from];
        double span = Math.Sqrt((dx * dx) + (dy * dy) - (delta * delta));
        direction = Math.Atan2((span * dy) - (delta * dx), (span * dx) + (delta * dy));
        return span;
    }
}
