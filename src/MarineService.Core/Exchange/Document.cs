using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>Reads and writes whole documents: the frame around what a document holds.</summary>
internal static class Document
{
    // Letters of all scripts stay readable; what could end a script or a tag in a web page is still escaped.
    private static readonly JsonWriterOptions Indented = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    private static readonly JsonWriterOptions OneLine = new() { Encoder = Indented.Encoder };

    internal delegate T? Reader<T>(ref JsonCursor json)
        where T : class;

    /// <summary>Every fault in one pass; what the document says never throws.</summary>
    internal static ReadResult<T> Read<T>(ReadOnlySpan<byte> utf8, ReadLimits? limits, Reader<T> reader, KnownTexts? texts = null)
        where T : class
    {
        ReadLimits bounds = limits ?? ReadLimits.Default;
        if (utf8.Length > bounds.MaxBytes)
        {
            return Refused<T>(FormattableString.Invariant($"{utf8.Length} bytes"), FormattableString.Invariant($"at most {bounds.MaxBytes} bytes"));
        }

        JsonCursor json = new(WithoutMark(utf8), bounds, texts);
        T? value = null;
        try
        {
            json.Start();
            value = reader(ref json);
            json.End();
        }
        catch (JsonException fault)
        {
            json.Note("", FormattableString.Invariant($"line {fault.LineNumber + 1}, byte {fault.BytePositionInLine + 1}"), $"JSON (RFC 8259), nested at most {bounds.MaxDepth} deep");
        }

        return new(value, json.Faults);
    }

    internal static ReadResult<T> Read<T>(Stream stream, ReadLimits? limits, Reader<T> reader)
        where T : class
    {
        Guard.NotNull(stream);
        ReadLimits bounds = limits ?? ReadLimits.Default;
        using MemoryStream copy = new();
        return TryCopy(stream, copy, bounds)
            ? Read(copy.GetBuffer().AsSpan(0, (int)copy.Length), bounds, reader)
            : Refused<T>("a longer stream", FormattableString.Invariant($"at most {bounds.MaxBytes} bytes"));
    }

    /// <summary>Copies a stream to its end; false as soon as it is longer than is read.</summary>
    internal static bool TryCopy(Stream stream, MemoryStream copy, ReadLimits bounds)
    {
        byte[] buffer = ArrayPool<byte>.Shared.Rent(81_920);
        try
        {
            int read;
            while ((read = stream.Read(buffer, 0, buffer.Length)) > 0)
            {
                copy.Write(buffer, 0, read);
                if (copy.Length > bounds.MaxBytes)
                {
                    return false;
                }
            }
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }

        return true;
    }

    /// <summary>The document behind a byte order mark, which some editors put before it.</summary>
    internal static ReadOnlySpan<byte> WithoutMark(ReadOnlySpan<byte> utf8)
    {
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        return utf8.StartsWith(mark) ? utf8.Slice(mark.Length) : utf8;
    }

    internal static string ToText(Action<IBufferWriter<byte>> write)
    {
        using ByteBuffer buffer = new();
        write(buffer);
        return Encoding.UTF8.GetString(buffer.Array, 0, buffer.Count);
    }

    internal static Utf8JsonWriter Writer(IBufferWriter<byte> output) => new(Guard.NotNull(output), Indented);

    internal static Utf8JsonWriter LineWriter(IBufferWriter<byte> output) => new(Guard.NotNull(output), OneLine);

    private static ReadResult<T> Refused<T>(string value, string expected)
        where T : class => new(null, [new ReadFault("", value, expected)]);
}
