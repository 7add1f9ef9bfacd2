using BenchmarkDotNet.Attributes;
using MarineService.Core.Fluids;
using UnitsNet;

namespace MarineService.Core.Benchmarks.Fluids;

/// <summary>The volume correction of a thousand temperatures against the formula written bare.</summary>
[MemoryDiagnoser]
public class VolumeCorrectionBenchmarks
{
    private const int Count = 1000;
    private readonly double[] _celsius = new double[Count];
    private readonly Temperature[] _temperatures = new Temperature[Count];
    private OilDensity _oil = null!;

    [GlobalSetup]
    public void Build()
    {
        _oil = OilDensity.At15C(Density.FromKilogramsPerCubicMeter(880));
        for (int i = 0; i < Count; i++)
        {
            _celsius[i] = -20 + 0.12 * i;
            _temperatures[i] = Temperature.FromDegreesCelsius(_celsius[i]);
        }
    }

    [Benchmark(Baseline = true)]
    public double Bare()
    {
        const double Alpha = 0.6278 / 880;
        double sum = 0;
        foreach (double celsius in _celsius)
        {
            double x = Alpha * (celsius - 15);
            sum += Math.Exp(-x * (1 + 0.8 * x));
        }

        return sum;
    }

    [Benchmark]
    public double Library()
    {
        double sum = 0;
        foreach (double celsius in _celsius)
        {
            sum += _oil.VolumeCorrectionRatio(celsius);
        }

        return sum;
    }

    [Benchmark]
    public double LibraryWithQuantities()
    {
        double sum = 0;
        foreach (Temperature temperature in _temperatures)
        {
            sum += _oil.VolumeCorrectionRatio(temperature);
        }

        return sum;
    }
}
