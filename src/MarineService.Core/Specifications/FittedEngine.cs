using MarineService.Core.Internal;

namespace MarineService.Core.Specifications;

/// <summary>An engine in its place in a boat.</summary>
public sealed class FittedEngine
{
    private FittedEngine(string id, EngineSpecification specification) => (Id, Specification) = (id, specification);

    /// <summary>The id by which log entries name it, such as "main", "port" or "starboard".</summary>
    public string Id { get; }

    /// <summary>What it is and needs.</summary>
    public EngineSpecification Specification { get; }

    internal static FittedEngine Of(string id, EngineSpecification specification) => new(Guard.NotBlank(id), Guard.NotNull(specification));
}
