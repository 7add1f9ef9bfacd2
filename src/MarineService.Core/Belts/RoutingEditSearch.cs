namespace MarineService.Core.Belts;

/// <summary>Finds the fewest edits from one routing to another: a shortest path over the orders, guided by a bound that never overshoots.</summary>
/// <remarks>
/// An order is packed into one number, five bits a pulley: its place in the drive, and whether it has the wrong face. The crank is the
/// anchor and never moves. A bound on what is left: a wrong face needs one turn (or a removal, which then needs an insertion), a missing
/// pulley one insertion, a foreign one one removal; a swap can mend at most four neighbourhoods, an insertion two, a removal one.
/// </remarks>
internal sealed class RoutingEditSearch
{
    private const int Bits = 5;
    private const ulong Mask = (1UL << Bits) - 1;

    private readonly BeltDrive _drive;
    private readonly bool _crankTurned;
    private readonly BeltFace[] _rightFaces;
    private readonly bool[] _inTarget;
    private readonly int[] _target;
    private readonly ulong _start;
    private readonly Dictionary<ulong, Step> _best = [];
    private readonly List<Stack<ulong>> _open = [];

    internal RoutingEditSearch(BeltDrive drive, IReadOnlyList<RoutingStop> from, IReadOnlyList<RoutingStop> to)
    {
        _drive = drive;
        _rightFaces = new BeltFace[drive.Pulleys.Count];
        _inTarget = new bool[drive.Pulleys.Count];
        foreach (RoutingStop stop in to)
        {
            int pulley = drive.IndexOf(stop.PulleyName);
            (_rightFaces[pulley], _inTarget[pulley]) = (stop.Face, true);
        }

        // Both lists begin at the crank.
        _target = [.. to.Skip(1).Select(stop => drive.IndexOf(stop.PulleyName))];
        _crankTurned = from[0].Face != to[0].Face;
        for (int i = from.Count - 1; i > 0; i--)
        {
            int pulley = drive.IndexOf(from[i].PulleyName);
            bool wrong = _inTarget[pulley] && from[i].Face != _rightFaces[pulley];
            _start = (_start << Bits) | Token(pulley, wrong);
        }
    }

    internal IReadOnlyList<RoutingEdit> Find()
    {
        Reach(_start, 0, new Step(0, 0, RoutingEditKind.Insert, 0, 0));
        for (int cost = 0; cost < _open.Count; cost++)
        {
            while (_open[cost].Count > 0)
            {
                ulong order = _open[cost].Pop();
                Step step = _best[order];
                if (step.Done || step.Cost + Bound(order) != cost)
                {
                    continue;
                }

                if (IsTarget(order))
                {
                    return Written(order);
                }

                _best[order] = step with { Done = true };
                Expand(order, step.Cost);
            }
        }

        throw new InvalidOperationException("Every order can be reached by insertions and removals.");
    }

    private static ulong Token(int pulley, bool wrongFace) => ((ulong)pulley << 1) | (wrongFace ? 1UL : 0);

    private static int Length(ulong order)
    {
        int length = 0;
        for (; order != 0; order >>= Bits)
        {
            length++;
        }

        return length;
    }

    private static ulong At(ulong order, int place) => (order >> (Bits * place)) & Mask;

    private static int PulleyAt(ulong order, int place) => (int)(At(order, place) >> 1);

