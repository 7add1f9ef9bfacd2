using System.Text.Json;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <content>Single values, each checked the way the schemas say it.</content>
internal ref partial struct JsonCursor
{
    /// <summary>As the least amount: any amount above nothing.</summary>
    internal const double AboveZero = double.Epsilon;

    /// <summary>Text with at least one character that is not white space.</summary>
    internal string? NotBlank()
    {
        if (_reader.TokenType == JsonTokenType.String)
        {
            try
            {
                string text = _texts is null ? _reader.GetString()! : _texts.Read(ref _reader);
                if (!string.IsNullOrWhiteSpace(text))
                {
                    return text;
                }
            }
            catch (InvalidOperationException)
            {
                Refuse("text of valid Unicode characters", isMeaning: true);
                return null;
            }
        }

        Refuse("text that is not blank");
        return null;
    }

    internal readonly bool IsNumber => _reader.TokenType == JsonTokenType.Number;

    /// <summary>Whether the present value is a certain text.</summary>
    internal bool IsText(JsonEncodedText text) => _reader.TokenType == JsonTokenType.String && _reader.Says(text.EncodedUtf8Bytes);

    /// <summary>Texts, none blank, none twice.</summary>
    internal List<string> Names()
    {
        List<string> names = [];
        HashSet<string> known = new(StringComparer.Ordinal);
        if (BeginArray("a list of texts"))
        {
            while (NextItem())
            {
                if (NotBlank() is string name)
                {
                    if (known.Add(name))
                    {
                        names.Add(name);
                    }
                    else
                    {
                        Note("", $"'{Shorten(name)}'", "each text once");
                    }
                }
            }
        }

        return names;
    }

    internal TEnum? Word<TEnum>()
        where TEnum : struct, Enum
    {
        if (_reader.TokenType == JsonTokenType.String && WireEnum<TEnum>.TryFind(ref _reader, out TEnum value))
        {
            return value;
        }

        Refuse($"one of {WireEnum<TEnum>.List}");
        return null;
    }

    internal bool? YesOrNo()
    {
        if (_reader.TokenType is JsonTokenType.True or JsonTokenType.False)
        {
            return _reader.GetBoolean();
        }

        Refuse("true or false");
        return null;
    }

    /// <summary>A number within bounds, both ends included.</summary>
    internal decimal? Number(decimal min, decimal max)
    {
        if (TryGetDecimal(out decimal value) && value >= min && value <= max)
        {
            return Kept(value);
        }

        Refuse(FormattableString.Invariant($"a number from {min} to {max}"));
        return null;
    }

    /// <summary>A number within bounds, both ends included, with at most so many decimals.</summary>
    internal decimal? Number(decimal min, decimal max, int decimals)
    {
        if (TryGetDecimal(out decimal value) && value >= min && value <= max && decimal.Round(value, decimals) == value)
        {
            return Kept(value);
        }

        Refuse(FormattableString.Invariant($"a number from {min} to {max} with at most {decimals} decimals"));
        return null;
    }

    private bool TryGetDecimal(out decimal value)
    {
        value = 0;
        return _reader.TokenType == JsonTokenType.Number && _reader.TryGetDecimal(out value);
    }

    // The framework rounds what has more digits than the type keeps; a document is never rounded without a word.
    private decimal? Kept(decimal value)
    {
        if (NumberDigits.FitDecimal(_reader.ValueSpan))
        {
            return value;
        }

        Refuse("a number of at most 28 digits", isMeaning: true);
        return null;
    }

    /// <summary>A number within bounds, both ends included, as the binary number that it is kept as.</summary>
    internal double? Real(double min, double max)
    {
        if (_reader.TokenType == JsonTokenType.Number && _reader.TryGetDouble(out double value) && value >= min && value <= max)
        {
            return value;
        }

        Refuse(FormattableString.Invariant($"a number from {min} to {max}"));
        return null;
    }

    // A measured amount is read as the binary number that it is kept as, so that what was written reads back the same.
    private double? Measured(double most)
    {
        if (_reader.TokenType == JsonTokenType.Number && _reader.TryGetDouble(out double value) && Math.Abs(value) <= most)
        {
            if (NumberDigits.FitDouble(_reader.ValueSpan, value))
            {
                return value;
            }

            Refuse("a number of at most 17 digits", isMeaning: true);
            return null;
        }

        Refuse(FormattableString.Invariant($"a number from {-most} to {most}"));
        return null;
    }

    /// <summary>A whole number within bounds, both ends included; 12.0 is whole.</summary>
    internal int? WholeNumber(int min, int max)
    {
        if (_reader.TokenType == JsonTokenType.Number && _reader.TryGetInt32(out int plain) && plain >= min && plain <= max)
        {
            return plain;
        }

        if (TryGetDecimal(out decimal value) && value >= min && value <= max && decimal.Truncate(value) == value)
        {
            return (int?)Kept(value);
        }

        Refuse(min == max ? FormattableString.Invariant($"{min}") : FormattableString.Invariant($"a whole number from {min} to {max}"));
        return null;
    }

    /// <summary>How many there are of something; 12.0 is whole.</summary>
    internal long? Count(long min)
    {
        const long Most = 1_000_000_000_000;
        if (_reader.TokenType == JsonTokenType.Number && _reader.TryGetDecimal(out decimal value)
            && value >= min && value <= Most && decimal.Truncate(value) == value)
        {
            return (long)value;
        }

        Refuse(FormattableString.Invariant($"a whole number from {min} to {Most}"));
        return null;
    }

    /// <summary>Hours with at most three decimals.</summary>
    internal EngineHours? Hours() =>

        // What nearly every meter shows needs no decimal arithmetic.
        _reader.TokenType == JsonTokenType.Number && PlainHours.TryParse(_reader.ValueSpan, out EngineHours plain) ? plain : Hours(0m);

    /// <summary>Hours with at most three decimals, within bounds, both ends included.</summary>
    internal EngineHours? Hours(decimal min, decimal max = 1_000_000m)
    {
        if (TryGetDecimal(out decimal value) && value >= min && value <= max && decimal.Round(value, 3) == value)
        {
            return Kept(value) is decimal hours ? EngineHours.FromHours(hours) : null;
        }

        Refuse(FormattableString.Invariant($"hours from {min} to {max} with at most three decimals"));
        return null;
    }

    internal LocalDate? Date()
    {
        if (_reader.TokenType == JsonTokenType.String)
        {
            // A date has no character that needs escaping, but a document may escape it all the same.
            ReadOnlySpan<byte> text = _reader.ValueSpan;
            if (_reader.ValueIsEscaped)
            {
                string plain = Text();
                text = System.Text.Encoding.UTF8.GetBytes(plain);
            }

            if (IsoDate.TryParse(text, out LocalDate date))
            {
                return date;
            }
        }

        Refuse("a date from 1900-01-01 to 2199-12-31, such as 2026-04-01");
        return null;
    }

    /// <summary>The place of the present value in a closed list of units, or -1.</summary>
    internal int Unit(WireUnits units)
    {
        if (_reader.TokenType == JsonTokenType.String && units.Find(ref _reader) is >= 0 and int found)
        {
            return found;
        }

        Refuse($"one of {units.List}");
        return -1;
    }

    /// <summary>An amount of one of a closed list of units (UCUM codes), each with its factor to the canonical one.</summary>
    internal double? Quantity(WireUnits units, double min, double max)
    {
        if (!BeginObject($"an object with value and unit ({units.List})"))
        {
            return null;
        }

        ulong seen = 0;
        int last = -1;
        double? value = null;
        int unit = -1;
        int member;
        while ((member = NextMember(WireUnits.Members, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                value = Measured(1e9);
            }
            else
            {
                unit = Unit(units);
            }

            EndMember();
        }

        Require(WireUnits.Members, seen, 0, 1);
        if (value is not double amount || unit < 0)
        {
            return null;
        }

        double canonical = units.ToCanonical(unit, amount);
        if (canonical >= min && canonical <= max)
        {
            return canonical;
        }

        string range = min == AboveZero ? FormattableString.Invariant($"above 0 and up to {max}") : FormattableString.Invariant($"from {min} to {max}");
        Note("/value", amount.ToString(System.Globalization.CultureInfo.InvariantCulture), $"{range} {units.Canonical}");
        return null;
    }
}
