using System.Globalization;
using System.Text.Json;
using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>One row of interval-scenarios.csv, turned into a specification and a log.</summary>
internal sealed class Scenario
{
    private readonly IReadOnlyDictionary<string, string> _row;
    private readonly List<ServiceTask> _tasks = [];
    private readonly List<ServiceFact> _facts = [];

    internal Scenario(IReadOnlyDictionary<string, string> row)
    {
        _row = row;
        AsOf = Date(row["as_of_date"]);
        Other = row["expected_other_json"].Length == 0
            ? []
            : JsonDocument.Parse(row["expected_other_json"]).RootElement.EnumerateObject().ToDictionary(member => member.Name, member => member.Value);
        JsonElement[] events = [.. JsonDocument.Parse(row["events_json"]).RootElement.EnumerateArray()];
        MakeTasks(events);
        LocalDate opened = events.Where(e => e.TryGetProperty("date", out _) && Text(e, "type") != "dueWas").Select(e => Date(Text(e, "date")!)).Append(AsOf).Min();
        foreach (JsonElement e in events)
        {
            Add(e, opened.PlusDays(-1), events);
        }

        // Where a row gives the present hours without a reading, they were read on the day.
        if (row["as_of_hours"].Length > 0 && !events.Any(e => Text(e, "type") == "reading"))
        {
            _facts.Add(MeterReading.Of(AsOf, Hours(row["as_of_hours"])));
        }
    }

    internal string Id => _row["id"];

    internal LocalDate AsOf { get; }

    internal Dictionary<string, JsonElement> Other { get; }

    internal string MainTask => _row["topic"] switch
    {
        "reset" when Id == "B02" => "replace",
        "reset" when _row["interval_hours"].Contains("inspect", StringComparison.Ordinal) => "inspect",
        "nesting" => "service-200",
        _ => "oil",
    };

    internal EngineSpecification Specification => EngineSpecification.Named("Corrie 60P")
        .WithMeter(HourMeter.Of(EngineHours.FromHours(10_000m)))
        .With([.. _tasks]);

    internal ServiceLog Log => ServiceLog.Of(_facts.Select(LogEntry.Of));

    internal IReadOnlyList<ServiceFact> Facts => _facts;

    internal static LocalDate Date(string text) => LocalDatePattern.Iso.Parse(text).Value;

    internal static EngineHours Hours(string text) => EngineHours.FromHours(decimal.Parse(text, CultureInfo.InvariantCulture));

    private static string? Text(JsonElement e, string name) =>
        e.TryGetProperty(name, out JsonElement value) && value.ValueKind != JsonValueKind.Null ? value.ToString() : null;

    private static EngineHours? OptionalHours(JsonElement e, string name) => Text(e, name) is string text ? Hours(text) : null;

    private static ServiceInterval Interval(string? hours, string? months) => (hours, months) switch
    {
        (not null, not null) => ServiceInterval.FirstOf(Hours(hours), int.Parse(months, CultureInfo.InvariantCulture)),
        (not null, null) => ServiceInterval.OfHours(Hours(hours)),
        _ => ServiceInterval.OfMonths(int.Parse(months!, CultureInfo.InvariantCulture)),
    };

    private static string? NullIfEmpty(string text) => text.Length == 0 ? null : text;

    private void MakeTasks(JsonElement[] events)
    {
        string? hours = NullIfEmpty(_row["interval_hours"]);
        string? months = NullIfEmpty(_row["interval_months"]);
        decimal tolerance = decimal.Parse(_row["tolerance_percent"], CultureInfo.InvariantCulture);
        if (Id == "H05")
        {
            _tasks.Add(ServiceTask.AtLayUp("oil"));
        }
        else if (_row["topic"] == "nesting")
        {
            string[] levels = ["50", "100", "200"];
            for (int i = 0; i < levels.Length; i++)
            {
                ServiceTask service = ServiceTask.Replace($"service-{levels[i]}", Interval(levels[i], months)).WithTolerance(tolerance).WithAnchorPolicy(Policy());
                _tasks.Add(i == 0 ? service : service.Including($"service-{levels[i - 1]}"));
            }
        }
        else if (hours is not null && hours.Contains('/', StringComparison.Ordinal))
        {
            string[] both = hours.Split(" / ");
            string[] bothMonths = months!.Split(" / ");
            _tasks.Add(ServiceTask.Inspect("inspect", Interval(both[0].Split(' ')[0], bothMonths[0].Split(' ')[0])).WithTolerance(tolerance).IfFailedDo("replace"));
            _tasks.Add(ServiceTask.Replace("replace", Interval(both[1].Split(' ')[0], bothMonths[1].Split(' ')[0])).WithTolerance(tolerance).Including("inspect"));
        }
        else
        {
            JsonElement duty = events.FirstOrDefault(e => Text(e, "type") == "duty");
            if (duty.ValueKind == JsonValueKind.Object && Text(duty, "base_hours") is string baseHours)
            {
                (hours, months) = (baseHours, Text(duty, "base_months"));
            }
            else if (Id == "J04")
            {
                // The row gives the interval that results; its working names 100 h and 12 months as the base.
                (hours, months) = ("100", "12");
            }

            ServiceInterval interval = events.Any(e => Text(e, "type") == "commission") ? Interval("100", "12") : Interval(hours, months);
            ServiceTask task = events.Any(e => Text(e, "type") == "inspectPass") ? ServiceTask.Inspect("oil", interval) : ServiceTask.Replace("oil", interval);
            if (events.Any(e => Text(e, "type") == "commission"))
            {
                task = task.WithFirstService(Interval("20", "12"));
            }

            task = task.WithTolerance(tolerance).WithAnchorPolicy(Policy());
            task = _row["anchor_policy"] switch
            {
                "ProRata" => task.WithPartialExchange(PartialExchange.ProRata),
                "AllOrNothing90" => task.WithPartialExchange(PartialExchange.AllOrNothing(0.90m)),
                _ => task,
            };
            foreach (string factor in events.Where(e => Text(e, "type") == "duty").Select(e => Text(e, "factor")!).Where(factor => factor != "1.0"))
            {
                task = task.WithSevereDuty($"severe-{factor}", decimal.Parse(factor, CultureInfo.InvariantCulture));
            }

            if (Other.TryGetValue("dormancy_rule", out JsonElement rule))
            {
                task = task.WithLayUpRule(Enum.Parse<LayUpRule>(rule.GetString()!));
            }

            _tasks.Add(task.DueAfterEvents("overheat"));
            _tasks.Add(ServiceTask.Replace("filter", ServiceInterval.OfHours(EngineHours.FromHours(100m))));
        }
    }

