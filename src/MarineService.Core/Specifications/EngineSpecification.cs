using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using MarineService.Core.LayUp;
using MarineService.Core.Oils;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Specifications;

/// <summary>What one engine is and needs: its identity, its meter, its variants, its tasks, the oils that it may have, its sump, and what the winter needs of it.</summary>
/// <remarks>Built by With methods; each returns a copy. The engine's own manual outranks every figure in it.</remarks>
public sealed class EngineSpecification
{
    /// <summary>The id of the task that changes the engine oil, unless another is stated.</summary>
    public const string EngineOilTask = "engine-oil";

    private TaskPlan? _plan;

    private EngineSpecification(
        Engine engine,
        HourMeter meter,
        IReadOnlyList<EngineVariant> variants,
        IReadOnlyList<ServiceTask> tasks,
        PermittedOils? permittedOils,
        LabelledOil? fittedOil,
        Sump? sump,
        string oilTaskId,
        LayUpSheet? layUp) =>
        (Engine, Meter, Variants, Tasks, PermittedOils, FittedOil, Sump, OilTaskId, LayUp) =
            (engine, meter, variants, tasks, permittedOils, fittedOil, sump, oilTaskId, layUp);

    /// <summary>The engine's identity.</summary>
    public Engine Engine { get; }

    /// <summary>The hour meter that it starts with.</summary>
    public HourMeter Meter { get; }

    /// <summary>Engines that share all of this and differ only in their rating.</summary>
    public IReadOnlyList<EngineVariant> Variants { get; }

    /// <summary>What the engine needs, in the order given.</summary>
    public IReadOnlyList<ServiceTask> Tasks { get; }

    /// <summary>The engine oils that the maker permits, or null when that is not stated.</summary>
    public PermittedOils? PermittedOils { get; }

    /// <summary>The oil that is in the sump by its label, or null when that is not stated.</summary>
    public LabelledOil? FittedOil { get; }

    /// <summary>What the engine's oil system holds and how its dipstick tells, or null when that is not stated.</summary>
    public Sump? Sump { get; }

    /// <summary>The id of the task that changes the engine oil.</summary>
    public string OilTaskId { get; }

    /// <summary>What is known of the engine for the winter, or null when nothing is stated.</summary>
    public LayUpSheet? LayUp { get; }

    /// <summary>The tasks, checked against each other.</summary>
    /// <remarks>
    /// A boat whose oil is always drawn out, with a declared residual, never exchanges all of it: its oil task counts pro rata
    /// unless the task states a rule of its own.
    /// </remarks>
    /// <exception cref="ArgumentException">A task refers to an id that is not there, or includes itself by way of others.</exception>
    public TaskPlan Plan => _plan ??= TaskPlan.Of([.. Tasks.Select(AsCounted)]);

    /// <summary>The specification of an engine of which only the designation is stated.</summary>
    /// <param name="designation">The maker's designation; not blank.</param>
    /// <returns>A specification without tasks.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="designation"/> is blank.</exception>
    public static EngineSpecification Named(string designation) => Of(Engine.Of(designation));

    /// <summary>The specification of an engine.</summary>
    /// <param name="engine">Its identity.</param>
    /// <returns>A specification without tasks.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engine"/> is null.</exception>
    public static EngineSpecification Of(Engine engine) =>
        new(Guard.NotNull(engine), HourMeter.Plain, [], [], null, null, null, EngineOilTask, null);

    /// <summary>A copy with more tasks.</summary>
    /// <param name="tasks">The tasks; ids distinct from each other and from those already there.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">An id is used twice.</exception>
    public EngineSpecification With(params ServiceTask[] tasks)
    {
        IReadOnlyList<ServiceTask> all = Array.AsReadOnly<ServiceTask>([.. Tasks, .. Guard.Items(tasks)]);
        Names.Distinct(all.Select(task => task.Id), nameof(tasks));
        return new(Engine, Meter, Variants, all, PermittedOils, FittedOil, Sump, OilTaskId, LayUp);
    }

    /// <summary>A copy with more variants.</summary>
    /// <param name="variants">The variants; designations distinct from each other and from those already there.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="variants"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">A designation is used twice.</exception>
    public EngineSpecification With(params EngineVariant[] variants)
    {
        IReadOnlyList<EngineVariant> all = Array.AsReadOnly<EngineVariant>([.. Variants, .. Guard.Items(variants)]);
        Names.Distinct(all.Select(variant => variant.Designation), nameof(variants));
        return new(Engine, Meter, all, Tasks, PermittedOils, FittedOil, Sump, OilTaskId, LayUp);
    }

