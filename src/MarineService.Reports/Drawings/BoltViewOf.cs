using MarineService.Core.Parts;

namespace MarineService.Reports.Drawings;

/// <summary>What one view of a bolt pattern shows.</summary>
internal sealed class BoltViewOf
{
    internal BoltViewOf(string caption, CoverRotation rotation)
        : this(caption, rotation, rotation.TurnDegrees, rotation.Fits, rotation.WorstHole, null)
    {
    }

    internal BoltViewOf(string caption, CoverRotation? rotation, double turnDegrees, bool allGoIn, int? worstHole, double? turnToFitDegrees) =>
        (Caption, Rotation, TurnDegrees, AllGoIn, WorstHole, TurnToFitDegrees) = (caption, rotation, turnDegrees, allGoIn, worstHole, turnToFitDegrees);

    internal string Caption { get; }

    /// <summary>Which holes are paired; null when the numbers of holes differ.</summary>
    internal CoverRotation? Rotation { get; }

    internal double TurnDegrees { get; }

    internal bool AllGoIn { get; }

    internal int? WorstHole { get; }

    internal double? TurnToFitDegrees { get; }
}
