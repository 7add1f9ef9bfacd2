using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>Compares text of a document that may hold what is no Unicode character, such as half a surrogate pair.</summary>
internal static class JsonText
{
    /// <summary>Whether the reader stands on a certain text; what is not valid Unicode is never it.</summary>
    internal static bool Says(this ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8) =>

        // A value is escaped only where somebody wrote it so; all others are compared as they stand.
        !reader.ValueIsEscaped ? reader.ValueSpan.SequenceEqual(utf8) : SaysEscaped(ref reader, utf8);

    private static bool SaysEscaped(ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8)
    {
        try
        {
            return reader.ValueTextEquals(utf8);
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }
}
