using MarineService.Core.Fleet;
using MarineService.Core.Records;

namespace MarineService.Core.Exchange;

/// <summary>What has been read of an engine of a fleet so far.</summary>
internal sealed class FleetEngineParts
{
    internal string? Engine { get; set; }

    internal string? Specification { get; set; }

    internal string? Depot { get; set; }

    internal ServiceLog? Log { get; set; }

    internal FleetEngine Build(string? fingerprint) => FleetEngine.Of(Engine!, Specification!, Log!, Depot, fingerprint);
}
