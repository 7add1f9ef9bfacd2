using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>Short texts that come again and again in many documents, each made once: ids of tasks, of entries, of depots.</summary>
/// <remarks>A table of fixed size in which a text gives way to the next one in its place. For one thread at a time.</remarks>
internal sealed class KnownTexts
{
    private const int Places = 256;

    private const int Longest = 32;

    private readonly (byte[]? Utf8, string Text)[] _texts = new (byte[]?, string)[Places];

    /// <summary>The text that the reader stands on.</summary>
    /// <exception cref="InvalidOperationException">It is no valid Unicode.</exception>
    internal string Read(ref Utf8JsonReader reader)
    {
        ReadOnlySpan<byte> utf8 = reader.ValueSpan;
        if (utf8.Length is 0 or > Longest || reader.ValueIsEscaped)
        {
            return reader.GetString()!;
        }

        ref (byte[]? Utf8, string Text) known = ref _texts[Place(utf8)];
        if (known.Utf8 is null || !utf8.SequenceEqual(known.Utf8))
        {
            known = (utf8.ToArray(), reader.GetString()!);
        }

        return known.Text;
    }

    private static int Place(ReadOnlySpan<byte> utf8) =>
        (utf8.Length + (31 * (utf8[0] + (31 * (utf8[utf8.Length / 2] + (31 * utf8[utf8.Length - 1])))))) % Places;
}
