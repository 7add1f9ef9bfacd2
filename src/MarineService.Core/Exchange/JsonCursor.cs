using System.Globalization;
using System.Text;
using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>Goes through a document once, from front to back; notes every fault with its place and goes on behind it.</summary>
/// <remarks>A value that was refused comes back as null. What is read is used only when there was no fault at all.</remarks>
internal ref partial struct JsonCursor
{
    private const int ShownLength = 60;
    private const string NotUnicode = "text that is not valid Unicode";

    private readonly List<ReadFault> _faults;
    private readonly int _maxFaults;
    private (string? Name, int Index)[] _path;
    private int _depth;
    private readonly KnownTexts? _texts;
    private Utf8JsonReader _reader;

    internal JsonCursor(ReadOnlySpan<byte> utf8, ReadLimits limits, KnownTexts? texts)
    {
        _texts = texts;
        _reader = new(utf8, new JsonReaderOptions { MaxDepth = limits.MaxDepth, CommentHandling = limits.AllowsComments ? JsonCommentHandling.Skip : JsonCommentHandling.Disallow });
        _maxFaults = limits.MaxFaults;
        _faults = [];
        _path = new (string?, int)[8];
    }

    /// <summary>The faults that are listed: the first ones, when there are more than the limit.</summary>
    internal readonly IReadOnlyList<ReadFault> Faults => _faults;

    /// <summary>How many faults there were so far, listed or not.</summary>
    internal int FaultCount { get; private set; }

    /// <summary>Steps onto the first value of the document.</summary>
    internal void Start() => _reader.Read();

    /// <summary>Checks that nothing follows the document.</summary>
    internal void End() => _reader.Read();

    /// <summary>Enters an object; false when the value is something else, which is noted and passed over.</summary>
    internal bool BeginObject(string expected)
    {
        if (_reader.TokenType == JsonTokenType.StartObject)
        {
            return true;
        }

        Refuse(expected);
        return false;
    }

    /// <summary>Steps onto the value of the next known member; unknown and doubled members are noted and passed over.</summary>
    /// <returns>The member's index, or -1 at the end of the object.</returns>
    internal int NextMember(MemberNames names, ref ulong seen, ref int last)
    {
        while (_reader.Read() && _reader.TokenType == JsonTokenType.PropertyName)
        {
            int member = names.Find(ref _reader, last + 1);
            bool isDoubled = member >= 0 && (seen & (1UL << member)) != 0;
            if (member >= 0 && !isDoubled)
            {
                seen |= 1UL << member;
                last = member;
                Push(names.Names[member]);
                _reader.Read();
                return member;
            }

            Push(Text());
            _reader.Read();
            Refuse(isDoubled ? "each member once" : names.NoSuchMember, isMeaning: isDoubled);
            Pop();
        }

        return -1;
    }

    /// <summary>Steps onto the value of the next member of an object whose names are free.</summary>
    /// <returns>The name, or null at the end of the object.</returns>
    internal string? NextFreeMember(HashSet<string> seen)
    {
        while (_reader.Read() && _reader.TokenType == JsonTokenType.PropertyName)
        {
            string name = Text();
            Push(name);
            _reader.Read();
            bool isBlank = string.IsNullOrWhiteSpace(name);
            string? fault = ReferenceEquals(name, NotUnicode) ? "a name of valid Unicode characters"
                : isBlank ? "a name that is not blank"
                : seen.Add(name) ? null : "each member once";
            if (fault is null)
            {
                return name;
            }

            Refuse(fault, isMeaning: !isBlank);
            Pop();
        }

        return null;
    }

    /// <summary>Leaves a member that <see cref="NextMember"/> or <see cref="NextFreeMember"/> stepped onto.</summary>
    internal void EndMember() => Pop();

    /// <summary>Notes each member that must be there and is not.</summary>
    internal void Require(MemberNames names, ulong seen, params ReadOnlySpan<int> members)
    {
        foreach (int member in members)
        {
            if ((seen & (1UL << member)) == 0)
            {
                Note($"/{names.Names[member]}", "missing", "this member");
            }
        }
    }

    /// <summary>Notes the same of each of some members, one bit each.</summary>
    internal void NoteEach(MemberNames names, ulong members, string value, string expected)
    {
        for (int member = 0; members != 0; member++, members >>= 1)
        {
            if ((members & 1) != 0)
            {
                Note($"/{names.Names[member]}", value, expected);
            }
        }
    }

    /// <summary>Enters an array; false when the value is something else, which is noted and passed over.</summary>
    internal bool BeginArray(string expected)
    {
        if (_reader.TokenType == JsonTokenType.StartArray)
        {
            Push(null, -1);
            return true;
        }

        Refuse(expected);
        return false;
    }

    /// <summary>Steps onto the next item; false, and the array is left, at its end.</summary>
    internal bool NextItem()
    {
        if (_reader.Read() && _reader.TokenType != JsonTokenType.EndArray)
        {
            _path[_depth - 1].Index++;
            return true;
        }

        Pop();
        return false;
    }

    /// <summary>Notes that the present value is not what was expected, and passes it over.</summary>
    internal void Refuse(string expected, bool isMeaning = false)
    {
        Note("", Shown(), expected, isMeaning);
        _reader.Skip();
    }

    /// <summary>Notes a fault at the present place, or below it.</summary>
    internal void Note(string below, string value, string expected) => Note(below, value, expected, isMeaning: false);

    /// <summary>Notes a fault that no schema can say, such as one between entries.</summary>
    internal void NoteMeaning(string below, string value, string expected) => Note(below, value, expected, isMeaning: true);

    private void Note(string below, string value, string expected, bool isMeaning)
    {
        FaultCount++;
        if (_faults.Count < _maxFaults)
        {
            _faults.Add(new(Pointer() + below, value, expected, isMeaning));
        }
    }

    private readonly string Pointer()
    {
        if (_depth == 0)
        {
            return string.Empty;
        }

        StringBuilder text = new();
        for (int i = 0; i < _depth; i++)
        {
            text.Append('/');
            text.Append(_path[i].Name is string name
                ? new StringBuilder(name).Replace("~", "~0").Replace("/", "~1").ToString()
                : _path[i].Index.ToString(CultureInfo.InvariantCulture));
        }

        return text.ToString();
    }

    private void Push(string? name, int index = 0)
    {
        if (_depth == _path.Length)
        {
            Array.Resize(ref _path, 2 * _depth);
        }

        _path[_depth++] = (name, index);
    }

    private void Pop() => _depth--;

    private readonly string Shown()
    {
        switch (_reader.TokenType)
        {
            case JsonTokenType.StartObject:
                return "an object";
            case JsonTokenType.StartArray:
                return "an array";
            case JsonTokenType.Null:
                return "null";
            case JsonTokenType.String:
                return Shorten($"'{Text()}'");
            default:
                return Shorten(Encoding.UTF8.GetString(_reader.ValueSpan.ToArray()));
        }
    }

    private static string Shorten(string text)
    {
        if (text.Length <= ShownLength)
        {
            return text;
        }

        // Never through the middle of a character that takes two places.
        int length = char.IsHighSurrogate(text[ShownLength - 1]) ? ShownLength - 1 : ShownLength;
        return string.Concat(text.AsSpan(0, length).ToString(), "…");
    }

    // Text that is no valid Unicode is shown as far as it can be; the reader that wants it notes the fault.
    private readonly string Text()
    {
        try
        {
            return _reader.GetString() ?? string.Empty;
        }
        catch (InvalidOperationException)
        {
            return NotUnicode;
        }
    }
}
