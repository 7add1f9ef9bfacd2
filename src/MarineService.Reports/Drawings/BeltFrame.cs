using System.Globalization;
using System.Xml.Linq;
using MarineService.Core.Belts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>Brings the engine's millimetres, y upwards, on to the page, y downwards.</summary>
internal sealed class BeltFrame
{
    internal const double Width = 720;
    internal const double Margin = 24;

    /// <summary>Room beside the outermost pulleys for the belt, names and marks; below, above them.</summary>
    private const double Border = 62;

    private const double Rim = 44;

    private const double GreatestHeight = 560;
    private const double GreatestScale = 2;

    internal BeltFrame(BeltDrive drive, double top)
    {
        double left = drive.Pulleys.Min(pulley => pulley.XMm - (pulley.DiameterMm / 2));
        double right = drive.Pulleys.Max(pulley => pulley.XMm + (pulley.DiameterMm / 2));
        double low = drive.Pulleys.Min(pulley => pulley.YMm - (pulley.DiameterMm / 2));
        double high = drive.Pulleys.Max(pulley => pulley.YMm + (pulley.DiameterMm / 2));
        if (drive.Tensioner is Tensioner tensioner)
        {
            (left, right) = (Math.Min(left, tensioner.PivotXMm), Math.Max(right, tensioner.PivotXMm));
            (low, high) = (Math.Min(low, tensioner.PivotYMm), Math.Max(high, tensioner.PivotYMm));
        }

        double room = Width - (2 * Border);
        Scale = Math.Min(GreatestScale, Math.Min(room / (right - left), (GreatestHeight - (2 * Rim)) / (high - low)));
        Height = ((high - low) * Scale) + (2 * Rim);
        OriginX = (Width / 2) - ((left + right) / 2 * Scale);
        OriginY = top + Rim + (high * Scale);
        Page = new Box(4, top, Width - 8, Height);
        MiddleX = Width / 2;
        MiddleY = top + (Height / 2);
    }

    internal double Scale { get; }

    internal double Height { get; }

    internal Box Page { get; }

    internal double MiddleX { get; }

    internal double MiddleY { get; }

    private double OriginX { get; }

    private double OriginY { get; }

    /// <summary>What a reader of the picture needs to bring a place on the page back to millimetres.</summary>
    internal IEnumerable<XAttribute> Attributes()
    {
        yield return new XAttribute("data-units-per-mm", Scale.ToString("0.#########", CultureInfo.InvariantCulture));
        yield return new XAttribute("data-origin-x", OriginX.ToString("0.######", CultureInfo.InvariantCulture));
        yield return new XAttribute("data-origin-y", OriginY.ToString("0.######", CultureInfo.InvariantCulture));
    }

    internal double X(double mm) => OriginX + (mm * Scale);

    internal double Y(double mm) => OriginY - (mm * Scale);

    /// <summary>The direction on the page that leads away from the middle of the drive.</summary>
    internal double Outward(double x, double y) => Math.Atan2(y - MiddleY, x - MiddleX);
}
