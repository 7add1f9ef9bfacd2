using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>The pulleys of one engine, the belt that joins them, and the tensioner: everything except how the belt lies.</summary>
/// <remarks>Never changes. Its crank turns as its maker says, whichever hand that is; nothing is assumed.</remarks>
/// <example><code>
/// BeltDrive drive = BeltDrive.SeenFromPulleyEnd(crankTurns: Sense.Clockwise)
///     .Grooved("crank", xMm: 0, yMm: 0, effectiveDiameterMm: 170)
///     .Smooth("tensioner", xMm: -145, yMm: 5, diameterMm: 90)
///     .Grooved("alternator", xMm: -215, yMm: 275, effectiveDiameterMm: 60)
///     .Build();
/// BeltCheck check = drive.Route("crank", "tensioner", "alternator").Check();
/// </code></example>
public sealed class BeltDrive
{
    internal const int MostPulleys = 12;
    internal const int MostPulleysWithSubsets = 7;
    internal const double TapeMeasureMm = 1;
    internal const double VaguestMm = 20;

    private readonly Pulley[] _pulleys;
    private readonly string[]? _routing;

    internal BeltDrive(
        Rotation crankTurns, Pulley[] pulleys, RibbedBelt belt, Tensioner? tensioner, double centerUncertaintyMm, string[]? routing)
    {
        (CrankTurns, _pulleys, Belt, Tensioner, CenterUncertaintyMm, _routing) =
            (crankTurns, pulleys, belt, tensioner, centerUncertaintyMm, routing);
        Pulleys = Array.AsReadOnly(pulleys);
        TensionerIndex = tensioner is null ? -1 : IndexOf(tensioner.PulleyName);
        if (routing is not null)
        {
            RoutingReader.Read(pulleys, routing, out (int Pulley, BeltFace Face)[]? stops);
            EngineRouting = Answer.Known(new BeltRouting(this, stops!));
        }
        else
        {
            EngineRouting = Answer.NotKnown<BeltRouting>("The routing that the engine's maker shows.");
        }
    }

    /// <summary>Which way the crank turns, and where that is seen from.</summary>
    public Rotation CrankTurns { get; }

    /// <summary>The pulleys; the crank's first.</summary>
    public IReadOnlyList<Pulley> Pulleys { get; }

    /// <summary>The pulley that drives the belt.</summary>
    public Pulley Crank => _pulleys[0];

    /// <summary>The belt.</summary>
    public RibbedBelt Belt { get; }

    /// <summary>The tensioner, or null when the drive has none.</summary>
    public Tensioner? Tensioner { get; }

    /// <summary>How well each coordinate of a centre is known: one standard deviation [mm]; 0 when taken as exact.</summary>
    public double CenterUncertaintyMm { get; }

    /// <summary>The routing that the engine's maker shows, when it was given.</summary>
    public Answer<BeltRouting> EngineRouting { get; }

    internal int TensionerIndex { get; }

    /// <summary>Begins a drive whose coordinates and crank are seen from the pulley end.</summary>
    /// <param name="crankTurns">Which way the crank turns, seen from the pulley end. Left-hand engines turn the other way: look, never assume.</param>
    /// <returns>A builder.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="crankTurns"/> is not a defined value.</exception>
    public static BeltDriveBuilder SeenFromPulleyEnd(Sense crankTurns) =>
        SeenFromPulleyEnd(Rotation.Of(Guard.Defined(crankTurns), Viewpoint.PulleyEnd));

    /// <summary>Begins a drive whose coordinates are seen from the pulley end, with the crank's sense as its maker states it.</summary>
    /// <param name="crankTurns">Which way the crank turns, with the end from which it is seen.</param>
    /// <returns>A builder.</returns>
    public static BeltDriveBuilder SeenFromPulleyEnd(Rotation crankTurns) => new(crankTurns);

    /// <summary>Lays the belt over the pulleys in the direction of its travel.</summary>
    /// <remarks>The list may begin anywhere; the routing is kept from the crank on.</remarks>
    /// <param name="stops">Names; the face is the one that the rim is made for, unless "(ribs)" or "(back)" follows the name.</param>
    /// <returns>The routing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stops"/> or one of its items is null.</exception>
    /// <exception cref="ArgumentException">A name is unknown or comes twice, a face cannot be read, the crank is missing, or fewer than two stops.</exception>
    /// <example><code>drive.Route("crank", "tensioner(back)", "alternator");</code></example>
    public BeltRouting Route(params string[] stops)
    {
        IReadOnlyList<DriveFault> faults = RoutingReader.Read(_pulleys, Guard.Items(stops), out (int Pulley, BeltFace Face)[]? read);
        return faults.Count == 0 ? new BeltRouting(this, read!) : throw new ArgumentException(faults[0].Message, nameof(stops));
    }

