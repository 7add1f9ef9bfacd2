using System.Xml.Linq;

namespace MarineService.Reports.Internal;

/// <summary>Elements of HTML, without a namespace. Text goes in as text: what people wrote never becomes markup.</summary>
internal static class Html
{
    // A reader of HTML takes a carriage return for a line feed.
    private static readonly string[] LineEnds = ["\r\n", "\r"];

    /// <summary>An element with its content: text, elements, attributes, or lists of these. Nulls are left out.</summary>
    internal static XElement Tag(string name, params object?[] content)
    {
        XElement element = new(name);
        Add(element, content);
        return element;
    }

    internal static XAttribute Attribute(string name, string value) => new(name, Clean(value));

    internal static XAttribute Class(string name) => new("class", name);

    /// <summary>
    /// Text that people wrote, in the midst of our own. It is set apart for the order of writing (bdi, "bidirectional isolate"),
    /// so that a mark in it for the other direction of writing cannot turn round what stands beside it.
    /// </summary>
    internal static XElement Words(string text) => Tag("bdi", text);

    private static void Add(XElement element, IEnumerable<object?> content)
    {
        foreach (object? item in content)
        {
            switch (item)
            {
                case null:
                    break;
                case string text:
                    element.Add(new XText(Clean(text)));
                    break;
                case IEnumerable<object?> many:
                    Add(element, many);
                    break;
                default:
                    element.Add(item);
                    break;
            }
        }
    }

    private static string Clean(string text) => PlainText.Of(string.Join("\n", text.Split(LineEnds, StringSplitOptions.None)));
}
