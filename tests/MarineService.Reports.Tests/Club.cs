using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Reports.Tests;

/// <summary>The demo club's boats and logs, as the sample carries them.</summary>
internal static class Club
{
    internal static readonly LocalDate Today = new(2026, 10, 12);

    internal static IEnumerable<string> Boats { get; } = ["curlew", "dipper", "tern"];

    internal static BoatSpecification Boat(string name) => BoatSpecificationJson.Read(Bytes($"{name}.boat.json")).Value;

    internal static ServiceLog Log(string name) => ServiceLogJson.Read(Bytes($"{name}.log.json")).Value;

    private static byte[] Bytes(string file)
    {
        using Stream stream = typeof(Club).Assembly.GetManifestResourceStream("Club/" + file)!;
        using MemoryStream bytes = new();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