    private AnchorPolicy Policy() => Enum.TryParse(_row["anchor_policy"], out AnchorPolicy policy) ? policy : AnchorPolicy.DonePoint;

    private void Add(JsonElement e, LocalDate opened, JsonElement[] events)
    {
        string type = Text(e, "type")!;
        LocalDate date = Text(e, "date") is string text ? Date(text) : AsOf;
        EngineHours? dial = OptionalHours(e, "hours");
        string task = Text(e, "task") ?? (type == "replace" && MainTask is "inspect" or "replace" ? "replace" : "oil");
        switch (type)
        {
            case "replace": _facts.Add(Completion.Of(task, date, dial)); break;
            case "partialReplace": _facts.Add(Completion.Partial("oil", date, dial, decimal.Parse(Text(e, "fraction")!, CultureInfo.InvariantCulture))); break;
            case "topUp": _facts.Add(TopUp.Of("engine-oil", date, MeasuredVolume.Of(UnitsNet.Volume.FromLiters(double.Parse(Text(e, "litres")!, CultureInfo.InvariantCulture))), dial)); break;
            case "inspectPass": _facts.Add(Completion.Passed(MainTask == "oil" ? "oil" : "inspect", date, dial)); break;
            case "inspectFail": _facts.Add(Completion.Failed("inspect", date, dial)); break;
            case "service": _facts.Add(Completion.Of($"service-{Text(e, "level")}", date, dial)); break;
            case "commission": _facts.Add(EnteredService.New(date, dial)); break;
            case "reading": _facts.Add(MeterReading.Of(date, Hours(Text(e, "shown")!))); break;
            case "meterChange": _facts.Add(MeterChange.Of(date, OptionalHours(e, "old_final"), Hours(Text(e, "new_initial")!), OptionalHours(e, "unmetered") ?? EngineHours.Zero)); break;
            case "layUp": _facts.Add(PlannedLayUp.Between(Date(Text(e, "from")!), Date(Text(e, "to")!))); break;
            case "layUpDone": _facts.Add(LaidUp.On(date, dial)); break;
            case "event": _facts.Add(ServiceEvent.Of(Text(e, "kind")!, date, dial)); break;
            case "gridOrigin": _facts.Add(GridOrigin.Of(date, "oil")); break;
            case "dueWas":
                LocalDate? dueDate = Text(e, "date") is string due ? Date(due) : null;
                _facts.AddRange(_tasks.Where(t => t.Id != "filter").Select(t => OpeningDuePoint.Of(opened, t.Id, dueDate, dial)));
                break;
            case "duty":
                AddDuty(e, events);
                break;
            default: throw new InvalidOperationException($"{Id}: unknown event '{type}'.");
        }
    }

    // Duty holds from the last completion on, or from the hours that the row gives; these are read on the day of the row.
    private void AddDuty(JsonElement e, JsonElement[] events)
    {
        JsonElement done = events.First(other => Text(other, "type") == "replace");
        string factor = Text(e, "factor")!;
        EngineHours? from = OptionalHours(e, "from_hours");
        bool atCompletion = from is null || from == OptionalHours(done, "hours");
        string[] conditions = factor == "1.0" ? [] : [$"severe-{factor}"];
        _facts.Add(DutyChange.Of(atCompletion ? Date(Text(done, "date")!) : AsOf, conditions, atCompletion ? null : from));
    }
}
