using System.Globalization;
using System.Xml.Linq;
using MarineService.Reports.Internal;
using OxyPlot;
using OxyPlot.Axes;

namespace MarineService.Reports.Charts;

/// <summary>
/// The plain part of a chart, axes, grid and lines, drawn by OxyPlot. What it writes is brought to the other pictures' habits: the same numbers and
/// font, names of its own for its clip paths, no size but the page's. Labels and marks are ours, laid over it where its axes say.
/// </summary>
internal sealed class Plot
{
    private const double TextSize = 12;

    private readonly PlotModel _model;
    private readonly string _name;
    private readonly string _acrossWords;
    private readonly string _upWords;
    private readonly double _top;
    private readonly double _width;
    private readonly double _height;

    /// <param name="name">The chart's name, for its ids.</param>
    /// <param name="top">Where it begins on the page.</param>
    /// <param name="width">Its width, axes and their numbers included.</param>
    /// <param name="height">Its height.</param>
    /// <param name="across">The axis along the foot, with its words as title.</param>
    /// <param name="up">The upright axis, with its words as title.</param>
    internal Plot(string name, double top, double width, double height, Axis across, Axis up)
    {
        (_name, _top, _width, _height, Across, Up) = (name, top, width, height, across, up);
        (_acrossWords, _upWords) = (across.Title, up.Title);
        (across.Title, up.Title) = (null, null);
        _model = new PlotModel
        {
            Culture = CultureInfo.InvariantCulture,
            DefaultFont = "sans-serif",
            DefaultFontSize = TextSize,
            TextColor = Color(Palette.Ink),
            PlotAreaBorderColor = Color(Palette.Quiet),
            PlotAreaBorderThickness = new OxyThickness(1),
            PlotMargins = new OxyThickness(72, 26, 24, 44),
            Padding = new OxyThickness(0),
        };
        foreach (Axis axis in new[] { across, up })
        {
            axis.MajorGridlineStyle = LineStyle.Solid;
            axis.MajorGridlineColor = Color(Palette.Tint);
            axis.MajorGridlineThickness = 1;
            axis.TicklineColor = Color(Palette.Quiet);
            axis.MinorTicklineColor = Color(Palette.Quiet);
            axis.AxislineColor = Color(Palette.Quiet);
            axis.IsZoomEnabled = false;
            _model.Axes.Add(axis);
        }
    }

    internal Axis Across { get; }

    internal Axis Up { get; }

    /// <summary>What is inside the axes, on the page; known once drawn.</summary>
    internal Box Area { get; private set; }

    internal static OxyColor Color(string color) => OxyColor.Parse(color);

    internal void Add(OxyPlot.Series.Series series) => _model.Series.Add(series);

    internal double X(double value) => Across.Transform(value);

    internal double Y(double value) => _top + Up.Transform(value);

    internal XElement Draw()
    {
        SvgExporter exporter = new() { Width = _width, Height = _height, UseVerticalTextAlignmentWorkaround = true };
        XElement drawn = XElement.Parse(exporter.ExportToString(_model));
        Area = new Box(_model.PlotArea.Left, _top + _model.PlotArea.Top, _model.PlotArea.Width, _model.PlotArea.Height);
        XElement group = Svg.Group("plot", drawn.Elements().Where(element => element.Name.LocalName is not ("title" or "desc")));
        group.Add(new XAttribute("transform", $"translate(0 {Svg.Number(_top)})"));
        foreach (XElement element in group.Descendants())
        {
            foreach (XAttribute attribute in element.Attributes().ToArray())
            {
                Tidy(attribute);
            }
        }

        // Upright words would have to be read with the head on one side.
        return Svg.Group(
            "axes",
            group,
            Svg.Text(Area.X, Area.Y - 9, TextSize, _upWords, color: Palette.Quiet),
            Svg.Text(Area.X + Area.Width, Area.Y + Area.Height + 38, TextSize, _acrossWords, "end", Palette.Quiet));
    }

    // Two charts on one page must not share a clip path; the font is the page's.
    private void Tidy(XAttribute attribute)
    {
        switch (attribute.Name.LocalName)
        {
            case "font-family":
                attribute.Remove();
                break;
            case "id":
                attribute.Value = $"{_name}-{attribute.Value}";
                break;
            case "clip-path":
                attribute.Value = $"url(#{_name}-{attribute.Value.Substring("url(#".Length)}";
                break;
            default:
                break;
        }
    }
}
