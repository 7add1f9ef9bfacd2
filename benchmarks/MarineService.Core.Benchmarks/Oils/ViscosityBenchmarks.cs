using BenchmarkDotNet.Attributes;
using MarineService.Core.Oils;
using UnitsNet;

namespace MarineService.Core.Benchmarks.Oils;

/// <summary>The typed viscosity line against the bare double-log formula on doubles, natural and base 10, in one run.</summary>
[MemoryDiagnoser]
public class ViscosityBenchmarks
{
    private ViscosityLine _line = null!;
    private Temperature[] _temperatures = null!;
    private double[] _kelvins = null!;
    private double _a;
    private double _b;
    private double _aLog10;

    [GlobalSetup]
    public void Build()
    {
        _line = ViscosityLine.Through(
            KinematicViscosity.FromCentistokes(110), Temperature.FromDegreesCelsius(40), KinematicViscosity.FromCentistokes(14.5), Temperature.FromDegreesCelsius(100));
        _temperatures = [.. Enumerable.Range(0, 128).Select(i => Temperature.FromDegreesCelsius(i - 10))];
        _kelvins = [.. _temperatures.Select(temperature => temperature.DegreesCelsius + 273.15)];
        _b = _line.CoefficientB;
        _aLog10 = _line.CoefficientA;
        _a = (_aLog10 * Math.Log(10)) + Math.Log(Math.Log(10));
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = 128)]
    public double BareNaturalLog()
    {
        double sum = 0;
        foreach (double kelvin in _kelvins)
        {
            double w = Math.Exp(Math.Exp(_a - (_b * Math.Log(kelvin)))) - 0.7;
            sum += w >= 5 ? w : w - Math.Exp(-0.7487 + (w * (-3.295 + (w * (0.6119 - (0.3193 * w))))));
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = 128)]
    public double BareBase10()
    {
        double sum = 0;
        foreach (double kelvin in _kelvins)
        {
            double w = Math.Pow(10, Math.Pow(10, _aLog10 - (_b * Math.Log10(kelvin)))) - 0.7;
            sum += w >= 5 ? w : w - Math.Exp(-0.7487 + (w * (-3.295 + (w * (0.6119 - (0.3193 * w))))));
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = 128)]
    public double TypedLine()
    {
        double sum = 0;
        foreach (Temperature temperature in _temperatures)
        {
            sum += _line.At(temperature).Value;
        }

        return sum;
    }
}
