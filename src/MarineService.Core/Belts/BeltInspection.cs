using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>What a person sees on a belt with the engine stopped, turned into findings.</summary>
/// <remarks>
/// <para>Stop the engine and take the key out before hands come near the belt; turn it by hand to see all of it.</para>
/// <para>Common practice; no standard's figures were found. Never changes: each observation gives a new inspection.</para>
/// </remarks>
/// <example><code>
/// IReadOnlyList&lt;Finding&gt; seen = BeltInspection.Of(BeltRubber.EthylenePropylene)
///     .RibsOffGroove("alternator", 1)
///     .Gauged(RibGauge.StandsProud)
///     .Findings;
/// </code></example>
public sealed class BeltInspection
{
    private readonly Finding[] _seen;
    private readonly bool _gauged;

    private BeltInspection(BeltRubber rubber, Finding[] seen, bool gauged) => (Rubber, _seen, _gauged) = (rubber, seen, gauged);

    /// <summary>What the belt is made of.</summary>
    public BeltRubber Rubber { get; }

    /// <summary>What was found, in the order in which it was seen; last, that the ribs should be gauged when nobody did.</summary>
    public IReadOnlyList<Finding> Findings => Array.AsReadOnly(
        _gauged || Rubber == BeltRubber.Chloroprene ? _seen : [.. _seen, WearRules.NotGauged.On("belt")]);

    /// <summary>Begins an inspection.</summary>
    /// <param name="rubber">What the belt is made of.</param>
    /// <returns>An inspection without observations.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rubber"/> is not a defined value.</exception>
    public static BeltInspection Of(BeltRubber rubber) => new(Guard.Defined(rubber), [], false);

    /// <summary>Ribs lie beside their grooves on a pulley.</summary>
    /// <param name="pulleyName">The pulley.</param>
    /// <param name="ribs">How many ribs, from 0 to 30; 0 says that all are seated.</param>
    /// <returns>A new inspection.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="pulleyName"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="pulleyName"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ribs"/> is outside its range.</exception>
    public BeltInspection RibsOffGroove(string pulleyName, int ribs)
    {
        string subject = $"pulley '{Guard.NotBlank(pulleyName)}'";
        return Guard.InRange(ribs, 0, RibbedBelt.MostRibs, "ribs") == 0
            ? this
            : With(WearRules.RibOffGroove.On(subject, Figure.Of("ribs", ribs, FigureUnit.Number)));
    }

    /// <summary>Cracks across one rib.</summary>
    /// <remarks>The limit is a project choice; the belt maker's figure goes before it.</remarks>
    /// <param name="cracks">How many, from 0 to 1000.</param>
    /// <param name="over">The length of rib in which they were counted; above 0 and up to 20,000 mm.</param>
    /// <param name="limit">How many in 75 mm are enough to replace the belt; from 1 to 1000, 3 by default.</param>
    /// <returns>A new inspection.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public BeltInspection Cracked(int cracks, Length over, int limit = 3)
    {
        const double CountedOverMm = 75;
        Guard.InRange(cracks, 0, 1000, "cracks");
        double overMm = Guard.Positive(Canonical.Millimeters(over), "mm", nameof(over));
        Guard.InRange(overMm, 0, RibbedBelt.LongestMm, "mm", nameof(over));
        double enough = Guard.InRange(limit, 1, 1000, "cracks") * overMm / CountedOverMm;
        return cracks == 0
            ? this
            : With((cracks >= enough ? WearRules.Cracks : WearRules.FewCracks).On(
                "belt",
                Figure.Of("cracks", cracks, FigureUnit.Number),
                Figure.Of("over", overMm, FigureUnit.Millimeter),
                Figure.Of("limit", Math.Ceiling(enough), FigureUnit.Number)));
    }

    /// <summary>A piece of rib is gone.</summary>
    /// <param name="length">How long the gap is; above 0 and up to 20,000 mm.</param>
    /// <returns>A new inspection.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is outside its range.</exception>
    public BeltInspection RibMissing(Length length)
    {
        double mm = Guard.Positive(Canonical.Millimeters(length), "mm", nameof(length));
        Guard.InRange(mm, 0, RibbedBelt.LongestMm, "mm", nameof(length));
        return With(WearRules.MissingRib.On("belt", Figure.Of("length", mm, FigureUnit.Millimeter)));
    }

    /// <summary>The flanks of the ribs shine.</summary>
    /// <returns>A new inspection.</returns>
    public BeltInspection Glazed() => With(WearRules.Glazed.On("belt"));

    /// <summary>Oil, coolant, grease or the like is on the belt.</summary>
    /// <param name="what">What it is; not blank.</param>
    /// <returns>A new inspection.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="what"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="what"/> is blank.</exception>
    public BeltInspection Contaminated(string what) => With(WearRules.Contaminated.On("belt", Figure.Of("what", Guard.NotBlank(what))));

    /// <summary>Cords show at an edge.</summary>
    /// <returns>A new inspection.</returns>
    public BeltInspection Frayed() => With(WearRules.Frayed.On("belt"));

    /// <summary>What the rib depth gauge shows.</summary>
    /// <param name="reading">The gauge.</param>
    /// <returns>A new inspection.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reading"/> is not a defined value.</exception>
    public BeltInspection Gauged(RibGauge reading) => Guard.Defined(reading) == RibGauge.StandsProud
        ? new(Rubber, _seen, true)
        : new(
            Rubber,
            [.. _seen, WearRules.Worn.On("belt", Figure.Of("reading", reading == RibGauge.Level ? "lies level with the ribs" : "sinks below the ribs"))],
            true);

    /// <summary>The belt is new: it wants a second look after its first hours.</summary>
    /// <param name="run">Running time since it was fitted.</param>
    /// <param name="recheckAfter">When to look again; above 0 h. 10 h is usual; the engine's manual goes before it.</param>
    /// <returns>A new inspection.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="recheckAfter"/> is zero.</exception>
    public BeltInspection NewBelt(EngineHours run, EngineHours recheckAfter)
    {
        if (recheckAfter == EngineHours.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(recheckAfter), recheckAfter, "Must be above 0 h.");
        }

        return With((run >= recheckAfter ? WearRules.NewBeltDue : WearRules.NewBelt).On(
            "belt", Figure.Of("run", run), Figure.Of("recheck", recheckAfter)));
    }

    private BeltInspection With(Finding finding) => new(Rubber, [.. _seen, finding], _gauged);
}
