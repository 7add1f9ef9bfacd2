using System.Xml.Linq;

namespace MarineService.Reports.Internal;

/// <summary>Arrows, with heads drawn as shapes, so that they need no definitions and print everywhere.</summary>
internal static class Arrow
{
    /// <summary>Along a circle; angles in radians, clockwise on the page from the right.</summary>
    internal static IEnumerable<XElement> Round(double x, double y, double radius, double from, double sweep, double head, Stroke stroke, string color)
    {
        double to = from + sweep;
        double sign = Math.Sign(sweep);

        // The line stops inside the head, whose tip stands where the sweep ends.
        double end = to - (sign * head * 0.8 / radius);
        yield return Svg.Path(
            new SvgPath()
                .To(x + (radius * Math.Cos(from)), y + (radius * Math.Sin(from)))
                .Arc(radius, Math.Abs(end - from) > Math.PI, sweep > 0, x + (radius * Math.Cos(end)), y + (radius * Math.Sin(end)))
                .ToString(),
            stroke);
        double tipX = x + (radius * Math.Cos(to));
        double tipY = y + (radius * Math.Sin(to));

        // A chord from the head's foot keeps the head on the curve.
        double footX = x + (radius * Math.Cos(to - (sign * head / radius)));
        double footY = y + (radius * Math.Sin(to - (sign * head / radius)));
        yield return Head(footX, footY, tipX, tipY, head * 0.45, color);
    }

    internal static XElement Head(double footX, double footY, double tipX, double tipY, double halfWidth, string color)
    {
        double length = Math.Sqrt(((tipX - footX) * (tipX - footX)) + ((tipY - footY) * (tipY - footY)));
        double nx = -(tipY - footY) / length * halfWidth;
        double ny = (tipX - footX) / length * halfWidth;
        return Svg.Path(
            new SvgPath().To(footX + nx, footY + ny).Line(tipX, tipY).Line(footX - nx, footY - ny).Close().ToString(),
            Stroke.None.Filled(color));
    }
}
