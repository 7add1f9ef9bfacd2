using MarineService.Core.Internal;
using MarineService.Core.Specifications;

namespace MarineService.Core.Fleet;

/// <summary>A data sheet that many engines refer to, with what its tasks use up.</summary>
public sealed class FleetSpecification
{
    private FleetSpecification(string reference, EngineSpecification specification, PartNeed[] parts, int[] partTasks) =>
        (Reference, Specification, Parts, PartTasks) = (reference, specification, Array.AsReadOnly(parts), partTasks);

    /// <summary>What engines refer to it by.</summary>
    public string Reference { get; }

    /// <summary>The data sheet.</summary>
    public EngineSpecification Specification { get; }

    /// <summary>What its tasks use up, in the order given.</summary>
    public IReadOnlyList<PartNeed> Parts { get; }

    /// <summary>For each part the place of its task in the data sheet.</summary>
    internal IReadOnlyList<int> PartTasks { get; }

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
        string[] tasks = [.. specification.Tasks.Select(task => task.Id)];
        int[] partTasks = Array.ConvertAll(needs, need => Array.IndexOf(tasks, need.TaskId));
        return Array.IndexOf(partTasks, -1) is >= 0 and int stray
            ? throw new ArgumentException($"Must be for tasks of the data sheet; '{needs[stray].TaskId}' is none.", nameof(parts))
            : new(reference, specification, needs, partTasks);
    }
}
