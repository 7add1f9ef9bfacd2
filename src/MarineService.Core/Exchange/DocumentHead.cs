using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>The first two members of every document: what it is, and in which version.</summary>
internal sealed class DocumentHead(string format)
{
    /// <summary>The version that is written, and the only one there is so far.</summary>
    private const int Version = 1;

    private static readonly JsonEncodedText FormatName = JsonEncodedText.Encode("format");
    private static readonly JsonEncodedText VersionName = JsonEncodedText.Encode("version");
    private readonly JsonEncodedText _format = JsonEncodedText.Encode(format);

    internal void Read(ref JsonCursor json, int member)
    {
        if (member == 0)
        {
            if (!json.IsText(_format))
            {
                json.Refuse($"'{_format}'");
            }
        }
        else
        {
            _ = json.WholeNumber(Version, Version);
        }
    }

    internal static void Check(ref JsonCursor json, ulong seen, MemberNames names) => json.Require(names, seen, 0, 1);

    internal void Write(Utf8JsonWriter writer)
    {
        writer.WriteString(FormatName, _format);
        writer.WriteNumber(VersionName, Version);
    }
}
