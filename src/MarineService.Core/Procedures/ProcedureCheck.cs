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
            HarmSearch search = new(graph, procedure.Circumstances);
            findings.AddRange(search.Watches.SelectMany(watch => search.HarmsOf(watch).Select(harm => Harmful(graph, watch.Rule, harm.Step, harm.Undoing))));
            findings.AddRange(OpenAccesses(graph));
        }

        return findings.AsReadOnly();
    }

    private static IEnumerable<int> Where(StepGraph graph, Func<ProcedureStep, bool> test) =>
        Enumerable.Range(0, graph.Count).Where(index => test(graph.Steps[index]));

    private static Finding Harmful(StepGraph graph, HarmRule rule, int step, int undoing) => ProcedureRules.HarmfulOrder.On(
        Subject(graph.Steps[step]),
        Figure.Of("when", undoing >= 0
            ? $"right after '{graph.Steps[undoing].Id}'"
            : $"though nothing before it sees to this: {InWords.Of(rule.State)}"),
        Figure.Of("harm", rule.Harm),
        Figure.Of("source", rule.Source.ToString()));

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
