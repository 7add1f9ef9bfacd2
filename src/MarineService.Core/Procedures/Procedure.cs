using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Procedures;

/// <summary>Steps of a piece of work and what must precede what. Steps with no path between them may be done in any order.</summary>
/// <remarks>Immutable. It says what is usual; the engine's own manual outranks it.</remarks>
public sealed class Procedure
{
    /// <summary>The most steps that a procedure may have.</summary>
    public const int MostSteps = 1000;

    private StepGraph? _graph;
    private IReadOnlyList<Finding>? _findings;

    private Procedure(string id, string title, IReadOnlyList<ProcedureStep> steps, Citation source, Circumstances circumstances) =>
        (Id, Title, Steps, Source, Circumstances) = (id, title, steps, source, circumstances);

    /// <summary>Its name, such as "oil-and-impeller".</summary>
    public string Id { get; }

    /// <summary>What it is in words.</summary>
    public string Title { get; }

    /// <summary>The steps as listed.</summary>
    public IReadOnlyList<ProcedureStep> Steps { get; }

    /// <summary>Where it comes from.</summary>
    public Citation Source { get; }

    /// <summary>What is known of the boat, and was used to leave steps out.</summary>
    public Circumstances Circumstances { get; }

    /// <summary>The circumstances that decide about steps and are not known, apart from those that the work itself will show.</summary>
    public IReadOnlyList<Circumstance> OpenQuestions =>
    [
        .. Steps.Where(step => step.Condition is not null).Select(step => step.Condition!.Value).Distinct()
            .Where(condition => !Steps.Any(step => step.Decides == condition)).OrderBy(condition => condition),
    ];

    /// <summary>What is wrong with it: circles, unknown steps, steps that can never be done, orders that it allows and that would do harm.</summary>
    public IReadOnlyList<Finding> Findings => _findings ??= ProcedureCheck.Of(this);

    /// <summary>Whether it can be worked: nothing found at Act or Stop.</summary>
    public bool IsSound => Findings.All(finding => finding.Severity < Severity.Act);

    internal StepGraph Graph => _graph ??= new StepGraph(Steps);

    /// <summary>A procedure.</summary>
    /// <param name="id">Its name; not blank.</param>
    /// <param name="title">What it is in words; not blank.</param>
    /// <param name="steps">Its steps, from 1 to 1,000; ids distinct. What is wrong with their order is told by <see cref="Findings"/>.</param>
    /// <param name="source">Where it comes from; given by the caller when null.</param>
    /// <returns>The procedure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/>, <paramref name="title"/> or <paramref name="steps"/> is null.</exception>
    /// <exception cref="ArgumentException">A text is blank, there are no steps or too many, an item is null, or an id is used twice.</exception>
    public static Procedure Of(string id, string title, IEnumerable<ProcedureStep> steps, Citation? source = null)
    {
        IReadOnlyList<ProcedureStep> all = Guard.Items(steps);
        if (all.Count is 0 or > MostSteps)
        {
            throw new ArgumentException(FormattableString.Invariant($"Must hold 1 to {MostSteps} steps, and holds {all.Count}."), nameof(steps));
        }

        Names.Distinct(all.Select(step => step.Id), nameof(steps));
        return new(Guard.NotBlank(id), Guard.NotBlank(title), all, source ?? Citation.GivenByCaller, Circumstances.Unknown);
    }

    /// <summary>All of several procedures in one visit.</summary>
    /// <remarks>
    /// Steps of one id, openings and closings of one access, and looks at what is replaced anyway are joined; cautions and hold points
    /// are kept. Edges are added where an order would do harm. The order in which the procedures are given does not matter.
    /// </remarks>
    /// <param name="id">The name of the whole; not blank.</param>
    /// <param name="title">What it is in words; not blank.</param>
    /// <param name="procedures">One or more, each free of circles and unknown steps.</param>
    /// <returns>The whole; its findings say when no harmless order exists.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A text is blank, there is no procedure, an item is null, one has circles or unknown steps (they are named), two say opposite things
    /// of the boat, or the whole has more than 1,000 steps.
    /// </exception>
    public static Procedure Merge(string id, string title, IEnumerable<Procedure> procedures)
    {
        IReadOnlyList<Procedure> all = Guard.Items(procedures);
        if (all.Count == 0)
        {
            throw new ArgumentException("Must hold at least one procedure.", nameof(procedures));
        }

        foreach (Procedure procedure in all)
        {
            procedure.RefuseUnworkable(nameof(procedures));
        }

        IReadOnlyList<ProcedureStep> steps = ProcedureMerge.Of(all, out Circumstances circumstances);
        return new(Guard.NotBlank(id), Guard.NotBlank(title), steps, all.Select(one => one.Source).Distinct().Count() == 1 ? all[0].Source : Citation.CommonPractice, circumstances);
    }

