using MarineService.Core.Scheduling;
using MarineService.Reports.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Reports.Charts;

/// <summary>Due points that stand so near to each other that they share a number.</summary>
internal sealed class DueMark
{
    private DueMark(IReadOnlyList<(TaskDue Task, LocalDate Date, double Hours)> places) => Places = places;

    /// <summary>The tasks with day and hours, earliest first.</summary>
    internal IReadOnlyList<(TaskDue Task, LocalDate Date, double Hours)> Places { get; }

    internal IEnumerable<TaskDue> Tasks => Places.Select(place => place.Task);

    /// <summary>Gathers the due points that have a place, from the earliest on.</summary>
    /// <param name="tasks">All tasks.</param>
    /// <param name="place">Day and hours of a task's due point, or null.</param>
    /// <param name="togetherDays">The most days from the first to the last of one mark.</param>
    internal static IReadOnlyList<DueMark> Of(IEnumerable<TaskDue> tasks, Func<TaskDue, (LocalDate Date, double Hours)?> place, double togetherDays)
    {
        List<DueMark> marks = [];
        List<(TaskDue Task, LocalDate Date, double Hours)> near = [];
        foreach ((TaskDue task, (LocalDate date, double hours)) in tasks.Where(task => place(task) is not null).Select(task => (task, place(task)!.Value)).OrderBy(one => one.Value.Date))
        {
            if (near.Count > 0 && Period.DaysBetween(near[0].Date, date) > togetherDays)
            {
                marks.Add(new(near));
                near = [];
            }

            near.Add((task, date, hours));
        }

        if (near.Count > 0)
        {
            marks.Add(new(near));
        }

        return marks;
    }

    internal string Color() => Places.Any(place => place.Task.Status is DueStatus.Overdue or DueStatus.Due) ? Palette.Red : Palette.Amber;

    /// <summary>The day, or the first and the last of them.</summary>
    internal string Words()
    {
        string first = LocalDatePattern.Iso.Format(Places[0].Date);
        string last = LocalDatePattern.Iso.Format(Places[Places.Count - 1].Date);
        return first == last ? first : $"{first} to {last}";
    }
}
