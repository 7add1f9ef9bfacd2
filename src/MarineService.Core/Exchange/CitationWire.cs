using System.Text.Json;

namespace MarineService.Core.Exchange;

/// <summary>Sources in documents.</summary>
internal static class CitationWire
{
    private static readonly MemberNames Members = new("standing", "document", "edition", "clause");

    internal static Citation? Read(ref JsonCursor json)
    {
        if (!json.BeginObject("a source"))
        {
            return null;
        }

        CitationStanding? standing = null;
        string? document = null;
        string? edition = null;
        string? clause = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(Members, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: standing = json.Word<CitationStanding>(); break;
                case 1: document = json.NotBlank(); break;
                case 2: edition = json.NotBlank(); break;
                default: clause = json.NotBlank(); break;
            }

            json.EndMember();
        }

        json.Require(Members, seen, 0);
        if (standing is not CitationStanding known)
        {
            return null;
        }

        bool named = known is CitationStanding.Published or CitationStanding.Secondary or CitationStanding.Derived;
        bool mayBeNamed = named || known == CitationStanding.CommonPractice;
        bool inDetail = known is CitationStanding.Published or CitationStanding.Secondary;
        Forbid(ref json, seen, 1, !mayBeNamed, document);
        Forbid(ref json, seen, 2, !inDetail, edition);
        Forbid(ref json, seen, 3, !inDetail, clause);
        if (named)
        {
            json.Require(Members, seen, 1);
        }

        return known switch
        {
            CitationStanding.Published when document is not null => Citation.Published(document, edition, clause),
            CitationStanding.Secondary when document is not null => Citation.Secondary(document, edition, clause),
            CitationStanding.Derived when document is not null => Citation.Derived(document),
            CitationStanding.CommonPractice => document is null ? Citation.CommonPractice : Citation.PracticeDescribedIn(document),
            CitationStanding.ProjectChoice => Citation.ProjectChoice,
            CitationStanding.FromMemory => Citation.FromMemory,
            CitationStanding.GivenByCaller => Citation.GivenByCaller,
            _ => null,
        };
    }

    internal static void Write(Utf8JsonWriter writer, Citation citation)
    {
        writer.WriteStartObject();
        writer.Word(Members.Encoded[0], citation.Standing);
        writer.Text(Members.Encoded[1], citation.Document);
        writer.Text(Members.Encoded[2], citation.Edition);
        writer.Text(Members.Encoded[3], citation.Clause);
        writer.WriteEndObject();
    }

    private static void Forbid(ref JsonCursor json, ulong seen, int member, bool forbidden, string? value)
    {
        if (forbidden && (seen & (1UL << member)) != 0)
        {
            json.Note($"/{Members.Names[member]}", $"'{value}'", "no such member with this standing");
        }
    }
}
