using System.Text;

namespace MarineService.Core.Exchange;

/// <summary>Reads comma-separated values (RFC 4180) record by record. What is no CSV costs one line, and the reading goes on behind it.</summary>
/// <remarks>
/// As RFC 4180 says: cells in quotes may hold separators, line breaks and doubled quotes; white space belongs to the cell. More than it
/// says: any one-byte separator, and CR, LF or CRLF at the end of a line. Less: a quote inside a cell that does not begin with one is a fault.
/// </remarks>
internal sealed class CsvReader(byte[] utf8, int start, byte separator)
{
    private const byte Quote = (byte)'"';
    private const byte CarriageReturn = (byte)'\r';
    private const byte LineFeed = (byte)'\n';

    private readonly List<string> _cells = [];
    private readonly StringBuilder _quoted = new();
    private int _next = start;
    private int _nextLine = 1;

    /// <summary>The number of the line on which the record begins, from 1.</summary>
    internal int Line { get; private set; }

    /// <summary>Where the record begins.</summary>
    internal int Start { get; private set; }

    /// <summary>Where the record ends, before its line break.</summary>
    internal int End { get; private set; }

    /// <summary>The cells; those before the fault where there is one.</summary>
    internal IReadOnlyList<string> Cells => _cells;

    /// <summary>What was expected in the cell behind the last of <see cref="Cells"/>; null when the record is in order.</summary>
    internal string? Expected { get; private set; }

    /// <summary>The next record; false at the end of the text.</summary>
    internal bool Read()
    {
        if (_next >= utf8.Length)
        {
            return false;
        }

        _cells.Clear();
        Expected = null;
        (Start, Line) = (_next, _nextLine);
        int at = Start;
        while (ReadCell(ref at) && at < utf8.Length && utf8[at] == separator)
        {
            at++;
        }

        // A record that is none ends with its first line: what stands behind it may be good.
        End = Expected is null ? at : LineEnd(Start);
        _next = BehindBreak(End);
        _nextLine += Breaks(Start, _next);
        return true;
    }

    private bool ReadCell(ref int at)
    {
        string? cell = at < utf8.Length && utf8[at] == Quote ? Quoted(ref at) : Plain(ref at);
        if (cell is null)
        {
            return false;
        }

        _cells.Add(cell);
        return true;
    }

    private string? Plain(ref int at)
    {
        int from = at;
        while (at < utf8.Length && utf8[at] != separator && !IsBreak(at))
        {
            if (utf8[at] == Quote)
            {
                return Fault("a cell with quotes in quotes, and its own quotes doubled");
            }

            at++;
        }

        return Text(from, at);
    }

    private string? Quoted(ref int at)
    {
        _quoted.Clear();
        while (true)
        {
            int from = ++at;
            while (at < utf8.Length && utf8[at] != Quote)
            {
                at++;
            }

            if (at == utf8.Length)
            {
                return Fault("a closing quote");
            }

            if (Text(from, at) is not string text)
            {
                return null;
            }

            _quoted.Append(text);
            at++;
            if (at == utf8.Length || utf8[at] == separator || IsBreak(at))
            {
                return _quoted.ToString();
            }

            if (utf8[at] != Quote)
            {
                return Fault("the end of the cell behind its closing quote");
            }

            _quoted.Append('"');
        }
    }

    // Decoded without exceptions, which a hostile file would make dear: a replacement that the bytes do not hold shows the fault.
    private string? Text(int from, int to)
    {
        string text = Encoding.UTF8.GetString(utf8, from, to - from);
        return text.AsSpan().IndexOf('\uFFFD') >= 0 && !utf8.AsSpan(from, to - from).SequenceEqual(Encoding.UTF8.GetBytes(text))
            ? Fault("text in UTF-8")
            : text;
    }

    private string? Fault(string expected)
    {
        Expected = expected;
        return null;
    }

    private bool IsBreak(int at) => utf8[at] is LineFeed or CarriageReturn;

    private int LineEnd(int at)
    {
        while (at < utf8.Length && !IsBreak(at))
        {
            at++;
        }

        return at;
    }

    private int BehindBreak(int at) =>
        at == utf8.Length ? at
        : utf8[at] == CarriageReturn && at + 1 < utf8.Length && utf8[at + 1] == LineFeed ? at + 2
        : at + 1;

    private int Breaks(int from, int to)
    {
        int breaks = 0;
        while ((from = LineEnd(from)) < to)
        {
            breaks++;
            from = BehindBreak(from);
        }

        return breaks;
    }
}
