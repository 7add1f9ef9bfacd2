using System.Globalization;
using System.Xml.Linq;

namespace MarineService.Reports.Internal;

/// <summary>Elements of SVG 1.1 with their numbers written alike everywhere. Lengths are in the picture's own units (viewBox).</summary>
internal static class Svg
{
    internal static readonly XNamespace Space = "http://www.w3.org/2000/svg";

    // Below this a coordinate cannot be seen in print; the same text for the same value on every runtime.
    private const string Coordinate = "0.##";

    /// <summary>A number as SVG and CSS read it: at most two decimals, a point, never minus nought.</summary>
    internal static string Number(double value)
    {
        string text = value.ToString(Coordinate, CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>The picture's outer element; it fills the width that it is given.</summary>
    internal static XElement Picture(double width, double height, params object?[] content) => new(
        Space + "svg",
        new XAttribute("viewBox", $"0 0 {Number(width)} {Number(height)}"),
        new XAttribute("font-family", "system-ui, 'Segoe UI', 'Liberation Sans', Arial, sans-serif"),
        content);

    internal static XElement Group(string @class, params object?[] content) => new(Space + "g", new XAttribute("class", @class), content);

    internal static XElement Line(double x1, double y1, double x2, double y2, Stroke stroke) =>
        Shape("line", stroke, ("x1", x1), ("y1", y1), ("x2", x2), ("y2", y2));

    internal static XElement Circle(double x, double y, double radius, Stroke stroke) =>
        Shape("circle", stroke, ("cx", x), ("cy", y), ("r", radius));

    internal static XElement Rectangle(double x, double y, double width, double height, Stroke stroke) =>
        Shape("rect", stroke, ("x", x), ("y", y), ("width", width), ("height", height));

    /// <summary>A path; its data comes from <see cref="SvgPath"/>.</summary>
    internal static XElement Path(string data, Stroke stroke) => new(Space + "path", new XAttribute("d", data), stroke.Attributes());

    /// <summary>Text; <paramref name="anchor"/> is start, middle or end.</summary>
    internal static XElement Text(double x, double y, double size, string text, string anchor = "start", string color = Palette.Ink, bool bold = false) => new(
        Space + "text",
        new XAttribute("x", Number(x)),
        new XAttribute("y", Number(y)),
        new XAttribute("font-size", Number(size)),
        new XAttribute("text-anchor", anchor),
        new XAttribute("fill", color),
        bold ? new XAttribute("font-weight", "bold") : null,
        PlainText.Of(text));

    private static XElement Shape(string name, Stroke stroke, params (string Name, double Value)[] numbers) => new(
        Space + name,
        numbers.Select(number => new XAttribute(number.Name, Number(number.Value))),
        stroke.Attributes());
}
