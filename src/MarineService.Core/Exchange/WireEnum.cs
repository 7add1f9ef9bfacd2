using System.Text.Json;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>The words that stand for an enum in documents: its names in lower case with hyphens. "Not stated" is said by leaving it out.</summary>
internal static class WireEnum<TEnum>
    where TEnum : struct, Enum
{
    private static readonly WireWords Words = new(EnumNames<TEnum>.Names);

    internal static string List => Words.List;

    internal static bool TryFind(ref Utf8JsonReader reader, out TEnum value) => At(Words.Find(ref reader), out value);

    internal static bool TryFind(string word, out TEnum value) => At(Words.Find(word), out value);

    internal static JsonEncodedText Word(TEnum value)
    {
        int place = EnumNames<TEnum>.PlaceOf(value);
        return place >= 0 && Words.IsSaid(place)
            ? Words.At(place)
            : throw new ArgumentOutOfRangeException(nameof(value), value, "Has no word in documents.");
    }

    private static bool At(int place, out TEnum value)
    {
        value = place < 0 ? default : EnumNames<TEnum>.At(place);
        return place >= 0;
    }
}
