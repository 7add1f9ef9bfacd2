using BenchmarkDotNet.Attributes;
using MarineService.Core.Fluids;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Benchmarks.Fluids;

/// <summary>The time of a drain in closed form against stepping the level down.</summary>
[MemoryDiagnoser]
public class DrainTimeBenchmarks
{
    private readonly DrainPath _path =
        DrainPath.ByGravity(Length.FromMillimeters(12), Length.FromMeters(1), Length.FromMeters(0.5)).WithLosses(2);

    private readonly Volume _oil = Volume.FromLiters(8);
    private readonly Area _surface = Area.FromSquareMeters(0.18);
    private readonly KinematicViscosity _viscosity = KinematicViscosity.FromCentistokes(33.6383);

    [Benchmark]
    public Duration Total() => _path.Drain(_oil, _surface, _viscosity).Value.Total;

    [Benchmark]
    public Volume LeftAfterAMinute() => _path.Drain(_oil, _surface, _viscosity).Value.LeftAfter(Duration.FromMinutes(1));

    /// <summary>A thousand steps reach about one part in a thousand of the time.</summary>
    [Benchmark(Baseline = true)]
    public double ThousandSteps()
    {
        const double Friction = 32 * 33.6383e-6 / (0.012 * 0.012);
        const double BoreArea = Math.PI / 4 * 0.012 * 0.012;
        double step = 0.008 / 0.18 / 1000;
        double seconds = 0;
        for (int i = 0; i < 1000; i++)
        {
            double gh = 9.80665 * (0.5 + (i + 0.5) * step);
            double velocity = (-Friction + Math.Sqrt(Friction * Friction + 4 * gh)) / 2;
            seconds += step * 0.18 / (BoreArea * velocity);
        }

        return seconds;
    }
}
