using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>A screwed joint: what it presses together, what it is screwed into, and what the engine's maker says of it.</summary>
/// <remarks>The engine's manual outranks everything that is worked out here. Never changes: each With gives a new joint.</remarks>
/// <example><code>
/// Joint cover = Joint.Of("pump cover", JointSeat.FlatGasket, ThreadMaterial.Bronze, MetricThread.M6);
/// Console.WriteLine(cover.Tightening());   // pump cover: to contact, then no more.
/// </code></example>
public sealed class Joint
{
    internal const double MostNewtonMeters = 2000;

    private Joint(string name, JointSeat seat, ThreadMaterial into, MetricThread? thread, PropertyClass? propertyClass, double? makersNewtonMeters) =>
        (Name, Seat, ThreadedInto, Thread, PropertyClass, MakersNewtonMeters) = (name, seat, into, thread, propertyClass, makersNewtonMeters);

    /// <summary>What the joint is called.</summary>
    public string Name { get; }

    /// <summary>What the screws press together.</summary>
    public JointSeat Seat { get; }

    /// <summary>What the screws are screwed into.</summary>
    public ThreadMaterial ThreadedInto { get; }

    /// <summary>The thread, or null when it is not stated.</summary>
    public MetricThread? Thread { get; }

    /// <summary>The strength of the screws, or null when it is not stated.</summary>
    public PropertyClass? PropertyClass { get; }

    /// <summary>The torque that the engine's maker states, or null.</summary>
    public Torque? MakersTorque => MakersNewtonMeters is double value ? Torque.FromNewtonMeters(value) : null;

    /// <summary>True when gasket, washer or part would be crushed by what the screw can bear.</summary>
    public bool IsSoft => Seat is JointSeat.FlatGasket or JointSeat.RubberWasher or JointSeat.Plastic;

    internal double? MakersNewtonMeters { get; }

    /// <summary>A joint.</summary>
    /// <param name="name">What it is called; not blank.</param>
    /// <param name="seat">What the screws press together.</param>
    /// <param name="threadedInto">What the screws are screwed into.</param>
    /// <param name="thread">The thread, or null when it is not stated.</param>
    /// <param name="propertyClass">The strength of the screws, or null when it is not stated.</param>
    /// <returns>The joint.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An enum value is not defined.</exception>
    public static Joint Of(
        string name,
        JointSeat seat,
        ThreadMaterial threadedInto = ThreadMaterial.NotStated,
        MetricThread? thread = null,
        PropertyClass? propertyClass = null) =>
        new(Guard.NotBlank(name), Guard.Defined(seat), Guard.Defined(threadedInto), thread, propertyClass, null);

    /// <summary>A copy with the torque that the engine's maker states; on a soft joint it is the most that is allowed.</summary>
    /// <param name="torque">Above 0 and up to 2000 N·m.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is outside its range.</exception>
    public Joint WithMakersTorque(Torque torque) =>
        new(Name, Seat, ThreadedInto, Thread, PropertyClass, CheckedNewtonMeters(torque, nameof(torque)));

    /// <summary>How this joint is tightened, and why so.</summary>
    /// <param name="nutFactor">The state of the threads; as received when left out.</param>
    /// <param name="proofFraction">The wanted share of the proof load where a torque is worked out, from 0.1 to 1 (fraction).</param>
    /// <returns>The way, with a torque where there is one.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="proofFraction"/> is outside its range.</exception>
    public TighteningInstruction Tightening(NutFactor? nutFactor = null, double proofFraction = 0.75)
    {
        Guard.InRange(proofFraction, 0.1, 1, "(fraction)");
        TighteningTorque? computed = Seat == JointSeat.Metal && ThreadedInto == ThreadMaterial.Steel && Thread is not null && PropertyClass is not null
            ? TighteningTorque.Of(Thread, PropertyClass, nutFactor ?? NutFactor.AsReceived, proofFraction)
            : null;
        return new(this, computed);
    }

    /// <summary>The name.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;

    internal static double CheckedNewtonMeters(Torque torque, string argument) =>
        Guard.InRange(Guard.Positive(Canonical.NewtonMeters(torque), "N·m", argument), 0, MostNewtonMeters, "N·m", argument);
}
