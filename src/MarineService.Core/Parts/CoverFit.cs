using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>At which rotations a cover fits on a block, how far off the others are, and whether a wrong fit is possible.</summary>
/// <remarks>
/// <para>Each cyclic shift pairs the holes; the turn that is best for the pairs is the middle of the angles that are left over, and the worst
/// hole is then off by half their range. It fits when that is no more than the screws allow.</para>
/// <para>A centered cover can only turn. A free one can also be pushed aside, which lets more fit.</para>
/// </remarks>
public sealed class CoverFit
{
    private const double Degree = Math.PI / 180;

    // What conversion from inches or degrees may lose; never decides at a limit.
    private const double GrainMm = 1e-9;

    internal CoverFit(BoltPattern block, BoltPattern cover, ScrewClearance clearance, CoverLocation location, int? firstHoleOn)
    {
        (Block, Cover, Clearance, Location, FirstHoleOn) = (block, cover, clearance, location, firstHoleOn);
        bool comparable = block.HoleCount == cover.HoleCount;
        Rotations = comparable ? All(cover.AnglesRad, isFaceDown: false) : [];
        FaceDown = comparable ? All(BoltPattern.Mirrored(cover.AnglesRad), isFaceDown: true) : [];
        Fitting = Array.AsReadOnly<CoverRotation>([.. Rotations.Where(rotation => rotation.Fits)]);
        Findings = Array.AsReadOnly<Finding>([.. Judge()]);
    }

    /// <summary>The pattern in the block.</summary>
    public BoltPattern Block { get; }

    /// <summary>The pattern of the cover.</summary>
    public BoltPattern Cover { get; }

    /// <summary>How far a hole may lie off.</summary>
    public ScrewClearance Clearance { get; }

    /// <summary>What holds the cover in its place while the screws go in.</summary>
    public CoverLocation Location { get; }

    /// <summary>The number of the block's hole on which the cover's hole 1 belongs; null when nobody knows.</summary>
    public int? FirstHoleOn { get; }

    /// <summary>Every rotation with the outer face out, in the order of <see cref="CoverRotation.FirstHoleOn"/>; empty when the numbers of holes differ.</summary>
    public IReadOnlyList<CoverRotation> Rotations { get; }

    /// <summary>Every rotation with the outer face down; empty when the numbers of holes differ.</summary>
    public IReadOnlyList<CoverRotation> FaceDown { get; }

    /// <summary>The rotations at which every screw goes in, outer face out.</summary>
    public IReadOnlyList<CoverRotation> Fitting { get; }

    /// <summary>True when it fits at one rotation at least, outer face out.</summary>
    public bool Fits => Fitting.Count > 0;

    /// <summary>True when it fits at more than one rotation, or face down.</summary>
    public bool AdmitsWrongFit => Fitting.Count > 1 || FaceDown.Any(rotation => rotation.Fits);

    /// <summary>The rotation whose worst hole is least off; not known when the numbers of holes differ.</summary>
    public Answer<CoverRotation> Best => Rotations.Count == 0
        ? Answer.NotKnown<CoverRotation>("A cover with as many holes as the block.")
        : Answer.Known(Rotations.OrderBy(rotation => rotation.WorstOffMm).First());

    /// <summary>What was found.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>How the cover stands as it is held now, and how far it must be turned to fit.</summary>
    /// <param name="turn">How far it is turned from the drawing, counter-clockwise seen from outside; from -360 to 360 degrees.</param>
    /// <returns>The state; not known when the numbers of holes differ.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="turn"/> is outside its range.</exception>
    public Answer<HeldCover> AsHeld(Angle turn)
    {
        double rad = Guard.InRange(Canonical.Degrees(turn), -360, 360, "degrees", nameof(turn)) * Degree;
        return Rotations.Count == 0
            ? Answer.NotKnown<HeldCover>("A cover with as many holes as the block.")
            : Answer.Known(new HeldCover(this, rad));
    }

