using MarineService.Core;
using MarineService.Core.Scheduling;

namespace MarineService.Reports.Tables;

/// <summary>The due list as a table: a line for each task, the most urgent first.</summary>
internal static class DueTable
{
    internal static readonly string[] Columns =
    [
        "engine", "task", "title", "status", "due date", "days left", "by calendar", "due hours h", "due on dial h", "hours left h", "by hours",
        "used %", "expected", "earliest", "latest", "plan date", "last done", "last done hours h", "done with", "why", "missing",
    ];

    internal static IEnumerable<CsvRow> Rows(DueList due) => due.MostUrgentFirst.Select(Row);

    private static CsvRow Row(TaskDue task) => new CsvRow()
        .Text(task.Scope)
        .Text(task.TaskId)
        .Text(task.Task.Title)
        .Text(Status(task.Status))
        .Date(task.Due.Date)
        .Number(task.DaysLeft)
        .Text(Limb(task.CalendarLimb))
        .Hours(task.Due.Hours)
        .Hours(task.DueOnDial.IsKnown ? task.DueOnDial.Value : null)
        .Number(task.HoursLeft)
        .Text(Limb(task.HoursLimb))
        .Number(Math.Round((decimal)task.UsedFraction * 100, 1))
        .Date(task.Forecast.Expected)
        .Date(task.Forecast.Earliest)
        .Date(task.Forecast.Latest)
        .Date(task.PlanDate)
        .Date(task.LastDone)
        .Hours(task.LastDoneAt?.Estimate)
        .Text(task.CoveredBy)
        .Text(task.Explain(DisplayUnits.Metric).Answer)
        .Text(string.Join(" ", task.Missing.Concat(task.Forecast.Missing).Distinct(StringComparer.Ordinal)));

    private static string Status(DueStatus status) => status switch
    {
        DueStatus.NotDue => "not due",
        DueStatus.EachUse => "each use",
        DueStatus.DueSoon => "due soon",
        DueStatus.Due => "due",
        _ => "overdue",
    };

    private static string Limb(LimbState limb) => limb switch
    {
        LimbState.Known => "known",
        LimbState.Unknown => "not known",
        _ => "not used",
    };
}
