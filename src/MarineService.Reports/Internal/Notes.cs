using System.Globalization;
using System.Xml.Linq;
using MarineService.Core;

namespace MarineService.Reports.Internal;

/// <summary>The words below a picture, line after line down the page: paragraphs, and findings with the numbers of their marks.</summary>
internal sealed class Notes
{
    internal const double Size = 13;
    internal const double MarkRadius = 9;

    /// <summary>Bold letters are that much wider.</summary>
    private const double BoldShare = 1.15;

    private const double Indent = 30;
    private readonly List<XElement> _elements = [];
    private readonly double _x;
    private readonly double _width;

    internal Notes(double x, double y, double width) => (_x, Bottom, _width) = (x, y, width);

    /// <summary>Where the next line would begin.</summary>
    internal double Bottom { get; private set; }

    internal IEnumerable<XElement> Elements => _elements;

    /// <summary>The number that ties a place in the picture to its words.</summary>
    internal static XElement Mark(double x, double y, int number, string color) => Mark(x, y, number, color, Palette.Paper, color);

    /// <summary>The same for what was found: a full disc where something must be put right, a ring where not.</summary>
    internal static XElement Mark(double x, double y, int number, Severity severity)
    {
        string color = SeverityColor(severity);
        return severity < Severity.Act ? Mark(x, y, number, color) : Mark(x, y, number, color, fill: color, ink: Palette.Paper);
    }

    private static XElement Mark(double x, double y, int number, string edge, string fill, string ink) => Svg.Group(
        "mark",
        Svg.Circle(x, y, MarkRadius, Stroke.Of(edge, 1.8).Filled(fill)),
        Svg.Text(x, y + 4.2, number > 9 ? 11 : 12, number.ToString(CultureInfo.InvariantCulture), "middle", ink, bold: true));

    internal static string SeverityColor(Severity severity) => severity switch
    {
        >= Severity.Act => Palette.Red,
        Severity.Advice => Palette.Amber,
        _ => Palette.Quiet,
    };

    internal static string SeverityWord(Severity severity) => severity switch
    {
        Severity.Stop => "Stop: do not run the engine",
        Severity.Act => "Act: put right",
        Severity.Advice => "Advice",
        _ => "Note",
    };

    /// <summary>A finding in one breath: severity, code, what, and what to do.</summary>
    internal static string Sentence(Finding finding, DisplayUnits units)
    {
        string remedy = Remedy(finding, units) is string todo ? $" To do: {todo}" : string.Empty;
        return $"{SeverityWord(finding.Severity)}. {finding.Code}: {finding.Message(units)}.{remedy}";
    }

    /// <summary>A clause made a sentence: a capital in front, one full stop behind.</summary>
    internal static string Sentence(string clause) => $"{char.ToUpperInvariant(clause[0])}{clause.Substring(1).TrimEnd('.')}.";

    internal Notes Gap(double height)
    {
        Bottom += height;
        return this;
    }

    internal Notes Paragraph(string text, double size = Size, bool bold = false, string color = Palette.Ink) => Lines(text, 0, size, bold, color);

    /// <summary>Findings that share a place, under the number of its mark; without a number when they concern no one place.</summary>
    internal Notes Findings(int? number, IReadOnlyCollection<Finding> findings, DisplayUnits units)
    {
        if (number is int shown)
        {
            _elements.Add(Mark(_x + MarkRadius + 1, Bottom + (Size * Lettering.Leading / 2), shown, findings.Max(finding => finding.Severity)));
        }

        foreach (Finding finding in findings)
        {
            Lines($"{SeverityWord(finding.Severity)} ({finding.Code})", Indent, Size, bold: true, SeverityColor(finding.Severity));
            Lines($"{finding.Message(units)}.", Indent, Size, bold: false, Palette.Ink);
            if (Remedy(finding, units) is string todo)
            {
                Lines($"To do: {todo}", Indent, Size, bold: false, Palette.Quiet);
            }

            Bottom += 4;
        }

        return this;
    }

    /// <summary>A line in bold beside the number of its mark.</summary>
    internal Notes Numbered(int number, string text, string color)
    {
        _elements.Add(Mark(_x + MarkRadius + 1, Bottom + (Size * Lettering.Leading / 2), number, color));
        return Lines(text, Indent, Size, bold: true, color);
    }

    /// <summary>A line that belongs to the numbered one above it.</summary>
    internal Notes Indented(string text) => Lines(text, Indent, Size, bold: false, Palette.Ink);

    private static string? Remedy(Finding finding, DisplayUnits units) =>
        finding.Rule.Remedy is null ? null : finding.Explain(units).Lines.FirstOrDefault(line => line.Label == "do")?.Text;

    private Notes Lines(string text, double indent, double size, bool bold, string color)
    {
        foreach (string line in Lettering.Wrap(text, bold ? size * BoldShare : size, _width - indent))
        {
            Bottom += size * Lettering.Leading;
            _elements.Add(Svg.Text(_x + indent, Bottom - (size * 0.3), size, line, color: color, bold: bold));
        }

        return this;
    }
}
