using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>Gathers the pulleys, the belt and the tensioner of one engine, and makes the drive.</summary>
/// <remarks>
/// The first pulley added is the crank's, which drives the others. Coordinates are seen from the pulley end, x right, y up, in mm.
/// Each step returns a new builder, so that a half-built drive can be shared by several.
/// </remarks>
public sealed class BeltDriveBuilder
{
    private readonly Parts _parts;

    internal BeltDriveBuilder(Rotation crankTurns)
        : this(new Parts(crankTurns, [], RibbedBelt.Unmeasured, null, BeltDrive.TapeMeasureMm, null))
    {
    }

    private BeltDriveBuilder(Parts parts) => _parts = parts;

    /// <summary>Adds a grooved pulley, by its effective diameter.</summary>
    /// <param name="name">Its name, unique in the drive.</param>
    /// <param name="xMm">Centre, across; from -5000 to 5000 mm.</param>
    /// <param name="yMm">Centre, up; from -5000 to 5000 mm.</param>
    /// <param name="effectiveDiameterMm">Effective diameter; above 0 and up to 1000 mm.</param>
    /// <param name="mustTurn">The sense in which it must turn, seen from the pulley end; null when either will do.</param>
    /// <returns>A new builder.</returns>
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
    /// <returns>A new builder.</returns>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank or holds a comma or a bracket.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public BeltDriveBuilder Smooth(string name, double xMm, double yMm, double diameterMm, Sense? mustTurn = null) =>
        Add(Required(Pulley.Smooth(name, xMm, yMm, diameterMm), mustTurn));

    /// <summary>Adds a pulley that was described elsewhere, with its duty, load, width and position.</summary>
    /// <param name="pulley">The pulley.</param>
    /// <returns>A new builder.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulley"/> is null.</exception>
    public BeltDriveBuilder Add(Pulley pulley) => new(_parts with { Pulleys = [.. _parts.Pulleys, Guard.NotNull(pulley)] });

    /// <summary>Says which belt the drive runs.</summary>
    /// <param name="belt">The belt.</param>
    /// <returns>A new builder.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="belt"/> is null.</exception>
    public BeltDriveBuilder WithBelt(RibbedBelt belt) => new(_parts with { Belt = Guard.NotNull(belt) });

    /// <summary>Says which pulley sits on an arm.</summary>
    /// <param name="tensioner">The tensioner.</param>
    /// <returns>A new builder.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tensioner"/> is null.</exception>
    public BeltDriveBuilder WithTensioner(Tensioner tensioner) => new(_parts with { Tensioner = Guard.NotNull(tensioner) });

    /// <summary>Says how well the centres are known. Without it, 1 mm: a careful hand with a tape measure.</summary>
    /// <remarks>The default is a project choice. Zero takes the coordinates as exact, as from a drawing.</remarks>
    /// <param name="standardUncertaintyMm">One standard deviation of each coordinate, from 0 to 20 mm.</param>
    /// <returns>A new builder.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its range.</exception>
    public BeltDriveBuilder WithCentersKnownTo(double standardUncertaintyMm) =>
        new(_parts with { CenterUncertaintyMm = Guard.InRange(standardUncertaintyMm, 0, BeltDrive.VaguestMm, "mm") });

    /// <summary>Says how the engine's maker routes the belt, in the direction of its travel.</summary>
    /// <param name="stops">Names, each with "(ribs)" or "(back)" where the face is not the one that the rim is made for.</param>
    /// <returns>A new builder.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stops"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public BeltDriveBuilder RoutedAs(params string[] stops) => new(_parts with { Routing = [.. Guard.Items(stops)] });

    /// <summary>Everything that keeps the parts from making a drive, in the order of the pulleys; empty when there is nothing.</summary>
    /// <returns>One sentence for each problem.</returns>
    public IReadOnlyList<string> Problems() => Array.AsReadOnly<string>([.. Faults().Select(fault => fault.Message)]);

    /// <summary>Makes the drive.</summary>
    /// <returns>The drive.</returns>
    /// <exception cref="InvalidOperationException">The parts do not make a drive; the message is the first of <see cref="Problems"/>.</exception>
    public BeltDrive Build()
    {
        IReadOnlyList<DriveFault> faults = Faults();
        return faults.Count == 0
            ? new BeltDrive(
                _parts.CrankTurns, _parts.Pulleys, _parts.Belt, _parts.Tensioner, _parts.CenterUncertaintyMm, _parts.Routing)
            : throw new InvalidOperationException(faults[0].Message);
    }

    /// <summary>What <see cref="Problems"/> tells people, with the place of each in the drive's document.</summary>
    internal IReadOnlyList<DriveFault> Faults()
    {
        List<DriveFault> faults = [];
        if (_parts.Pulleys.Length < 2)
        {
            faults.Add(new("/pulleys", Invariant($"{_parts.Pulleys.Length} pulleys"), "at least two pulleys", "A drive has at least two pulleys."));
        }

        if (_parts.Pulleys.Length > BeltDrive.MostPulleys)
        {
            string most = Invariant($"at most {BeltDrive.MostPulleys} pulleys");
            faults.Add(new("/pulleys", Invariant($"{_parts.Pulleys.Length} pulleys"), most, $"A drive has {most}."));
        }

        for (int i = 0; i < _parts.Pulleys.Length; i++)
        {
            string name = _parts.Pulleys[i].Name;
            if (Find(_parts.Pulleys, name) < i)
            {
                faults.Add(new(
                    Invariant($"/pulleys/{i}/name"), $"'{name}'", "a name that no other pulley has", $"The name '{name}' is given to two pulleys."));
            }
        }

        if (_parts.Tensioner is Tensioner tensioner)
        {
            AddTensionerFaults(faults, tensioner);
        }

        if (faults.Count == 0 && _parts.Routing is not null)
        {
            faults.AddRange(RoutingReader.Read(_parts.Pulleys, _parts.Routing, out _));
        }

        return faults;
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
        mustTurn is Sense sense
            ? pulley.WithRequiredRotation(Rotation.Of(Guard.Defined(sense, nameof(mustTurn)), Viewpoint.PulleyEnd))
            : pulley;

    private void AddTensionerFaults(List<DriveFault> faults, Tensioner tensioner)
    {
        string named = $"'{tensioner.PulleyName}'";
        int index = Find(_parts.Pulleys, tensioner.PulleyName);
        if (index < 0)
        {
            faults.Add(new("/tensioner/pulley", named, "a pulley of the drive", $"The tensioner's pulley {named} is not in the drive."));
        }
        else if (index == 0)
        {
            faults.Add(new("/tensioner/pulley", named, "a pulley that does not drive the belt", "The crank's pulley cannot sit on the tensioner's arm."));
        }
        else if (Distance(_parts.Pulleys[index], tensioner) < 1)
        {
            faults.Add(new(
                "/tensioner/pivot",
                Invariant($"{tensioner.PivotXMm} mm, {tensioner.PivotYMm} mm"),
                "an arm of 1 mm or more, from the pivot to the centre of the pulley",
                "The tensioner's pivot stands at the centre of its pulley: the arm must be 1 mm long or more."));
        }
    }

    private static double Distance(Pulley pulley, Tensioner tensioner)
    {
        double dx = pulley.XMm - tensioner.PivotXMm;
        double dy = pulley.YMm - tensioner.PivotYMm;
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private readonly record struct Parts(
        Rotation CrankTurns, Pulley[] Pulleys, RibbedBelt Belt, Tensioner? Tensioner, double CenterUncertaintyMm, string[]? Routing);
}
