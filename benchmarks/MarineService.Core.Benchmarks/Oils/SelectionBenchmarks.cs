using BenchmarkDotNet.Attributes;
using MarineService.Core.Oils;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Benchmarks.Oils;

/// <summary>Three permitted grades over a list of nights, against the bare comparisons on doubles; the bytes must not grow with the nights.</summary>
[MemoryDiagnoser]
public class SelectionBenchmarks
{
    private static readonly double[] Floors = [-15, -20, -25];
    private static readonly double[] Refused = [-20, -25, -30];
    private OilChoice _choice = null!;
    private NightMinimum[] _nights = null!;
    private double[] _celsius = null!;

    [Params(10, 365)]
    public int Nights { get; set; }

    [GlobalSetup]
    public void Build()
    {
        _choice = OilSelection.Among("15W-40", "10W-30", "5W-40").WithFitted(LabelledOil.Of("15W-40"));
        _celsius = [.. Enumerable.Range(0, Nights).Select(i => -19.0 + (i % 20))];
        _nights = [.. _celsius.Select((celsius, i) => NightMinimum.Of(new LocalDate(2026, 10, 1).PlusDays(i), Temperature.FromDegreesCelsius(celsius)))];
    }

    [Benchmark(Baseline = true)]
    public int BareComparisons()
    {
        int accepted = 0;
        foreach (double celsius in _celsius)
        {
            for (int g = 0; g < Floors.Length; g++)
            {
                accepted += celsius < Refused[g] ? 0 : celsius < Floors[g] ? 1 : 2;
            }
        }

        return accepted;
    }

    [Benchmark]
    public OilSeason ForNights() => _choice.ForNights(_nights);
}
