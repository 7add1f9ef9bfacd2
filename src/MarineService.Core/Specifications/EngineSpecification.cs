using MarineService.Core.Belts;
using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using MarineService.Core.LayUp;
using MarineService.Core.Oils;
using MarineService.Core.Parts;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Specifications;

/// <summary>What one engine is and needs: its identity, its meter, its variants, its tasks, the oils that it may have, its sump, its belt drive, its raw-water side, its covers, its parts, and what the winter needs of it.</summary>
/// <remarks>Built by With methods; each returns a copy. The engine's own manual outranks every figure in it.</remarks>
public sealed class EngineSpecification
{
    /// <summary>The id of the task that changes the engine oil, unless another is stated.</summary>
    public const string EngineOilTask = "engine-oil";

    private readonly Stated _stated;
    private TaskPlan? _plan;

    private EngineSpecification(Stated stated) => _stated = stated;

    /// <summary>The engine's identity.</summary>
    public Engine Engine => _stated.Engine;

    /// <summary>The hour meter that it starts with.</summary>
    public HourMeter Meter => _stated.Meter;

    /// <summary>Engines that share all of this and differ only in their rating.</summary>
    public IReadOnlyList<EngineVariant> Variants => _stated.Variants;

    /// <summary>What the engine needs, in the order given.</summary>
    public IReadOnlyList<ServiceTask> Tasks => _stated.Tasks;

    /// <summary>The engine oils that the maker permits, or null when that is not stated.</summary>
    public PermittedOils? PermittedOils => _stated.PermittedOils;

    /// <summary>The oil that is in the sump by its label, or null when that is not stated.</summary>
    public LabelledOil? FittedOil => _stated.FittedOil;

    /// <summary>The pulleys, the belt, the tensioner and the engine's own routing, or null when that is not stated.</summary>
    public BeltDrive? BeltDrive => _stated.BeltDrive;

    /// <summary>What the engine's oil system holds and how its dipstick tells, or null when that is not stated.</summary>
    public Sump? Sump => _stated.Sump;

    /// <summary>The id of the task that changes the engine oil.</summary>
    public string OilTaskId => _stated.OilTaskId;

    /// <summary>The raw-water side: circuit in the order of flow, pump, outlet limit; null when it is not stated.</summary>
    public RawWaterSystem? RawWater => _stated.RawWater;

    /// <summary>What is known of the engine for the winter, or null when nothing is stated.</summary>
    public LayUpSheet? LayUp => _stated.LayUp;

    /// <summary>The covers whose screws or holes are stated, in the order given.</summary>
    public IReadOnlyList<FittedCover> Covers => _stated.Covers ?? [];

    /// <summary>Which parts the engine takes, which task takes and takes off what, and what it costs; null when that is not stated.</summary>
    public PartsSheet? PartsSheet => _stated.PartsSheet;

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
    public static EngineSpecification Of(Engine engine) => new(new Stated(Guard.NotNull(engine), HourMeter.Plain, [], []));

    /// <summary>A copy with more tasks.</summary>
    /// <param name="tasks">The tasks; ids distinct from each other and from those already there.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">An id is used twice.</exception>
    public EngineSpecification With(params ServiceTask[] tasks)
    {
        IReadOnlyList<ServiceTask> all = Array.AsReadOnly<ServiceTask>([.. Tasks, .. Guard.Items(tasks)]);
        Names.Distinct(all.Select(task => task.Id), nameof(tasks));
        return new(_stated with { Tasks = all });
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
        return new(_stated with { Variants = all });
    }

    /// <summary>A copy with more covers.</summary>
    /// <param name="covers">The covers; names distinct from each other and from those already there.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="covers"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">A name is used twice.</exception>
    public EngineSpecification With(params FittedCover[] covers)
    {
        IReadOnlyList<FittedCover> all = Array.AsReadOnly<FittedCover>([.. Covers, .. Guard.Items(covers)]);
        Names.Distinct(all.Select(cover => cover.Name), nameof(covers));
        return new(_stated with { Covers = all });
    }