    /// <summary>Which rotations fit, what was compared, and what was found.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Fitting.Count switch
        {
            0 => "Fits at no rotation.",
            1 => FormattableString.Invariant($"Fits at one of {Rotations.Count} rotations: hole 1 on hole {Fitting[0].FirstHoleOn}."),
            int count => FormattableString.Invariant($"Fits at {count} of {Rotations.Count} rotations."),
        });
        lines.Add("block", Block.ToString());
        lines.Add("cover", Cover.ToString());
        lines.Add("screws", Clearance.ToString());
        lines.Add("held by", Location == CoverLocation.Centered ? "a spigot, rim or groove: it can only turn" : "the screws alone: it can be pushed aside");
        foreach (CoverRotation rotation in Rotations)
        {
            lines.Add(
                FormattableString.Invariant($"1 on {rotation.FirstHoleOn}"),
                FormattableString.Invariant($"turned {rotation.TurnDegrees:0.00} deg, worst hole ")
                + $"{FigureUnit.FineMillimeter.Write(rotation.WorstOffMm, units)} off: {(rotation.Fits ? "fits" : "does not fit")}");
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build(PartsSources.Geometry, Clearance.Citation);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    internal double PlayMm => Clearance.RadialPlayMm + GrainMm;

    /// <summary>How far the worst hole is off at a turn for the pairs of one rotation.</summary>
    internal double OffMm(int shift, double turnRad)
    {
        if (Location == CoverLocation.Free)
        {
            return CoverShiftMath.LeastOffMm(Block.AnglesRad, Cover.AnglesRad, shift, Block.RadiusMm, Cover.RadiusMm, turnRad);
        }

        double worst = 0;
        for (int i = 0; i < Cover.HoleCount; i++)
        {
            worst = Math.Max(worst, Math.Abs(BoltPatternMath.LeftOver(Block.AnglesRad, Cover.AnglesRad, shift, turnRad, i)));
        }

        return BoltPatternMath.DistanceMm(Block.RadiusMm, Cover.RadiusMm, worst);
    }

    private System.Collections.ObjectModel.ReadOnlyCollection<CoverRotation> All(double[] cover, bool isFaceDown)
    {
        CoverRotation[] rotations = new CoverRotation[cover.Length];
        for (int shift = 0; shift < rotations.Length; shift++)
        {
            rotations[shift] = Rotation(cover, shift, isFaceDown);
        }

        return Array.AsReadOnly(rotations);
    }

    private CoverRotation Rotation(double[] cover, int shift, bool isFaceDown)
    {
        (double[] block, double rb, double rc) = (Block.AnglesRad, Block.RadiusMm, Cover.RadiusMm);
        double turn = BoltPatternMath.BestTurnRad(block, cover, shift, out double half);
        double off = BoltPatternMath.DistanceMm(rb, rc, half);
        if (Location == CoverLocation.Centered)
        {
            bool goes = off <= PlayMm;
            double play = goes ? Math.Max(0, BoltPatternMath.AngleRad(rb, rc, Clearance.RadialPlayMm) - half) : 0;
            return new(block, cover, shift, isFaceDown, turn, off, play, goes);
        }

        turn = CoverShiftMath.BestTurnRad(block, cover, shift, rb, rc, turn, half + (0.01 * Degree), out off);
        bool fits = off <= PlayMm;
        double Play(int way) => CoverShiftMath.PlayRad(block, cover, shift, rb, rc, turn, Clearance.RadialPlayMm, way);
        return new(block, cover, shift, isFaceDown, turn, off, fits ? Math.Min(Play(1), Play(-1)) : 0, fits);
    }

    private IEnumerable<Finding> Judge()
    {
        Figure play = Figure.Of("play", Clearance.RadialPlayMm, FigureUnit.FineMillimeter);
        if (Rotations.Count == 0)
        {
            yield return FitRules.HoleCountDiffers.On(
                "cover",
                Figure.Of("cover holes", Cover.HoleCount, FigureUnit.Number),
                Figure.Of("block holes", Block.HoleCount, FigureUnit.Number));
            yield break;
        }

        CoverRotation best = Best.Value;
        int faceDown = FaceDown.Count(rotation => rotation.Fits);
        if (Math.Abs(Block.RadiusMm - Cover.RadiusMm) > PlayMm && !Fits)
        {
            yield return FitRules.CircleDiffers.On(
                "cover",
                Figure.Of("cover radius", Cover.RadiusMm, FigureUnit.FineMillimeter),
                Figure.Of("block radius", Block.RadiusMm, FigureUnit.FineMillimeter),
                play);
        }
        else if (!Fits)
        {
            yield return faceDown > 0
                ? FitRules.FitsOnlyFaceDown.On("cover", Figure.Of("on", FaceDown.First(rotation => rotation.Fits).FirstHoleOn, FigureUnit.Number))
                : FitRules.FitsNowhere.On(
                    "cover",
                    Figure.Of("hole", best.WorstHole, FigureUnit.Number),
                    Figure.Of("off", best.WorstOffMm, FigureUnit.FineMillimeter),
                    play);
            yield break;
        }

        if (FirstHoleOn is null && Fitting.Count > 1)
        {
            yield return FitRules.FitsSeveralWays.On("cover", Figure.Of("count", Fitting.Count, FigureUnit.Number));
        }

        foreach (CoverRotation wrong in FirstHoleOn is null ? [] : Fitting.Where(rotation => rotation.FirstHoleOn != FirstHoleOn))
        {
            double turn = BoltPatternMath.Positive(wrong.TurnRad - Rotations[FirstHoleOn!.Value - 1].TurnRad) / Degree;
            yield return FitRules.AdmitsWrongFit.On(
                "cover",
                Figure.Of("on", wrong.FirstHoleOn, FigureUnit.Number),
                Figure.Of("turn", turn, FigureUnit.Degree),
                Figure.Of("off", wrong.WorstOffMm, FigureUnit.FineMillimeter),
                play);
        }

        if (faceDown > 0)
        {
            yield return FitRules.FitsFaceDownToo.On("cover", Figure.Of("count", faceDown, FigureUnit.Number));
        }
    }
}