    /// <summary>A step by its id, or by the id of a step that was joined into it.</summary>
    /// <param name="id">The id.</param>
    /// <returns>The step, or null when there is none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    public ProcedureStep? Find(string id)
    {
        int index = IndexOf(Guard.NotNull(id));
        return index < 0 ? null : Steps[index];
    }

    /// <summary>The same work on a boat of which more is known: steps that are not needed are left out, and what waited for them waits for what they waited for.</summary>
    /// <param name="circumstances">What is known; what is not known leaves its steps in, with their condition.</param>
    /// <returns>The shorter procedure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="circumstances"/> is null.</exception>
    /// <exception cref="ArgumentException">It says the opposite of what this procedure was made for, or the procedure has circles or unknown steps.</exception>
    public Procedure For(Circumstances circumstances)
    {
        Guard.NotNull(circumstances);
        RefuseUnworkable(nameof(circumstances));
        Circumstances all = Circumstances.Join(circumstances, nameof(circumstances));
        return WithoutSteps(step => step.IsNeeded(all) == false, step => step.Condition is not null && step.IsNeeded(all) == true ? step.WithoutCondition() : step) is { Count: > 0 } steps
            ? new(Id, Title, steps, Source, all)
            : throw new ArgumentException("No step is needed in these circumstances.", nameof(circumstances));
    }

    /// <summary>Some of the steps; what waited for one that is left out waits for what that one waited for.</summary>
    internal Procedure Only(string id, string title, params string[] ids) =>
        new(id, title, WithoutSteps(step => !ids.Contains(step.Id), step => step), Source, Circumstances);

    /// <summary>One harmless order: as listed where the edges leave it open, what was opened last closed first.</summary>
    /// <returns>Every step once.</returns>
    /// <exception cref="InvalidOperationException">The procedure has circles or unknown steps; they are named.</exception>
    public IReadOnlyList<ProcedureStep> InOrder()
    {
        if (Broken() is Finding finding)
        {
            throw new InvalidOperationException(finding.Message(DisplayUnits.Metric));
        }

        return Graph.InOrder();
    }

    /// <summary>Whether one step must always come before another.</summary>
    /// <param name="first">The id of the one.</param>
    /// <param name="then">The id of the other.</param>
    /// <returns>True when a path of edges leads from the one to the other.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="KeyNotFoundException">There is no such step.</exception>
    public bool MustPrecede(string first, string then) => Graph.Precedes(Known(Guard.NotNull(first)), Known(Guard.NotNull(then)));

    /// <summary>The time of all steps one after the other, as far as it is stated.</summary>
    /// <returns>Zero when no step states its time.</returns>
    public Duration TotalTime() => Duration.FromMinutes(Steps.Sum(step => step.Minutes));

    /// <summary>The title.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Title;

    private System.Collections.ObjectModel.ReadOnlyCollection<ProcedureStep> WithoutSteps(Func<ProcedureStep, bool> isLeftOut, Func<ProcedureStep, ProcedureStep> kept)
    {
        Dictionary<string, string[]> left = new(StringComparer.Ordinal);
        ProcedureStep?[] steps = new ProcedureStep?[Steps.Count];
        foreach (int index in Graph.Sorted)
        {
            ProcedureStep step = Steps[index];
            string[]? before = left.Count > 0 && step.Predecessors.Any(left.ContainsKey)
                ? [.. step.Predecessors.SelectMany(id => left.TryGetValue(id, out string[]? over) ? over : [id]).Distinct(StringComparer.Ordinal)]
                : null;
            if (isLeftOut(step))
            {
                left[step.Id] = before ?? [.. step.Predecessors];
            }
            else
            {
                steps[index] = before is null ? kept(step) : kept(step).AfterOnly(before);
            }
        }

        return Array.AsReadOnly<ProcedureStep>([.. steps.OfType<ProcedureStep>()]);
    }

    internal int IndexOf(string id)
    {
        int index = Graph.IndexOf(id);
        for (int i = 0; index < 0 && i < Steps.Count; i++)
        {
            index = Steps[i].Includes.Contains(id) ? i : -1;
        }

        return index;
    }

    internal void RefuseUnworkable(string argument)
    {
        if (Broken() is Finding finding)
        {
            throw new ArgumentException(finding.Message(DisplayUnits.Metric), argument);
        }
    }

    internal void RefuseUnsound(string argument)
    {
        if (Findings.FirstOrDefault(finding => finding.Severity >= Severity.Act) is Finding finding)
        {
            throw new ArgumentException(finding.Message(DisplayUnits.Metric), argument);
        }
    }

    private Finding? Broken() => Graph.Sorted.Count == Steps.Count
        ? null
        : Findings.FirstOrDefault(finding => finding.Rule == ProcedureRules.Circle || finding.Rule == ProcedureRules.UnknownStep);

    private int Known(string id) => IndexOf(id) is int index && index >= 0 ? index : throw new KeyNotFoundException($"'{Id}' has no step '{id}'.");
}
