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
        List<Actor> acting = [];
        ulong acts = 0;
        for (int step = 0; step < graph.Count; step++)
        {
            if (graph.Steps[step].Acts.Count > 0)
            {
                Actor actor = new(step, graph.Steps[step], circumstances);
                acting.Add(actor);
                acts |= actor.Acts;
            }
        }

        List<Watch> watches = [];
        foreach (HarmRule rule in HarmRule.All)
        {
            if ((acts & Actor.Bit(rule.Act)) != 0 && rule.AppliesIn(circumstances) && Watch.Of(rule, acting) is Watch watch)
            {
                watches.Add(watch);
            }
        }

        Watches = watches;
    }

    /// <summary>The rules that matter in this graph, as listed.</summary>
    internal IReadOnlyList<Watch> Watches { get; }

    /// <summary>Every step whose act an order could put where it does harm, with the step that could come right before; -1 when nothing makes it right.</summary>
    /// <remarks>Edges may be added between two of its answers: what an edge keeps apart is not told any more.</remarks>
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
        if (step.Acts.Count == 1)
        {
            return false;
        }

        uint bit = StepEffects.Bit(rule.State);
        foreach (StepAct act in step.Acts)
        {
            if (act == rule.Act)
            {
                return false;
            }

            if (((rule.MustHold ? StepEffects.Set(act) : StepEffects.Cleared(act)) & bit) != 0)
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

    /// <summary>A rule with the steps that act under it, those that make its state right, and those that undo it.</summary>
    internal sealed class Watch
    {
        private Watch(HarmRule rule) => Rule = rule;

        internal HarmRule Rule { get; }

        internal List<int> Actors { get; } = [];

        internal List<int> Making { get; } = [];

        internal List<int> Undoing { get; } = [];

        /// <summary>Null when no step acts under the rule.</summary>
        internal static Watch? Of(HarmRule rule, List<Actor> acting)
        {
            Watch watch = new(rule);
            uint state = StepEffects.Bit(rule.State);
            ulong act = Actor.Bit(rule.Act);
            foreach (Actor actor in acting)
            {
                if ((actor.Acts & act) != 0 && !MakesItself(actor.Step, rule))
                {
                    watch.Actors.Add(actor.Number);
                }

                if (((rule.MustHold ? actor.Sets : actor.Clears) & state) != 0 && actor.IsSureFor(rule))
                {
                    watch.Making.Add(actor.Number);
                }

                if (((rule.MustHold ? actor.Clears : actor.Sets) & state) != 0)
                {
                    watch.Undoing.Add(actor.Number);
                }
            }

            return watch.Actors.Count > 0 ? watch : null;
        }
    }

    /// <summary>A step that acts: what it does as bits, and whether it is sure to be done.</summary>
    internal sealed class Actor
    {
        private readonly bool _isNeeded;

        internal Actor(int number, ProcedureStep step, Circumstances circumstances)
        {
            (Number, Step, Sets, Clears) = (number, step, StepEffects.Sets(step.Acts), StepEffects.Clears(step.Acts));
            _isNeeded = step.IsNeeded(circumstances) == true;
            for (int i = 0; i < step.Acts.Count; i++)
            {
                Acts |= Bit(step.Acts[i]);
            }
        }

        internal int Number { get; }

        internal ProcedureStep Step { get; }

        internal uint Sets { get; }

        internal uint Clears { get; }

        internal ulong Acts { get; }

        internal static ulong Bit(StepAct act) => 1UL << (int)act;

        /// <summary>Whether it is done wherever the rule matters: it is always needed, or needed in the rule's own circumstance.</summary>
        internal bool IsSureFor(HarmRule rule) => _isNeeded || (Step.Condition is not null && Step.Condition == rule.OnlyIf && Step.ConditionHolds);
    }
}
