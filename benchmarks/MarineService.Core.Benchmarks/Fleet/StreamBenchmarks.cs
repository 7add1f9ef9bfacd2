using BenchmarkDotNet.Attributes;
using global::Fleet;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using NodaTime;

namespace MarineService.Core.Benchmarks.Fleet;

/// <summary>Ten thousand engines from NDJSON to results as NDJSON and a summary: plain objects, ours on one thread, ours on two.</summary>
[MemoryDiagnoser]
public class StreamBenchmarks
{
    private const int Engines = 10_000;
    private static readonly LocalDate Today = new(2026, 10, 12);
    private static readonly FleetEvaluation Evaluation = FleetEvaluation.Of(Catalogue.Invented, Today);
    private byte[] _ndjson = null!;

    [GlobalSetup]
    public void Build()
    {
        using InventedFleet fleet = new(Engines, 7, Today);
        using MemoryStream made = new();
        fleet.CopyTo(made);
        _ndjson = made.ToArray();
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Engines)]
    public long PlainObjects()
    {
        PlainFleet fleet = new(new DateOnly(2026, 10, 12));
        fleet.Run(_ndjson, Stream.Null);
        return fleet.Engines;
    }

    [Benchmark(OperationsPerInvoke = Engines)]
    public Task<long> OneThread() => Run(1);

    [Benchmark(OperationsPerInvoke = Engines)]
    public Task<long> TwoThreads() => Run(2);

    private async Task<long> Run(int workers)
    {
        FleetTally tally = new();
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(new MemoryStream(_ndjson), Evaluation, workers).ConfigureAwait(false))
        {
            await Stream.Null.WriteAsync(batch.Output).ConfigureAwait(false);
            tally.Add(batch.Summary);
        }

        return tally.ToSummary().Engines;
    }
}
