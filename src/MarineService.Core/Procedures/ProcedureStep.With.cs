using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Procedures;

/// <content>What a step is built from.</content>
public sealed partial class ProcedureStep
{
    internal const double LeastMinutes = 1 / 60.0;
    internal const double MostMinutes = 2880;

    /// <summary>A copy that must wait for more steps.</summary>
    /// <param name="steps">Their ids; none blank. Ids that it waits for already are not added twice.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="steps"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">An item is null or blank.</exception>
    public ProcedureStep After(params string[] steps)
    {
        foreach (string step in Guard.Items(steps))
        {
            Guard.NotBlank(step, nameof(steps));
        }

        return new(this) { Predecessors = Array.AsReadOnly<string>([.. Predecessors.Union(steps, StringComparer.Ordinal)]) };
    }

    /// <summary>A copy that does more to the boat.</summary>
    /// <param name="acts">What it does, in this order.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="acts"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An act is not defined.</exception>
    public ProcedureStep Does(params StepAct[] acts)
    {
        foreach (StepAct act in Guard.NotNull(acts))
        {
            Guard.Defined(act, nameof(acts));
        }

        return new(this) { Acts = Array.AsReadOnly<StepAct>([.. Acts.Union(acts)]) };
    }

    /// <summary>A copy that is needed only in a certain circumstance.</summary>
    /// <param name="circumstance">Which one decides.</param>
    /// <param name="holds">Whether it is needed when the circumstance holds, rather than when it does not.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circumstance"/> is not defined.</exception>
    public ProcedureStep When(Circumstance circumstance, bool holds = true) =>
        new(this) { Condition = Guard.Defined(circumstance), ConditionHolds = holds };

    /// <summary>A copy whose hold points settle a circumstance: the work goes on either way, along another path.</summary>
    /// <param name="circumstance">Found when a hold point fails, ruled out when all pass.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circumstance"/> is not defined.</exception>
    public ProcedureStep Deciding(Circumstance circumstance) => new(this) { Decides = Guard.Defined(circumstance) };

    /// <summary>A copy with the reason for its place.</summary>
    /// <param name="why">Not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="why"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="why"/> is blank.</exception>
    public ProcedureStep Because(string why) => new(this) { Why = Guard.NotBlank(why) };

    /// <summary>A copy with more tools.</summary>
    /// <param name="tools">The tools.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tools"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public ProcedureStep With(params Tool[] tools) => new(this) { Tools = Array.AsReadOnly<Tool>([.. Tools.Union(Guard.Items(tools))]) };

    /// <summary>A copy that uses more things up.</summary>
    /// <param name="consumables">What it uses up; none blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="consumables"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null or blank.</exception>
    public ProcedureStep Using(params string[] consumables)
    {
        foreach (string consumable in Guard.Items(consumables))
        {
            Guard.NotBlank(consumable, nameof(consumables));
        }

        return new(this) { Consumables = Array.AsReadOnly<string>([.. Consumables.Union(consumables, StringComparer.Ordinal)]) };
    }

    /// <summary>A copy with more cautions.</summary>
    /// <param name="cautions">What can hurt.</param>
    /// <returns>The copy, the gravest first.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cautions"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public ProcedureStep With(params Caution[] cautions) => new(this) { Cautions = GravestFirst(Cautions.Union(Guard.Items(cautions))) };

    /// <summary>A copy with more hold points.</summary>
    /// <param name="points">What must be proved; a second one of the same id and content is not added.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="points"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, or another hold point has the same id.</exception>
    public ProcedureStep With(params HoldPoint[] points)
    {
        HoldPoint[] all = [.. HoldPoints.Union(Guard.Items(points))];
        Names.Distinct(all.Select(point => point.Id), nameof(points));
        return new(this) { HoldPoints = Array.AsReadOnly(all) };
    }

    /// <summary>A copy with the time that it takes.</summary>
    /// <param name="time">From 1 second to 48 hours.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public ProcedureStep Taking(Duration time) => TakingMinutes(Guard.InRange(Canonical.Seconds(time) / 60, LeastMinutes, MostMinutes, "min", nameof(time)));

    /// <summary>A copy that has to be done again on another day while something still rests on it.</summary>
    /// <returns>The copy.</returns>
    public ProcedureStep ExpiringOvernight() => new(this) { Expires = true };

