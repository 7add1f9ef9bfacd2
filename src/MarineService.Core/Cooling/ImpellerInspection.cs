using MarineService.Core.Internal;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>What was seen on an impeller on a day: each vane, hub and rubber, and the pieces that were found.</summary>
/// <remarks>A vane that is not recorded counts as not looked at, never as whole. Never changes: each With gives a new inspection.</remarks>
/// <example><code>
/// ImpellerAssessment judged = ImpellerInspection.Of(6, new LocalDate(2026, 10, 4))
///     .With(VaneRecord.Cracked(2), VaneRecord.Torn(3, 0.4))
///     .WithOthersWhole()
///     .Judge();
/// </code></example>
public sealed class ImpellerInspection : ServiceFact
{
    private const double SetLimitDegrees = 10;
    private const int ServiceLimitMonths = 36;
    private const int MostMonths = 600;

    private ImpellerInspection(
        int newVanes, LocalDate date, EngineHours? dial, LocalDate? fittedOn, IReadOnlyList<VaneRecord> vanes, IReadOnlyList<ImpellerFault> faults, IReadOnlyList<FoundPiece> pieces)
        : base(date, dial) =>
        (NewVanes, FittedOn, Vanes, Faults, Pieces) = (newVanes, fittedOn, vanes, faults, pieces);

    /// <summary>How many vanes a new one has.</summary>
    public int NewVanes { get; }

    /// <summary>When this impeller was fitted; null when it is not known.</summary>
    public LocalDate? FittedOn { get; }

    /// <summary>The vanes that were looked at, in the order of their numbers.</summary>
    public IReadOnlyList<VaneRecord> Vanes { get; }

    /// <summary>What was seen beside single vanes.</summary>
    public IReadOnlyList<ImpellerFault> Faults { get; }

    /// <summary>The pieces that were found.</summary>
    public IReadOnlyList<FoundPiece> Pieces { get; }

    /// <summary>The vane account.</summary>
    public VaneAccount Account => new(NewVanes, Vanes, Pieces);

    /// <summary>Begins an inspection.</summary>
    /// <param name="newVanes">How many vanes a new one has, from 3 to 24.</param>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>An inspection without observations.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ImpellerInspection Of(int newVanes, LocalDate date, EngineHours? dial = null) =>
        new(Guard.InRange(newVanes, Impeller.FewestVanes, Impeller.MostVanes, "vanes"), Guard.Date(date), dial, null, [], [], []);

    /// <summary>A copy that says when the impeller was fitted.</summary>
    /// <param name="date">From 1900 to the day of the inspection.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside its range.</exception>
    public ImpellerInspection WithFittedOn(LocalDate date) =>
        Guard.Date(date) <= Date
            ? new(NewVanes, Date, Dial, date, Vanes, Faults, Pieces)
            : throw new ArgumentOutOfRangeException(nameof(date), date, "Must be on or before the day of the inspection.");

    /// <summary>A copy with more vanes.</summary>
    /// <param name="vanes">What was seen; each number once, none above the number of vanes.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="vanes"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">A vane is recorded already, or there is no such vane.</exception>
    public ImpellerInspection With(params VaneRecord[] vanes)
    {
        List<VaneRecord> all = [.. Vanes, .. Guard.Items(vanes)];
        return Fault(NewVanes, all) is string fault
            ? throw new ArgumentException(fault, nameof(vanes))
            : new(NewVanes, Date, Dial, FittedOn, all.OrderBy(vane => vane.Number).ToList().AsReadOnly(), Faults, Pieces);
    }

    /// <summary>A copy in which every vane that is not recorded yet was looked at and is whole.</summary>
    /// <returns>The copy.</returns>
    public ImpellerInspection WithOthersWhole() =>
        With([.. Enumerable.Range(1, NewVanes).Where(number => Vanes.All(vane => vane.Number != number)).Select(VaneRecord.Whole)]);

    /// <summary>A copy with what was seen beside single vanes.</summary>
    /// <param name="faults">What was seen; said twice counts once.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="faults"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not defined.</exception>
    public ImpellerInspection With(params ImpellerFault[] faults)
    {
        foreach (ImpellerFault fault in Guard.NotNull(faults))
        {
            Guard.Defined(fault, nameof(faults));
        }

        return new(NewVanes, Date, Dial, FittedOn, Vanes, Array.AsReadOnly<ImpellerFault>([.. Faults.Concat(faults).Distinct().OrderBy(fault => fault)]), Pieces);
    }

    /// <summary>A copy with pieces that were found; together no more than the vanes of a new impeller.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pieces"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">The pieces are more than all vanes together.</exception>
    public ImpellerInspection WithFound(params FoundPiece[] pieces)
    {
        IReadOnlyList<FoundPiece> all = Array.AsReadOnly<FoundPiece>([.. Pieces, .. Guard.Items(pieces)]);
        return MorePiecesThanVanes(NewVanes, all) is string fault
            ? throw new ArgumentException(fault, nameof(pieces))
            : new(NewVanes, Date, Dial, FittedOn, Vanes, Faults, all);
    }

    /// <summary>What to do with this impeller, and which rule decides.</summary>
    /// <param name="setLimit">From which bend on a set vane fails, from 1 to 90 degrees; 10 when left out (project choice; practice says 10 to 15).</param>
    /// <param name="serviceLimitMonths">After how many months in service it is replaced whatever it looks like, from 1 to 600 months.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    public ImpellerAssessment Judge(Angle? setLimit = null, int serviceLimitMonths = ServiceLimitMonths) =>
        new(
            this,
            setLimit is Angle given ? Guard.InRange(Canonical.Degrees(given), 1, 90, "degrees", nameof(setLimit)) : SetLimitDegrees,
            Guard.InRange(serviceLimitMonths, 1, MostMonths, "months"));

    /// <summary>Date and account.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Account.ToString();

    internal static string? Fault(int newVanes, IReadOnlyList<VaneRecord> vanes)
    {
        HashSet<int> seen = [];
        foreach (VaneRecord vane in vanes)
        {
            if (vane.Number > newVanes)
            {
                return FormattableString.Invariant($"There is no vane {vane.Number}: a new impeller has {newVanes}.");
            }

            if (!seen.Add(vane.Number))
            {
                return FormattableString.Invariant($"Vane {vane.Number} is recorded twice.");
            }
        }

        return null;
    }

    internal static string? MorePiecesThanVanes(int newVanes, IReadOnlyList<FoundPiece> pieces)
    {
        int found = pieces.Sum(piece => piece.Thousandths);
        return found * 2 > (newVanes * 2 * VaneRecord.WholeVane) + pieces.Count
            ? FormattableString.Invariant($"{found / (double)VaneRecord.WholeVane} vanes were found, and a new impeller has {newVanes}.")
            : null;
    }

    internal override ServiceFact WithoutDial() => new ImpellerInspection(NewVanes, Date, null, FittedOn, Vanes, Faults, Pieces);
}
