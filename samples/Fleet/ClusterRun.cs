using System.Buffers;
using System.IO.Pipelines;
using System.Runtime.CompilerServices;
using System.Text.Json;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using NodaTime;
using NodaTime.Text;

namespace Fleet;

/// <summary>Judges a stream on a cluster: one grain for each engine, the library's documents across the wire.</summary>
/// <remarks>
/// An answer depends on the line, its number, the day and the library, and on nothing that a grain remembers. So a question is simply asked
/// again when a silo goes away, and only the asker counts: each line once, in the order of the input.
/// </remarks>
internal sealed class ClusterRun(IGrainFactory grains, LocalDate today)
{
    private const int AskedAtOnce = 256;
    private const int Attempts = 30;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(200);

    internal async IAsyncEnumerable<Stretch> StretchesAsync(Stream input, long firstLine, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        Queue<(Task<EngineAnswer> Answer, long Bytes, long Line)> asked = [];
        long number = firstLine;
        long bytes = 0;
        await foreach (byte[] line in LinesAsync(input, cancellation))
        {
            bytes += line.Length + 1;
            asked.Enqueue((AskAsync(line, number, cancellation), bytes, number++));
            if (asked.Count == AskedAtOnce)
            {
                yield return await AnsweredAsync(asked, AskedAtOnce / 2);
            }
        }

        while (asked.Count > 0)
        {
            yield return await AnsweredAsync(asked, asked.Count);
        }
    }

    private static async Task<Stretch> AnsweredAsync(Queue<(Task<EngineAnswer> Answer, long Bytes, long Line)> asked, int count)
    {
        ArrayBufferWriter<byte> output = new();
        FleetTally tally = new();
        (long bytes, long next) = (0, 0);
        for (int i = 0; i < count; i++)
        {
            (Task<EngineAnswer> waiting, bytes, long line) = asked.Dequeue();
            next = line + 1;
            EngineAnswer answer = await waiting;
            output.Write(answer.Output.Span);
            tally.Add(FleetSummaryJson.Read(answer.Summary.Span).Value);
        }

        return new(output.WrittenMemory, tally.ToSummary(), bytes, next);
    }

    private async Task<EngineAnswer> AskAsync(byte[] line, long number, CancellationToken cancellation)
    {
        string day = LocalDatePattern.Iso.Format(today);
        for (int attempt = 1; ; attempt++)
        {
            try
            {
                return await grains.GetGrain<IEngineGrain>(EngineId(line)).JudgeAsync(line, number, day);
            }
            catch (Exception fault) when (attempt < Attempts && fault is OrleansException or TimeoutException or OperationCanceledException && !cancellation.IsCancellationRequested)
            {
                // A silo went away: its grains wake up on another one.
                await Task.Delay(Pause, cancellation);
            }
        }
    }

    // Whatever cannot be read has no engine of its own; its faults are worth the same on any grain.
    private static string EngineId(byte[] line)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(line);
            return document.RootElement.ValueKind == JsonValueKind.Object
                && document.RootElement.TryGetProperty("engine", out JsonElement id)
                && id.ValueKind == JsonValueKind.String
                && id.GetString() is { Length: > 0 } text ? text : "no engine";
        }
        catch (JsonException)
        {
            return "no engine";
        }
    }

    private static async IAsyncEnumerable<byte[]> LinesAsync(Stream input, [EnumeratorCancellation] CancellationToken cancellation)
    {
        PipeReader reader = PipeReader.Create(input, new(leaveOpen: true));
        while (true)
        {
            ReadResult read = await reader.ReadAsync(cancellation);
            ReadOnlySequence<byte> rest = read.Buffer;
            while (rest.PositionOf((byte)'\n') is SequencePosition end)
            {
                yield return rest.Slice(0, end).ToArray();
                rest = rest.Slice(rest.GetPosition(1, end));
            }

            if (read.IsCompleted)
            {
                if (!rest.IsEmpty)
                {
                    yield return rest.ToArray();
                }

                break;
            }

            reader.AdvanceTo(rest.Start, rest.End);
        }

        await reader.CompleteAsync();
    }
}
