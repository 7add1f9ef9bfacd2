using MarineService.Core.Internal;
using MarineService.Core.Records;

namespace MarineService.Core.Fleet;

/// <summary>One engine of a fleet: who it is, which data sheet it follows, where its parts come from, and its log.</summary>
public sealed class FleetEngine
{
    private FleetEngine(string id, string specification, ServiceLog log, string? depot, string? fingerprint) =>
        (Id, Specification, Log, Depot, Fingerprint) = (id, specification, log, depot, fingerprint);

    /// <summary>The engine's id in the fleet.</summary>
    public string Id { get; }

    /// <summary>The reference of its data sheet in the catalogue.</summary>
    public string Specification { get; }

    /// <summary>What was read and done.</summary>
    public ServiceLog Log { get; }

    /// <summary>The depot that its parts come from, or null when none is stated.</summary>
    public string? Depot { get; }

    /// <summary>What tells this input from any other, or null when it did not come from a document.</summary>
    public string? Fingerprint { get; }

    /// <summary>An engine.</summary>
    /// <param name="id">The engine's id in the fleet; not blank.</param>
    /// <param name="specification">The reference of its data sheet; not blank.</param>
    /// <param name="log">What was read and done.</param>
    /// <param name="depot">The depot that its parts come from; not blank, or null when none is stated.</param>
    /// <param name="fingerprint">What tells this input from any other; not blank, or null.</param>
    /// <returns>The engine.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/>, <paramref name="specification"/> or <paramref name="log"/> is null.</exception>
    /// <exception cref="ArgumentException">A text is blank.</exception>
    public static FleetEngine Of(string id, string specification, ServiceLog log, string? depot = null, string? fingerprint = null) => new(
        Guard.NotBlank(id),
        Guard.NotBlank(specification),
        Guard.NotNull(log),
        depot is null ? null : Guard.NotBlank(depot),
        fingerprint is null ? null : Guard.NotBlank(fingerprint));
}
