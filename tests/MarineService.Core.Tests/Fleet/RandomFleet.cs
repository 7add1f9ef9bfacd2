using System.Buffers;
using System.Text;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Core.Tests.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Fleet;

/// <summary>Many engines from a seed, and the question that is asked about them.</summary>
internal static class RandomFleet
{
    internal static LocalDate Today { get; } = new(2024, 2, 1);

    internal static FleetEvaluation Evaluation { get; } = FleetEvaluation.Of(
        FleetCatalogue.Of(
            FleetSpecification.Of(
                "corrie-60p", RandomHistory.Specification, PartNeed.Of("oil", "oil, L", 5.5m), PartNeed.Of("oil", "oil filter A"), PartNeed.Of("minor", "gasket C")),
            FleetSpecification.Of(
                "brae-16d", EngineSpecification.Named("Brae 16D").With(ServiceTask.Replace("oil", ServiceInterval.OfMonths(12)), ServiceTask.EachUse("look", TaskAction.Inspect)), PartNeed.Of("oil", "oil, L", 4m))),
        Today);

    internal static FleetEngine Engine(int number) => FleetEngine.Of(
        $"E-{number}",
        number % 5 == 0 ? "brae-16d" : "corrie-60p",
        ServiceLog.Of(new RandomHistory(number).Facts.Where(fact => number % 5 != 0 || fact is MeterReading).Select(LogEntry.Of)),
        (number % 3) switch { 0 => null, 1 => "north", _ => "south" });

    internal static string Line(FleetEngine engine)
    {
        ArrayBufferWriter<byte> output = new();
        FleetEngineJson.Write(engine, output);
        return Encoding.UTF8.GetString(output.WrittenSpan.ToArray());
    }

    internal static string Lines(int from, int count) => string.Concat(Enumerable.Range(from, count).Select(number => Line(Engine(number)) + "\n"));
}
