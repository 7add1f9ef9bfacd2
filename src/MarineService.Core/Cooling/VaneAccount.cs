namespace MarineService.Core.Cooling;

/// <summary>New vanes less what is still on the hub less the pieces found: must be nothing before the pump is closed.</summary>
/// <remarks>
/// Counted in whole thousandths of a vane, so that the order of the pieces does not matter. Each share may have been rounded by half a
/// thousandth, and so much is forgiven for each.
/// </remarks>
public sealed class VaneAccount
{
    private readonly int _missing;
    private readonly int _found;
    private readonly int _rounded;

    internal VaneAccount(int newVanes, IReadOnlyList<VaneRecord> vanes, IReadOnlyList<FoundPiece> pieces)
    {
        (NewVanes, NotLookedAt) = (newVanes, newVanes - vanes.Count);
        _missing = vanes.Sum(vane => vane.MissingThousandths);
        _found = pieces.Sum(piece => piece.Thousandths);
        _rounded = vanes.Count(vane => vane.State == VaneState.Torn) + pieces.Count;
    }

    /// <summary>How many vanes a new impeller has.</summary>
    public int NewVanes { get; }

    /// <summary>How many vanes nobody looked at.</summary>
    public int NotLookedAt { get; }

    /// <summary>What is gone from the vanes, counted in vanes.</summary>
    public double MissingVanesRatio => _missing / (double)VaneRecord.WholeVane;

    /// <summary>What was found, counted in vanes.</summary>
    public double FoundVanesRatio => _found / (double)VaneRecord.WholeVane;

    /// <summary>What is still to be found, counted in vanes; negative when more was found than is missing; not known while vanes were not looked at.</summary>
    public Answer<double> OutstandingVanesRatio => NotLookedAt > 0
        ? Answer.NotKnown<double>(FormattableString.Invariant($"A look at each of the {NewVanes} vanes; {NotLookedAt} are not recorded."))
        : Answer.Known((_missing - _found) / (double)VaneRecord.WholeVane);

    /// <summary>True when every vane was looked at and nothing is left to be found.</summary>
    public bool IsClosed => NotLookedAt == 0 && Math.Abs(_missing - _found) * 2 <= _rounded;

    /// <summary>True when something is known to be left to be found.</summary>
    public bool IsShort => (_missing - _found) * 2 > _rounded;

    /// <summary>True when more was found than is known to be missing.</summary>
    public bool IsOver => NotLookedAt == 0 && (_found - _missing) * 2 > _rounded;

    /// <summary>The account in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{NewVanes} new, {MissingVanesRatio:0.###} gone, {FoundVanesRatio:0.###} found: ")
        + (IsClosed ? "closed" : OutstandingVanesRatio.IsKnown ? FormattableString.Invariant($"{OutstandingVanesRatio.Value:0.###} outstanding")
            : FormattableString.Invariant($"{NotLookedAt} not looked at"));
}
