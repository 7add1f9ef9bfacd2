using MarineService.Core.Fluids;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>What a document says of a dipstick, before it is put together; liters, mm and °C.</summary>
internal sealed class DipstickParts
{
    internal double? Range { get; set; }

    internal double? RangeSigma { get; set; }

    internal double? OilCelsius { get; set; }

    internal StickSeating? Seating { get; set; }

    internal BoatAttitude? Attitude { get; set; }

    internal double? AddMarkMm { get; set; }

    internal double? FullMarkMm { get; set; }

    internal SumpShape? Shape { get; set; }

    internal Dipstick Build()
    {
        Dipstick stick = Dipstick.WithRange(Volume.FromLiters(Range!.Value), RangeSigma is double sigma ? Volume.FromLiters(sigma) : null);
        stick = OilCelsius is double celsius ? stick.MarkedForHotOil(Temperature.FromDegreesCelsius(celsius)) : stick;
        stick = Seating is StickSeating seating ? stick.Read(seating) : stick;
        stick = Attitude is BoatAttitude attitude ? stick.Read(attitude) : stick;
        stick = Shape is null ? stick : stick.InSump(Shape);
        return AddMarkMm is double add && FullMarkMm is double full
            ? stick.WithMarks(Length.FromMillimeters(add), Length.FromMillimeters(full))
            : stick;
    }
}
