using BenchmarkDotNet.Attributes;
using MarineService.Core.Oils;
using UnitsNet;

namespace MarineService.Core.Benchmarks.Oils;

/// <summary>Classifying one report, and the same with its explanation.</summary>
[MemoryDiagnoser]
public class ClassificationBenchmarks
{
    private OilTestReport _report = null!;

    [GlobalSetup]
    public void Build() => _report = OilTestReport.Empty
        .WithCranking(DynamicViscosity.FromMillipascalSeconds(6400), Temperature.FromDegreesCelsius(-30))
        .WithPumping(DynamicViscosity.FromMillipascalSeconds(30000), Temperature.FromDegreesCelsius(-35), yieldStressFound: false)
        .WithViscosityAt100C(KinematicViscosity.FromCentistokes(14.2))
        .WithHighShear(DynamicViscosity.FromMillipascalSeconds(3.6));

    [Benchmark(Baseline = true)]
    public SaeGrade? Classify() => _report.Classify().Label;

    [Benchmark]
    public string ClassifyAndExplain() => _report.Classify().Explain(DisplayUnits.Metric).ToString();
}
