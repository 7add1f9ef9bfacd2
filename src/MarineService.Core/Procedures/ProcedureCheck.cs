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

        if (graph.Sorted.Count < graph.Count)
        {
            findings.AddRange(NeverDone(graph));
            return findings.AsReadOnly();
        }

        HarmSearch search = new(graph, procedure.Circumstances);
        foreach (HarmSearch.Watch watch in search.Watches)
        {
            foreach ((int step, int undoing) in search.HarmsOf(watch))
            {
                findings.Add(Harmful(graph, watch.Rule, step, undoing));
            }
        }

        findings.AddRange(OpenAccesses(graph));
        return findings.AsReadOnly();
    }

    private static IEnumerable<Finding> NeverDone(StepGraph graph)
    {
        HashSet<int> reached = [.. graph.Sorted];
        for (int i = 0; i < graph.Count; i++)
        {
            ProcedureStep step = graph.Steps[i];
            foreach (string id in step.Predecessors.Where(id => graph.IndexOf(id) < 0))
            {
                yield return ProcedureRules.UnknownStep.On(Subject(step), Figure.Of("missing step", id));
            }

            if (!reached.Contains(i))
            {
                yield return ProcedureRules.Unreachable.On(Subject(step));
            }
        }
    }

    private static Finding Harmful(StepGraph graph, HarmRule rule, int step, int undoing) => ProcedureRules.HarmfulOrder.On(
        Subject(graph.Steps[step]),
        Figure.Of("when", undoing >= 0
            ? $"right after '{graph.Steps[undoing].Id}'"
            : $"though nothing before it sees to this: {InWords.Of(rule.State)}"),
        Figure.Of("harm", rule.Harm),
        Figure.Of("source", rule.Source.ToString()));

    private static IEnumerable<Finding> OpenAccesses(StepGraph graph)
    {
        int[] moving = [.. Enumerable.Range(0, graph.Count).Where(index => graph.Steps[index].Opens is not null || graph.Steps[index].Closes is not null)];
        IEnumerable<string> accesses = moving.SelectMany(index => new[] { graph.Steps[index].Opens, graph.Steps[index].Closes }).OfType<string>().Distinct(StringComparer.Ordinal);
        foreach (string access in accesses)
        {
            int[] opening = Array.FindAll(moving, index => graph.Steps[index].Opens == access);
            int[] closing = Array.FindAll(moving, index => graph.Steps[index].Closes == access);
            bool whole = opening.Length == 1 && closing.Length == 1 && graph.Precedes(opening[0], closing[0]);
            if (!whole)
            {
                int first = opening.Concat(closing).Min();
                yield return ProcedureRules.AccessLeftOpen.On(Subject(graph.Steps[first]), Figure.Of("access", access));
            }
        }
    }

    internal static string Subject(ProcedureStep step) => $"step '{step.Id}'";
}
