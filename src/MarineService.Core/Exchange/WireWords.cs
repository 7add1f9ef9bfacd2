using System.Text;
using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>The words of one enum in documents: its names in lower case with hyphens, in their order; null for one that is not said.</summary>
internal sealed class WireWords
{
    // "Not stated" is said by leaving the member out.
    private const string Unsaid = "NotStated";

    private readonly string?[] _words;
    private readonly byte[]?[] _utf8;
    private readonly JsonEncodedText[] _encoded;

    internal WireWords(string[] names)
    {
        _words = Array.ConvertAll(names, name => name == Unsaid ? null : Hyphenated(name));
        _utf8 = Array.ConvertAll(_words, word => word is null ? null : Encoding.UTF8.GetBytes(word));
        _encoded = Array.ConvertAll(_words, word => word is null ? default : JsonEncodedText.Encode(word));
        List = string.Join(", ", Array.FindAll(_words, word => word is not null));
    }

    /// <summary>All words in one line.</summary>
    internal string List { get; }

    /// <summary>The place of the word that the reader stands on, or -1.</summary>
    internal int Find(ref Utf8JsonReader reader)
    {
        for (int i = 0; i < _utf8.Length; i++)
        {
            if (_utf8[i] is byte[] word && reader.Says(word))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The place of a word, or -1.</summary>
    internal int Find(string word) => Array.IndexOf(_words, word);

    /// <summary>Whether there is a word at a place.</summary>
    internal bool IsSaid(int place) => _words[place] is not null;

    /// <summary>The word at a place.</summary>
    internal JsonEncodedText At(int place) => _encoded[place];

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
