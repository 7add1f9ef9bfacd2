using System.Text;
using System.Xml.Linq;

namespace MarineService.Reports.Internal;

/// <summary>
/// Writes elements as HTML (WHATWG HTML Living Standard, 13.3 "Serializing HTML fragments"), which XML's own writer does not:
/// elements that are never closed, elements that are never self-closed, style that is not escaped. Pictures (SVG) may stand within.
/// </summary>
internal static class HtmlWriter
{
    private static readonly HashSet<string> Void = ["br", "col", "hr", "img", "input", "link", "meta", "wbr"];

    // After these a line feed changes nothing that is seen; a page of one line is hard to compare.
    private static readonly HashSet<string> EndsLine =
    [
        "meta", "title", "style", "head", "header", "main", "footer", "section", "article", "aside", "figure", "h1", "h2", "h3", "p", "ul", "ol", "li", "dl", "dt",
        "dd", "div", "table", "caption", "thead", "tbody", "tr", "svg",
    ];

    /// <summary>The whole page, from the document type on. Nothing follows its last tag: a reader would take even a line feed into the body.</summary>
    internal static string Document(XElement html)
    {
        StringBuilder text = new("<!DOCTYPE html>\n");
        Write(text, html);
        return text.ToString();
    }

    private static void Write(StringBuilder text, XElement element)
    {
        bool isHtml = element.Name.Namespace == XNamespace.None;
        string name = element.Name.LocalName;
        text.Append('<').Append(name);
        foreach (XAttribute attribute in element.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration))
        {
            text.Append(' ').Append(NameOf(attribute)).Append("=\"");
            Escape(text, attribute.Value, isAttribute: true);
            text.Append('"');
        }

        text.Append('>');
        if (!isHtml || !Void.Contains(name))
        {
            Content(text, element, isRaw: isHtml && name == "style");
            text.Append("</").Append(name).Append('>');
        }

        if ((isHtml || name == "svg") && EndsLine.Contains(name) && element.Parent?.Name.Namespace == XNamespace.None)
        {
            text.Append('\n');
        }
    }

    private static void Content(StringBuilder text, XElement element, bool isRaw)
    {
        foreach (XNode node in element.Nodes())
        {
            switch (node)
            {
                case XElement child:
                    Write(text, child);
                    break;
                case XText style when isRaw:
                    text.Append(style.Value);
                    break;
                case XText words:
                    Escape(text, words.Value, isAttribute: false);
                    break;
            }
        }
    }

    private static string NameOf(XAttribute attribute) =>
        attribute.Name.Namespace == XNamespace.Xml ? "xml:" + attribute.Name.LocalName : attribute.Name.LocalName;

    private static void Escape(StringBuilder text, string value, bool isAttribute)
    {
        foreach (char c in value)
        {
            _ = c switch
            {
                '&' => text.Append("&amp;"),
                '<' => text.Append("&lt;"),
                '>' => text.Append("&gt;"),
                '"' when isAttribute => text.Append("&quot;"),
                '\u00A0' => text.Append("&nbsp;"),
                _ => text.Append(c),
            };
        }
    }
}
