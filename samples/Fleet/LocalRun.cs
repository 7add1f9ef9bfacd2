using System.Runtime.CompilerServices;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;

namespace Fleet;

/// <summary>Judges a stream on the threads of this machine.</summary>
internal static class LocalRun
{
    internal static async IAsyncEnumerable<Stretch> StretchesAsync(
        Stream input, FleetEvaluation evaluation, int threads, long firstLine, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(input, evaluation, threads, null, firstLine, cancellation))
        {
            yield return new(batch.Output, batch.Summary, batch.InputBytes, batch.NextLine);
        }
    }
}
