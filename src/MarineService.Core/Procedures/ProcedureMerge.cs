namespace MarineService.Core.Procedures;

/// <summary>Joins the procedures of one visit. Nothing in it depends on the order in which they come.</summary>
internal static class ProcedureMerge
{
    internal static IReadOnlyList<ProcedureStep> Of(IReadOnlyList<Procedure> procedures, out Circumstances circumstances)
    {
        circumstances = procedures.Aggregate(Circumstances.Unknown, (known, one) => known.Join(one.Circumstances, nameof(procedures)));
        StepGraph graph = new(StepUnion.Of(procedures));
        if (graph.Sorted.Count < graph.Count)
        {
            return graph.Steps;
        }

        graph = ReplaceBeatsInspect(graph);
        KeepApart(graph, new HarmSearch(graph, circumstances));
        CloseInReverse(graph);
        return graph.InOrder();
    }

    /// <summary>A look at what the visit replaces is done when it is replaced; what waited for the look waits for the new part.</summary>
    private static StepGraph ReplaceBeatsInspect(StepGraph graph)
    {
        string[] looks = [.. graph.Steps.Where(step => step.Work == StepWork.Inspect).Select(step => step.Id).OrderBy(id => id, StringComparer.Ordinal)];
        foreach (string id in looks)
        {
            ProcedureStep look = graph.Steps[graph.IndexOf(id)];
            ProcedureStep? fit = graph.Steps.Where(step => step.Work == StepWork.Replace && step.Item == look.Item)
                .OrderBy(step => step.Id, StringComparer.Ordinal).FirstOrDefault();

            // Where something has to come between the two, both stay.
            if (fit is not null && !HasBetween(graph, graph.IndexOf(id), graph.IndexOf(fit.Id)) && !HasBetween(graph, graph.IndexOf(fit.Id), graph.IndexOf(id)))
            {
                graph = new StepGraph([.. graph.Steps.Where(step => step != look).Select(step => step == fit
                    ? fit.Absorb(look).Including([look.Id, .. look.Includes])
                        .AfterOnly([.. fit.Predecessors.Union(look.Predecessors, StringComparer.Ordinal).Where(before => before != fit.Id && before != look.Id)])
                    : step.Predecessors.Contains(id)
                        ? step.AfterOnly([.. step.Predecessors.Select(before => before == look.Id ? fit.Id : before).Distinct(StringComparer.Ordinal)])
                        : step)]);
            }
        }

        return graph;
    }

    private static bool HasBetween(StepGraph graph, int first, int then)
    {
        foreach (int before in graph.PredecessorsOf(then))
        {
            if (graph.Precedes(first, before))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Adds the edges that keep harmful orders out, wherever there is one to add.</summary>
    /// <remarks>
    /// What nothing in the visit makes right again leaves one choice only, so that it goes first. One pass is enough: an edge more can
    /// only take harms away, and a pair that no edge could keep apart is not kept apart by edges that come later.
    /// </remarks>
    private static void KeepApart(StepGraph graph, HarmSearch search)
    {
        foreach (HarmSearch.Watch watch in search.Watches.OrderBy(watch => watch.Making.Count == 0 ? 0 : 1))
        {
            foreach ((int step, int undoing) in search.HarmsOf(watch))
            {
                if (undoing >= 0)
                {
                    Separate(graph, watch, step, undoing);
                }
                else
                {
                    Prepare(graph, watch, step);
                }
            }
        }
    }

    private static void Separate(StepGraph graph, HarmSearch.Watch watch, int step, int undoing)
    {
        foreach (int again in watch.Making)
        {
            // First choice: what makes it right again comes after what undid it already, and before the act.
            if (again != step && graph.Precedes(undoing, again) && !graph.Precedes(step, again) && graph.TryAdd(again, step))
            {
                return;
            }
        }

        if (!graph.Precedes(undoing, step) && graph.TryAdd(step, undoing))
        {
            return;
        }

        foreach (int again in watch.Making)
        {
            if (again != step && again != undoing && !graph.Precedes(again, undoing) && !graph.Precedes(step, again)
                && graph.TryAdd(undoing, again) && graph.TryAdd(again, step))
            {
                return;
            }
        }
    }

    private static void Prepare(StepGraph graph, HarmSearch.Watch watch, int step)
    {
        foreach (int one in watch.Making)
        {
            if (one != step && !graph.Precedes(one, step) && graph.TryAdd(one, step))
            {
                return;
            }
        }
    }

    /// <summary>Of two accesses that are opened one after the other, the later one is closed first.</summary>
    private static void CloseInReverse(StepGraph graph)
    {
        List<(int Open, int Close)> accesses = [];
        for (int open = 0; open < graph.Count; open++)
        {
            if (graph.Steps[open].Opens is string access && ClosingOf(graph, access) is int close && close >= 0)
            {
                accesses.Add((open, close));
            }
        }

        foreach ((int open, int close) in accesses)
        {
            foreach ((int later, int sooner) in accesses)
            {
                if (graph.Precedes(open, later) && !graph.Precedes(close, later))
                {
                    graph.TryAdd(sooner, close);
                }
            }
        }
    }

    private static int ClosingOf(StepGraph graph, string access)
    {
        for (int i = 0; i < graph.Count; i++)
        {
            if (graph.Steps[i].Closes == access)
            {
                return i;
            }
        }

        return -1;
    }
}
