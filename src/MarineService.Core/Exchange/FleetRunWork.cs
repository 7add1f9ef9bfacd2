using System.Buffers;
using System.Collections.Concurrent;
using System.Security.Cryptography;
using MarineService.Core.Fleet;

namespace MarineService.Core.Exchange;

/// <summary>What each worker does with its stretch of lines.</summary>
internal sealed class FleetRunWork : IDisposable
{
    private readonly FleetEvaluation _evaluation;

    // The SHA-256 of each data sheet, by its reference.
    private readonly Dictionary<string, byte[]> _sheets;

    private readonly ConcurrentBag<FleetBench> _idle = [];

    internal FleetRunWork(FleetEvaluation evaluation, ReadLimits limits)
    {
        (_evaluation, Limits) = (evaluation, limits);
        using SHA256 hash = SHA256.Create();
        _sheets = evaluation.Catalogue.Specifications.ToDictionary(sheet => sheet.Reference, sheet => Digest(sheet, hash), StringComparer.Ordinal);
    }

    internal ReadLimits Limits { get; }

    internal FleetBatch Evaluate(FleetChunk chunk)
    {
        FleetBench bench = _idle.TryTake(out FleetBench? used) ? used : new();
        try
        {
            Evaluate(chunk, bench);
            return new(bench.Output.Written.ToArray(), FleetSummary.Of(bench.Results), chunk);
        }
        finally
        {
            bench.Clear();
            _idle.Add(bench);
        }
    }

    public void Dispose()
    {
        while (_idle.TryTake(out FleetBench? bench))
        {
            bench.Dispose();
        }
    }

    private void Evaluate(FleetChunk chunk, FleetBench bench)
    {
        if (chunk.Buffer is not byte[] buffer)
        {
            FleetFault tooLong = new("", "a longer line", FormattableString.Invariant($"at most {Limits.MaxBytes} bytes"));
            Write(FleetResult.Refused(null, null, null, _evaluation.Today, [tooLong]), chunk.FirstLine, bench);
            return;
        }

        try
        {
            long line = chunk.FirstLine;
            int start = 0;
            while (start < chunk.Length)
            {
                int length = buffer.AsSpan(start, chunk.Length - start).IndexOf((byte)'\n');
                length = length < 0 ? chunk.Length - start : length;
                int kept = length > 0 && buffer[start + length - 1] == (byte)'\r' ? length - 1 : length;
                if (kept > 0)
                {
                    Write(Evaluate(buffer, start, kept, bench), line, bench);
                }

                start += length + 1;
                line++;
            }
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private static void Write(FleetResult result, long line, FleetBench bench)
    {
        FleetWire.Write(bench.Writer, result, line);
        bench.Writer.Flush();
        bench.Output.Write("\n"u8);
        bench.Writer.Reset();
        bench.Results.Add(result);
    }

    private FleetResult Evaluate(byte[] buffer, int start, int length, FleetBench bench)
    {
        FleetEngineParts parts = new();
        ReadResult<FleetEngineParts> read = Document.Read(
            buffer.AsSpan(start, length), Limits, (ref JsonCursor json) => FleetWire.ReadEngine(ref json, parts), bench.Texts);
        bench.Hash.AppendData(buffer, start, length);
        if (parts.Specification is not null && _sheets.TryGetValue(parts.Specification, out byte[]? sheet))
        {
            bench.Hash.AppendData(sheet);
        }

        string fingerprint = Hexadecimal(bench.Hash.GetHashAndReset());
        return read.IsRead
            ? _evaluation.Evaluate(parts.Build(fingerprint))
            : FleetResult.Refused(
                parts.Engine, parts.Depot, fingerprint, _evaluation.Today, [.. read.Faults.Select(fault => new FleetFault(fault.Place, fault.Value, fault.Expected))]);
    }

    private static string Hexadecimal(byte[] bytes)
    {
        const string Digits = "0123456789abcdef";
        Span<char> text = stackalloc char[2 * bytes.Length];
        for (int i = 0; i < bytes.Length; i++)
        {
            (text[2 * i], text[(2 * i) + 1]) = (Digits[bytes[i] >> 4], Digits[bytes[i] & 15]);
        }

        return text.ToString();
    }

    // Of a data sheet in its own words, with what its tasks use up.
    private static byte[] Digest(FleetSpecification sheet, SHA256 hash)
    {
        using ByteBuffer buffer = new();
        EngineSpecificationJson.Write(sheet.Specification, buffer);
        foreach (PartNeed need in sheet.Parts)
        {
            buffer.Write(System.Text.Encoding.UTF8.GetBytes(FormattableString.Invariant($"\n{need.TaskId}\t{need.Part}\t{need.Quantity}")));
        }

        return hash.ComputeHash(buffer.Array, 0, buffer.Count);
    }
}
