namespace MarineService.Core.Belts;

/// <summary>Searches every order and face depth first, over spans that are worked out once for each ordered pair of pulleys and faces.</summary>
/// <remarks>
/// A branch is cut only for a reason that no later choice can mend: a span through a pulley that is already in the order, or that has no
/// face left to be touched by; a span that crosses an earlier one; two pulleys too near each other. Turning number and contact are tested
/// on the closed belt. A pulley with a face is a node: number 2 x pulley + face, one bit each in the masks.
/// </remarks>
internal ref struct RoutingTree
{
    internal const int MostPulleys = 9;
    internal const int MostNodes = 2 * MostPulleys;

    private readonly ReadOnlySpan<OrientedCircle> _circles;
    private readonly ReadOnlySpan<uint> _tooNear;
    private readonly ReadOnlySpan<Link> _links;
    private readonly ReadOnlySpan<uint> _choices;
    private readonly List<Found> _found;
    private readonly int _count;
    private readonly int _nodes;
    private readonly int _start;
    private readonly int _expectedTurns;
    private readonly uint _passedByNodes;
    private readonly bool _subsets;
    private readonly Span<int> _path;

    private RoutingTree(
        ReadOnlySpan<OrientedCircle> circles,
        ReadOnlySpan<uint> tooNear,
        ReadOnlySpan<Link> links,
        ReadOnlySpan<uint> choices,
        Span<int> path,
        int expectedTurns,
        uint passedByNodes,
        bool subsets)
    {
        _circles = circles;
        _tooNear = tooNear;
        _links = links;
        _choices = choices;
        _path = path;
        _count = choices.Length;
        _nodes = circles.Length;
        _found = [];
        _expectedTurns = expectedTurns;
        _passedByNodes = passedByNodes;
        _subsets = subsets;
        _start = (choices[0] & 1) != 0 ? 0 : 1;
    }

    /// <summary>A feasible routing: its nodes, four bits of pulley and one of face each, the length and the smallest wrap.</summary>
    internal readonly record struct Found(ulong Nodes, int Count, double PitchLengthMm, double SmallestWrapRad)
    {
        internal int Node(int stop) => (int)((Nodes >> (5 * stop)) & 31);
    }

    /// <summary>A span between two nodes: tangent points, direction, and the nodes that it would run through.</summary>
    private readonly struct Link(double startX, double startY, double endX, double endY, double ux, double uy, double lengthMm, uint hits)
    {
        internal readonly double StartX = startX;
        internal readonly double StartY = startY;
        internal readonly double EndX = endX;
        internal readonly double EndY = endY;
        internal readonly double Ux = ux;
        internal readonly double Uy = uy;
        internal readonly double LengthMm = lengthMm;
        internal readonly uint Hits = hits;

        internal bool Exists => LengthMm > 0;
    }

    internal static List<Found> Search(BeltDrive drive, RoutingSearchOptions options)
    {
        int count = drive.Pulleys.Count;
        int nodes = 2 * count;
        Span<OrientedCircle> circles = stackalloc OrientedCircle[nodes];
        Span<uint> choices = stackalloc uint[count];
        BeltFace crankFace = drive.Crank.IntendedFace;
        uint passedBy = 0;
        for (int pulley = 0; pulley < count; pulley++)
        {
            circles[2 * pulley] = drive.Circle(pulley, BeltFace.Ribs, crankFace);
            circles[(2 * pulley) + 1] = drive.Circle(pulley, BeltFace.Back, crankFace);
            uint intended = 1u << ((2 * pulley) + (int)drive.Pulleys[pulley].IntendedFace);
            passedBy |= intended;
            choices[pulley] = pulley > 0 && options.Faces == FaceChoice.Either ? 3u << (2 * pulley) : intended;
        }

        Span<uint> tooNear = stackalloc uint[nodes];
        FillTooNear(circles, tooNear);
        Span<Link> links = stackalloc Link[nodes * nodes];
        links.Clear();
        uint all = 0;
        foreach (uint choice in choices)
        {
            all |= choice;
        }

        FillLinks(circles, all, links);
        int expected = crankFace == BeltFace.Ribs ? drive.CrankTurns.Sign : -drive.CrankTurns.Sign;
        Span<int> path = stackalloc int[count];
        RoutingTree tree = new(circles, tooNear, links, choices, path, expected, passedBy, options.AllowsMissedPulleys);
        path[0] = tree._start;
        tree.Extend(1, 1u << tree._start, 1u, tooNear[tree._start]);
        return tree._found;
    }

    private static void FillTooNear(ReadOnlySpan<OrientedCircle> circles, Span<uint> tooNear)
    {
        for (int a = 0; a < circles.Length; a++)
        {
            uint mask = 0;
            for (int b = 0; b < circles.Length; b++)
            {
                double dx = circles[a].XMm - circles[b].XMm;
                double dy = circles[a].YMm - circles[b].YMm;
                double gap = Math.Sqrt((dx * dx) + (dy * dy)) - circles[a].RadiusMm - circles[b].RadiusMm;
                if (a / 2 != b / 2 && gap <= BeltMath.GrainMm)
                {
                    mask |= 1u << b;
                }
            }

            tooNear[a] = mask;
        }
    }

    private static void FillLinks(ReadOnlySpan<OrientedCircle> circles, uint used, Span<Link> links)
    {
        for (int a = 0; a < circles.Length; a++)
        {
            for (int b = 0; b < circles.Length; b++)
            {
                if (a / 2 == b / 2 || (used & (1u << a)) == 0 || (used & (1u << b)) == 0
                    || !BeltMath.TrySpan(in circles[a], in circles[b], out double length, out double ux, out double uy))
                {
                    continue;
                }

                double startX = circles[a].XMm + (circles[a].SignedRadiusMm * uy);
                double startY = circles[a].YMm - (circles[a].SignedRadiusMm * ux);
                uint hits = 0;
                for (int k = 0; k < circles.Length; k += 2)
                {
                    if (k / 2 == a / 2 || k / 2 == b / 2)
                    {
                        continue;
                    }

                    double distance = BeltMath.DistanceMm(startX, startY, ux, uy, length, circles[k].XMm, circles[k].YMm, out _);
                    hits |= distance - circles[k].RadiusMm < -BeltMath.GrainMm ? 1u << k : 0;
                    hits |= distance - circles[k + 1].RadiusMm < -BeltMath.GrainMm ? 2u << k : 0;
                }

                double endX = circles[b].XMm + (circles[b].SignedRadiusMm * uy);
                double endY = circles[b].YMm - (circles[b].SignedRadiusMm * ux);
                links[(a * circles.Length) + b] = new(startX, startY, endX, endY, ux, uy, length, hits);
            }
        }
    }

    /// <summary>Tries every pulley that may come next, and closing the belt.</summary>
    /// <param name="depth">How many stops the order has.</param>
    /// <param name="inOrder">The nodes in the order.</param>
    /// <param name="pulleys">The pulleys in the order, one bit each.</param>
    /// <param name="barred">Nodes that can no longer be touched: a span runs through them, or a pulley in the order is too near.</param>
    private readonly void Extend(int depth, uint inOrder, uint pulleys, uint barred)
    {
        int last = _path[depth - 1];
        if (depth == _count || (_subsets && depth > 1))
        {
            TryClose(depth, last, inOrder, pulleys, barred);
        }

        for (int pulley = 1; pulley < _count; pulley++)
        {
            if ((pulleys & (1u << pulley)) != 0)
            {
                continue;
            }

            uint open = _choices[pulley] & ~barred;
            for (int node = 2 * pulley; node <= (2 * pulley) + 1; node++)
            {
                if ((open & (1u << node)) == 0)
                {
                    continue;
                }

                ref readonly Link link = ref _links[(last * _nodes) + node];
                uint nowBarred = barred | link.Hits | _tooNear[node];
                uint nowIn = inOrder | (1u << node);
                if (link.Exists && (link.Hits & inOrder) == 0 && (_subsets || AllCanFollow(pulleys | (1u << pulley), nowBarred)) && !CrossesPath(in link, depth))
                {
                    _path[depth] = node;
                    Extend(depth + 1, nowIn, pulleys | (1u << pulley), nowBarred);
                }
            }
        }
    }

    private readonly bool AllCanFollow(uint pulleys, uint barred)
    {
        for (int pulley = 1; pulley < _count; pulley++)
        {
            if ((pulleys & (1u << pulley)) == 0 && (_choices[pulley] & ~barred) == 0)
            {
                return false;
            }
        }

        return true;
    }

    private readonly bool CrossesPath(in Link link, int depth)
    {
        for (int i = 1; i < depth; i++)
        {
            ref readonly Link other = ref _links[(_path[i - 1] * _nodes) + _path[i]];
            if (BeltMath.Cross(link.StartX, link.StartY, link.EndX, link.EndY, other.StartX, other.StartY, other.EndX, other.EndY))
            {
                return true;
            }
        }

        return false;
    }

    private readonly void TryClose(int depth, int last, uint inOrder, uint pulleys, uint barred)
    {
        ref readonly Link link = ref _links[(last * _nodes) + _start];
        if (!link.Exists || (link.Hits & inOrder) != 0 || !PassesOthers(pulleys, inOrder, barred | link.Hits) || CrossesPath(in link, depth))
        {
            return;
        }

        double length = 0;
        double turned = 0;
        double smallest = double.PositiveInfinity;
        ulong packed = 0;
        ref readonly Link arriving = ref link;
        for (int i = 0; i < depth; i++)
        {
            int node = _path[i];
            ref readonly Link leaving = ref _links[(node * _nodes) + (i + 1 < depth ? _path[i + 1] : _start)];
            double wrap = BeltMath.WrapRad(_circles[node].Sign, arriving.Ux, arriving.Uy, leaving.Ux, leaving.Uy);
            length += leaving.LengthMm + (_circles[node].RadiusMm * wrap);
            turned += _circles[node].Sign * wrap;
            smallest = Math.Min(smallest, wrap);
            packed |= (ulong)node << (5 * i);
            arriving = ref leaving;
        }

        if (smallest > BeltMath.GrainRad && (int)Math.Round(turned / (2 * Math.PI)) == _expectedTurns)
        {
            _found.Add(new(packed, depth, length, smallest));
        }
    }

    /// <summary>Whether the belt leaves room for the pulleys that it does not come to, each as its rim is made.</summary>
    private readonly bool PassesOthers(uint pulleys, uint inOrder, uint barred)
    {
        uint others = 0;
        for (int pulley = 0; pulley < _count; pulley++)
        {
            if ((pulleys & (1u << pulley)) == 0)
            {
                others |= _passedByNodes & (3u << (2 * pulley));
            }
        }

        if ((others & barred) != 0)
        {
            return false;
        }

        for (int node = 0; node < _nodes; node++)
        {
            if ((others & (1u << node)) != 0 && (_tooNear[node] & (others | inOrder)) != 0)
            {
                return false;
            }
        }

        return true;
    }
}
