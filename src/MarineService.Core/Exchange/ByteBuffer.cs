using System.Buffers;

namespace MarineService.Core.Exchange;

/// <summary>A growing buffer; the framework's own is not part of .NET Standard 2.0.</summary>
internal sealed class ByteBuffer : IBufferWriter<byte>
{
    private byte[] _bytes = new byte[4096];

    internal byte[] Array => _bytes;

    internal int Count { get; private set; }

    internal ReadOnlyMemory<byte> Written => _bytes.AsMemory(0, Count);

    public void Advance(int count) => Count += count;

    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        Grow(sizeHint);
        return _bytes.AsMemory(Count);
    }

    public Span<byte> GetSpan(int sizeHint = 0)
    {
        Grow(sizeHint);
        return _bytes.AsSpan(Count);
    }

    private void Grow(int sizeHint)
    {
        int needed = Count + Math.Max(1, sizeHint);
        if (needed > _bytes.Length)
        {
            System.Array.Resize(ref _bytes, Math.Max(needed, 2 * _bytes.Length));
        }
    }
}
