namespace MarineService.Core.Procedures;

/// <summary>Looks in a graph for orders that the edges allow and that would do harm. Who acts, who makes right and who undoes is gathered once.</summary>
/// <remarks>
/// An act is safe in every order exactly when a step before it makes things right, and each step that undoes this comes after the
/// act, or before such a step that itself comes before the act. If it did not, an order could put the undoing step last.
/// </remarks>
internal sealed class HarmSearch
{
    private readonly StepGraph _graph;

    internal HarmSearch(StepGraph graph, Circumstances circumstances)
    {
        _graph = graph;
        uint[] sets = [.. graph.Steps.Select(step => StepEffects.Sets(step.Acts))];
        uint[] clears = [.. graph.Steps.Select(step => StepEffects.Clears(step.Acts))];
        int[] acting = [.. Enumerable.Range(0, graph.Count).Where(index => graph.Steps[index].Acts.Count > 0)];
        List<Watch> watches = [];
        foreach (HarmRule rule in HarmRule.All)
        {
            int[] actors = !rule.AppliesIn(circumstances) ? []
                : [.. acting.Where(index => graph.Steps[index].Acts.Contains(rule.Act) && !MakesItself(graph.Steps[index], rule))];
            if (actors.Length > 0)
            {
                uint bit = StepEffects.Bit(rule.State);
                watches.Add(new Watch(
                    rule,
                    actors,
                    [.. acting.Where(index => ((rule.MustHold ? sets : clears)[index] & bit) != 0 && IsSure(graph.Steps[index], rule, circumstances))],
                    [.. acting.Where(index => ((rule.MustHold ? clears : sets)[index] & bit) != 0)]));
            }
        }

        Watches = watches;
    }

    /// <summary>The rules that matter in this graph, as listed.</summary>
    internal IReadOnlyList<Watch> Watches { get; }

    /// <summary>Every step whose act an order could put where it does harm, with the step that could come right before; -1 when nothing makes it right.</summary>
    internal IEnumerable<(int Step, int Undoing)> HarmsOf(Watch watch)
    {
        foreach (int step in watch.Actors)
        {
            if (watch.Rule.MustHold && !MadeRight(watch, -1, step))
            {
                yield return (step, -1);
            }

            foreach (int undoing in watch.Undoing)
            {
                if (undoing != step && !_graph.Precedes(step, undoing) && !MadeRight(watch, undoing, step))
                {
                    yield return (step, undoing);
                }
            }
        }
    }

    /// <summary>Whether an earlier act of the same step makes things right: a sniff before the switch.</summary>
    internal static bool MakesItself(ProcedureStep step, HarmRule rule)
    {
        uint bit = StepEffects.Bit(rule.State);
        foreach (StepAct act in step.Acts)
        {
            if (act == rule.Act)
            {
                return false;
            }

            if (((rule.MustHold ? StepEffects.Sets([act]) : StepEffects.Clears([act])) & bit) != 0)
            {
                return true;
            }
        }

        return false;
    }

    private bool MadeRight(Watch watch, int after, int before)
    {
        foreach (int making in watch.Making)
        {
            if (_graph.Precedes(making, before) && (after < 0 || _graph.Precedes(after, making)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a step is done wherever the rule matters: it is always needed, or needed in the rule's own circumstance.</summary>
    private static bool IsSure(ProcedureStep step, HarmRule rule, Circumstances circumstances) =>
        step.IsNeeded(circumstances) == true || (step.Condition is not null && step.Condition == rule.OnlyIf && step.ConditionHolds);

    /// <summary>A rule with the steps that act under it, those that make its state right, and those that undo it.</summary>
    internal sealed class Watch(HarmRule rule, int[] actors, int[] making, int[] undoing)
    {
        internal HarmRule Rule { get; } = rule;

        internal int[] Actors { get; } = actors;

        internal int[] Making { get; } = making;

        internal int[] Undoing { get; } = undoing;
    }
}
