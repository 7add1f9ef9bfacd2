using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using MarineService.Core.Internal;
using MarineService.Reports.Internal;

namespace MarineService.Reports;

/// <summary>
/// A picture of something that the library computed, as scalable vector graphics (SVG 1.1, W3C). The same values give the same bytes,
/// on any machine and in any culture. Text is text, and title and description stand in the picture for those who do not see it.
/// </summary>
public sealed class Drawing
{
    /// <summary>Height over width. At this a picture still has seven eighths of the width of a sheet.</summary>
    private const double TallestOnPaper = 1.4;

    private readonly XElement _svg;

    // The name is the stem of the ids too; title and description are put in front of what the svg element holds.
    internal Drawing(string name, string title, string description, XElement svg)
    {
        Name = name;
        Title = title;
        Description = description;
        _svg = new XElement(svg);
        _svg.SetAttributeValue("role", "img");
        _svg.SetAttributeValue("aria-labelledby", $"{name}-title {name}-description");
        _svg.AddFirst(
            new XElement(Svg.Space + "title", new XAttribute("id", $"{name}-title"), PlainText.Of(title)),
            new XElement(Svg.Space + "desc", new XAttribute("id", $"{name}-description"), PlainText.Of(description)));
    }

    /// <summary>What kind of picture it is, in small letters and dashes; fit for a file's name.</summary>
    public string Name { get; }

    /// <summary>What it shows, in a few words.</summary>
    public string Title { get; }

    /// <summary>What one would say of it to somebody who cannot see it, warnings included.</summary>
    public string Description { get; }

    /// <summary>Whether a sheet of paper has room for it at nearly its full width, so that its own words can be read there.</summary>
    internal bool IsLargeOnPaper
    {
        get
        {
            string[] box = ((string)_svg.Attribute("viewBox")!).Split(' ');
            return double.Parse(box[3], CultureInfo.InvariantCulture) <= TallestOnPaper * double.Parse(box[2], CultureInfo.InvariantCulture);
        }
    }

    /// <summary>A copy, to stand within a page.</summary>
    internal XElement ToElement() => new(_svg);

    /// <summary>The picture as the text of an SVG file.</summary>
    /// <returns>One svg element with lines that end in a line feed; no declaration, so that it can stand in a page too.</returns>
    public string ToSvg()
    {
        StringBuilder text = new();
        using (XmlWriter writer = XmlWriter.Create(text, new XmlWriterSettings { OmitXmlDeclaration = true, Indent = true, NewLineChars = "\n" }))
        {
            _svg.WriteTo(writer);
        }

        return text.Append('\n').ToString();
    }

    /// <summary>Writes the picture as an SVG file in UTF-8.</summary>
    /// <param name="stream">Where to write; left open.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public void WriteTo(Stream stream)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(ToSvg());
        Guard.NotNull(stream).Write(bytes, 0, bytes.Length);
    }

    /// <summary>Title of the picture.</summary>
    /// <returns><see cref="Title"/>.</returns>
    public override string ToString() => Title;
}
