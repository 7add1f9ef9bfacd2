namespace MarineService.Core.Parts;

/// <summary>One way round in which a cover may be offered up: which hole goes on which, at which turn, and how well it fits there.</summary>
public sealed class CoverRotation
{
    private const double Degree = Math.PI / 180;

    private readonly double[] _block;
    private readonly double[] _cover;
    private readonly int _shift;
    private readonly double _turnRad;
    private HolePair[]? _pairs;

    internal CoverRotation(double[] block, double[] cover, int shift, bool isFaceDown, double turnRad, double offMm, double playRad, bool fits)
    {
        (_block, _cover, _shift, _turnRad) = (block, cover, shift, turnRad);
        (IsFaceDown, WorstOffMm, PlayDegrees, Fits) = (isFaceDown, offMm, playRad / Degree, fits);
    }

    /// <summary>The number of the block's hole on which the cover's hole 1 goes.</summary>
    public int FirstHoleOn => ((IndexOf(0) + _shift) % _block.Length) + 1;

    /// <summary>Whether the cover lies with its outer face down.</summary>
    public bool IsFaceDown { get; }

    /// <summary>How far the cover is turned from the drawing, counter-clockwise seen from outside, from 0 to 360 [degrees].</summary>
    public double TurnDegrees => BoltPatternMath.Positive(_turnRad) / Degree;

    /// <summary>How far the worst hole is off at this turn, the best for these pairs [mm].</summary>
    public double WorstOffMm { get; }

    /// <summary>Whether every screw goes in.</summary>
    public bool Fits { get; }

    /// <summary>How far the cover can still be turned either way with every screw going in; 0 when it does not fit [degrees].</summary>
    public double PlayDegrees { get; }

    /// <summary>The hole of the cover that decides, counted from 1.</summary>
    public int WorstHole => Pairs.OrderByDescending(pair => Math.Round(Math.Abs(pair.TurnOffDegrees), 9)).First().CoverHole;

    /// <summary>Which hole of the cover goes on which hole of the block, in the order of the cover's holes.</summary>
    public IReadOnlyList<HolePair> Pairs => Array.AsReadOnly(_pairs ??= Pair());

    internal double TurnRad => _turnRad;

    /// <summary>Turn, how far off, and whether it fits.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"hole 1 on {FirstHoleOn}{(IsFaceDown ? ", face down" : "")}, turned {TurnDegrees:0.00} deg, ")
        + (Fits
            ? FormattableString.Invariant($"fits: worst hole {WorstOffMm:0.000} mm off")
            : FormattableString.Invariant($"does not fit: hole {WorstHole} is {WorstOffMm:0.00} mm off"));

    // Mirrored, the cover's holes are met in the opposite order.
    private int IndexOf(int hole) => IsFaceDown ? _cover.Length - 1 - hole : hole;

    private HolePair[] Pair()
    {
        HolePair[] pairs = new HolePair[_cover.Length];
        for (int hole = 0; hole < pairs.Length; hole++)
        {
            int i = IndexOf(hole);
            pairs[hole] = new(
                hole + 1,
                ((i + _shift) % _block.Length) + 1,
                BoltPatternMath.LeftOver(_block, _cover, _shift, _turnRad, i) / Degree);
        }

        return pairs;
    }
}
