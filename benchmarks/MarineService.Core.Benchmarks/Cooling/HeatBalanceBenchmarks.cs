using BenchmarkDotNet.Attributes;
using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using UnitsNet;

namespace MarineService.Core.Benchmarks.Cooling;

/// <summary>How much raw water an engine needs: the bare formula, the answer, and the answer with its explanation.</summary>
[MemoryDiagnoser]
public class HeatBalanceBenchmarks
{
    private readonly Power _power = Power.FromKilowatts(100);
    private readonly TemperatureDelta _rise = TemperatureDelta.FromKelvins(15);

    [Benchmark(Baseline = true)]
    public double Formula() => 60 * 0.8 * (double)_power.Kilowatts / (1.025 * 3.99 * _rise.Kelvins);

    [Benchmark]
    public double Need() => HeatToWater.Of(_power, Fuel.Diesel).Value.FlowFor(_rise, WaterKind.Salt).Flow.LitersPerMinute;

    [Benchmark]
    public string NeedAndExplain() =>
        HeatToWater.Of(_power, Fuel.Diesel).Value.FlowFor(_rise, WaterKind.Salt).Explain(DisplayUnits.Metric).ToString();
}
