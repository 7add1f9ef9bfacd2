using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>Whether the belt runs straight into its grooves, and in the middle of its smooth pulleys.</summary>
/// <remarks>
/// Smooth pulleys do not hold the belt sideways, so a grooved pulley is judged against the next grooved one over the spans between:
/// common practice. Between them the belt is taken to drift evenly.
/// </remarks>
public sealed class AlignmentCheck
{
    private const double OffMiddleMm = 2;

    private readonly BeltRouting _routing;

    internal AlignmentCheck(BeltRouting routing, RoutingGeometry geometry, AlignmentLimit limit)
    {
        (_routing, Limit) = (routing, limit);
        List<GroovedRun> runs = [];
        List<Finding> findings = [];
        int count = routing.Stops.Count;
        for (int i = 0; i < count; i++)
        {
            if (PulleyAt(i).Surface == PulleySurface.Grooved)
            {
                AddRun(runs, findings, geometry, i);
            }
        }

        Runs = runs.AsReadOnly();
        Findings = findings.AsReadOnly();
    }

    /// <summary>The limit that was compared with.</summary>
    public AlignmentLimit Limit { get; }

    /// <summary>The belt from each grooved pulley to the next, in belt order.</summary>
    public IReadOnlyList<GroovedRun> Runs { get; }

    /// <summary>What was found, in belt order.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>True when nothing was found that must be put right.</summary>
    public bool IsFine => Findings.All(finding => finding.Severity < Severity.Act);

    /// <summary>Each run with its angles, then what was found.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(IsFine ? "The pulleys are in line." : "The pulleys are not in line.");
        lines.Add("limit", Limit.ToString());
        foreach (GroovedRun run in Runs)
        {
            lines.Add(
                $"{run.FromPulley} to {run.ToPulley}",
                FormattableString.Invariant($"leaves at {run.LeavingAngleDegrees:0.00} deg, enters at {run.EntryAngleDegrees:0.00} deg, offset ")
                + FigureUnit.Millimeter.Write(run.OffsetMm, units) + " over " + FigureUnit.Millimeter.Write(run.FreeLengthMm, units));
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build(Limit.Citation);
    }

    private Pulley PulleyAt(int stop) => _routing.Drive.Pulleys[_routing.PulleyIndexes[stop]];

    private int Next(int stop) => stop + 1 < _routing.Stops.Count ? stop + 1 : 0;

    private void AddRun(List<GroovedRun> runs, List<Finding> findings, RoutingGeometry geometry, int from)
    {
        List<int> over = [];
        double length = geometry.Stops[from].ExitSpanMm;
        int to = Next(from);
        int last = from;
        while (PulleyAt(to).Surface == PulleySurface.Smooth)
        {
            over.Add(to);
            last = to;
            length += geometry.Stops[to].ExitSpanMm;
            to = Next(to);
        }

        StopGeometry leaving = geometry.Stops[from];
        StopGeometry entering = geometry.Stops[to];
        StopGeometry lastSpan = geometry.Stops[last];
        double start = AlignmentMath.HeightMm(PulleyAt(from), leaving.ExitXMm, leaving.ExitYMm);
        double offset = AlignmentMath.HeightMm(PulleyAt(to), entering.EntryXMm, entering.EntryYMm) - start;
        double rise = offset / length;
        GroovedRun run = new(
            _routing.NameOf(from),
            _routing.NameOf(to),
            [.. over.Select(_routing.NameOf)],
            length,
            offset,
            Angle(PulleyAt(from), leaving, rise),
            Angle(PulleyAt(to), lastSpan, rise));
        runs.Add(run);
        Judge(findings, run);
        double along = leaving.ExitSpanMm;
        foreach (int smooth in over)
        {
            JudgeSmooth(findings, PulleyAt(smooth), start + (rise * along));
            along += geometry.Stops[smooth].ExitSpanMm;
        }
    }

    private static double Angle(Pulley pulley, in StopGeometry span, double rise) =>
        AlignmentMath.AngleRad(rise, span.ExitDirectionXRatio, span.ExitDirectionYRatio, pulley.LeanAcrossRatio, pulley.LeanUpRatio);

    private void Judge(List<Finding> findings, GroovedRun run)
    {
        double leaving = Math.Tan(Math.Abs(run.LeavingAngleDegrees) * Math.PI / 180);
        double entering = Math.Tan(Math.Abs(run.EntryAngleDegrees) * Math.PI / 180);
        Figure limit = Figure.Of("limit", Limit.OffsetRatio * 100, FigureUnit.MillimeterPerDecimeter);
        Figure source = Figure.Of("source", Limit.Name);
        if (entering > Limit.OffsetRatio)
        {
            findings.Add(AlignmentRules.EntryAngle.On(
                $"pulley '{run.ToPulley}'", Figure.Of("askew", entering * 100, FigureUnit.MillimeterPerDecimeter), limit, source));
        }

        if (leaving > Limit.OffsetRatio)
        {
            findings.Add(AlignmentRules.LeavingAngle.On(
                $"span from '{run.FromPulley}'",
                Figure.Of("pulley", run.FromPulley),
                Figure.Of("askew", leaving * 100, FigureUnit.MillimeterPerDecimeter),
                limit,
                source));
        }
    }

    private void JudgeSmooth(List<Finding> findings, Pulley pulley, double beltMm)
    {
        if (pulley.AxialPositionMm is not double rim)
        {
            return;
        }

        double aside = Math.Abs(beltMm - rim);
        Figure asideFigure = Figure.Of("aside", aside, FigureUnit.Millimeter);
        double? over = aside + (_routing.Drive.Belt.WidthMm / 2) - (pulley.WidthMm / 2);
        if (over > 0)
        {
            findings.Add(AlignmentRules.Overhang.On(
                $"pulley '{pulley.Name}'", asideFigure, Figure.Of("over", over.Value, FigureUnit.Millimeter)));
        }
        else if (aside > OffMiddleMm)
        {
            findings.Add(AlignmentRules.OffMiddle.On(
                $"pulley '{pulley.Name}'", asideFigure, Figure.Of("limit", OffMiddleMm, FigureUnit.Millimeter)));
        }
    }
}
