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

    // A hobbyist's own files may say beside a figure where it comes from.
    private static readonly ReadLimits ByHand = ReadLimits.Default.AllowingComments();

    private static readonly string[] ClubNames = ["Curlew", "Dipper", "Tern"];

    /// <summary>The club's launches on a day.</summary>
    internal static IReadOnlyList<Launch> Club(LocalDate? today) => [.. ClubNames.Select(name => OfClub(name, today))];

    /// <summary>One of the club's launches.</summary>
    internal static Launch OfClub(string name, LocalDate? today)
    {
        string known = ClubNames.FirstOrDefault(club => club.Equals(name, StringComparison.OrdinalIgnoreCase))
            ?? throw new UserFault(ExitCode.WrongUsage, name.StartsWith('-') ? $"There is no option '{name}'." : $"The club has no launch '{name}'. {(Spelling.NearestTo(name, ClubNames) is string meant ? $"Did you mean {meant}? " : "")}It has {string.Join(", ", ClubNames)}. For a boat of your own give --spec and --log.");
        string file = FileName.Of(known);
        return new(
            ReadBoat($"{file}.boat.json", Embedded($"{file}.boat.json")),
            ReadLog($"{file}.log.json", Embedded($"{file}.log.json")),
            today ?? DemoDay);
    }

    /// <summary>A boat or an engine from files.</summary>
    internal static Launch FromFiles(string specification, string? log, LocalDate? today) =>
        new(
            ReadBoat(specification, Inputs.Read(specification)),
            log is null ? ServiceLog.Empty : ReadLog(log, Inputs.Read(log)),
            today ?? Inputs.Today());

    internal static ServiceLog ReadLog(string name, byte[] utf8) => Read(name, utf8, document => ServiceLogJson.Read(document, ByHand));

    internal static bool IsEmbedded(string name) => typeof(Launch).Assembly.GetManifestResourceInfo($"Data/{name}") is not null;

    internal static byte[] Embedded(string name)
    {
        using Stream stream = typeof(Launch).Assembly.GetManifestResourceStream($"Data/{name}")!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    // A data sheet of an engine alone stands for a boat with that one engine and no tasks of its own.
    internal static BoatSpecification ReadBoat(string name, byte[] utf8)
    {
        if (DocumentFormat.Of(utf8).OrElse("") != "marine-service/engine-specification")
        {
            return Read(name, utf8, document => BoatSpecificationJson.Read(document, ByHand));
        }

        EngineSpecification engine = Read(name, utf8, document => EngineSpecificationJson.Read(document, ByHand));
        return BoatSpecification.Of(MarineService.Core.Engines.Boat.Of(engine.Engine.Designation)).WithEngine(LogEntry.MainEngine, engine);
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
