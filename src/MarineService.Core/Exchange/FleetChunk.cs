namespace MarineService.Core.Exchange;

/// <summary>A stretch of whole lines; or, without a buffer, one line that is longer than may be.</summary>
/// <param name="buffer">The lines, or null; rented.</param>
/// <param name="length">How many bytes of the buffer count.</param>
/// <param name="firstLine">The number of the first line, from 1.</param>
/// <param name="nextLine">The number of the line after it.</param>
/// <param name="inputBytes">Bytes of the input up to the end of this stretch.</param>
internal sealed class FleetChunk(byte[]? buffer, int length, long firstLine, long nextLine, long inputBytes)
{
    internal byte[]? Buffer => buffer;

    internal int Length => length;

    internal long FirstLine => firstLine;

    internal long NextLine => nextLine;

    internal long InputBytes => inputBytes;
}
