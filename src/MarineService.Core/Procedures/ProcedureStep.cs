using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Procedures;

/// <summary>One thing to do, what must be done before it, what it takes, what can hurt, and what proves it.</summary>
/// <remarks>Built by With methods; each returns a copy.</remarks>
public sealed partial class ProcedureStep
{
    private ProcedureStep(string id, string text) => (Id, Text) = (id, text);

    private ProcedureStep(ProcedureStep other)
        : this(other.Id, other.Text)
    {
        (Why, Predecessors, Acts, Condition, ConditionHolds) = (other.Why, other.Predecessors, other.Acts, other.Condition, other.ConditionHolds);
        (Tools, Consumables, Cautions, HoldPoints) = (other.Tools, other.Consumables, other.Cautions, other.HoldPoints);
        (Minutes, Expires, Work, Item) = (other.Minutes, other.Expires, other.Work, other.Item);
        (Opens, Closes, Includes, Decides) = (other.Opens, other.Closes, other.Includes, other.Decides);
    }

    /// <summary>Its name within the visit; steps of one name in several procedures are the same step.</summary>
    public string Id { get; }

    /// <summary>What to do.</summary>
    public string Text { get; }

    /// <summary>Why it stands where it stands, or null.</summary>
    public string? Why { get; private set; }

    /// <summary>The ids of the steps that must be done before it.</summary>
    public IReadOnlyList<string> Predecessors { get; private set; } = [];

    /// <summary>What it does to the boat that an order can make harmful, in this order.</summary>
    public IReadOnlyList<StepAct> Acts { get; private set; } = [];

    /// <summary>The circumstance that decides whether it is needed, or null when it always is.</summary>
    public Circumstance? Condition { get; private set; }

    /// <summary>Whether it is needed when <see cref="Condition"/> holds, rather than when it does not.</summary>
    public bool ConditionHolds { get; private set; } = true;

    /// <summary>The tools that it takes.</summary>
    public IReadOnlyList<Tool> Tools { get; private set; } = [];

    /// <summary>What it uses up.</summary>
    public IReadOnlyList<string> Consumables { get; private set; } = [];

    /// <summary>What can hurt, the gravest first.</summary>
    public IReadOnlyList<Caution> Cautions { get; private set; } = [];

    /// <summary>What must be proved before anything that follows may start.</summary>
    public IReadOnlyList<HoldPoint> HoldPoints { get; private set; } = [];

    /// <summary>The time that it takes, or null when it is not stated.</summary>
    public Duration? Time => Minutes > 0 ? Duration.FromMinutes(Minutes) : null;

    /// <summary>Whether it has to be done again on another day while something still rests on it: a level, a sniff, a tag.</summary>
    public bool Expires { get; private set; }

    /// <summary>What it does to <see cref="Item"/>.</summary>
    public StepWork Work { get; private set; }

    /// <summary>The item that it inspects or replaces, or null.</summary>
    public string? Item { get; private set; }

    /// <summary>The access that it opens, such as "engine box"; null when none.</summary>
    public string? Opens { get; private set; }

    /// <summary>The access that it closes; null when none.</summary>
    public string? Closes { get; private set; }

    /// <summary>The circumstance that it settles: found when one of its hold points fails, ruled out when all pass. Null when none.</summary>
    public Circumstance? Decides { get; private set; }

    /// <summary>The ids of steps that were joined into this one.</summary>
    public IReadOnlyList<string> Includes { get; private set; } = [];

    internal double Minutes { get; private set; }

    /// <summary>A step without predecessors.</summary>
    /// <param name="id">Its name; not blank.</param>
    /// <param name="text">What to do; not blank.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An argument is blank.</exception>
    public static ProcedureStep Of(string id, string text) => new(Guard.NotBlank(id), Guard.NotBlank(text));

    /// <summary>Whether it is needed.</summary>
    /// <param name="circumstances">What is known.</param>
    /// <returns>Null when its condition is not known.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="circumstances"/> is null.</exception>
    public bool? IsNeeded(Circumstances circumstances)
    {
        Guard.NotNull(circumstances);
        return Condition is not Circumstance condition ? true
            : circumstances[condition] is bool holds ? holds == ConditionHolds
            : null;
    }

    /// <summary>Id and text.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Id}: {Text}";
}
