using MarineService.Core.Internal;
using MarineService.Core.Specifications;

namespace MarineService.Core.Fleet;

/// <summary>A data sheet that many engines refer to, with what its tasks use up.</summary>
public sealed class FleetSpecification
{
    private FleetSpecification(string reference, EngineSpecification specification, IReadOnlyList<PartNeed> parts) =>
        (Reference, Specification, Parts) = (reference, specification, parts);

    /// <summary>What engines refer to it by.</summary>
    public string Reference { get; }

    /// <summary>The data sheet.</summary>
    public EngineSpecification Specification { get; }

    /// <summary>What its tasks use up, in the order given.</summary>
    public IReadOnlyList<PartNeed> Parts { get; }

    /// <summary>A data sheet under a reference.</summary>
    /// <param name="reference">What engines refer to it by; not blank.</param>
    /// <param name="specification">The data sheet.</param>
    /// <param name="parts">What its tasks use up.</param>
    /// <returns>The data sheet under its reference.</returns>
    /// <exception cref="ArgumentNullException">An argument or an item is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="reference"/> is blank, or a part is for a task that the data sheet does not have.</exception>
    public static FleetSpecification Of(string reference, EngineSpecification specification, params PartNeed[] parts)
    {
        Guard.NotBlank(reference);
        Guard.NotNull(specification);
        PartNeed[] needs = [.. Guard.Items(parts)];
        return Array.Find(needs, need => !specification.Tasks.Any(task => task.Id == need.TaskId)) is PartNeed stray
            ? throw new ArgumentException($"Must be for tasks of the data sheet; '{stray.TaskId}' is none.", nameof(parts))
            : new(reference, specification, Array.AsReadOnly(needs));
    }
}
