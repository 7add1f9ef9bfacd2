namespace MarineService.Core.Belts;

/// <summary>The room between a span and a pulley that it passes, with the belt's thickness and the hard rim.</summary>
internal static class BeltClearance
{
    /// <summary>The room in millimetres; negative when they rub.</summary>
    /// <param name="routing">The routing.</param>
    /// <param name="stops">Its geometry.</param>
    /// <param name="span">The stop that the span leaves.</param>
    /// <param name="place">The pulley's place among the stops, or past them when the belt does not come to it.</param>
    /// <param name="pulley">The pulley.</param>
    internal static double Mm(BeltRouting routing, StopGeometry[] stops, int span, int place, Pulley pulley)
    {
        StopGeometry from = stops[span];
        double distance = BeltMath.DistanceMm(
            from.ExitXMm,
            from.ExitYMm,
            from.ExitDirectionXRatio,
            from.ExitDirectionYRatio,
            from.ExitSpanMm,
            pulley.XMm,
            pulley.YMm,
            out double at);
        double along = at * from.ExitSpanMm;
        double dx = from.ExitXMm + (along * from.ExitDirectionXRatio) - pulley.XMm;
        double dy = from.ExitYMm + (along * from.ExitDirectionYRatio) - pulley.YMm;

        // Ribs look into the loop: to the left of the belt's travel when the pulleys inside turn counter-clockwise.
        bool pulleyIsLeft = (from.ExitDirectionXRatio * dy) - (from.ExitDirectionYRatio * dx) < 0;
        bool ribsFaceIt = pulleyIsLeft == routing.ExpectedTurningNumber > 0;
        double rim = pulley.RimRadiusMm;
        if (place < stops.Length && IsWithinArc(stops[place], dx, dy))
        {
            // There the pulley wears the belt, and belt would rub on belt.
            rim = Math.Max(rim, stops[place].PitchRadiusMm + Outward(routing, routing.Faces[place] == BeltFace.Back));
        }

        return distance - rim - Outward(routing, ribsFaceIt);
    }

    private static double Outward(BeltRouting routing, bool ribs)
    {
        RibbedBelt belt = routing.Drive.Belt;
        return ribs ? belt.ThicknessMm - belt.BackToPitchLineMm : belt.BackToPitchLineMm;
    }

    private static bool IsWithinArc(in StopGeometry stop, double dx, double dy)
    {
        double ex = stop.EntryXMm - stop.CenterXMm;
        double ey = stop.EntryYMm - stop.CenterYMm;
        double turned = Math.Atan2((ex * dy) - (ey * dx), (ex * dx) + (ey * dy)) * (stop.TurnsCounterClockwise ? 1 : -1);
        return (turned < 0 ? turned + (2 * Math.PI) : turned) <= stop.WrapRadians;
    }
}
