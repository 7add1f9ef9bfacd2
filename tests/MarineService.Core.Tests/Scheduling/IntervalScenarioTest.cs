using System.Globalization;
using System.Text.Json;
using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Tests.Reference;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>The seventy worked cases, every expected column.</summary>
public sealed class IntervalScenarioTest
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceTable.Read("interval-scenarios.csv");

    public static TheoryData<string> Ids => [.. Rows.Select(row => row["id"])];

    [Fact]
    public void Table_Holds_SeventyDistinctRows() => Assert.Equal(70, Rows.Select(row => row["id"]).Distinct().Count());

    [Theory]
    [MemberData(nameof(Ids))]
    public void DueList_OfScenario_HasEveryExpectedColumn(string id)
    {
        IReadOnlyDictionary<string, string> row = Rows.Single(r => r["id"] == id);
        Scenario scenario = new(row);
        DueList list = scenario.Log.DueList(scenario.Specification, scenario.AsOf);
        TaskDue due = list[scenario.MainTask];

        if (row["expected_due_date"].Length > 0)
        {
            Assert.Equal(row["expected_due_date"], due.Due.Date is LocalDate date ? LocalDatePattern.Iso.Format(date) : "");
        }
        else if (scenario.MainTask != "service-200")
        {
            Assert.Null(due.Due.Date);
        }

        if (row["expected_due_hours"].Length > 0)
        {
            Assert.Equal(Scenario.Hours(row["expected_due_hours"]), due.Due.Hours);
        }
        else if (scenario.MainTask != "service-200")
        {
            Assert.Null(due.Due.Hours);
        }

        Assert.Equal(row["expected_status"], due.Status.ToString());
        if (row["expected_limb"].Length > 0)
        {
            Assert.Equal(row["expected_limb"].Replace("unknown-history", "UnknownHistory", StringComparison.Ordinal), due.Governs.ToString(), ignoreCase: true);
        }

        foreach ((string name, JsonElement expected) in scenario.Other)
        {
            AssertOther(scenario, list, due, name, expected);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void DueList_OfScenario_DoesNotDependOnOrderOfEntry(string id)
    {
        Scenario scenario = new(Rows.Single(r => r["id"] == id));
        ServiceLog reversed = ServiceLog.Of(scenario.Facts.Reverse().Select(LogEntry.Of));
        Assert.Equal(
            Lines(scenario.Log.DueList(scenario.Specification, scenario.AsOf)),
            Lines(reversed.DueList(scenario.Specification, scenario.AsOf)));
    }

    private static string[] Lines(DueList list) => [.. list.Tasks.Select(task => task.Explain(DisplayUnits.Metric).ToString())];

    private static void AssertOther(Scenario scenario, DueList list, TaskDue due, string name, JsonElement expected)
    {
        MeterHistory meter = scenario.Log.History(scenario.Specification, scenario.AsOf).Meter;
        decimal Number() => decimal.Parse(expected.ToString(), CultureInfo.InvariantCulture);
        string Day(LocalDate? date) => date is LocalDate day ? LocalDatePattern.Iso.Format(day) : "";
        IReadOnlyList<ServiceOccurrence> occurrences = DueList.Occurrences(scenario.Specification.Plan, scenario.Log.History(scenario.Specification, scenario.AsOf), scenario.MainTask);
        ComplianceItem[] items = [.. scenario.Log.Compliance(scenario.Specification, scenario.AsOf, ComplianceBasis.Planning).Items.Where(item => item.Occurrence.Task.Id == due.TaskId)];
        switch (name)
        {
            case "replace_due_date": Assert.Equal(expected.GetString(), Day(list["replace"].Due.Date)); break;
            case "replace_due_hours": Assert.Equal(Number(), list["replace"].Due.Hours!.Value.ToHours()); break;
            case "replace_status": Assert.Equal(expected.GetString(), list["replace"].Status.ToString()); break;
            case "replace_due_now": Assert.Equal(expected.GetBoolean(), list["replace"].Due.Date == scenario.AsOf); break;
            case "no_tolerance": Assert.Equal(DueStatus.Overdue, scenario.Log.DueList(scenario.Specification, scenario.AsOf.PlusDays(1))[due.TaskId].Status); break;
            case "carried_age_hours": Assert.Equal(Number(), due.LastDoneAt!.Estimate.ToHours() - due.AnchorHours!.Value.ToHours()); break;
            case "carried_age_days": Assert.Equal(expected.GetInt32(), Period.DaysBetween(due.AnchorDate!.Value, due.LastDone!.Value)); break;
            case "anchor_date": Assert.Equal(expected.GetString(), Day(due.AnchorDate)); break;
            case "anchor_hours": Assert.Equal(expected.ValueKind == JsonValueKind.Null ? null : Number(), due.AnchorHours?.ToHours()); break;
            case "hours_given_up": Assert.Equal(-Number(), occurrences[^1].HoursLate); break;
            case "hours_late" when expected.ValueKind == JsonValueKind.Array: Assert.Equal(expected.EnumerateArray().Select(e => decimal.Parse(e.GetString()!, CultureInfo.InvariantCulture)), items.Select(item => item.Occurrence.HoursLate!.Value)); break;
            case "days_late" when expected.ValueKind == JsonValueKind.Array: Assert.Equal(expected.EnumerateArray().Select(e => e.GetInt32()), items.Select(item => item.Occurrence.DaysLate!.Value)); break;
            case "hours_late": Assert.Equal(Number(), occurrences[^1].HoursLate); break;
            case "days_late": Assert.Equal(expected.GetInt32(), occurrences[^1].DaysLate); break;
            case "within_tolerance": Assert.Equal(expected.GetBoolean(), items[^1].IsKept); break;
            case "window_from": Assert.Equal(expected.GetString(), Day(items[^1].Window!.Value.From)); break;
            case "window_to": Assert.Equal(expected.GetString(), Day(items[^1].Window!.Value.To)); break;
            case "closed_occurrence": Assert.Equal(expected.GetString(), Day(occurrences[^1].Due.Date)); break;
            case "closed": Assert.Equal(expected.EnumerateArray().Select(e => e.GetString()), occurrences.Select(o => Day(o.Due.Date))); break;
            case "missed": Assert.Equal(expected.GetInt32(), items.Count(item => item.Verdict == ComplianceVerdict.Missing)); break;
            case "latest_days_late": Assert.Equal(expected.GetInt32(), occurrences[^1].DaysLate); break;
            case "days_early": Assert.Equal(expected.GetInt32(), Period.DaysBetween(due.LastDone!.Value, due.Due.Date!.Value)); break;
            case "closes_occurrence": Assert.Equal(expected.GetBoolean(), occurrences.Any(o => o.DoneOn == due.LastDone)); break;
            case "initial_kept": Assert.Equal(expected.GetBoolean(), items.Single(item => item.Occurrence.IsFirstService).IsKept); break;
            case "initial_hours_late": Assert.Equal(Number(), items.Single(item => item.Occurrence.IsFirstService).Occurrence.HoursLate); break;
            case "occurrence": Assert.Equal(DueBasis.FirstService, due.Basis); break;
            case "hours_past": Assert.Equal(-Number(), due.HoursLeft); break;
            case "days_past": Assert.Equal(-expected.GetInt32(), due.DaysLeft); break;
            case "cumulative_hours": Assert.Equal(Number(), meter.HoursOn(scenario.AsOf).Value.Estimate.ToHours()); break;
            case "due_on_new_meter" or "due_on_dial": Assert.Equal(Number(), due.DueOnDial.Value.ToHours()); break;
            case "delta_hours": Assert.Equal(Number(), meter.HoursOn(scenario.AsOf).Value.Estimate.ToHours() - 9987.3m); break;
            case "anomaly": Assert.Contains(list.Findings, finding => finding.Code == (expected.GetString() == "DecreasingReading" ? "METER-001" : "METER-002")); break;
            case "used_reading": Assert.Equal(Number(), meter.HoursOn(scenario.AsOf).Value.Estimate.ToHours()); break;
            case "max_possible_delta": Assert.Equal((double)Number(), list.Findings.Single(finding => finding.Code == "METER-002")["most possible"]!.Number); break;
            case "quality" when expected.GetString() == "estimated": Assert.Equal(ReadingQuality.Estimated, meter.HoursOn(scenario.AsOf).Value.Quality); break;
            case "quality": Assert.Equal(expected.GetString(), due.LastDoneAt!.Quality.ToString(), ignoreCase: true); break;
            case "estimated_done_hours": Assert.Equal(Number(), due.LastDoneAt!.Estimate.ToHours()); break;
            case "done_hours_bounds": Assert.Equal(expected.EnumerateArray().Select(e => Scenario.Hours(e.GetString()!)), [due.LastDoneAt!.Lower, due.LastDoneAt!.Upper]); break;
            case "conservative_due_hours": Assert.Equal(Number(), due.Due.SafeHours!.Value.ToHours()); break;
            case "hours_limb": Assert.Equal(expected.GetString(), due.HoursLimb.ToString()); break;
            case "basis": Assert.Equal(expected.GetString(), due.Basis.ToString()); break;
            case "grid":
                Assert.Equal(expected.EnumerateArray().Select(e => e.GetString()), GridOf(scenario));
                break;
            case "dormancy_rule": Assert.Equal(expected.GetString(), due.Task.LayUpRule.ToString()); break;
            case "plan_date": Assert.Equal(expected.GetString(), Day(due.PlanDate)); break;
            case "overrun_days": Assert.Equal(expected.GetInt32(), due.OverrunDays); break;
            case "excused": Assert.Equal(expected.GetBoolean(), due.OverrunExcused); break;
            case "suspended_days": Assert.Equal(expected.GetInt32(), due.SuspendedDays); break;
            case "layup_valid": Assert.Equal(expected.GetBoolean(), due.Basis != DueBasis.LayUpVoided); break;
            case "hours_since_layup": Assert.Equal((double)Number(), list.Findings.Single(finding => finding.Code == "DUE-009")["ran since"]!.Number); break;
            case "due_50" or "due_100" or "due_200": Assert.Equal(Number(), list[name.Replace("due_", "service-", StringComparison.Ordinal)].Due.Hours!.Value.ToHours()); break;
            case "due_date_all": Assert.All(list.Tasks, task => Assert.Equal(expected.GetString(), Day(task.Due.Date))); break;
            case "life_used": Assert.Equal((double)Number(), due.UsedFraction, 12); break;
            case "interval_due_date": Assert.Equal(expected.GetString(), Day(due.IntervalDue.Date)); break;
            case "interval_due_hours": Assert.Equal(Number(), due.IntervalDue.Hours!.Value.ToHours()); break;
            case "verdict": Assert.Equal(expected.GetString(), items[^1].Verdict.ToString()); break;
            case "estimate_verdict": Assert.Equal(expected.GetString(), items[^1].EstimateVerdict.ToString()); break;
            case "verdicts": Assert.Equal(expected.EnumerateArray().Select(e => e.GetString()), items.Select(item => item.Verdict.ToString())); break;
            case "kept": Assert.Equal(expected.GetInt32(), items.Count(item => item.IsKept)); break;
            case "of": Assert.Equal(expected.GetInt32(), items.Length); break;
            default: Assert.Fail($"No assertion for '{name}'."); break;
        }
    }

    // The grid shows itself one point at a time: each completion on a point leads to the next.
    private static List<string> GridOf(Scenario scenario)
    {
        List<string> grid = [];
        ServiceLog log = scenario.Log;
        for (int i = 0; i < 3; i++)
        {
            LocalDate today = i == 0 ? scenario.AsOf : Scenario.Date(grid[^1]);
            LocalDate next = log.DueList(scenario.Specification, today)["oil"].Due.Date!.Value;
            grid.Add(LocalDatePattern.Iso.Format(next));
            log = log.With(Completion.Of("oil", next));
        }

        return grid;
    }
}
