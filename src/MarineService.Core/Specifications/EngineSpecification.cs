using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Internal;
using MarineService.Core.Oils;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Specifications;

/// <summary>What one engine is and needs: its identity, its meter, its variants, its tasks, the oils that it may have, and its raw-water side.</summary>
/// <remarks>Built by With methods; each returns a copy. The engine's own manual outranks every figure in it.</remarks>
public sealed class EngineSpecification
{
    private TaskPlan? _plan;

    private EngineSpecification(
        Engine engine, HourMeter meter, IReadOnlyList<EngineVariant> variants, IReadOnlyList<ServiceTask> tasks, PermittedOils? permittedOils, LabelledOil? fittedOil, RawWaterSystem? rawWater) =>
        (Engine, Meter, Variants, Tasks, PermittedOils, FittedOil, RawWater) = (engine, meter, variants, tasks, permittedOils, fittedOil, rawWater);

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

    /// <summary>The raw-water side: circuit in the order of flow, pump, outlet limit; null when it is not stated.</summary>
    public RawWaterSystem? RawWater { get; }

    /// <summary>The tasks, checked against each other.</summary>
    /// <exception cref="ArgumentException">A task refers to an id that is not there, or includes itself by way of others.</exception>
    public TaskPlan Plan => _plan ??= TaskPlan.Of(Tasks);

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
    public static EngineSpecification Of(Engine engine) => new(Guard.NotNull(engine), HourMeter.Plain, [], [], null, null, null);

    /// <summary>A copy with more tasks.</summary>
    /// <param name="tasks">The tasks; ids distinct from each other and from those already there.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tasks"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">An id is used twice.</exception>
    public EngineSpecification With(params ServiceTask[] tasks)
    {
        IReadOnlyList<ServiceTask> all = Array.AsReadOnly<ServiceTask>([.. Tasks, .. Guard.Items(tasks)]);
        Names.Distinct(all.Select(task => task.Id), nameof(tasks));
        return new(Engine, Meter, Variants, all, PermittedOils, FittedOil, RawWater);
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
        return new(Engine, Meter, all, Tasks, PermittedOils, FittedOil, RawWater);
    }

    /// <summary>A copy with what is known of the hour meter.</summary>
    /// <param name="meter">The meter that the engine starts with.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="meter"/> is null.</exception>
    public EngineSpecification WithMeter(HourMeter meter) => new(Engine, Guard.NotNull(meter), Variants, Tasks, PermittedOils, FittedOil, RawWater);

    /// <summary>A copy with the engine oils that the maker permits.</summary>
    /// <param name="permitted">Grades with the maker's limits, required and forbidden service categories.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="permitted"/> is null.</exception>
    public EngineSpecification WithPermittedOils(PermittedOils permitted) =>
        new(Engine, Meter, Variants, Tasks, Guard.NotNull(permitted), FittedOil, RawWater);

    /// <summary>A copy with the oil that is in the sump.</summary>
    /// <param name="oil">The oil by its label.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="oil"/> is null.</exception>
    public EngineSpecification WithFittedOil(LabelledOil oil) =>
        new(Engine, Meter, Variants, Tasks, PermittedOils, Guard.NotNull(oil), RawWater);

    /// <summary>A copy with the raw-water side.</summary>
    /// <param name="rawWater">Circuit in the order of flow, pump, outlet limit.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rawWater"/> is null.</exception>
    public EngineSpecification WithRawWater(RawWaterSystem rawWater) =>
        new(Engine, Meter, Variants, Tasks, PermittedOils, FittedOil, Guard.NotNull(rawWater));

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
            ? new(Engine.WithDesignation(designation), Meter, Variants, Tasks, PermittedOils, FittedOil, RawWater)
            : throw new KeyNotFoundException($"'{Engine.Designation}' has no variant '{designation}'.");
    }

    /// <summary>The engine's designation.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Engine.Designation;
}
