using System.Diagnostics;
using System.Globalization;
using MarineService.Core.Fleet;

namespace Fleet;

/// <summary>Sees a run through: results to a file or to nowhere, progress to the console, a checkpoint now and then.</summary>
internal sealed class FleetJob(string where, TextWriter progress)
{
    private static readonly TimeSpan BetweenCheckpoints = TimeSpan.FromSeconds(2);

    /// <summary>Runs to the end of the input.</summary>
    /// <param name="stretches">What is judged, from the checkpoint's place on.</param>
    /// <param name="output">Takes the results, or null.</param>
    /// <param name="from">Where it goes on from.</param>
    /// <param name="checkpoint">Where checkpoints are kept, or null.</param>
    /// <param name="cancellation">Stops between stretches.</param>
    internal async Task<FleetSummary> RunAsync(IAsyncEnumerable<Stretch> stretches, Stream? output, Checkpoint from, string? checkpoint, CancellationToken cancellation)
    {
        FleetTally tally = new();
        tally.Add(from.Summary);
        Stopwatch clock = Stopwatch.StartNew();
        TimeSpan told = TimeSpan.Zero;
        long written = from.OutputBytes;
        long engines = from.Summary.Engines;
        await foreach (Stretch stretch in stretches.WithCancellation(cancellation))
        {
            if (output is not null)
            {
                await output.WriteAsync(stretch.Output, cancellation);
            }

            written += stretch.Output.Length;
            engines += stretch.Summary.Engines;
            tally.Add(stretch.Summary);
            if (clock.Elapsed - told > BetweenCheckpoints)
            {
                told = clock.Elapsed;
                Remember(output, checkpoint, new(from.InputBytes + stretch.InputBytes, written, stretch.NextLine, tally.ToSummary()));
                await progress.WriteLineAsync(string.Create(
                    CultureInfo.InvariantCulture, $"{engines:N0} engines, {(engines - from.Summary.Engines) / clock.Elapsed.TotalSeconds:N0} a second"));
            }
        }

        FleetSummary summary = tally.ToSummary();
        if (output is not null)
        {
            await output.FlushAsync(cancellation);
        }

        await progress.WriteLineAsync(string.Create(
            CultureInfo.InvariantCulture,
            $"{summary.Engines - from.Summary.Engines:N0} engines in {clock.Elapsed.TotalSeconds:0.0} s on {where}, {(summary.Engines - from.Summary.Engines) / clock.Elapsed.TotalSeconds:N0} a second, peak memory {Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000} MB"));
        if (checkpoint is not null)
        {
            File.Delete(checkpoint);
        }

        return summary;
    }

    private static void Remember(Stream? output, string? path, Checkpoint checkpoint)
    {
        if (path is null)
        {
            return;
        }

        // The results first: a checkpoint never speaks of what is not on the disk.
        if (output is FileStream file)
        {
            file.Flush(flushToDisk: true);
        }

        checkpoint.Write(path);
    }
}
