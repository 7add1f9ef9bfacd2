using System.Text;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Exchange;

/// <summary>What the tests do alike with each kind of document: read it for its faults, read it and write it again.</summary>
internal sealed record DocumentKind(string Format, string Schema, Func<byte[], IReadOnlyList<ReadFault>> Faults, Func<byte[], string> Rewrite)
{
    internal static IReadOnlyList<DocumentKind> All { get; } =
    [
        new(
            "marine-service/engine-specification",
            DocumentSchemas.EngineSpecification,
            utf8 => EngineSpecificationJson.Read(utf8).Faults,
            utf8 => EngineSpecificationJson.ToText(EngineSpecificationJson.Read(utf8).Value)),
        new(
            "marine-service/boat-specification",
            DocumentSchemas.BoatSpecification,
            utf8 => BoatSpecificationJson.Read(utf8).Faults,
            utf8 => BoatSpecificationJson.ToText(BoatSpecificationJson.Read(utf8).Value)),
        new(
            "marine-service/service-log",
            DocumentSchemas.ServiceLog,
            utf8 => ServiceLogJson.Read(utf8).Faults,
            utf8 => ServiceLogJson.ToText(ServiceLogJson.Read(utf8).Value)),
        new(
            "marine-service/visit-report",
            DocumentSchemas.VisitReport,
            utf8 => VisitReportJson.Read(utf8).Faults,
            utf8 => VisitReportJson.ToText(VisitReportJson.Read(utf8).Value)),
        new(
            "marine-service/procedure",
            DocumentSchemas.Procedure,
            utf8 => ProcedureJson.Read(utf8).Faults,
            utf8 => ProcedureJson.ToText(ProcedureJson.Read(utf8).Value)),
        new(
            "marine-service/fleet-engine",
            DocumentSchemas.FleetEngine,
            utf8 => FleetEngineJson.Read(utf8).Faults,
            utf8 => Line(FleetEngineJson.Read(utf8).Value)),
        new(
            "marine-service/fleet-summary",
            DocumentSchemas.FleetSummary,
            utf8 => FleetSummaryJson.Read(utf8).Faults,
            utf8 => FleetSummaryJson.ToText(FleetSummaryJson.Read(utf8).Value)),
    ];

    internal static DocumentKind Of(byte[] utf8) => All.Single(kind => kind.Format == DocumentFormat.Of(utf8).Value);

    internal IReadOnlyList<ReadFault> FaultsOf(string text) => Faults(Encoding.UTF8.GetBytes(text));

    private static string Line(MarineService.Core.Fleet.FleetEngine engine)
    {
        System.Buffers.ArrayBufferWriter<byte> output = new();
        FleetEngineJson.Write(engine, output);
        return Encoding.UTF8.GetString(output.WrittenSpan);
    }
}
