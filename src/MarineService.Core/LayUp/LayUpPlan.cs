using MarineService.Core.Engines;
using MarineService.Core.Internal;

namespace MarineService.Core.LayUp;

/// <summary>The winter plan of one engine: what to do in which order, with amounts, what stands against it, and what is not known.</summary>
/// <remarks>
/// Never changes; each With gives a new plan. What was not given is not guessed: the plan says what is missing and is careful meanwhile.
/// The order is: treated fuel and the last run, oil, coolant, drain, back-fill by hose, proof, fogging, impeller, battery, closing.
/// The engine's own manual outranks it.
/// </remarks>
public sealed class LayUpPlan
{
    private readonly LayUpPlanner _planner;

    private LayUpPlan(LayUpData data)
    {
        Data = data;
        _planner = new LayUpPlanner(data);
    }

    /// <summary>The engine.</summary>
    public Engine Engine => Data.Engine;

    /// <summary>Whether to protect from frost, and down to which temperature.</summary>
    public FreezeDecision Freeze => Data.Freeze;

    /// <summary>What to do, in order.</summary>
    public IReadOnlyList<LayUpStep> Steps => _planner.Steps;

    /// <summary>What stands against a safe winter, or wants attention.</summary>
    public IReadOnlyList<Finding> Findings => _planner.Findings;

    /// <summary>What is not known, and would settle something; empty when nothing is missing.</summary>
    public IReadOnlyList<string> Missing => _planner.Missing;

    /// <summary>What hangs on the boat over the winter; each is ticked off at commissioning.</summary>
    public IReadOnlyList<string> Tags => _planner.Tags;

    /// <summary>How many drains, plugs, hoses and covers are opened, and must be counted shut at commissioning; not known without the low points.</summary>
    public Answer<int> Openings =>
        Data.Side is null ? Answer.NotKnown<int>("The low points of the raw-water side.") : Answer.Known(Data.Side.Drains);

    /// <summary>The antifreeze and its amounts, or null when none is used.</summary>
    public AntifreezeFill? Fill => _planner.Fill;

    /// <summary>The fogging dose, or why there is none.</summary>
    public FoggingDose Fogging => _planner.Fogging;

    /// <summary>The fuel tank over the winter, or null when it is not stated.</summary>
    public FuelLayUp? Fuel => Data.Fuel;

    /// <summary>The battery, or null when it was not read.</summary>
    public BatteryCheck? Battery => _planner.Battery;

    /// <summary>The gravest finding's severity, or null when there is none.</summary>
    public Severity? Worst => Findings.Count == 0 ? null : Findings.Max(finding => finding.Severity);

    private LayUpData Data { get; }

    /// <summary>The plan of an engine of which nothing but its identity is known yet.</summary>
    /// <param name="engine">The engine.</param>
    /// <param name="freeze">Whether to protect from frost, and down to which temperature.</param>
    /// <param name="limits">The figures that nobody publishes; <see cref="LayUpLimits.Default"/> when null.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engine"/> or <paramref name="freeze"/> is null.</exception>
    public static LayUpPlan For(Engine engine, FreezeDecision freeze, LayUpLimits? limits = null) =>
        new(new LayUpData(Guard.NotNull(engine), Guard.NotNull(freeze), limits ?? LayUpLimits.Default));

    /// <summary>A plan that knows the boat: where it is kept, in which water, seacock or none.</summary>
    /// <param name="boat">The boat.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/> is null.</exception>
    public LayUpPlan WithBoat(Boat boat) => new(Data with { Boat = Guard.NotNull(boat) });

    /// <summary>A plan that knows the low points.</summary>
    /// <param name="side">The raw-water side.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="side"/> is null.</exception>
    public LayUpPlan WithRawWaterSide(RawWaterSide side) => new(Data with { Side = Guard.NotNull(side) });

    /// <summary>A plan that back-fills the drained raw-water side; without this the plan is to drain only.</summary>
    /// <param name="antifreeze">The antifreeze by its label.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="antifreeze"/> is null.</exception>
    public LayUpPlan WithAntifreeze(Antifreeze antifreeze) => new(Data with { Antifreeze = Guard.NotNull(antifreeze) });

    /// <summary>A plan that knows the cylinders, which the fogging dose is checked by.</summary>
    /// <param name="cylinders">The cylinders.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cylinders"/> is null.</exception>
    public LayUpPlan WithCylinders(Cylinders cylinders) => new(Data with { Cylinders = Guard.NotNull(cylinders) });

    /// <summary>A plan that knows the tank. Give a tank that several engines share to one of them.</summary>
    /// <param name="fuel">The tank over the winter.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fuel"/> is null.</exception>
    public LayUpPlan WithFuel(FuelLayUp fuel) => new(Data with { Fuel = Guard.NotNull(fuel) });

    /// <summary>A plan that knows what was read of the battery.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reading"/> is null.</exception>
    public LayUpPlan WithBattery(BatteryReading reading) => new(Data with { Battery = Guard.NotNull(reading) });

    /// <summary>A plan that knows what was read of the closed circuit's coolant.</summary>
    /// <param name="reading">The reading, on the scale of the coolant's own glycol.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reading"/> is null.</exception>
    public LayUpPlan WithCoolant(RefractometerReading reading) => new(Data with { Coolant = Guard.NotNull(reading) });

    /// <summary>Whether the raw-water side is safe from frost by what was done.</summary>
    /// <param name="works">What was done, in the order in which it was done.</param>
    /// <returns>The proof; not known without the low points.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="works"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public Answer<WinterProof> Prove(IEnumerable<LowPointWork> works)
    {
        IReadOnlyList<LowPointWork> copy = Guard.Items(works);
        return Data.Side is null
            ? Answer.NotKnown<WinterProof>("The low points of the raw-water side.")
            : Answer.Known(WinterProof.Of(Engine, Data.Boat, Data.Side, Freeze, Data.Antifreeze, copy, Data.Limits));
    }

    /// <summary>The plan: decision, steps, what stands against it, what is not known, and the sources.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{Engine.Designation}: {Freeze.Explain(units).Answer}");
        for (int i = 0; i < Steps.Count; i++)
        {
            lines.Add(FormattableString.Invariant($"step {i + 1}"), Steps[i].Text(units));
            lines.AddIf(Steps[i].Caution is not null, "beware", () => Steps[i].Caution!.ToString());
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, finding.Message(units));
        }

        foreach (string missing in Missing)
        {
            lines.Add("not known", missing);
        }

        return lines.Add("manual", "the engine's own manual outranks all of this").Build([.. Steps.Select(step => step.Citation).Distinct()]);
    }

    /// <summary>The decision in one line, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;
}