    /// <summary>A copy with what is known of the hour meter.</summary>
    /// <param name="meter">The meter that the engine starts with.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="meter"/> is null.</exception>
    public EngineSpecification WithMeter(HourMeter meter) => new(_stated with { Meter = Guard.NotNull(meter) });

    /// <summary>A copy with the engine oils that the maker permits.</summary>
    /// <param name="permitted">Grades with the maker's limits, required and forbidden service categories.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="permitted"/> is null.</exception>
    public EngineSpecification WithPermittedOils(PermittedOils permitted) =>
        new(_stated with { PermittedOils = Guard.NotNull(permitted) });

    /// <summary>A copy with the oil that is in the sump.</summary>
    /// <param name="oil">The oil by its label.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="oil"/> is null.</exception>
    public EngineSpecification WithFittedOil(LabelledOil oil) =>
        new(_stated with { FittedOil = Guard.NotNull(oil) });

    /// <summary>A copy with the belt drive.</summary>
    /// <param name="drive">Pulleys, belt, tensioner, and the engine's own routing when it is known.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="drive"/> is null.</exception>
    public EngineSpecification WithBeltDrive(BeltDrive drive) => new(_stated with { BeltDrive = Guard.NotNull(drive) });

    /// <summary>A copy with what the oil system holds and how the dipstick tells.</summary>
    /// <param name="sump">The sump; its faults are <see cref="Fluids.Sump.Validate"/>'s to tell.</param>
    /// <param name="oilTaskId">The id of the task that changes the oil; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sump"/> or <paramref name="oilTaskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="oilTaskId"/> is blank.</exception>
    public EngineSpecification WithSump(Sump sump, string oilTaskId = EngineOilTask) =>
        new(_stated with { Sump = Guard.NotNull(sump), OilTaskId = Guard.NotBlank(oilTaskId) });

    /// <summary>A copy with the raw-water side.</summary>
    /// <param name="rawWater">Circuit in the order of flow, pump, outlet limit.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rawWater"/> is null.</exception>
    public EngineSpecification WithRawWater(RawWaterSystem rawWater) => new(_stated with { RawWater = Guard.NotNull(rawWater) });

    /// <summary>A copy with what is known of the engine for the winter.</summary>
    /// <param name="layUp">Raw-water side, cylinders, fuel tank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="layUp"/> is null.</exception>
    public EngineSpecification WithLayUp(LayUpSheet layUp) => new(_stated with { LayUp = Guard.NotNull(layUp) });

    /// <summary>A copy with the parts.</summary>
    /// <param name="parts">Catalogue, kits, loose parts, spares, packs and filter bases; what it says of tasks that the engine does not have is left alone.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="parts"/> is null.</exception>
    public EngineSpecification WithPartsSheet(PartsSheet parts) => new(_stated with { PartsSheet = Guard.NotNull(parts) });

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
            ? new(_stated with { Engine = Engine.WithDesignation(designation) })
            : throw new KeyNotFoundException($"'{Engine.Designation}' has no variant '{designation}'.");
    }

    /// <summary>The engine's designation.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Engine.Designation;

    private ServiceTask AsCounted(ServiceTask task) =>
        Sump is { IsDrainedOnlyByExtractor: true } && task.Id == OilTaskId && task.PartialExchange == PartialExchange.Default
            ? task.WithPartialExchange(PartialExchange.ProRata)
            : task;

    private readonly record struct Stated(
        Engine Engine,
        HourMeter Meter,
        IReadOnlyList<EngineVariant> Variants,
        IReadOnlyList<ServiceTask> Tasks,
        PermittedOils? PermittedOils = null,
        LabelledOil? FittedOil = null,
        BeltDrive? BeltDrive = null,
        Sump? Sump = null,
        string OilTaskId = EngineOilTask,
        RawWaterSystem? RawWater = null,
        LayUpSheet? LayUp = null,
        IReadOnlyList<FittedCover>? Covers = null,
        PartsSheet? PartsSheet = null);
}