    /// <summary>Lays the belt over the pulleys in the direction of its travel, with every face said.</summary>
    /// <param name="stops">Pulleys and faces.</param>
    /// <returns>The routing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stops"/> or one of its items is null.</exception>
    /// <exception cref="ArgumentException">A name is unknown or comes twice, the crank is missing, or fewer than two stops.</exception>
    public BeltRouting Route(IEnumerable<RoutingStop> stops) => Route([.. Guard.Items(stops).Select(Written)]);

    /// <summary>Reads a routing that somebody wrote down: "crank, tensioner(back), pump".</summary>
    /// <param name="text">Names separated by commas; any text at all.</param>
    /// <returns>The routing, or everything that is wrong with the text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    public Answer<BeltRouting> ReadRouting(string text)
    {
        IReadOnlyList<DriveFault> faults =
            RoutingReader.Read(_pulleys, Guard.NotNull(text).Split(','), out (int Pulley, BeltFace Face)[]? read);
        return faults.Count == 0
            ? Answer.Known(new BeltRouting(this, read!))
            : Answer.NotKnown<BeltRouting>([.. faults.Select(fault => fault.Message)]);
    }

    /// <summary>Finds every routing that the pulleys allow, for an owner without a diagram.</summary>
    /// <remarks>At most nine pulleys; at most seven when pulleys may be left out.</remarks>
    /// <param name="options">Which faces to try and whether pulleys may be left out; null for the default.</param>
    /// <returns>All feasible routings, with their ranking.</returns>
    /// <exception cref="InvalidOperationException">The drive has more pulleys than a search can look through.</exception>
    public RoutingSearchResult FindRoutings(RoutingSearchOptions? options = null)
    {
        RoutingSearchOptions chosen = options ?? RoutingSearchOptions.Default;
        int most = chosen.AllowsMissedPulleys ? MostPulleysWithSubsets : RoutingTree.MostPulleys;
        return _pulleys.Length <= most
            ? new RoutingSearchResult(this, chosen, RoutingTree.Search(this, chosen))
            : throw new InvalidOperationException(FormattableString.Invariant($"A search looks through at most {most} pulleys; this drive has {_pulleys.Length}."));
    }

    /// <summary>A pulley by its name, upper and lower case alike.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The pulley, or null when the drive has none of that name.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public Pulley? Find(string name) => IndexOf(Guard.NotNull(name)) is int index and >= 0 ? _pulleys[index] : null;

    /// <summary>The same drive with another belt.</summary>
    /// <param name="belt">The belt.</param>
    /// <returns>A new drive.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="belt"/> is null.</exception>
    public BeltDrive WithBelt(RibbedBelt belt) => new(CrankTurns, _pulleys, Guard.NotNull(belt), Tensioner, CenterUncertaintyMm, _routing);

    /// <summary>The same drive with one pulley replaced by another of the same name.</summary>
    /// <param name="pulley">The pulley that takes the place of its namesake.</param>
    /// <returns>A new drive.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulley"/> is null.</exception>
    /// <exception cref="ArgumentException">The drive has no pulley of that name.</exception>
    public BeltDrive WithPulley(Pulley pulley)
    {
        int index = IndexOf(Guard.NotNull(pulley).Name);
        if (index < 0)
        {
            throw new ArgumentException($"The drive has no pulley '{pulley.Name}'.", nameof(pulley));
        }

        Pulley[] pulleys = [.. _pulleys];
        pulleys[index] = pulley;
        return new(CrankTurns, pulleys, Belt, Tensioner, CenterUncertaintyMm, _routing);
    }

    /// <summary>How many pulleys, and the belt.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{_pulleys.Length} pulleys, belt {Belt}");

    internal int IndexOf(string name) => BeltDriveBuilder.Find(_pulleys, name);

    /// <summary>A pulley as the pitch line sees it: touched by the crank's face it turns with the crank, by the other face against it.</summary>
    internal OrientedCircle Circle(int pulley, BeltFace face, BeltFace crankFace) => new(
        _pulleys[pulley].XMm,
        _pulleys[pulley].YMm,
        _pulleys[pulley].PitchRadiusMm(face, Belt),
        face == crankFace ? CrankTurns.Sign : -CrankTurns.Sign);

    private static string Written(RoutingStop stop) =>
        $"{stop.PulleyName}({(stop.Face == BeltFace.Back ? "back" : "ribs")})";
}
