using System.Text;
using MarineService.Core;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Reports.Calendars;

/// <summary>What is due as a calendar (iCalendar, RFC 5545): a to-do for each task, and an all-day event for each planned visit.</summary>
/// <remarks>
/// <para>A to-do is due on the day on which its task is expected to fall due: the earlier of both limbs, by the forecast where hours decide; on
/// the plan date where a lay-up moves it; on the due list's day at the latest when it is due already. Where no date is known it has none,
/// and says what is missing. Tasks of each use have no due date and are left out.</para>
/// <para>Identifiers are made of names (UUID version 5, RFC 9562): a task keeps its identifier from one due list to the next until it is done,
/// so that a calendar moves the to-do in place of adding one; the next round gets another. A visit is known by its day.</para>
/// <para>The same values give the same bytes: no clock is read. Without a stamp of the caller's, the due list's day at 00:00 UTC stands for it.</para>
/// </remarks>
public sealed class ServiceCalendar
{
    /// <summary>The name that calendars know this library by (PRODID).</summary>
    private const string Product = "-//MarineService//MarineService.Reports//EN";

    // Drawn once at random (version 4); every identifier of ours lies within it, so it must never change.
    private const string Space = "2e636915-3fb4-4711-9cf8-7764cca7225d";

    private readonly DueList _due;
    private readonly string _boat;
    private readonly Instant _stamp;
    private readonly IReadOnlyList<Visit> _visits;

    private ServiceCalendar(DueList due, string boat, Instant stamp, IReadOnlyList<Visit> visits)
    {
        (_due, _boat, _stamp, _visits) = (due, boat, stamp, visits);
        ToDoCount = ToDos.Count();
    }

    /// <summary>How many to-dos it holds.</summary>
    public int ToDoCount { get; }

    /// <summary>How many visits it holds as events.</summary>
    public int EventCount => _visits.Count;

    /// <summary>The to-dos of a due list.</summary>
    /// <param name="due">The due list.</param>
    /// <param name="boat">The boat's name, or whatever tells it from the user's other boats; part of each identifier. Not blank.</param>
    /// <param name="stamp">When the calendar was made (DTSTAMP), from 1900 to 2199; null for the due list's day at 00:00 UTC.</param>
    /// <returns>The calendar.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="due"/> or <paramref name="boat"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="boat"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="stamp"/> is outside 1900 to 2199.</exception>
    public static ServiceCalendar Of(DueList due, string boat, Instant? stamp = null)
    {
        Guard.NotNull(due);
        Guard.NotBlank(boat);
        if (stamp is Instant given)
        {
            Guard.Date(given.InUtc().Date, nameof(stamp));
        }

        return new(due, boat, stamp ?? due.Today.AtMidnight().InUtc().ToInstant(), []);
    }

    /// <summary>A copy with an all-day event for each visit of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public ServiceCalendar With(VisitPlan plan) => new(_due, _boat, _stamp, Guard.NotNull(plan).Visits);

    /// <summary>The calendar as text.</summary>
    /// <param name="units">Which units the descriptions are written in; hours and dates are the same in all.</param>
    /// <returns>Lines of at most 75 octets that end in CRLF. RFC 5545 wants at least one to-do or event in a calendar; see the counts.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string ToICalendar(DisplayUnits units = DisplayUnits.Metric)
    {
        Guard.Defined(units);
        CalendarText text = new();
        text.Line("BEGIN", "VCALENDAR").Line("VERSION", "2.0").Line("PRODID", Product).Line("CALSCALE", "GREGORIAN");
        foreach (TaskDue task in ToDos)
        {
            Append(text, task, units);
        }

        foreach (Visit visit in _visits)
        {
            Append(text, visit);
        }

        return text.Line("END", "VCALENDAR").ToString();
    }

    /// <summary>Writes the calendar as a file in UTF-8, the encoding of iCalendar.</summary>
    /// <param name="stream">Where to write; left open.</param>
    /// <param name="units">Which units the descriptions are written in; hours and dates are the same in all.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public void WriteTo(Stream stream, DisplayUnits units = DisplayUnits.Metric)
    {
        Guard.NotNull(stream);
        byte[] bytes = Encoding.UTF8.GetBytes(ToICalendar(units));
        stream.Write(bytes, 0, bytes.Length);
    }

    /// <summary>The boat and how much the calendar holds.</summary>
    /// <returns>Invariant text, such as "Curlew: 12 to-dos, 3 visits".</returns>
    public override string ToString() => FormattableString.Invariant($"{_boat}: {ToDoCount} to-dos, {EventCount} visits");

    /// <summary>The day on which a task is to be done; null when no date is known.</summary>
    internal static LocalDate? DayOf(TaskDue task, LocalDate today)
    {
        LocalDate? day = Earlier(task.Forecast.Expected, task.Due.Date);
        return task.PlanDate ?? (task.Status is DueStatus.Due or DueStatus.Overdue ? Earlier(day, today) : day);
    }

    private static LocalDate? Earlier(LocalDate? one, LocalDate? other) =>
        one is LocalDate left && other is LocalDate right ? LocalDate.Min(left, right) : one ?? other;

    private IEnumerable<TaskDue> ToDos => _due.MostUrgentFirst.Where(task => task.Status != DueStatus.EachUse);

    private void Append(CalendarText text, TaskDue task, DisplayUnits units)
    {
        string round = task.LastDone is LocalDate done ? LocalDatePattern.Iso.Format(done) : "first";
        text.Line("BEGIN", "VTODO")
            .Line("UID", Uid("task", task.Scope, task.TaskId, round))
            .Line("DTSTAMP", Stamp)
            .Text("SUMMARY", $"{_boat}: {task.Task.Title}");
        if (DayOf(task, _due.Today) is LocalDate day)
        {
            text.Line("DUE;VALUE=DATE", Date(day));
        }

        text.Line("STATUS", "NEEDS-ACTION")
            .Line("PRIORITY", Priority(task.Status))
            .Text("DESCRIPTION", $"{task.Explain(units)}\n\nExpected: {task.Forecast}.\nThe engine's own manual comes first.")
            .Line("END", "VTODO");
    }

    private void Append(CalendarText text, Visit visit) => text
        .Line("BEGIN", "VEVENT")
        .Line("UID", Uid("visit", Date(visit.Date)))
        .Line("DTSTAMP", Stamp)
        .Line("DTSTART;VALUE=DATE", Date(visit.Date))
        .Line("DTEND;VALUE=DATE", Date(visit.Date.PlusDays(1)))
        .Text("SUMMARY", $"{_boat}: service, {string.Join(", ", visit.Items.Select(item => item.Task.Id))}")
        .Text("DESCRIPTION", string.Join("\n", visit.Items.Select(item => item.ToString())) + "\nThe engine's own manual comes first.")
        .Line("END", "VEVENT");

    private string Stamp => InstantPattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss'Z'").Format(_stamp);

    // RFC 5545, section 3.8.1.9: 1 is the highest, 5 the middle, 9 the lowest.
    private static string Priority(DueStatus status) => status switch
    {
        DueStatus.Overdue => "1",
        DueStatus.Due => "3",
        DueStatus.DueSoon => "5",
        _ => "9",
    };

    // Each part with its length in front, so that no two lists of parts run together into one name.
    private string Uid(params string[] parts) =>
        NameBasedUuid.Of(Space, string.Concat(parts.Prepend(_boat).Select(part => FormattableString.Invariant($"{part.Length}:{part}"))));

    private static string Date(LocalDate date) => LocalDatePattern.CreateWithInvariantCulture("uuuuMMdd").Format(date);
}
