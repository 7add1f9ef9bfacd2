using System.Globalization;
using System.Text;
using System.Xml.Linq;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Tests;

/// <summary>Laws that every picture keeps.</summary>
internal static class Pictures
{
    private static readonly string[] Cultures = ["", "de-DE", "ar-SA", "th-TH", "tr-TR"];

    internal static XElement Parse(Drawing drawing)
    {
        using MemoryStream bytes = new();
        drawing.WriteTo(bytes);
        return XDocument.Parse(Encoding.UTF8.GetString(bytes.ToArray())).Root!;
    }

    internal static IEnumerable<XElement> ByClass(Drawing drawing, string name) =>
        Parse(drawing).DescendantsAndSelf().Where(element => (string?)element.Attribute("class") == name);

    /// <summary>All words of the picture itself, not of its title and description, lines joined by a space.</summary>
    internal static string Words(Drawing drawing) =>
        string.Join(" ", Parse(drawing).Descendants(Svg.Space + "text").Select(text => text.Value));

    /// <summary>By a width of its own: 0.47 of the size for each letter, which a common sans-serif has on average.</summary>
    internal static void AssertTextStaysInside(Drawing drawing)
    {
        XElement svg = Parse(drawing);
        double[] page = [.. ((string)svg.Attribute("viewBox")!).Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
        foreach (XElement text in svg.Descendants(Svg.Space + "text").Where(text => text.Ancestors().All(group => group.Attribute("transform") is null)))
        {
            (double x, double y, double size) = (Read(text, "x"), Read(text, "y"), Read(text, "font-size"));
            double width = 0.47 * size * text.Value.Length;
            double left = (string)text.Attribute("text-anchor")! switch { "middle" => x - (width / 2), "end" => x - width, _ => x };
            Assert.True(left >= 0 && left + width <= page[2] && y >= size * 0.7 && y <= page[3], $"'{text.Value}' at {x}, {y} leaves the page {page[2]} x {page[3]}");
        }
    }

    /// <summary>Once shown as text, whatever a person wrote is text and nothing else.</summary>
    internal static void AssertHostileWordsStayText(Func<string, Drawing> draw)
    {
        string[] shape = Elements(draw("plain"));
        foreach (string hostile in Hostile)
        {
            Drawing drawing = draw(hostile);
            Assert.Empty(Elements(drawing).Except(shape));
            Assert.DoesNotContain(Parse(drawing).DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
            string kept = new([.. drawing.Description.Where(letter => letter == 'Ω')]);
            Assert.Equal("Ω", kept.Length > 1 ? "Ω" : kept);
        }
    }

    internal static void AssertSameEverywhere(Func<Drawing> draw)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            string[] written = [.. Cultures.Select(culture =>
            {
                CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
                return draw().ToSvg();
            })];
            Assert.Single(written.Distinct());
            Assert.DoesNotContain('\r', written[0]);
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }
    }

    // Each holds one Ω, which must arrive.
    private static string[] Hostile { get; } =
    [
        "Ω</text><script>alert(1)</script>",
        "Ω\" onload=\"alert(1)",
        "Ω' onclick='x",
        "Ω]]><![CDATA[<svg>",
        "Ω&amp;&lt;&#0;",
        "Ω\0\u0001\u001b\ufffe",
        "Ω\ud83d",
        "\udc00Ω",
        "Ω\u202egnp.exe\u202c",
        "Ω😀👩‍🔧",
        "Ω" + new string('w', 400),
        "<!-- Ω -->",
    ];

    private static string[] Elements(Drawing drawing) => [.. Parse(drawing).DescendantsAndSelf().Select(element => element.Name.LocalName).Distinct()];

    private static double Read(XElement element, string attribute) => double.Parse((string)element.Attribute(attribute)!, CultureInfo.InvariantCulture);
}
