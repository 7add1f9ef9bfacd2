using System.Xml.Linq;
using MarineService.Core;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>What the signs of a belt drawing mean, in two columns.</summary>
internal static class BeltLegend
{
    private const double Row = 24;
    private const double Size = 12;

    private const double Column = 336;
    private const int Columns = 2;

    internal static XElement Draw(double x, double y, bool withShould, out double bottom)
    {
        (string Words, XElement[] Sign)[] signs =
        [
            ("comb: the side of the belt's ribs", [Svg.Line(0, 0, 36, 0, Stroke.Of(Palette.Ink, 4)), Svg.Path(Teeth(), Stroke.Of(Palette.Ink, 1.6))]),
            ("two rings: grooved pulley", [Svg.Circle(18, 0, 9, Stroke.Of(Palette.Ink, 1.4).Filled(Palette.Tint)), Svg.Circle(18, 0, 5, Stroke.Of(Palette.Ink, 0.8))]),
            ("sense in which a pulley turns", [.. Arrow.Round(18, 8, 15, -Math.PI * 0.85, Math.PI * 0.7, 10, Stroke.Of(Palette.Blue, 2.4), Palette.Blue)]),
            ("no comb: the belt's back", [Svg.Line(0, 0, 36, 0, Stroke.Of(Palette.Ink, 4))]),
            ("one ring: smooth; dashed: no belt on it", [Svg.Circle(9, 0, 8, Stroke.Of(Palette.Ink, 1.4).Filled(Palette.Tint)), Svg.Circle(28, 0, 8, Stroke.Of(Palette.Quiet, 1.4).Dashed("5 3"))]),
            withShould
                ? ("dots: where the belt should lie", [Svg.Line(0, 0, 36, 0, Stroke.Of(Palette.Blue, 2.2).Dashed("1.5 5"))])
                : ("what was found there: see its number below", [Notes.Mark(6, 0, 1, Severity.Act), Notes.Mark(30, 0, 2, Severity.Advice)]),
        ];
        XElement legend = Svg.Group("legend");
        for (int i = 0; i < signs.Length; i++)
        {
            double left = x + (i % Columns * Column);
            double middle = y + Row + (i / Columns * Row);
            XElement sign = Svg.Group("sign", signs[i].Sign);
            sign.Add(new XAttribute("transform", $"translate({Svg.Number(left)} {Svg.Number(middle)})"));
            legend.Add(sign, Svg.Text(left + 44, middle + 4, Size, signs[i].Words, color: Palette.Quiet));
        }

        bottom = y + (Row * ((signs.Length / Columns) + 1)) + 2;
        return legend;
    }

    private static string Teeth()
    {
        SvgPath teeth = new();
        for (double at = 2; at < 36; at += 8)
        {
            teeth.To(at, 0).Line(at, 7);
        }

        return teeth.ToString();
    }
}
