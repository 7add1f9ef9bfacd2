using BenchmarkDotNet.Attributes;
using MarineService.Core.Parts;

namespace MarineService.Core.Benchmarks.Parts;

/// <summary>The cheapest packs of ten sizes, exactly, against looking at one size after the other, which is not exact.</summary>
[MemoryDiagnoser]
public class PackBuyingBenchmarks
{
    private PackOffer[] _offers = null!;

    [Params(5, 100, 1000)]
    public int Liters { get; set; }

    [GlobalSetup]
    public void Build()
    {
        decimal[] sizes = [0.5m, 1m, 1.5m, 2m, 4m, 5m, 10m, 20m, 25m, 60m];
        _offers = [.. sizes.Select((size, i) => PackOffer.Of($"{size} L", size, (size * 8m) + (i % 3)))];
    }

    [Benchmark(Baseline = true)]
    public decimal OneSizeOnly()
    {
        decimal least = decimal.MaxValue;
        foreach (PackOffer offer in _offers)
        {
            least = Math.Min(least, decimal.Ceiling((Liters + 0.2m) / offer.Amount) * offer.Price);
        }

        return least;
    }

    [Benchmark]
    public decimal Exact() => Purchase.Cheapest(Liters + 0.2m, _offers).Price;
}
