using System.Xml.Linq;

namespace MarineService.Reports.Sheets;

/// <summary>Drawings made fit to stand in one page: two of one kind would share their ids, and a name in one would point into the other.</summary>
internal static class Distinct
{
    internal static IEnumerable<XElement> Elements(IReadOnlyList<Drawing> drawings)
    {
        HashSet<string> used = new(StringComparer.Ordinal);
        foreach (Drawing drawing in drawings)
        {
            XElement svg = drawing.ToElement();
            string[] ids = [.. svg.DescendantsAndSelf().Attributes("id").Select(id => id.Value)];
            int number = 1;
            while (ids.Any(id => used.Contains(Numbered(id, number))))
            {
                number++;
            }

            used.UnionWith(ids.Select(id => Numbered(id, number)));
            if (number > 1)
            {
                Rename(svg, new HashSet<string>(ids, StringComparer.Ordinal), number);
            }

            yield return svg;
        }
    }

    private static string Numbered(string id, int number) => number == 1 ? id : FormattableString.Invariant($"{id}-{number}");

    // An id is named by itself, in lists of names (aria-labelledby), and as #name in links and in url(#name).
    private static void Rename(XElement svg, HashSet<string> ids, int number)
    {
        foreach (XAttribute attribute in svg.DescendantsAndSelf().Attributes().Where(attribute => !attribute.IsNamespaceDeclaration))
        {
            attribute.Value = attribute.Name.LocalName switch
            {
                "id" => Numbered(attribute.Value, number),
                "aria-labelledby" or "aria-describedby" => string.Join(" ", attribute.Value.Split(' ').Select(id => ids.Contains(id) ? Numbered(id, number) : id)),
                "href" when Between(attribute.Value, "#", "") is string id && ids.Contains(id) => $"#{Numbered(id, number)}",
                _ when Between(attribute.Value, "url(#", ")") is string id && ids.Contains(id) => $"url(#{Numbered(id, number)})",
                _ => attribute.Value,
            };
        }
    }

    private static string? Between(string value, string before, string after) =>
        value.Length > before.Length + after.Length && value.StartsWith(before, StringComparison.Ordinal) && value.EndsWith(after, StringComparison.Ordinal)
            ? value.Substring(before.Length, value.Length - before.Length - after.Length)
            : null;
}
