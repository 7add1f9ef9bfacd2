namespace MarineService.Core.Procedures;

/// <summary>The steps of several procedures under one name each: those of one id, and all openings, and all closings, of one access.</summary>
internal sealed class StepUnion
{
    private readonly string _id;
    private readonly List<(ProcedureStep Step, bool IsPractice)> _parts;
    private readonly List<string> _predecessors;
    private double _place;

    private StepUnion(string id, double place) => (_id, _place, _parts, _predecessors) = (id, place, [], []);

    /// <summary>Each step once, as far into the work as it first comes in any of the procedures.</summary>
    internal static IReadOnlyList<ProcedureStep> Of(IReadOnlyList<Procedure> procedures)
    {
        Dictionary<string, string> joined = JoinedIds(procedures);
        Dictionary<string, StepUnion> unions = new(StringComparer.Ordinal);
        foreach (Procedure procedure in procedures)
        {
            int count = procedure.Steps.Count;
            bool isPractice = procedure.Source.Standing == CitationStanding.CommonPractice;
            for (int i = 0; i < count; i++)
            {
                ProcedureStep step = procedure.Steps[i];
                string id = NameOf(step.Id, joined);
                double place = (double)i / count;
                if (!unions.TryGetValue(id, out StepUnion? union))
                {
                    unions.Add(id, union = new StepUnion(id, place));
                }

                union.Add(step, isPractice, place, joined);
            }
        }

        if (unions.Count > Procedure.MostSteps)
        {
            throw new ArgumentException(FormattableString.Invariant($"Together they have {unions.Count} steps; {Procedure.MostSteps} are the most."), nameof(procedures));
        }

        StepUnion[] ordered = [.. unions.Values];
        Array.Sort(ordered, (one, other) => one._place.CompareTo(other._place) is int by && by != 0 ? by : string.CompareOrdinal(one._id, other._id));
        return Array.AsReadOnly(Array.ConvertAll(ordered, union => union.Whole()));
    }

    private static string NameOf(string id, Dictionary<string, string> joined) => joined.Count > 0 && joined.TryGetValue(id, out string? other) ? other : id;

    /// <summary>The steps that open or close an access, each with the first id of all that do the same.</summary>
    private static Dictionary<string, string> JoinedIds(IReadOnlyList<Procedure> procedures)
    {
        List<(string Id, string Access)> all = [];
        foreach (Procedure procedure in procedures)
        {
            foreach (ProcedureStep step in procedure.Steps)
            {
                if (step.Opens is not null || step.Closes is not null)
                {
                    all.Add((step.Id, step.Opens is null ? $"closes {step.Closes}" : $"opens {step.Opens}"));
                }
            }
        }

        // A name passes from id to access and on to the next id until nobody knows a lesser one.
        Dictionary<string, string> ofId = new(StringComparer.Ordinal);
        Dictionary<string, string> ofAccess = new(StringComparer.Ordinal);
        bool hasChanged = true;
        while (hasChanged)
        {
            hasChanged = false;
            foreach ((string id, string access) in all)
            {
                string least = Lesser(ofId.TryGetValue(id, out string? one) ? one : id, ofAccess.TryGetValue(access, out string? other) ? other : id);
                hasChanged |= one != least || other != least;
                (ofId[id], ofAccess[access]) = (least, least);
            }
        }

        return ofId;
    }

    private static string Lesser(string one, string other) => string.CompareOrdinal(one, other) <= 0 ? one : other;

    private void Add(ProcedureStep step, bool isPractice, double place, Dictionary<string, string> joined)
    {
        _place = Math.Min(_place, place);
        foreach (string before in step.Predecessors)
        {
            string id = NameOf(before, joined);
            if (id != _id && !_predecessors.Contains(id))
            {
                _predecessors.Add(id);
            }
        }

        // A step that several procedures share is mostly the same in all of them.
        int same = _parts.FindIndex(part => part.Step.SaysTheSameAs(step));
        if (same < 0)
        {
            _parts.Add((step, isPractice));
        }
        else if (!isPractice)
        {
            _parts[same] = (step, false);
        }
    }

    private ProcedureStep Whole()
    {
        ProcedureStep whole = _parts[0].Step;
        if (_parts.Count > 1)
        {
            _parts.Sort(ByWeight);
            ProcedureStep[] parts = [.. _parts.Select(part => part.Step)];
            whole = parts.Skip(1).Aggregate(parts[0], (all, one) => all.Absorb(one));
            whole = Array.Exists(parts, part => part.Condition != parts[0].Condition || part.ConditionHolds != parts[0].ConditionHolds) ? whole.WithoutCondition() : whole;
            string[] others = [.. parts.Select(part => part.Id).Where(id => id != _id).Concat(parts.SelectMany(part => part.Includes))];
            whole = others.Length > 0 ? whole.Including(others) : whole;
        }

        _predecessors.Sort(StringComparer.Ordinal);
        return IsSame(_predecessors, whole.Predecessors) ? whole : whole.AfterOnly([.. _predecessors]);
    }

    private static bool IsSame(List<string> one, IReadOnlyList<string> other)
    {
        bool isSame = one.Count == other.Count;
        for (int i = 0; isSame && i < one.Count; i++)
        {
            isSame = one[i] == other[i];
        }

        return isSame;
    }

    /// <summary>The step that gave the name first; of such steps one that a manual gives before one of common practice.</summary>
    private int ByWeight((ProcedureStep Step, bool IsPractice) one, (ProcedureStep Step, bool IsPractice) other)
    {
        int by = (one.Step.Id == _id ? 0 : 1) - (other.Step.Id == _id ? 0 : 1);
        by = by != 0 ? by : one.IsPractice.CompareTo(other.IsPractice);
        return by != 0 ? by : ByContent(one.Step, other.Step);
    }

    /// <summary>By what the steps say, so that two that say different things never tie.</summary>
    private static int ByContent(ProcedureStep one, ProcedureStep other)
    {
        int by = string.CompareOrdinal(one.Id, other.Id);
        by = by != 0 ? by : string.CompareOrdinal(one.Text, other.Text);
        by = by != 0 ? by : string.CompareOrdinal(one.Why, other.Why);
        by = by != 0 ? by : Nullable.Compare(one.Condition, other.Condition);
        by = by != 0 ? by : one.ConditionHolds.CompareTo(other.ConditionHolds);
        return by != 0 ? by : string.CompareOrdinal(Rest(one), Rest(other));
    }

    private static string Rest(ProcedureStep step) => string.Join(
        "\u001f",
        [
            $"{step.Work}{step.Item}", $"{step.Decides}", step.Opens ?? "", step.Closes ?? "",
            .. step.Acts.Select(act => act.ToString()), .. step.Tools.Select(tool => tool.ToString()), .. step.Consumables,
        ]);
}
