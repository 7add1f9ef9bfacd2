using MarineService.Core.Internal;
using MarineService.Core.Parts;

namespace MarineService.Core.Jobs;

/// <summary>What somebody reports of one kind of loose part: how many went back on, how many were renewed, and whether the old ones are in the hand.</summary>
/// <remarks>Built by With methods; each returns a copy. The card has counted off already what its data sheet says comes off.</remarks>
public sealed class TallyLine
{
    private TallyLine(string name, string place, int putBack, int captiveWashers) => (Name, Place, PutBack, CaptiveWashers) = (name, place, putBack, captiveWashers);

    private TallyLine(TallyLine other)
        : this(other.Name, other.Place, other.PutBack, other.CaptiveWashers) =>
        (Renewed, OldInHand, TakenOff) = (other.Renewed, other.OldInHand, other.TakenOff);

    /// <summary>What it is, by the name that the card has for it.</summary>
    public string Name { get; }

    /// <summary>Where it belongs, by the name that the card has for the place.</summary>
    public string Place { get; }

    /// <summary>How many old ones went back on; 0 or more.</summary>
    public int PutBack { get; }

    /// <summary>How many captive washers were seen on those; 0 or more.</summary>
    public int CaptiveWashers { get; }

    /// <summary>How many were replaced by new ones; 0 or more.</summary>
    public int Renewed { get; private set; }

    /// <summary>Of how many of those the old one is in the hand; the others are still somewhere.</summary>
    public int OldInHand { get; private set; }

    /// <summary>How many came off beyond those that the card knows of; 0 or more.</summary>
    public int TakenOff { get; private set; }

    /// <summary>How many went back on.</summary>
    /// <param name="name">What it is, as the card calls it; not blank.</param>
    /// <param name="place">Where it belongs, as the card calls it; not blank.</param>
    /// <param name="putBack">How many old ones went back on; from 0 to 10,000.</param>
    /// <param name="captiveWashers">How many captive washers were seen on them; from 0 to 40,000. Those that nobody counted stay on the tally.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public static TallyLine Of(string name, string place, int putBack, int captiveWashers = 0) => new(
        Guard.NotBlank(name), Guard.NotBlank(place), Guard.InRange(putBack, 0, LooseParts.Most, "parts"), Guard.InRange(captiveWashers, 0, LooseParts.MostWashers, "washers"));

    /// <summary>A copy with how many were replaced by new ones, their captive washers with them.</summary>
    /// <param name="count">How many; from 0 to 10,000.</param>
    /// <param name="oldInHand">Of how many of those the old one is in the hand; from 0 to <paramref name="count"/>.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public TallyLine WithRenewed(int count, int oldInHand) => new(this)
    {
        Renewed = Guard.InRange(count, 0, LooseParts.Most, "parts"),
        OldInHand = Guard.InRange(oldInHand, 0, count, "parts"),
    };

    /// <summary>A copy with how many came off beyond those that the card knows of.</summary>
    /// <param name="count">How many; from 0 to 10,000.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public TallyLine WithTakenOff(int count) => new(this) { TakenOff = Guard.InRange(count, 0, LooseParts.Most, "parts") };

    /// <summary>Name, place and counts.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"{Name} of {Place}: {PutBack} back{(Renewed == 0 ? string.Empty : $", {Renewed} new")}{(TakenOff == 0 ? string.Empty : $", {TakenOff} more off")}");

    internal LooseParts AddTo(LooseParts tally, LoosePart part)
    {
        tally = TakenOff > 0 ? tally.TakenOff(part, TakenOff) : tally;
        tally = PutBack > 0 || CaptiveWashers > 0 ? tally.PutBackCounted(part, PutBack, CaptiveWashers) : tally;
        tally = OldInHand > 0 ? tally.Renewed(part, OldInHand, oldInHand: true) : tally;
        return Renewed > OldInHand ? tally.Renewed(part, Renewed - OldInHand, oldInHand: false) : tally;
    }
}
