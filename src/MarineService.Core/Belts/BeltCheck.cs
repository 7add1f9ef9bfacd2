using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>What a careful second person would say of a belt as it lies: the verdict, every finding, and the figures.</summary>
/// <remarks>
/// The library advises and certifies nothing: the engine's own diagram outranks it. Stop the engine, take the key out and let nobody
/// start it while hands are near the belt.
/// </remarks>
public sealed class BeltCheck
{
    internal BeltCheck(BeltRouting routing, BeltVerdict verdict, IReadOnlyList<Finding> findings, RoutingGeometry? geometry, TensionerCheck? tensioner)
    {
        (Routing, Verdict, Findings) = (routing, verdict, findings);
        Geometry = geometry is not null
            ? Answer.Known(geometry)
            : Answer.NotKnown<RoutingGeometry>("Centres and diameters that leave room for a span between each two pulleys in a row.");
        Tensioner = tensioner is not null
            ? Answer.Known(tensioner)
            : Answer.NotKnown<TensionerCheck>("A tensioner on the belt, a belt length, and a routing that can be measured.");
    }

    /// <summary>The routing that was checked.</summary>
    public BeltRouting Routing { get; }

    /// <summary>The geometry's headline: the worst that is certain, or at the limit, or closes.</summary>
    public BeltVerdict Verdict { get; }

    /// <summary>Everything that was found: the geometry's findings first, worst test first, each test in belt order.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Contacts, spans and lengths.</summary>
    public Answer<RoutingGeometry> Geometry { get; }

    /// <summary>Where the tensioner's arm stands with the drive's belt on.</summary>
    public Answer<TensionerCheck> Tensioner { get; }

    /// <summary>True when the belt closes and nothing was found that must be put right.</summary>
    public bool IsFine => Verdict == BeltVerdict.Closes && Findings.All(finding => finding.Severity < Severity.Act);

    /// <summary>The smallest set of edits that turns this routing into another, anchored at the crank.</summary>
    /// <param name="right">The routing to arrive at, on the same pulleys.</param>
    /// <returns>The edits in the order to do them; empty when the routings are equal.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="right"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="right"/> lies on a pulley that this routing's drive does not have.</exception>
    public IReadOnlyList<RoutingEdit> EditsTo(BeltRouting right) => Routing.EditsTo(right);

    /// <summary>Verdict and length: "Closes, 1907.7 mm".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Geometry.IsKnown
        ? FormattableString.Invariant($"{Verdict}, {Geometry.Value.EffectiveLengthMm:0.0} mm")
        : Verdict.ToString();

    /// <summary>The check in full: verdict and length, each pulley with wrap, sense and speed, then what was found.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Geometry.IsKnown
            ? $"{Words(Verdict)}; effective length {FigureUnit.Millimeter.Write(Geometry.Value.EffectiveLengthMm, units)}."
            : $"{Words(Verdict)}.");
        lines.Add("routing", Routing.ToString());
        lines.Add("crank", Routing.Drive.CrankTurns.ToString());
        for (int i = 0; Geometry.IsKnown && i < Routing.Stops.Count; i++)
        {
            StopGeometry stop = Geometry.Value.Stops[i];
            lines.Add(
                Routing.NameOf(i),
                $"{(Routing.Stops[i].Face == BeltFace.Back ? "back" : "ribs")}, wrap {FigureUnit.Degree.Write(stop.WrapDegrees, units)}, "
                + $"{Rotation.Word(Routing.TurningOf(i).Sense)} at {FormattableString.Invariant($"{Math.Abs(Routing.SpeedRatio(i)):0.000}")} times crank speed, "
                + $"then {FigureUnit.Millimeter.Write(stop.ExitSpanMm, units)} of span");
        }

        lines.AddIf(Tensioner.IsKnown, "tensioner", () => Tensioner.Value.Explain(units).Answer);
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build([BeltRules.Geometry, .. Findings.Select(finding => finding.Rule.Citation).Where(citation => citation != BeltRules.Geometry).Distinct()]);
    }

    internal static string Words(BeltVerdict verdict) => verdict switch
    {
        BeltVerdict.Closes => "The belt closes",
        BeltVerdict.AtLimit => "At the limit: the centres are not known well enough to say",
        BeltVerdict.TurningNumber => "Impossible: the belt goes round the wrong number of times",
        BeltVerdict.SpansCross => "Impossible: the belt crosses itself",
        BeltVerdict.SpanThroughPulley => "Impossible: a span runs through a pulley",
        BeltVerdict.NoContact => "The belt does not touch a pulley of the list",
        BeltVerdict.NoTangent => "Impossible: no span fits between two pulleys",
        BeltVerdict.Touching => "Impossible: two pulleys touch",
        BeltVerdict.Overlap => "Impossible: two pulleys overlap",
        _ => "Impossible: a pulley lies inside another",
    };
}
