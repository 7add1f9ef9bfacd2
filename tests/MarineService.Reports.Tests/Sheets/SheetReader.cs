using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using MarineService.Reports.Sheets;

namespace MarineService.Reports.Tests.Sheets;

/// <summary>Reads a sheet as a browser would, by the parser of AngleSharp.</summary>
internal static class SheetReader
{
    internal static IDocument Read(Sheet sheet) => Read(sheet.ToHtml());

    internal static IDocument Read(string html) => new HtmlParser(new HtmlParserOptions { IsScripting = false }).ParseDocument(html);

    /// <summary>An element's text with white space taken together, as it is seen.</summary>
    internal static string Seen(this IElement element) => Seen(element.TextContent);

    internal static string Seen(string text) => string.Join(" ", text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    internal static string[] Seen(this IParentNode within, string selector) => [.. within.QuerySelectorAll(selector).Select(Seen)];

    /// <summary>Elements with their attributes, in order, without any text.</summary>
    internal static string Structure(IDocument document) => string.Join(
        "\n", document.All.Select(element => $"{Depth(element)} {element.NamespaceUri} {element.LocalName} {string.Join(" ", element.Attributes.Select(attribute => $"{attribute.Name}={attribute.Value}"))}"));

    private static int Depth(IElement element) => element.ParentElement is IElement parent ? Depth(parent) + 1 : 0;
}
