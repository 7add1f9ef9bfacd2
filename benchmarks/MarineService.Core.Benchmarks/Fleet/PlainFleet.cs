using System.Buffers;
using System.IO.Pipelines;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using global::Fleet;
using MarineService.Core.Benchmarks.Exchange;
using MarineService.Core.Engines;
using MarineService.Core.Fleet;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Benchmarks.Fleet;

/// <summary>
/// The frame of the baselines of the stream: each line into plain objects by a generated context of System.Text.Json, a verdict on each task, the
/// result as plain objects, and counts. How tasks are judged is left to the two kinds.
/// </summary>
internal abstract class PlainFleet(DateOnly today, JsonTypeInfo<PlainFleetEngine> engines)
{
    private readonly ArrayBufferWriter<byte> _result = new();
    private readonly Dictionary<(string?, string, DateOnly?), decimal> _demand = [];
    private readonly Dictionary<DateOnly, long> _dueDates = [];
    private readonly Dictionary<string, long> _statuses = [];

    internal long Engines { get; private set; }

    internal IReadOnlyDictionary<string, long> Statuses => _statuses;

    internal int DueDates => _dueDates.Count;

    internal int Demands => _demand.Count;

    protected DateOnly Today => today;

    /// <summary>Line by line from a stream, as the framework's pipes read lines; no more than a line is held.</summary>
    internal async Task Run(Stream ndjson, Stream output)
    {
        PipeReader reader = PipeReader.Create(ndjson, new StreamPipeReaderOptions(bufferSize: 1 << 16));
        ReadResult read;
        do
        {
            read = await reader.ReadAsync().ConfigureAwait(false);
            ReadOnlySequence<byte> rest = read.Buffer;
            while (rest.PositionOf((byte)'\n') is SequencePosition end)
            {
                ReadOnlySequence<byte> line = rest.Slice(0, end);
                Line(line.IsSingleSegment ? line.FirstSpan : line.ToArray(), output);
                rest = rest.Slice(rest.GetPosition(1, end));
            }

            reader.AdvanceTo(rest.Start, rest.End);
        }
        while (!read.IsCompleted);
        await reader.CompleteAsync().ConfigureAwait(false);
    }

    protected abstract List<PlainFleetTask> Judge(PlainFleetEngine engine, FleetSpecification sheet);

    private void Line(ReadOnlySpan<byte> line, Stream output)
    {
        PlainFleetEngine engine = JsonSerializer.Deserialize(line, engines)!;
        FleetSpecification sheet = Catalogue.Invented.Find(engine.Specification!)!;
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
            Tasks = Judge(engine, sheet),
        };
        foreach (PlainFleetTask task in result.Tasks)
        {
            _statuses[task.Status!] = _statuses.GetValueOrDefault(task.Status!) + 1;
            if (task.DueDate is DateOnly due)
            {
                _dueDates[due] = _dueDates.GetValueOrDefault(due) + 1;
            }
        }

        foreach (PartNeed need in sheet.Parts)
        {
            PlainFleetTask task = result.Tasks.Find(one => one.Id == need.TaskId)!;
            DateOnly? week = task.Status is "due" or "overdue" ? today : task.DueDate;
            week = week?.AddDays(-(((int)week.Value.DayOfWeek + 6) % 7));
            _demand[(engine.Depot, need.Part, week)] = _demand.GetValueOrDefault((engine.Depot, need.Part, week)) + need.Quantity;
        }

        _result.ResetWrittenCount();
        using (Utf8JsonWriter writer = new(_result))
        {
            JsonSerializer.Serialize(writer, result, PlainFleetContext.Default.PlainFleetResult);
        }

        output.Write(_result.WrittenSpan);
        output.WriteByte((byte)'\n');
    }
}

/// <summary>Does the same work as the stream: plain objects into the library's own, which check them, and judged by its rules; what an integrator writes without the stream.</summary>
internal sealed class PlainFleetByRules(DateOnly today) : PlainFleet(today, StrictFleetContext.Default.PlainFleetEngine)
{
    /// <summary>The words of the statuses, in the order of the enum.</summary>
    internal static readonly string[] Words = ["not-due", "each-use", "due-soon", "due", "overdue"];

    protected override List<PlainFleetTask> Judge(PlainFleetEngine engine, FleetSpecification sheet)
    {
        ServiceLog log = ServiceLog.Of(engine.Log!.Entries!.Select(entry => LogEntry.Of(Fact(entry)).WithId(entry.Id!)));
        return
        [
            .. log.DueList(sheet.Specification, LocalDate.FromDateOnly(Today)).Tasks.Select(task => new PlainFleetTask
            {
                Id = task.TaskId,
                Status = Words[(int)task.Status],
                Governs = task.Governs.ToString(),
                DueDate = task.Due.Date?.ToDateOnly(),
                DueHours = task.Due.Hours?.ToHours(),
            }),
        ];
    }

    private static ServiceFact Fact(PlainEntry entry)
    {
        LocalDate date = LocalDate.FromDateOnly(entry.Date);
        EngineHours? dial = entry.Dial is decimal hours ? EngineHours.FromHours(hours) : null;
        return entry.Kind switch
        {
            PlainKind.Reading => MeterReading.Of(date, dial!.Value),
            PlainKind.EnteredService => EnteredService.New(date, dial),
            _ => Completion.Of(entry.Task!, date, dial),
        };
    }
}

/// <summary>Takes the last completion plus the interval, and checks nothing: no faults, no lay-up, no meter change, no duty. How cheap a wrong answer can be.</summary>
internal sealed class PlainFleetByLastDone(DateOnly today) : PlainFleet(today, PlainFleetContext.Default.PlainFleetEngine)
{
    private static readonly (string Id, decimal? Hours, int? Months)[] Tasks =
    [
        ("cooling-water", null, null), ("engine-oil", 100m, 12), ("impeller-look", 50m, 12), ("impeller", 300m, 24),
        ("belt", 100m, 12), ("coolant", null, 36), ("fuel-filter", 200m, 12), ("anodes", null, 6),
    ];

    protected override List<PlainFleetTask> Judge(PlainFleetEngine engine, FleetSpecification sheet) =>
        [.. Tasks.Select(task => Judge(engine.Log!.Entries!, task.Id, task.Hours, task.Months))];

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
        int left = date is DateOnly day ? day.DayNumber - Today.DayNumber : int.MaxValue;
        decimal hoursLeft = at - now ?? decimal.MaxValue;
        string status = hours is null && months is null ? "each-use"
            : left < -36 || hoursLeft < -10 ? "overdue"
            : left <= 0 || hoursLeft <= 0 ? "due"
            : left <= 30 || hoursLeft <= 10 ? "due-soon" : "not-due";
        return new() { Id = id, Status = status, Governs = hoursLeft < left ? "hours" : "calendar", DueDate = date, DueHours = at };
    }
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
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UseStringEnumConverter = true)]
[JsonSerializable(typeof(PlainFleetEngine))]
[JsonSerializable(typeof(PlainFleetResult))]
internal sealed partial class PlainFleetContext : JsonSerializerContext;

/// <summary>Refuses what no engine has and what is said twice, as the stream does.</summary>
[JsonSourceGenerationOptions(
    JsonSerializerDefaults.Strict,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true)]
[JsonSerializable(typeof(PlainFleetEngine))]
internal sealed partial class StrictFleetContext : JsonSerializerContext;