    /// <summary>A copy that looks at an item, and is needless in a visit that replaces the item.</summary>
    /// <param name="item">The item; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="item"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="item"/> is blank.</exception>
    public ProcedureStep Inspecting(string item) => new(this) { Work = StepWork.Inspect, Item = Guard.NotBlank(item) };

    /// <summary>A copy that fits a new item.</summary>
    /// <param name="item">The item; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="item"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="item"/> is blank.</exception>
    public ProcedureStep Replacing(string item) => new(this) { Work = StepWork.Replace, Item = Guard.NotBlank(item) };

    /// <summary>A copy that opens an access: a visit opens it once.</summary>
    /// <param name="access">The access, such as "engine box"; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="access"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="access"/> is blank.</exception>
    public ProcedureStep Opening(string access) => new(this) { Opens = Guard.NotBlank(access) };

    /// <summary>A copy that closes an access: a visit closes it once, in reverse order of opening.</summary>
    /// <param name="access">The access; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="access"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="access"/> is blank.</exception>
    public ProcedureStep Closing(string access) => new(this) { Closes = Guard.NotBlank(access) };

    internal ProcedureStep TakingMinutes(double minutes) => new(this) { Minutes = minutes };

    internal ProcedureStep WithoutCondition() => new(this) { Condition = null, ConditionHolds = true };

    /// <summary>A copy that waits for these steps and no others.</summary>
    internal ProcedureStep AfterOnly(string[] steps) => new(this) { Predecessors = Array.AsReadOnly(steps) };

    internal ProcedureStep Including(IEnumerable<string> ids) =>
        new(this) { Includes = Array.AsReadOnly<string>([.. Includes.Union(ids, StringComparer.Ordinal).OrderBy(id => id, StringComparer.Ordinal)]) };

    /// <summary>Whether it differs from another one in nothing but what it waits for.</summary>
    internal bool SaysTheSameAs(ProcedureStep other) =>
        Id == other.Id && Text == other.Text && Why == other.Why
        && Condition == other.Condition && ConditionHolds == other.ConditionHolds && Decides == other.Decides
        && Minutes.Equals(other.Minutes) && Expires == other.Expires && Work == other.Work && Item == other.Item
        && Opens == other.Opens && Closes == other.Closes
        && IsSame(Acts, other.Acts) && IsSame(Tools, other.Tools) && IsSame(Consumables, other.Consumables)
        && IsSame(Cautions, other.Cautions) && IsSame(HoldPoints, other.HoldPoints) && IsSame(Includes, other.Includes);

    private static IReadOnlyList<T> Joined<T>(IReadOnlyList<T> one, IReadOnlyList<T> other) =>
        IsSame(one, other) ? one : Array.AsReadOnly<T>([.. one.Union(other)]);

    private static System.Collections.ObjectModel.ReadOnlyCollection<Caution> GravestFirst(IEnumerable<Caution> cautions) => Array.AsReadOnly<Caution>(
        [.. cautions.OrderByDescending(caution => caution.Word).ThenBy(caution => caution.Text, StringComparer.Ordinal)]);

    private static bool IsSame<T>(IReadOnlyList<T> one, IReadOnlyList<T> other) => ReferenceEquals(one, other) || one.SequenceEqual(other);

    /// <summary>This step with all that another one of the visit brings; what only one of them can say is taken from this one.</summary>
    internal ProcedureStep Absorb(ProcedureStep other)
    {
        return new(this)
        {
            Acts = Joined(Acts, other.Acts),
            Tools = Joined(Tools, other.Tools),
            Consumables = Joined(Consumables, other.Consumables),
            Cautions = IsSame(Cautions, other.Cautions) ? Cautions : GravestFirst(Cautions.Union(other.Cautions)),
            HoldPoints = IsSame(HoldPoints, other.HoldPoints)
                ? HoldPoints
                : Array.AsReadOnly<HoldPoint>([.. HoldPoints.Union(other.HoldPoints).OrderBy(point => point.Id, StringComparer.Ordinal).ThenBy(point => point.ToString(), StringComparer.Ordinal)]),
            Minutes = Math.Max(Minutes, other.Minutes),
            Expires = Expires || other.Expires,
            Decides = Decides ?? other.Decides,
            Opens = Opens ?? other.Opens,
            Closes = Closes ?? other.Closes,
            Work = Work == StepWork.Other ? other.Work : Work,
            Item = Item ?? other.Item,
        };
    }
}
