using System.Buffers;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization;
using MarineService.Core.Benchmarks.Exchange;

namespace MarineService.Core.Benchmarks.Fleet;

/// <summary>
/// The baseline of the stream: each line into plain objects by a generated context of System.Text.Json, last done plus interval for each task,
/// the result as plain objects, and a count of statuses. It checks nothing, knows no lay-up, no meter change, no duty, and no faults.
/// </summary>
internal sealed class PlainFleet(DateOnly today)
{
    private static readonly (string Id, decimal? Hours, int? Months)[] Tasks =
    [
        ("cooling-water", null, null), ("engine-oil", 100m, 12), ("impeller-look", 50m, 12), ("impeller", 300m, 24),
        ("belt", 100m, 12), ("coolant", null, 36), ("fuel-filter", 200m, 12), ("anodes", null, 6),
    ];

    private static readonly (string Task, string Part, decimal Quantity)[] Parts =
        [("engine-oil", "engine oil, L", 5.5m), ("engine-oil", "oil filter A", 1m), ("impeller", "impeller kit B", 1m), ("belt", "belt C", 1m)];

    private readonly ArrayBufferWriter<byte> _result = new();
    private readonly Dictionary<(string?, string, DateOnly?), decimal> _demand = [];
    private readonly int[] _statuses = new int[5];

    internal long Engines { get; private set; }

    internal void Run(ReadOnlySpan<byte> ndjson, Stream output)
    {
        while (ndjson.Length > 0)
        {
            int end = ndjson.IndexOf((byte)'\n');
            Line(ndjson[..end], output);
            ndjson = ndjson[(end + 1)..];
        }
    }

    private void Line(ReadOnlySpan<byte> line, Stream output)
    {
        PlainFleetEngine engine = JsonSerializer.Deserialize(line, PlainFleetContext.Default.PlainFleetEngine)!;
        PlainFleetResult result = new()
        {
            Format = "marine-service/fleet-result",
            Version = 1,
            Line = ++Engines,
            Engine = engine.Engine,
            Depot = engine.Depot,
            Fingerprint = Convert.ToHexStringLower(SHA256.HashData(line)),
            Library = "1.0.0",
            Rules = "1",
            Today = today,
            Tasks = [.. Tasks.Select(task => Judge(engine.Log!.Entries!, task.Id, task.Hours, task.Months))],
            Parts = [],
        };
        foreach ((string id, string part, decimal quantity) in Parts)
        {
            PlainFleetTask task = result.Tasks.Find(one => one.Id == id)!;
            DateOnly? week = task.Status is "due" or "overdue" ? today : task.DueDate;
            week = week?.AddDays(-(((int)week.Value.DayOfWeek + 6) % 7));
            result.Parts.Add(new() { Depot = engine.Depot, Week = week, Part = part, Quantity = quantity });
            _demand[(engine.Depot, part, week)] = _demand.GetValueOrDefault((engine.Depot, part, week)) + quantity;
        }

        _result.ResetWrittenCount();
        using (Utf8JsonWriter writer = new(_result))
        {
            JsonSerializer.Serialize(writer, result, PlainFleetContext.Default.PlainFleetResult);
        }

        output.Write(_result.WrittenSpan);
        output.WriteByte((byte)'\n');
    }

    private PlainFleetTask Judge(List<PlainEntry> entries, string id, decimal? hours, int? months)
    {
        DateOnly? done = null;
        decimal? doneAt = null;
        decimal now = 0;
        foreach (PlainEntry entry in entries)
        {
            now = Math.Max(now, entry.Dial ?? 0);
            if (entry.Task == id || entry.Task is null)
            {
                done = entry.Date > done || done is null ? entry.Date : done;
                doneAt = entry.Task == id ? entry.Dial ?? now : doneAt ?? now;
            }
        }

        DateOnly? date = months is int some ? done?.AddMonths(some) : null;
        decimal? at = doneAt + hours;
        int left = date is DateOnly day ? day.DayNumber - today.DayNumber : int.MaxValue;
        decimal hoursLeft = at - now ?? decimal.MaxValue;
        int status = hours is null && months is null ? 1 : left < -36 || hoursLeft < -10 ? 4 : left <= 0 || hoursLeft <= 0 ? 3 : left <= 30 || hoursLeft <= 10 ? 2 : 0;
        _statuses[status]++;
        return new() { Id = id, Status = Word(status), Governs = hoursLeft < left ? "hours" : "calendar", DueDate = date, DueHours = at };
    }

    private static string Word(int status) => status switch { 1 => "each-use", 2 => "due-soon", 3 => "due", 4 => "overdue", _ => "not-due" };
}

internal sealed class PlainFleetEngine
{
    public string? Format { get; set; }

    public int Version { get; set; }

    public string? Engine { get; set; }

    public string? Specification { get; set; }

    public string? Depot { get; set; }

    public PlainLog? Log { get; set; }
}

internal sealed class PlainFleetTask
{
    public string? Id { get; set; }

    public string? Status { get; set; }

    public string? Governs { get; set; }

    public DateOnly? DueDate { get; set; }

    public decimal? DueHours { get; set; }
}

internal sealed class PlainPart
{
    public string? Depot { get; set; }

    public DateOnly? Week { get; set; }

    public string? Part { get; set; }

    public decimal Quantity { get; set; }
}

internal sealed class PlainFleetResult
{
    public string? Format { get; set; }

    public int Version { get; set; }

    public long Line { get; set; }

    public string? Engine { get; set; }

    public string? Depot { get; set; }

    public string? Fingerprint { get; set; }

    public string? Library { get; set; }

    public string? Rules { get; set; }

    public DateOnly Today { get; set; }

    public required List<PlainFleetTask> Tasks { get; set; }

    public required List<PlainPart> Parts { get; set; }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UseStringEnumConverter = true)]
[JsonSerializable(typeof(PlainFleetEngine))]
[JsonSerializable(typeof(PlainFleetResult))]
internal sealed partial class PlainFleetContext : JsonSerializerContext;
