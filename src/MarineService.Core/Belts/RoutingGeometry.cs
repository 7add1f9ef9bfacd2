using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>A closed pitch line, measured: contacts, spans and the lengths that follow from them.</summary>
/// <remarks>
/// On a belt that can run, the pitch line and the effective line differ by one turn of the differential, whatever the mix of faces:
/// the effective line lies on the ribs' side all along. On an impossible belt they differ by as many turns as it makes.
/// </remarks>
public sealed class RoutingGeometry
{
    private readonly StopGeometry[] _stops;

    internal RoutingGeometry(StopGeometry[] stops, double pitchLengthMm, double differentialMm, int turnSign)
    {
        _stops = stops;
        Stops = Array.AsReadOnly(stops);
        PitchLengthMm = pitchLengthMm;
        TurningNumber = BeltMath.TurningNumber(stops);
        EffectiveLengthMm = pitchLengthMm - (BeltMath.LinePerDifferential * differentialMm * TurningNumber * turnSign);
    }

    /// <summary>The contacts in belt order, the crank first; each with the span that leaves it.</summary>
    public IReadOnlyList<StopGeometry> Stops { get; }

    /// <summary>The length of the pitch line, which keeps its length when the belt bends.</summary>
    public Length PitchLength => Length.FromMillimeters(PitchLengthMm);

    /// <summary>The length of the effective line, which is printed on belts.</summary>
    public Length EffectiveLength => Length.FromMillimeters(EffectiveLengthMm);

    /// <summary>The sum of the straight spans.</summary>
    public Length SumOfSpans => Length.FromMillimeters(_stops.Sum(stop => stop.ExitSpanMm));

    /// <summary>The sum of the arcs on the pulleys, along the pitch line.</summary>
    public Length SumOfArcs => Length.FromMillimeters(_stops.Sum(stop => stop.ArcMm));

    /// <summary>How often the direction of travel goes round, counter-clockwise positive: 1 or -1 for a belt that does not cross itself.</summary>
    public int TurningNumber { get; }

    internal double PitchLengthMm { get; }

    internal double EffectiveLengthMm { get; }
}
