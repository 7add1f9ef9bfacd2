using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>Gathers the pulleys, the belt and the tensioner of one engine, and makes the drive.</summary>
/// <remarks>The first pulley added is the crank's, which drives the others. Coordinates are seen from the pulley end, x right, y up, in mm.</remarks>
public sealed class BeltDriveBuilder
{
    private readonly Rotation _crankTurns;
    private readonly List<Pulley> _pulleys = [];
    private RibbedBelt _belt = RibbedBelt.Unmeasured;
    private Tensioner? _tensioner;
    private double _centerUncertaintyMm = BeltDrive.TapeMeasureMm;
    private string[]? _routing;

    internal BeltDriveBuilder(Rotation crankTurns) => _crankTurns = crankTurns;

    /// <summary>Adds a grooved pulley, by its effective diameter.</summary>
    /// <param name="name">Its name, unique in the drive.</param>
    /// <param name="xMm">Centre, across; from -5000 to 5000 mm.</param>
    /// <param name="yMm">Centre, up; from -5000 to 5000 mm.</param>
    /// <param name="effectiveDiameterMm">Effective diameter; above 0 and up to 1000 mm.</param>
    /// <param name="mustTurn">The sense in which it must turn, seen from the pulley end; null when either will do.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or holds a comma or a bracket.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public BeltDriveBuilder Grooved(string name, double xMm, double yMm, double effectiveDiameterMm, Sense? mustTurn = null) =>
        Add(Required(Pulley.Grooved(name, xMm, yMm, effectiveDiameterMm), mustTurn));

    /// <summary>Adds a smooth pulley, by its outside diameter.</summary>
    /// <param name="name">Its name, unique in the drive.</param>
    /// <param name="xMm">Centre, across; from -5000 to 5000 mm.</param>
    /// <param name="yMm">Centre, up; from -5000 to 5000 mm.</param>
    /// <param name="diameterMm">Outside diameter; above 0 and up to 1000 mm.</param>
    /// <param name="mustTurn">The sense in which it must turn, seen from the pulley end; null when either will do.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or holds a comma or a bracket.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public BeltDriveBuilder Smooth(string name, double xMm, double yMm, double diameterMm, Sense? mustTurn = null) =>
        Add(Required(Pulley.Smooth(name, xMm, yMm, diameterMm), mustTurn));

    /// <summary>Adds a pulley that was described elsewhere, with its duty, load, width and position.</summary>
    /// <param name="pulley">The pulley.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulley"/> is null.</exception>
    public BeltDriveBuilder Add(Pulley pulley)
    {
        _pulleys.Add(Guard.NotNull(pulley));
        return this;
    }

    /// <summary>Says which belt the drive runs.</summary>
    /// <param name="belt">The belt.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="belt"/> is null.</exception>
    public BeltDriveBuilder WithBelt(RibbedBelt belt)
    {
        _belt = Guard.NotNull(belt);
        return this;
    }

    /// <summary>Says which pulley sits on an arm.</summary>
    /// <param name="tensioner">The tensioner.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tensioner"/> is null.</exception>
    public BeltDriveBuilder WithTensioner(Tensioner tensioner)
    {
        _tensioner = Guard.NotNull(tensioner);
        return this;
    }

    /// <summary>Says how well the centres are known. Without it, 1 mm: a careful hand with a tape measure.</summary>
    /// <remarks>The default is a project choice. Zero takes the coordinates as exact, as from a drawing.</remarks>
    /// <param name="standardUncertaintyMm">One standard deviation of each coordinate, from 0 to 20 mm.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its range.</exception>
    public BeltDriveBuilder WithCentersKnownTo(double standardUncertaintyMm)
    {
        _centerUncertaintyMm = Guard.InRange(standardUncertaintyMm, 0, BeltDrive.VaguestMm, "mm");
        return this;
    }

    /// <summary>Says how the engine's maker routes the belt, in the direction of its travel.</summary>
    /// <param name="stops">Names, each with "(ribs)" or "(back)" where the face is not the one that the rim is made for.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stops"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public BeltDriveBuilder RoutedAs(params string[] stops)
    {
        _routing = [.. Guard.Items(stops)];
        return this;
    }

    /// <summary>Everything that keeps the parts from making a drive, in the order of the pulleys; empty when there is nothing.</summary>
    /// <returns>One sentence for each problem.</returns>
    public IReadOnlyList<string> Problems()
    {
        List<string> problems = [];
        if (_pulleys.Count < 2)
        {
            problems.Add("A drive has at least two pulleys.");
        }

        if (_pulleys.Count > BeltDrive.MostPulleys)
        {
            problems.Add(FormattableString.Invariant($"A drive has at most {BeltDrive.MostPulleys} pulleys."));
        }

        for (int i = 0; i < _pulleys.Count; i++)
        {
            if (Find(_pulleys, _pulleys[i].Name) < i)
            {
                problems.Add($"The name '{_pulleys[i].Name}' is given to two pulleys.");
            }
        }

        if (_tensioner is Tensioner tensioner)
        {
            AddTensionerProblems(problems, tensioner);
        }

        if (problems.Count == 0 && _routing is not null)
        {
            problems.AddRange(RoutingReader.Read(_pulleys, _routing, out _).Select(fault => fault.Message));
        }

        return problems.AsReadOnly();
    }

    /// <summary>Makes the drive.</summary>
    /// <returns>The drive.</returns>
    /// <exception cref="InvalidOperationException">The parts do not make a drive; the message is the first of <see cref="Problems"/>.</exception>
    public BeltDrive Build()
    {
        IReadOnlyList<string> problems = Problems();
        return problems.Count == 0
            ? new BeltDrive(_crankTurns, [.. _pulleys], _belt, _tensioner, _centerUncertaintyMm, _routing)
            : throw new InvalidOperationException(problems[0]);
    }

    internal static int Find(IReadOnlyList<Pulley> pulleys, string name)
    {
        for (int i = 0; i < pulleys.Count; i++)
        {
            if (string.Equals(pulleys[i].Name, name, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return -1;
    }

    private static Pulley Required(Pulley pulley, Sense? mustTurn) =>
        mustTurn is Sense sense ? pulley.WithRequiredRotation(Rotation.Of(sense, Viewpoint.PulleyEnd)) : pulley;

    private void AddTensionerProblems(List<string> problems, Tensioner tensioner)
    {
        int index = Find(_pulleys, tensioner.PulleyName);
        if (index < 0)
        {
            problems.Add($"The tensioner's pulley '{tensioner.PulleyName}' is not in the drive.");
        }
        else if (index == 0)
        {
            problems.Add("The crank's pulley cannot sit on the tensioner's arm.");
        }
        else if (Distance(_pulleys[index], tensioner) < 1)
        {
            problems.Add("The tensioner's pivot stands at the centre of its pulley: the arm must be 1 mm long or more.");
        }
    }

    private static double Distance(Pulley pulley, Tensioner tensioner)
    {
        double dx = pulley.XMm - tensioner.PivotXMm;
        double dy = pulley.YMm - tensioner.PivotYMm;
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
