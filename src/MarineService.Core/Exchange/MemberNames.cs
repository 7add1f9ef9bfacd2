using System.Text;
using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>The members that an object of a document may have, each at a fixed index.</summary>
internal sealed class MemberNames
{
    private readonly byte[][] _utf8;

    internal MemberNames(params string[] names)
    {
        Names = names;
        NoSuchMember = "no such member, but one of " + string.Join(", ", names);
        _utf8 = Array.ConvertAll(names, Encoding.UTF8.GetBytes);
        Encoded = Array.ConvertAll(names, name => JsonEncodedText.Encode(name));
    }

    internal string[] Names { get; }

    /// <summary>What was expected in place of a name that is none of these.</summary>
    internal string NoSuchMember { get; }

    internal JsonEncodedText[] Encoded { get; }

    /// <summary>The index of the property that the reader stands on, or -1; the usual order is tried first.</summary>
    internal int Find(ref Utf8JsonReader reader, int expected)
    {
        for (int i = expected; i < _utf8.Length; i++)
        {
            if (reader.Says(_utf8[i]))
            {
                return i;
            }
        }

        for (int i = 0; i < expected && i < _utf8.Length; i++)
        {
            if (reader.Says(_utf8[i]))
            {
                return i;
            }
        }

        return -1;
    }
}
