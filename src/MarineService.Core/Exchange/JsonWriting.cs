using System.Text.Json;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>Single values as documents write them; nothing is allocated for any of them.</summary>
internal static class JsonWriting
{
    internal static void Text(this Utf8JsonWriter writer, JsonEncodedText name, string? value)
    {
        if (value is not null)
        {
            writer.WriteString(name, value);
        }
    }

    internal static void Part<T>(this Utf8JsonWriter writer, JsonEncodedText name, T? part, Action<Utf8JsonWriter, T> write)
        where T : class
    {
        if (part is not null)
        {
            writer.WritePropertyName(name);
            write(writer, part);
        }
    }

    internal static void Texts(this Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<string> values)
    {
        if (values.Count > 0)
        {
            writer.WriteStartArray(name);
            for (int i = 0; i < values.Count; i++)
            {
                writer.WriteStringValue(values[i]);
            }

            writer.WriteEndArray();
        }
    }

    internal static void Hours(this Utf8JsonWriter writer, JsonEncodedText name, EngineHours? hours)
    {
        if (hours is EngineHours value)
        {
            Span<byte> text = stackalloc byte[PlainHours.MostBytes];
            writer.WritePropertyName(name);
            writer.WriteRawValue(text.Slice(0, PlainHours.Format(value, text)), skipInputValidation: true);
        }
    }

    internal static void Number(this Utf8JsonWriter writer, JsonEncodedText name, decimal? number)
    {
        if (number is decimal value)
        {
            writer.WriteNumber(name, value);
        }
    }

    internal static void Date(this Utf8JsonWriter writer, JsonEncodedText name, LocalDate? date)
    {
        if (date is LocalDate value)
        {
            Span<byte> text = stackalloc byte[IsoDate.Length];
            IsoDate.Format(value, text);
            writer.WriteString(name, text);
        }
    }

    internal static void Word<TEnum>(this Utf8JsonWriter writer, JsonEncodedText name, TEnum value)
        where TEnum : struct, Enum => writer.WriteString(name, WireEnum<TEnum>.Word(value));

    /// <summary>A word, left out when it is the default value of its kind.</summary>
    internal static void WordUnlessDefault<TEnum>(this Utf8JsonWriter writer, JsonEncodedText name, TEnum value)
        where TEnum : struct, Enum
    {
        if (!EqualityComparer<TEnum>.Default.Equals(value, default))
        {
            writer.Word(name, value);
        }
    }

    /// <summary>A binary number with as few digits as tell it from its neighbours, the same on every runtime.</summary>
    internal static void Real(this Utf8JsonWriter writer, JsonEncodedText name, double value)
    {
        writer.WritePropertyName(name);
        writer.Real(value);
    }

    /// <summary>A binary number of an array, as few digits as tell it from its neighbours.</summary>
    internal static void Real(this Utf8JsonWriter writer, double value) => ShortestDigits.Write(writer, value);

    internal static void Quantity(this Utf8JsonWriter writer, JsonEncodedText name, double? value, WireUnits units)
    {
        if (value is double amount)
        {
            writer.WriteStartObject(name);
            writer.Real(WireUnits.Members.Encoded[0], amount);
            writer.WriteString(WireUnits.Members.Encoded[1], units.CanonicalText);
            writer.WriteEndObject();
        }
    }
}
