using System.Text;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Calendars;

/// <summary>Content lines of iCalendar (RFC 5545), folded and escaped.</summary>
internal sealed class CalendarText
{
    // RFC 5545, section 3.1: at most 75 octets in a line, its break excluded.
    private const int LongestOctets = 75;

    private readonly StringBuilder _text = new();

    /// <summary>A line whose value is no text, such as a date.</summary>
    internal CalendarText Line(string name, string value)
    {
        Fold($"{name}:{value}");
        return this;
    }

    /// <summary>A line whose value is a text (section 3.3.11): backslash, semicolon, comma and line breaks are escaped.</summary>
    internal CalendarText Text(string name, string value) => Line(name, Escaped(value));

    public override string ToString() => _text.ToString();

    internal static string Escaped(string value)
    {
        string plain = PlainText.Of(value);
        StringBuilder escaped = new(plain.Length);
        for (int i = 0; i < plain.Length; i++)
        {
            switch (plain[i])
            {
                case '\r' when i + 1 < plain.Length && plain[i + 1] == '\n':
                    break;
                case '\r' or '\n':
                    escaped.Append("\\n");
                    break;
                case '\\' or ';' or ',':
                    escaped.Append('\\').Append(plain[i]);
                    break;

                // The one control character that XML holds and iCalendar does not.
                case '\u007F':
                    escaped.Append('\uFFFD');
                    break;
                default:
                    escaped.Append(plain[i]);
                    break;
            }
        }

        return escaped.ToString();
    }

    // The space that marks a continuation counts as one of its octets.
    private void Fold(string line)
    {
        int octets = 0;
        for (int i = 0; i < line.Length; i++)
        {
            bool isPair = char.IsHighSurrogate(line[i]) && i + 1 < line.Length;
            int length = isPair ? 4 : line[i] < 0x80 ? 1 : line[i] < 0x800 ? 2 : 3;
            if (octets + length > LongestOctets)
            {
                _text.Append("\r\n ");
                octets = 1;
            }

            octets += length;
            _text.Append(line[i]);
            if (isPair)
            {
                _text.Append(line[++i]);
            }
        }

        _text.Append("\r\n");
    }
}