    private void Expand(ulong order, int cost)
    {
        int length = Length(order);
        for (int i = 0; i < length; i++)
        {
            for (int j = i + 1; j < length; j++)
            {
                ulong difference = At(order, i) ^ At(order, j);
                ulong swapped = order ^ (difference << (Bits * i)) ^ (difference << (Bits * j));
                Reach(swapped, cost + 1, new Step(cost + 1, order, RoutingEditKind.Swap, PulleyAt(order, i), PulleyAt(order, j)));
            }

            ulong below = order & ((1UL << (Bits * i)) - 1);
            ulong removed = below | (order >> (Bits * (i + 1)) << (Bits * i));
            Reach(removed, cost + 1, new Step(cost + 1, order, RoutingEditKind.Remove, PulleyAt(order, i), 0));
        }

        foreach (int missing in _target)
        {
            if (Holds(order, length, missing))
            {
                continue;
            }

            for (int i = 0; i <= length; i++)
            {
                ulong below = order & ((1UL << (Bits * i)) - 1);
                ulong inserted = below | (Token(missing, false) << (Bits * i)) | (order >> (Bits * i) << (Bits * (i + 1)));
                int after = i == 0 ? 0 : PulleyAt(order, i - 1);
                Reach(inserted, cost + 1, new Step(cost + 1, order, RoutingEditKind.Insert, missing, after));
            }
        }
    }

    private void Reach(ulong order, int cost, Step step)
    {
        if (_best.TryGetValue(order, out Step known) && known.Cost <= cost)
        {
            return;
        }

        _best[order] = step;
        int estimate = cost + Bound(order);
        while (_open.Count <= estimate)
        {
            _open.Add(new Stack<ulong>());
        }

        _open[estimate].Push(order);
    }

    private static bool Holds(ulong order, int length, int pulley)
    {
        for (int i = 0; i < length; i++)
        {
            if (PulleyAt(order, i) == pulley)
            {
                return true;
            }
        }

        return false;
    }

    private bool IsTarget(ulong order)
    {
        if (Length(order) != _target.Length)
        {
            return false;
        }

        for (int i = 0; i < _target.Length; i++)
        {
            if (PulleyAt(order, i) != _target[i])
            {
                return false;
            }
        }

        return true;
    }

    private int Bound(ulong order)
    {
        int length = Length(order);
        int wrong = 0;
        int foreign = 0;
        for (int i = 0; i < length; i++)
        {
            wrong += (int)(At(order, i) & 1);
            foreign += _inTarget[PulleyAt(order, i)] ? 0 : 1;
        }

        int missing = _target.Length - (length - foreign);
        int apart = 0;
        int previous = 0;
        for (int i = 0; i <= _target.Length; i++)
        {
            int next = i < _target.Length ? _target[i] : 0;
            apart += Follows(order, length, previous, next) ? 0 : 1;
            previous = next;
        }

        int left = apart - (2 * missing) - foreign;
        return wrong + missing + foreign + (left > 0 ? (left + 3) / 4 : 0);
    }

    private static bool Follows(ulong order, int length, int pulley, int next)
    {
        int previous = 0;
        for (int i = 0; i <= length; i++)
        {
            int current = i < length ? PulleyAt(order, i) : 0;
            if (previous == pulley && current == next)
            {
                return true;
            }

            previous = current;
        }

        return false;
    }

    private List<RoutingEdit> Written(ulong order)
    {
        List<RoutingEdit> edits = [];
        for (ulong at = order; at != _start; at = _best[at].From)
        {
            Step step = _best[at];
            edits.Add(new(
                step.Kind,
                Name(step.Pulley),
                step.Kind == RoutingEditKind.Remove ? null : Name(step.Other),
                step.Kind == RoutingEditKind.Insert ? _rightFaces[step.Pulley] : null));
        }

        edits.Reverse();
        if (_crankTurned)
        {
            edits.Add(new(RoutingEditKind.TurnOver, Name(0), null, _rightFaces[0]));
        }

        for (int i = 0; i < _target.Length; i++)
        {
            if ((At(order, i) & 1) != 0)
            {
                edits.Add(new(RoutingEditKind.TurnOver, Name(_target[i]), null, _rightFaces[_target[i]]));
            }
        }

        return edits;
    }

    private string Name(int pulley) => _drive.Pulleys[pulley].Name;

    private readonly record struct Step(int Cost, ulong From, RoutingEditKind Kind, int Pulley, int Other, bool Done = false);
}
