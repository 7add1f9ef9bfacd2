namespace MarineService.Core.Parts;

/// <summary>A cover as it is held now: whether the screws go in, which hole is worst, and how far to turn it.</summary>
public sealed class HeldCover
{
    private const double Degree = Math.PI / 180;

    internal HeldCover(CoverFit fit, double turnRad)
    {
        (Fit, TurnDegrees) = (fit, turnRad / Degree);
        int at = 0;
        WorstOffMm = double.PositiveInfinity;
        for (int shift = 0; shift < fit.Rotations.Count; shift++)
        {
            double off = fit.OffMm(shift, turnRad);
            if (off < WorstOffMm)
            {
                (WorstOffMm, at) = (off, shift);
            }
        }

        Nearest = fit.Rotations[at];
        WorstHole = Worst(fit, at, turnRad);
        Goes = WorstOffMm <= fit.PlayMm;
        CoverRotation? target = fit.FirstHoleOn is int right
            ? fit.Rotations[right - 1] is { Fits: true } intended ? intended : null
            : fit.Fitting.OrderBy(rotation => Math.Abs(BoltPatternMath.Wrapped(rotation.TurnRad - turnRad))).FirstOrDefault();
        TurnToFitDegrees = target is null
            ? Answer.NotKnown<double>("A cover that fits.")
            : Answer.Known(BoltPatternMath.Wrapped(target.TurnRad - turnRad) / Degree);
        IsWrongFit = Goes && fit.FirstHoleOn is int wanted && Nearest.FirstHoleOn != wanted;
        Findings = Judge(target);
    }

    /// <summary>The cover and the block.</summary>
    public CoverFit Fit { get; }

    /// <summary>How far it is turned from the drawing, counter-clockwise seen from outside [degrees].</summary>
    public double TurnDegrees { get; }

    /// <summary>True when every screw goes in as it is held.</summary>
    public bool Goes { get; }

    /// <summary>True when every screw goes in, but hole 1 does not lie where it belongs.</summary>
    public bool IsWrongFit { get; }

    /// <summary>The rotation whose holes are nearest to where they are held.</summary>
    public CoverRotation Nearest { get; }

    /// <summary>The hole of the cover that is farthest off, counted from 1.</summary>
    public int WorstHole { get; }

    /// <summary>How far that hole is off [mm].</summary>
    public double WorstOffMm { get; }

    /// <summary>How far to turn it to the middle of the fit that is wanted, or of the nearest one; positive counter-clockwise [degrees].</summary>
    public Answer<double> TurnToFitDegrees { get; }

    /// <summary>What was found; empty when it is held right.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Whether it goes, and what to do.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Findings.Count > 0 ? Findings[0].Message(DisplayUnits.Metric)
        : Goes ? "all screws go in" : "does not fit";

    private static int Worst(CoverFit fit, int shift, double turnRad)
    {
        int worst = 0;
        double most = -1;
        for (int i = 0; i < fit.Cover.HoleCount; i++)
        {
            double off = Math.Abs(BoltPatternMath.LeftOver(fit.Block.AnglesRad, fit.Cover.AnglesRad, shift, turnRad, i));
            if (off > most + 1e-12)
            {
                (most, worst) = (off, i);
            }
        }

        return worst + 1;
    }

    private IReadOnlyList<Finding> Judge(CoverRotation? target)
    {
        if (target is null)
        {
            return Fit.Findings;
        }

        double turn = TurnToFitDegrees.Value;
        Figure[] way =
        [
            Figure.Of("turn", Math.Abs(turn), FigureUnit.Degree),
            Figure.Of("sense", turn >= 0 ? "counter-clockwise" : "clockwise"),
        ];
        return IsWrongFit
            ? [FitRules.HeldInWrongFit.On(
                "cover",
                [
                    Figure.Of("right", Fit.FirstHoleOn!.Value, FigureUnit.Number),
                    Figure.Of("on", Nearest.FirstHoleOn, FigureUnit.Number),
                    .. way,
                ])]
            : Goes ? []
            : [FitRules.HeldWrong.On(
                "cover",
                [
                    Figure.Of("hole", WorstHole, FigureUnit.Number),
                    Figure.Of("off", WorstOffMm, FigureUnit.FineMillimeter),
                    Figure.Of("play", Fit.Clearance.RadialPlayMm, FigureUnit.FineMillimeter),
                    .. way,
                ])];
    }
}
