namespace MarineService.Core.Procedures;

/// <summary>Joins the procedures of one visit. Nothing in it depends on the order in which they come.</summary>
internal static class ProcedureMerge
{
    internal static IReadOnlyList<ProcedureStep> Of(IReadOnlyList<Procedure> procedures, out Circumstances circumstances)
    {
        circumstances = procedures.Aggregate(Circumstances.Unknown, (known, one) => known.Join(one.Circumstances, nameof(procedures)));
        Dictionary<string, string> joined = JoinedIds(procedures);
        List<ProcedureStep> steps = Unite(procedures, joined);
        if (steps.Count > Procedure.MostSteps)
        {
            throw new ArgumentException(FormattableString.Invariant($"Together they have {steps.Count} steps; {Procedure.MostSteps} are the most."), nameof(procedures));
        }

        steps = ReplaceBeatsInspect(steps);
        StepGraph graph = new(steps);
        if (graph.Sorted.Count < graph.Count)
        {
            return steps.AsReadOnly();
        }

        HarmSearch search = new(graph, circumstances);
        KeepApart(graph, search);
        CloseInReverse(graph);
        KeepApart(graph, search);
        ProcedureStep[] whole = [.. Enumerable.Range(0, graph.Count).Select(i => steps[i].After(graph.PredecessorsOf(i).Select(before => steps[before].Id)))];
        StepGraph ordered = new(whole);
        return Array.AsReadOnly<ProcedureStep>([.. ordered.Sorted.Select(index => whole[index])]);
    }

    /// <summary>Steps of one id are one step; so are all openings, and all closings, of one access.</summary>
    private static Dictionary<string, string> JoinedIds(IReadOnlyList<Procedure> procedures)
    {
        Dictionary<string, string> name = new(StringComparer.Ordinal);
        IEnumerable<IGrouping<string, ProcedureStep>> accesses = procedures.SelectMany(one => one.Steps)
            .Where(step => step.Opens is not null || step.Closes is not null)
            .GroupBy(step => step.Opens is null ? $"closes {step.Closes}" : $"opens {step.Opens}", StringComparer.Ordinal);
        foreach (IGrouping<string, ProcedureStep> access in accesses)
        {
            string first = access.Select(step => step.Id).OrderBy(id => id, StringComparer.Ordinal).First();
            foreach (ProcedureStep step in access)
            {
                name[step.Id] = first;
            }
        }

        return name;
    }

    private static List<ProcedureStep> Unite(IReadOnlyList<Procedure> procedures, Dictionary<string, string> joined)
    {
        string Name(string id) => joined.TryGetValue(id, out string? other) ? other : id;
        Dictionary<string, double> place = new(StringComparer.Ordinal);
        foreach (Procedure procedure in procedures)
        {
            for (int i = 0; i < procedure.Steps.Count; i++)
            {
                string name = Name(procedure.Steps[i].Id);
                double here = (double)i / procedure.Steps.Count;
                place[name] = place.TryGetValue(name, out double before) ? Math.Min(before, here) : here;
            }
        }

        List<ProcedureStep> steps = [];
        foreach (IGrouping<string, ProcedureStep> same in procedures.SelectMany(one => one.Steps).GroupBy(step => Name(step.Id), StringComparer.Ordinal))
        {
            ProcedureStep[] parts = same.Skip(1).Any() ? [.. same.OrderBy(step => step.Id == same.Key ? 0 : 1).ThenBy(Signature, StringComparer.Ordinal)] : [.. same];
            ProcedureStep whole = parts.Skip(1).Aggregate(parts[0], (all, one) => all.Absorb(one));
            bool always = parts.Any(part => part.Condition != parts[0].Condition || part.ConditionHolds != parts[0].ConditionHolds);
            whole = (always ? whole.WithoutCondition() : whole)
                .Including(parts.Select(part => part.Id).Where(id => id != same.Key).Concat(parts.SelectMany(part => part.Includes)))
                .After(parts.SelectMany(part => part.Predecessors).Select(Name).Where(id => id != same.Key).Distinct(StringComparer.Ordinal)
                    .OrderBy(id => id, StringComparer.Ordinal));
            steps.Add(whole);
        }

        return [.. steps.OrderBy(step => place[step.Id]).ThenBy(step => step.Id, StringComparer.Ordinal)];
    }