    /// <summary>A copy with what is known of the hour meter.</summary>
    /// <param name="meter">The meter that the engine starts with.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="meter"/> is null.</exception>
    public EngineSpecification WithMeter(HourMeter meter) => new(Engine, Guard.NotNull(meter), Variants, Tasks, PermittedOils, FittedOil, Sump, OilTaskId, LayUp);

    /// <summary>A copy with the engine oils that the maker permits.</summary>
    /// <param name="permitted">Grades with the maker's limits, required and forbidden service categories.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="permitted"/> is null.</exception>
    public EngineSpecification WithPermittedOils(PermittedOils permitted) =>
        new(Engine, Meter, Variants, Tasks, Guard.NotNull(permitted), FittedOil, Sump, OilTaskId, LayUp);

    /// <summary>A copy with the oil that is in the sump.</summary>
    /// <param name="oil">The oil by its label.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="oil"/> is null.</exception>
    public EngineSpecification WithFittedOil(LabelledOil oil) =>
        new(Engine, Meter, Variants, Tasks, PermittedOils, Guard.NotNull(oil), Sump, OilTaskId, LayUp);

    /// <summary>A copy with what the oil system holds and how the dipstick tells.</summary>
    /// <param name="sump">The sump; its faults are <see cref="Fluids.Sump.Validate"/>'s to tell.</param>
    /// <param name="oilTaskId">The id of the task that changes the oil; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sump"/> or <paramref name="oilTaskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="oilTaskId"/> is blank.</exception>
    public EngineSpecification WithSump(Sump sump, string oilTaskId = EngineOilTask) =>
        new(Engine, Meter, Variants, Tasks, PermittedOils, FittedOil, Guard.NotNull(sump), Guard.NotBlank(oilTaskId), LayUp);

    /// <summary>A copy with what is known of the engine for the winter.</summary>
    /// <param name="layUp">Raw-water side, cylinders, fuel tank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="layUp"/> is null.</exception>
    public EngineSpecification WithLayUp(LayUpSheet layUp) =>
        new(Engine, Meter, Variants, Tasks, PermittedOils, FittedOil, Sump, OilTaskId, Guard.NotNull(layUp));

    /// <summary>Begins the winter plan with what the data sheet knows.</summary>
    /// <param name="freeze">Whether to protect from frost, and down to which temperature.</param>
    /// <param name="limits">The figures that nobody publishes; <see cref="LayUpLimits.Default"/> when null.</param>
    /// <returns>The plan, which takes the boat, an antifreeze and readings.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="freeze"/> is null.</exception>
    public LayUpPlan PlanLayUp(FreezeDecision freeze, LayUpLimits? limits = null)
    {
        LayUpPlan plan = LayUpPlan.For(Engine, freeze, limits);
        plan = LayUp?.RawWaterSide is RawWaterSide side ? plan.WithRawWaterSide(side) : plan;
        plan = LayUp?.Cylinders is Cylinders cylinders ? plan.WithCylinders(cylinders) : plan;
        return LayUp?.FuelTank is FuelTank tank ? plan.WithFuel(FuelLayUp.Of(tank, limits: limits)) : plan;
    }

    /// <summary>Begins the question which of the permitted oils may go in, with the fitted oil already said.</summary>
    /// <returns>The question; not known when the permitted oils are not stated.</returns>
    /// <example><code>specification.ChooseOil().Value.ForColdestStart(Temperature.FromDegreesCelsius(-5)).Best;</code></example>
    public Answer<OilChoice> ChooseOil()
    {
        if (PermittedOils is null)
        {
            return Answer.NotKnown<OilChoice>($"The oil grades that the maker of '{Engine.Designation}' permits.");
        }

        OilChoice choice = OilSelection.Among(PermittedOils);
        return Answer.Known(FittedOil is null ? choice : choice.WithFitted(FittedOil));
    }

    /// <summary>The same data sheet for one of the variants.</summary>
    /// <param name="designation">The variant's designation.</param>
    /// <returns>A copy under that designation; all service data is shared.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is no such variant.</exception>
    public EngineSpecification For(string designation)
    {
        Guard.NotNull(designation);
        return Variants.Any(variant => variant.Designation == designation)
            ? new(Engine.WithDesignation(designation), Meter, Variants, Tasks, PermittedOils, FittedOil, Sump, OilTaskId, LayUp)
            : throw new KeyNotFoundException($"'{Engine.Designation}' has no variant '{designation}'.");
    }

    /// <summary>The engine's designation.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Engine.Designation;

    private ServiceTask AsCounted(ServiceTask task) =>
        Sump is { IsDrainedOnlyByExtractor: true } && task.Id == OilTaskId && task.PartialExchange == PartialExchange.Default
            ? task.WithPartialExchange(PartialExchange.ProRata)
            : task;
}
