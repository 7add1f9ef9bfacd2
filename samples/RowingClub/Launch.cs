using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Specifications;
using NodaTime;

namespace RowingClub;

/// <summary>A boat with its record: one of the club's, or the user's from files.</summary>
internal sealed record Launch(BoatSpecification Boat, ServiceLog Log, LocalDate Today)
{
    /// <summary>The day on which the club's story is told.</summary>
    internal static readonly LocalDate DemoDay = new(2026, 10, 12);

    private static readonly string[] ClubNames = ["Curlew", "Dipper", "Tern"];

    /// <summary>The club's launches on a day.</summary>
    internal static IReadOnlyList<Launch> Club(LocalDate? today) => [.. ClubNames.Select(name => OfClub(name, today))];

    /// <summary>One of the club's launches.</summary>
    internal static Launch OfClub(string name, LocalDate? today)
    {
        string known = ClubNames.FirstOrDefault(club => club.Equals(name, StringComparison.OrdinalIgnoreCase))
            ?? throw new UserFault(ExitCode.WrongUsage, name.StartsWith('-') ? $"There is no option '{name}'." : $"The club has no launch '{name}'. It has {string.Join(", ", ClubNames)}. For a boat of your own give --spec and --log.");
#pragma warning disable CA1308 // The embedded files have lower-case names.
        string file = known.ToLowerInvariant();
#pragma warning restore CA1308
        return new(
            Read($"{file}.boat.json", Embedded($"{file}.boat.json"), ReadBoat),
            ReadLog($"{file}.log.json", Embedded($"{file}.log.json")),
            today ?? DemoDay);
    }

    /// <summary>A boat or an engine from files.</summary>
    internal static Launch FromFiles(string specification, string log, LocalDate? today) =>
        new(
            Read(specification, Inputs.Read(specification), ReadBoat),
            ReadLog(log, Inputs.Read(log)),
            today ?? Inputs.Today());

    internal static ServiceLog ReadLog(string name, byte[] utf8) => Read(name, utf8, document => ServiceLogJson.Read(document));

    internal static byte[] Embedded(string name)
    {
        using Stream stream = typeof(Launch).Assembly.GetManifestResourceStream($"Data/{name}")!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    // A data sheet of an engine alone stands for a boat with that one engine and no tasks of its own.
    private static ReadResult<BoatSpecification> ReadBoat(byte[] utf8)
    {
        if (DocumentFormat.Of(utf8).OrElse("") != "marine-service/engine-specification")
        {
            return BoatSpecificationJson.Read(utf8);
        }

        ReadResult<EngineSpecification> engine = EngineSpecificationJson.Read(utf8);
        if (!engine.IsRead)
        {
            throw new UserFault(ExitCode.BadData, engine.Faults.Select(fault => fault.ToString()));
        }

        BoatSpecification boat = BoatSpecification.Of(MarineService.Core.Engines.Boat.Of(engine.Value.Engine.Designation))
            .WithEngine(LogEntry.MainEngine, engine.Value);
        return BoatSpecificationJson.Read(System.Text.Encoding.UTF8.GetBytes(BoatSpecificationJson.ToText(boat)));
    }

    private static T Read<T>(string name, byte[] utf8, Func<byte[], ReadResult<T>> read)
        where T : class
    {
        ReadResult<T> result = read(utf8);
        return result.IsRead
            ? result.Value
            : throw new UserFault(ExitCode.BadData, result.Faults.Select(fault => $"{name}: {fault}").Prepend($"{name} has {Faults(result.Faults.Count)}:"));
    }

    private static string Faults(int count) => count == 1 ? "one fault" : $"{count} faults";
}
