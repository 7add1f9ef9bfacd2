namespace MarineService.Core.Parts;

/// <summary>A hole of the cover and the hole of the block that it goes on.</summary>
public sealed class HolePair
{
    internal HolePair(int coverHole, int blockHole, double turnOffDegrees) =>
        (CoverHole, BlockHole, TurnOffDegrees) = (coverHole, blockHole, turnOffDegrees);

    /// <summary>The number of the hole in the cover, counted from 1.</summary>
    public int CoverHole { get; }

    /// <summary>The number of the hole in the block, counted from 1.</summary>
    public int BlockHole { get; }

    /// <summary>How far round the hole in the block lies from the hole in the cover; positive counter-clockwise [degrees].</summary>
    public double TurnOffDegrees { get; }

    /// <summary>Both numbers: "cover 2 on block 5".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"cover {CoverHole} on block {BlockHole}");
}
