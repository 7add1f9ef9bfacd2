using System.Buffers;

namespace MarineService.Core.Exchange;

/// <summary>A growing buffer on borrowed arrays, to be given back; the framework's own is not part of .NET Standard 2.0.</summary>
internal sealed class ByteBuffer : IBufferWriter<byte>, IDisposable
{
    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(4096);

    internal byte[] Array => _bytes;

    internal int Count { get; private set; }

    internal ReadOnlySpan<byte> Written => _bytes.AsSpan(0, Count);

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

    internal void Clear() => Count = 0;

    /// <summary>Gives the array back, once: one that is given back twice would be lent to two.</summary>
    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        (_bytes, Count) = ([], 0);
    }

    private void Grow(int sizeHint)
    {
        int needed = Count + Math.Max(1, sizeHint);
        if (needed > _bytes.Length)
        {
            byte[] longer = ArrayPool<byte>.Shared.Rent(Math.Max(needed, 2 * _bytes.Length));
            Written.CopyTo(longer);
            ArrayPool<byte>.Shared.Return(_bytes);
            _bytes = longer;
        }
    }
}
