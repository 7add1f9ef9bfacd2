namespace MarineService.Core.Procedures;

/// <summary>Finds what is wrong with a procedure as it is written, whatever order is taken.</summary>
internal static class ProcedureCheck
{
    internal static IReadOnlyList<Finding> Of(Procedure procedure)
    {
        StepGraph graph = procedure.Graph;
        List<Finding> findings = [];
        IReadOnlyList<string> circle = graph.Circle();
        if (circle.Count > 0)
        {
            findings.Add(ProcedureRules.Circle.On($"procedure '{procedure.Id}'", Figure.Of("circle", string.Join(" -> ", circle))));
        }

        HashSet<int> reached = [.. graph.Sorted];
        for (int i = 0; i < graph.Count; i++)
        {
            ProcedureStep step = procedure.Steps[i];
            findings.AddRange(step.Predecessors.Where(id => graph.IndexOf(id) < 0)
                .Select(id => ProcedureRules.UnknownStep.On(Subject(step), Figure.Of("missing step", id))));
            if (!reached.Contains(i))
            {
                findings.Add(ProcedureRules.Unreachable.On(Subject(step)));
            }
        }

        if (findings.Count == 0)
        {
            findings.AddRange(HarmfulOrders(graph, procedure.Circumstances).Select(one => Harmful(graph, one)));
            findings.AddRange(OpenAccesses(graph));
        }

        return findings.AsReadOnly();
    }

    /// <summary>Every step whose act an allowed order could put where it does harm, with the step that could come in between.</summary>
    /// <remarks>
    /// An act is safe in every order exactly when a step before it makes things right, and each step that undoes this comes after the
    /// act, or before such a step that itself comes before the act. If it did not, an order could put the undoing step last.
    /// </remarks>
    internal static IEnumerable<(int Step, HarmRule Rule, int Undoing)> HarmfulOrders(StepGraph graph, Circumstances circumstances)
    {
        foreach (HarmRule rule in HarmRule.All)
        {
            if (!rule.AppliesIn(circumstances))
            {
                continue;
            }

            uint bit = StepEffects.Bit(rule.State);
            int[] making = [.. Where(graph, step => IsSure(step, rule, circumstances) && (Bits(step, rule.MustHold) & bit) != 0)];
            int[] undoing = [.. Where(graph, step => (Bits(step, !rule.MustHold) & bit) != 0)];
            foreach (int step in Where(graph, step => step.Acts.Contains(rule.Act)))
            {
                // What the step itself does before this act does not count against it, nor for it.
                if (rule.MustHold && !making.Any(one => graph.Precedes(one, step)) && !MakesItself(graph.Steps[step], rule))
                {
                    yield return (step, rule, -1);
                }

                foreach (int one in undoing)
                {
                    if (one != step && !graph.Precedes(step, one)
                        && !making.Any(again => graph.Precedes(one, again) && graph.Precedes(again, step)) && !MakesItself(graph.Steps[step], rule))
                    {
                        yield return (step, rule, one);
                    }
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

    internal static uint Bits(ProcedureStep step, bool sets) => sets ? StepEffects.Sets(step.Acts) : StepEffects.Clears(step.Acts);

    /// <summary>Whether a step is done wherever the rule matters: it is always needed, or needed in the rule's own circumstance.</summary>
    internal static bool IsSure(ProcedureStep step, HarmRule rule, Circumstances circumstances) =>
        step.IsNeeded(circumstances) == true || (step.Condition is not null && step.Condition == rule.OnlyIf && step.ConditionHolds);

    private static IEnumerable<int> Where(StepGraph graph, Func<ProcedureStep, bool> test) =>
        Enumerable.Range(0, graph.Count).Where(index => test(graph.Steps[index]));

    private static Finding Harmful(StepGraph graph, (int Step, HarmRule Rule, int Undoing) one) => ProcedureRules.HarmfulOrder.On(
        Subject(graph.Steps[one.Step]),
        Figure.Of("when", one.Undoing >= 0
            ? $"right after '{graph.Steps[one.Undoing].Id}'"
            : $"though nothing before it sees to it that {one.Rule.State} holds"),
        Figure.Of("harm", one.Rule.Harm),
        Figure.Of("source", one.Rule.Source.ToString()));

    private static IEnumerable<Finding> OpenAccesses(StepGraph graph)
    {
        IEnumerable<string> accesses = graph.Steps.SelectMany(step => new[] { step.Opens, step.Closes }).OfType<string>().Distinct(StringComparer.Ordinal);
        foreach (string access in accesses)
        {
            int[] opening = [.. Where(graph, step => step.Opens == access)];
            int[] closing = [.. Where(graph, step => step.Closes == access)];
            bool whole = opening.Length == 1 && closing.Length == 1 && graph.Precedes(opening[0], closing[0]);
            if (!whole)
            {
                int first = opening.Concat(closing).Min();
                yield return ProcedureRules.AccessLeftOpen.On(Subject(graph.Steps[first]), Figure.Of("access", access));
            }
        }
    }

    private static string Subject(ProcedureStep step) => $"step '{step.Id}'";
}
