using System.Buffers;
using System.Security.Cryptography;
using System.Text.Json;
using MarineService.Core.Fleet;

namespace MarineService.Core.Exchange;

/// <summary>What each worker does with its stretch of lines.</summary>
internal sealed class FleetRunWork
{
    private readonly FleetEvaluation _evaluation;

    // The SHA-256 of each data sheet, by its reference.
    private readonly Dictionary<string, byte[]> _sheets;

    internal FleetRunWork(FleetEvaluation evaluation, ReadLimits limits)
    {
        (_evaluation, Limits) = (evaluation, limits);
        _sheets = evaluation.Catalogue.Specifications.ToDictionary(sheet => sheet.Reference, Digest, StringComparer.Ordinal);
    }

    internal ReadLimits Limits { get; }

    internal FleetBatch Evaluate(FleetChunk chunk)
    {
        ByteBuffer output = new();
        FleetTally tally = new();
        using Utf8JsonWriter writer = Document.LineWriter(output);
        if (chunk.Buffer is not byte[] buffer)
        {
            FleetFault tooLong = new("", "a longer line", FormattableString.Invariant($"at most {Limits.MaxBytes} bytes"));
            Write(FleetResult.Refused(null, null, null, _evaluation.Today, [tooLong]), chunk.FirstLine, writer, output, tally);
            return new(output.Written, tally.ToSummary(), chunk);
        }

        try
        {
            using SHA256 hash = SHA256.Create();
            long line = chunk.FirstLine;
            int start = 0;
            while (start < chunk.Length)
            {
                int length = buffer.AsSpan(start, chunk.Length - start).IndexOf((byte)'\n');
                length = length < 0 ? chunk.Length - start : length;
                int kept = length > 0 && buffer[start + length - 1] == (byte)'\r' ? length - 1 : length;
                if (kept > 0)
                {
                    Write(Evaluate(buffer, start, kept, hash), line, writer, output, tally);
                }

                start += length + 1;
                line++;
            }
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }

        return new(output.Written, tally.ToSummary(), chunk);
    }

    private static void Write(FleetResult result, long line, Utf8JsonWriter writer, ByteBuffer output, FleetTally tally)
    {
        FleetWire.Write(writer, result, line);
        writer.Flush();
        output.Write("\n"u8);
        writer.Reset();
        tally.Add(result);
    }

    private FleetResult Evaluate(byte[] buffer, int start, int length, SHA256 hash)
    {
        FleetEngineParts parts = new();
        ReadResult<FleetEngineParts> read = Document.Read(buffer.AsSpan(start, length), Limits, (ref JsonCursor json) => FleetWire.ReadEngine(ref json, parts));
        string fingerprint = Fingerprint(buffer, start, length, parts.Specification, hash);
        return read.IsRead
            ? _evaluation.Evaluate(parts.Build(fingerprint))
            : FleetResult.Refused(
                parts.Engine, parts.Depot, fingerprint, _evaluation.Today, [.. read.Faults.Select(fault => new FleetFault(fault.Place, fault.Value, fault.Expected))]);
    }

    private string Fingerprint(byte[] buffer, int start, int length, string? specification, SHA256 hash)
    {
        hash.Initialize();
        hash.TransformBlock(buffer, start, length, null, 0);
        byte[] sheet = specification is not null && _sheets.TryGetValue(specification, out byte[]? found) ? found : [];
        hash.TransformFinalBlock(sheet, 0, sheet.Length);
        return Hexadecimal(hash.Hash!);
    }

    private static string Hexadecimal(byte[] bytes)
    {
        const string Digits = "0123456789abcdef";
        char[] text = new char[2 * bytes.Length];
        for (int i = 0; i < bytes.Length; i++)
        {
            (text[2 * i], text[(2 * i) + 1]) = (Digits[bytes[i] >> 4], Digits[bytes[i] & 15]);
        }

        return new(text);
    }

    // Of a data sheet in its own words, with what its tasks use up.
    private static byte[] Digest(FleetSpecification sheet)
    {
        ByteBuffer buffer = new();
        EngineSpecificationJson.Write(sheet.Specification, buffer);
        foreach (PartNeed need in sheet.Parts)
        {
            buffer.Write(System.Text.Encoding.UTF8.GetBytes(FormattableString.Invariant($"\n{need.TaskId}\t{need.Part}\t{need.Quantity}")));
        }

        using SHA256 hash = SHA256.Create();
        hash.TransformFinalBlock(buffer.Array, 0, buffer.Count);
        return hash.Hash!;
    }
}
