using BenchmarkDotNet.Attributes;
using global::Fleet;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Benchmarks.Fleet;

/// <summary>
/// Ten thousand engines from NDJSON to results as NDJSON and a summary: by plain objects and the library's rules, by plain objects and no rules, and by the
/// stream on one thread and on two.
/// </summary>
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

        // What is called the same work must give the same answers.
        FleetSummary summary = Run(1).GetAwaiter().GetResult();
        PlainFleet plain = Run(new PlainFleetByRules(Today.ToDateOnly())).GetAwaiter().GetResult();
        string ours = string.Join(' ', Enum.GetValues<DueStatus>().Select(summary.TasksThatAre));
        string theirs = string.Join(' ', PlainFleetByRules.Words.Select(word => plain.Statuses.GetValueOrDefault(word)));
        if (ours != theirs || summary.DueDates.Count != plain.DueDates || summary.Parts.Count != plain.Demands)
        {
            throw new InvalidOperationException(
                $"The two do not say the same: {ours}, {summary.DueDates.Count} dates, {summary.Parts.Count} demands; {theirs}, {plain.DueDates} dates, {plain.Demands} demands.");
        }
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Engines)]
    public async Task<long> PlainObjects() => (await Run(new PlainFleetByRules(Today.ToDateOnly())).ConfigureAwait(false)).Engines;

    [Benchmark(OperationsPerInvoke = Engines)]
    public async Task<long> PlainObjectsUnchecked() => (await Run(new PlainFleetByLastDone(Today.ToDateOnly())).ConfigureAwait(false)).Engines;

    [Benchmark(OperationsPerInvoke = Engines)]
    public Task<FleetSummary> OneThread() => Run(1);

    [Benchmark(OperationsPerInvoke = Engines)]
    public Task<FleetSummary> TwoThreads() => Run(2);

    private async Task<PlainFleet> Run(PlainFleet fleet)
    {
        using MemoryStream ndjson = new(_ndjson);
        await fleet.Run(ndjson, Stream.Null).ConfigureAwait(false);
        return fleet;
    }

    private async Task<FleetSummary> Run(int workers)
    {
        FleetTally tally = new();
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(new MemoryStream(_ndjson), Evaluation, workers).ConfigureAwait(false))
        {
            await Stream.Null.WriteAsync(batch.Output).ConfigureAwait(false);
            tally.Add(batch.Summary);
        }

        return tally.ToSummary();
    }
}
