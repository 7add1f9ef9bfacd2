using System.Text;
using System.Text.Json;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>The words that stand for an enum in documents: its names in lower case with hyphens. "Not stated" is said by leaving it out.</summary>
internal static class WireEnum<TEnum>
    where TEnum : struct, Enum
{
    private static readonly (TEnum Value, byte[] Utf8, JsonEncodedText Encoded)[] Words =
    [
        .. EnumNames<TEnum>.All
            .Where(value => value.ToString() != "NotStated")
            .Select(value => (value, Encoding.UTF8.GetBytes(Hyphenated(value.ToString())), JsonEncodedText.Encode(Hyphenated(value.ToString())))),
    ];

    internal static string List { get; } = string.Join(", ", Words.Select(word => word.Encoded.ToString()));

    internal static bool TryFind(ref Utf8JsonReader reader, out TEnum value)
    {
        foreach ((TEnum candidate, byte[] utf8, _) in Words)
        {
            if (reader.Says(utf8))
            {
                value = candidate;
                return true;
            }
        }

        value = default;
        return false;
    }

    internal static bool TryFind(string word, out TEnum value)
    {
        foreach ((TEnum candidate, _, JsonEncodedText encoded) in Words)
        {
            if (encoded.ToString() == word)
            {
                value = candidate;
                return true;
            }
        }

        value = default;
        return false;
    }

    internal static JsonEncodedText Word(TEnum value)
    {
        foreach ((TEnum candidate, _, JsonEncodedText encoded) in Words)
        {
            if (EqualityComparer<TEnum>.Default.Equals(candidate, value))
            {
                return encoded;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(value), value, "Has no word in documents.");
    }

    private static string Hyphenated(string name)
    {
        StringBuilder text = new();
        foreach (char c in name)
        {
            if (char.IsUpper(c) && text.Length > 0)
            {
                text.Append('-');
            }

            text.Append(char.ToLowerInvariant(c));
        }

        return text.ToString();
    }
}
