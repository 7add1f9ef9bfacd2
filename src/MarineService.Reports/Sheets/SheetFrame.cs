using System.Xml.Linq;
using MarineService.Core.Internal;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <summary>What every sheet has around it: document head, title, opening words, the notice at its foot.</summary>
internal static class SheetFrame
{
    private const string Outranked = "The engine's own manual outranks this sheet.";

    // The reader's program is told as well that nothing may be loaded or run.
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

    internal static Sheet Of(string name, string kind, string about, string detail, string opening, Paper paper, params object?[] content)
    {
        string title = $"{kind}: {about}";
        XElement head = Html.Tag(
            "head",
            Html.Tag("meta", Html.Attribute("charset", "utf-8")),
            Html.Tag("meta", Html.Attribute("http-equiv", "Content-Security-Policy"), Html.Attribute("content", Policy)),
            Html.Tag("meta", Html.Attribute("name", "viewport"), Html.Attribute("content", "width=device-width, initial-scale=1")),
            Html.Tag("meta", Html.Attribute("name", "color-scheme"), Html.Attribute("content", "light")),
            Html.Tag("title", title),
            Html.Tag("style", SheetStyle.For(Guard.Defined(paper))));
        XElement body = Html.Tag(
            "body",
            Html.Tag(
                "header",
                Html.Tag("p", Html.Class("kind"), kind),
                Html.Tag("h1", Html.Words(about)),
                Html.Tag("p", Html.Class("detail"), Html.Words(detail)),
                Html.Tag("p", Html.Class("opening"), Html.Tag("strong", opening))),
            Html.Tag("main", content),
            Html.Tag("footer", Notice()));
        return new(name, title, Html.Tag("html", Html.Attribute("lang", "en"), head, body));
    }

    /// <summary>A part of a sheet under its own heading.</summary>
    internal static XElement Section(string id, string heading, params object?[] content) => Html.Tag(
        "section",
        Html.Attribute("id", id),
        Html.Attribute("aria-labelledby", $"{id}-heading"),
        Html.Tag("h2", Html.Attribute("id", $"{id}-heading"), heading),
        content);

    /// <summary>A table whose header row stands on every page that it reaches; each cell carries its heading too, for screens too narrow for columns.</summary>
    internal static XElement Table(string @class, IReadOnlyList<string> headings, IEnumerable<XElement> rows) => Html.Tag(
        "table",
        Html.Class(@class),
        Html.Tag("thead", Html.Tag("tr", headings.Select(heading => Html.Tag("th", Html.Attribute("scope", "col"), heading)))),
        Html.Tag("tbody", rows.Select(row => Labelled(row, headings))));

    // The first cell says itself what the row is about.
    private static XElement Labelled(XElement row, IReadOnlyList<string> headings)
    {
        foreach ((XElement cell, string heading) in row.Elements().Zip(headings, (cell, heading) => (cell, heading)).Skip(1))
        {
            cell.Add(Html.Attribute("data-label", heading));
        }

        return row;
    }

    internal static XElement Row(params object?[] cells) => Html.Tag("tr", cells);

    internal static XElement Cell(params object?[] content) => Html.Tag("td", content);

    /// <summary>The first cell of a row, which says what the row is about.</summary>
    internal static XElement Head(params object?[] content) => Html.Tag("th", Html.Attribute("scope", "row"), content);

    /// <summary>Labels with what they say.</summary>
    internal static XElement Facts(string @class, IEnumerable<(string Label, object Value)> facts) => Html.Tag(
        "dl",
        Html.Class(@class),
        facts.Select(fact => Html.Tag("div", Html.Tag("dt", fact.Label), Html.Tag("dd", fact.Value))));

    /// <summary>A box to tick.</summary>
    internal static XElement Tick(params object?[] content) => Html.Tag(
        "label",
        Html.Class("tick"),
        Html.Tag("input", Html.Attribute("type", "checkbox")),
        " ",
        Html.Tag("span", content));

    /// <summary>A line to write on, with what belongs on it said below or before.</summary>
    internal static XElement Write(string label, string @class = "write") => Html.Tag(
        "span", Html.Class("field"), Html.Tag("span", Html.Class("field-label"), label), " ", Html.Tag("span", Html.Class(@class)));

    internal static XElement Signatures(params IEnumerable<string> labels) => Html.Tag(
        "div", Html.Class("signatures"), labels.Select(label => Html.Tag("div", Write(label, "write-long"))));

    /// <summary>What is not known, and what would settle it.</summary>
    internal static XElement Missing(IEnumerable<string> missing) => Html.Tag(
        "span", Html.Class("unknown"), Html.Tag("b", "Not known"), ": ", string.Join(" ", missing));

    private static XElement Notice() => Html.Tag(
        "p",
        Html.Tag("strong", "Notice."),
        $" {Outranked} Local codes and licensed practice do too. It advises, and certifies nothing: whoever does the work answers for it."
        + " What has no number of a source beside it is common practice.");
}
