using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using MarineService.Core.Fleet;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>Judges engines that come as NDJSON, one <c>marine-service/fleet-engine</c> on a line, and gives one <c>marine-service/fleet-result</c> on a line for each.</summary>
/// <remarks>
/// <para>Memory does not grow with the number of engines. Results are in the order of the input on any number of threads. A record with faults
/// gives its faults, with its line, and the next one is read. Blank lines are passed over.</para>
/// <para>The fingerprint of a result is the SHA-256 of the record's line and the SHA-256 of its data sheet behind it: with the same day, rules and library
/// the result is the same.</para>
/// </remarks>
public static class FleetRun
{
    /// <summary>Judges a stream, stretch by stretch; the caller writes the output, adds up the summaries, and remembers how far it came.</summary>
    /// <param name="input">Engines as NDJSON in UTF-8; left open.</param>
    /// <param name="evaluation">The question.</param>
    /// <param name="workers">How many stretches are judged at once, 1 to 1,024: one where the caller asks for it, more on threads of the pool.</param>
    /// <param name="limits">How much of one line is read before it is refused; null for the default limits.</param>
    /// <param name="firstLine">The number of the first line, 1 to 1,000,000,000,000: more than 1 when the stream goes on after a break.</param>
    /// <param name="cancellation">Stops between stretches.</param>
    /// <returns>The results, stretch by stretch.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> or <paramref name="evaluation"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="workers"/> or <paramref name="firstLine"/> is out of range.</exception>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static IAsyncEnumerable<FleetBatch> BatchesAsync(
        Stream input, FleetEvaluation evaluation, int workers = 1, ReadLimits? limits = null, long firstLine = 1, CancellationToken cancellation = default)
    {
        Guard.NotNull(input);
        FleetRunWork work = new(Guard.NotNull(evaluation), limits ?? ReadLimits.Default);
        Guard.InRange(workers, 1, OrderedWork.MaxWorkers, "workers");
        if (firstLine is < 1 or > FleetResultJson.MostLines)
        {
            throw new ArgumentOutOfRangeException(nameof(firstLine), firstLine, FormattableString.Invariant($"Must be a line number, 1 to {FleetResultJson.MostLines}."));
        }

        return JudgeAsync(FleetLines.Read(input, work.Limits.MaxBytes, firstLine, cancellation), work, workers, cancellation);
    }

    /// <summary>Judges a pipe into another.</summary>
    /// <param name="input">Engines as NDJSON in UTF-8; completed at the end.</param>
    /// <param name="output">Takes the results as NDJSON in UTF-8; flushed after each stretch, not completed.</param>
    /// <param name="evaluation">The question.</param>
    /// <param name="workers">How many stretches are judged at once, 1 to 1,024: one where the caller asks for it, more on threads of the pool.</param>
    /// <param name="progress">Told how many engines are done, after each stretch; null when nobody asks.</param>
    /// <param name="limits">How much of one line is read before it is refused; null for the default limits.</param>
    /// <param name="cancellation">Stops between stretches.</param>
    /// <returns>The summary of all.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="input"/>, <paramref name="output"/> or <paramref name="evaluation"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="workers"/> is outside 1 to 1,024.</exception>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static async Task<FleetSummary> PipeAsync(
        PipeReader input,
        PipeWriter output,
        FleetEvaluation evaluation,
        int workers = 1,
        IProgress<long>? progress = null,
        ReadLimits? limits = null,
        CancellationToken cancellation = default)
    {
        Guard.NotNull(input);
        Guard.NotNull(output);
        FleetTally tally = new();
        long engines = 0;
        await foreach (FleetBatch batch in BatchesAsync(input.AsStream(), evaluation, workers, limits, 1, cancellation).ConfigureAwait(false))
        {
            await output.WriteAsync(batch.Output, cancellation).ConfigureAwait(false);
            tally.Add(batch.Summary);
            engines += batch.Summary.Engines;
            progress?.Report(engines);
        }

        return tally.ToSummary();
    }

    private static async IAsyncEnumerable<FleetBatch> JudgeAsync(
        IAsyncEnumerable<FleetChunk> lines, FleetRunWork work, int workers, [EnumeratorCancellation] CancellationToken cancellation)
    {
        using (work)
        {
            await foreach (FleetBatch batch in OrderedWork.Run(lines, work.Evaluate, workers, cancellation).ConfigureAwait(false))
            {
                yield return batch;
            }
        }
    }
}
