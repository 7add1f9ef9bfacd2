using System.Xml.Linq;

namespace MarineService.Reports.Internal;

/// <summary>How a shape is drawn: line, width, dashes and filling.</summary>
internal sealed class Stroke
{
    private readonly string _color;
    private readonly double _width;
    private readonly string? _dashes;
    private readonly string _fill;

    private Stroke(string color, double width, string? dashes, string fill)
    {
        _color = color;
        _width = width;
        _dashes = dashes;
        _fill = fill;
    }

    internal static Stroke Of(string color, double width) => new(color, width, null, "none");

    internal static Stroke None { get; } = new("none", 0, null, "none");

    internal Stroke Dashed(string dashes) => new(_color, _width, dashes, _fill);

    internal Stroke Filled(string fill) => new(_color, _width, _dashes, fill);

    internal IEnumerable<XAttribute> Attributes()
    {
        yield return new XAttribute("fill", _fill);
        if (_color != "none")
        {
            yield return new XAttribute("stroke", _color);
            yield return new XAttribute("stroke-width", Svg.Number(_width));
        }

        if (_dashes is not null)
        {
            yield return new XAttribute("stroke-dasharray", _dashes);
        }
    }
}
