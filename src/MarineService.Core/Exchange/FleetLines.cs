using System.Buffers;
using System.Runtime.CompilerServices;

namespace MarineService.Core.Exchange;

/// <summary>Cuts a stream into stretches of whole lines, as they come, without holding more than one.</summary>
internal static class FleetLines
{
    private const int ChunkBytes = 1 << 16;

    private const byte LineFeed = (byte)'\n';

    internal static async IAsyncEnumerable<FleetChunk> Read(Stream input, int longestLine, long firstLine, [EnumeratorCancellation] CancellationToken cancellation)
    {
        byte[] buffer = ArrayPool<byte>.Shared.Rent(ChunkBytes);
        int filled = 0;
        long line = firstLine;
        long position = 0;
        bool passingOver = false;
        while (true)
        {
#pragma warning disable CA1835 // The overload for memory is not part of .NET Standard 2.0.
            int read = await input.ReadAsync(buffer, filled, buffer.Length - filled, cancellation).ConfigureAwait(false);
#pragma warning restore CA1835
            if (read == 0)
            {
                break;
            }

            filled += read;
            if (passingOver)
            {
                int rest = 1 + buffer.AsSpan(0, filled).IndexOf(LineFeed);
                int dropped = rest == 0 ? filled : rest;
                position += dropped;
                buffer.AsSpan(dropped, filled - dropped).CopyTo(buffer);
                filled -= dropped;
                passingOver = rest == 0;
                line += passingOver ? 0 : 1;
            }

            int end = 1 + buffer.AsSpan(0, filled).LastIndexOf(LineFeed);
            if (end > 0)
            {
                byte[] next = ArrayPool<byte>.Shared.Rent(ChunkBytes);
                int carried = filled - end;
                next = carried < next.Length ? next : Longer(next, carried + ChunkBytes);
                buffer.AsSpan(end, carried).CopyTo(next);
                position += end;
                long nextLine = line + CountLines(buffer.AsSpan(0, end));
                yield return new(buffer, end, line, nextLine, position);
                line = nextLine;
                (buffer, filled) = (next, carried);
            }

            if (filled > longestLine)
            {
                yield return new(null, 0, line, line + 1, position);
                position += filled;
                (filled, passingOver) = (0, true);
            }
            else if (filled == buffer.Length)
            {
                byte[] longer = ArrayPool<byte>.Shared.Rent(2 * buffer.Length);
                buffer.CopyTo(longer, 0);
                ArrayPool<byte>.Shared.Return(buffer);
                buffer = longer;
            }
        }

        if (filled > 0)
        {
            yield return new(buffer, filled, line, line + 1, position + filled);
        }
        else
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private static byte[] Longer(byte[] buffer, int length)
    {
        ArrayPool<byte>.Shared.Return(buffer);
        return ArrayPool<byte>.Shared.Rent(length);
    }

    private static int CountLines(ReadOnlySpan<byte> bytes)
    {
        int lines = 0;
        int at;
        while ((at = bytes.IndexOf(LineFeed)) >= 0)
        {
            lines++;
            bytes = bytes.Slice(at + 1);
        }

        return lines;
    }
}