    /// <summary>A look at what the visit replaces is done when it is replaced; what waited for the look waits for the new part.</summary>
    private static List<ProcedureStep> ReplaceBeatsInspect(List<ProcedureStep> steps)
    {
        foreach (string id in steps.Where(step => step.Work == StepWork.Inspect).Select(step => step.Id).OrderBy(id => id, StringComparer.Ordinal).ToArray())
        {
            ProcedureStep look = steps.Find(step => step.Id == id)!;
            ProcedureStep? fit = steps.Where(step => step.Work == StepWork.Replace && step.Item == look.Item)
                .OrderBy(step => step.Id, StringComparer.Ordinal).FirstOrDefault();
            if (fit is null)
            {
                continue;
            }

            List<ProcedureStep> without = [.. steps.Where(step => step != look).Select(step => step == fit
                ? fit.Absorb(look).Including([look.Id, .. look.Includes]).After(fit.Predecessors.Union(look.Predecessors, StringComparer.Ordinal).Where(before => before != fit.Id && before != look.Id))
                : step.After(step.Predecessors.Select(before => before == look.Id ? fit.Id : before).Distinct(StringComparer.Ordinal)))];

            // Where the look has to come before and the new part after, both stay.
            steps = new StepGraph(without).Sorted.Count == without.Count ? without : steps;
        }

        return steps;
    }

    /// <summary>Adds the edges that keep harmful orders out, as long as there is one to add.</summary>
    /// <remarks>What nothing in the visit makes right again leaves one choice only, so that it goes first.</remarks>
    private static void KeepApart(StepGraph graph, HarmSearch search)
    {
        HarmSearch.Watch[] watches = [.. search.Watches.OrderBy(watch => watch.Making.Length == 0 ? 0 : 1)];
        while (Array.Exists(watches, watch => search.HarmsOf(watch).Any(harm => harm.Undoing >= 0
            ? Separate(graph, watch, harm.Step, harm.Undoing)
            : Prepare(graph, watch, harm.Step))))
        {
        }
    }

    private static bool Separate(StepGraph graph, HarmSearch.Watch watch, int step, int undoing)
    {
        foreach (int again in watch.Making)
        {
            // First choice: what makes it right again comes after what undid it already, and before the act.
            if (again != step && graph.Precedes(undoing, again) && !graph.Precedes(step, again) && graph.TryAdd(again, step))
            {
                return true;
            }
        }

        if (!graph.Precedes(undoing, step) && graph.TryAdd(step, undoing))
        {
            return true;
        }

        foreach (int again in watch.Making)
        {
            if (again != step && again != undoing && !graph.Precedes(again, undoing) && !graph.Precedes(step, again)
                && graph.TryAdd(undoing, again) && graph.TryAdd(again, step))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Prepare(StepGraph graph, HarmSearch.Watch watch, int step) =>
        Array.Exists(watch.Making, one => one != step && !graph.Precedes(one, step) && graph.TryAdd(one, step));

    /// <summary>Of two accesses that are opened one after the other, the later one is closed first.</summary>
    private static void CloseInReverse(StepGraph graph)
    {
        List<(int Open, int Close)> accesses = [];
        for (int open = 0; open < graph.Count; open++)
        {
            int close = graph.Steps[open].Opens is string access
                ? Enumerable.Range(0, graph.Count).Where(index => graph.Steps[index].Closes == access).Append(-1).First()
                : -1;
            if (close >= 0)
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

    /// <summary>All that a step says, so that two different ones never tie.</summary>
    private static string Signature(ProcedureStep step) => string.Join(
        "\u001f",
        [
            step.Id, step.Text, step.Why ?? "", $"{step.Condition}{step.ConditionHolds}", $"{step.Work}{step.Item}", $"{step.Decides}", step.Opens ?? "", step.Closes ?? "",
            .. step.Acts.Select(act => act.ToString()), .. step.Tools.Select(tool => tool.ToString()), .. step.Consumables,
        ]);
}
