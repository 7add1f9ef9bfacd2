using System.Text;

namespace MarineService.Reports.Internal;

/// <summary>Builds the data of a path, in the picture's own units with y downwards.</summary>
internal sealed class SvgPath
{
    private readonly StringBuilder _data = new();

    internal SvgPath To(double x, double y) => Add('M', x, y);

    internal SvgPath Line(double x, double y) => Add('L', x, y);

    /// <summary>Along a circle to a point; <paramref name="clockwise"/> as seen on the page.</summary>
    internal SvgPath Arc(double radius, bool large, bool clockwise, double x, double y)
    {
        Space().Append('A').Append(Svg.Number(radius)).Append(' ').Append(Svg.Number(radius)).Append(" 0 ").Append(large ? '1' : '0').Append(' ').Append(clockwise ? '1' : '0')
            .Append(' ').Append(Svg.Number(x)).Append(' ').Append(Svg.Number(y));
        return this;
    }

    internal SvgPath Close()
    {
        Space().Append('Z');
        return this;
    }

    public override string ToString() => _data.ToString();

    private SvgPath Add(char command, double x, double y)
    {
        Space().Append(command).Append(Svg.Number(x)).Append(' ').Append(Svg.Number(y));
        return this;
    }

    private StringBuilder Space() => _data.Length == 0 ? _data : _data.Append(' ');
}
