using System.Text;
using Ical.Net.CalendarComponents;
using MarineService.Core;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Core.Tests;
using MarineService.Reports.Calendars;
using NodaTime;

namespace MarineService.Reports.Tests.Calendars;

/// <summary>Against RFC 5545, read by a foreign reader (Ical.Net) and line by line.</summary>
public sealed class ServiceCalendarTest
{
    public static TheoryData<string> Boats => [.. Club.Boats];

    // ----- laws -----

    // Whatever people wrote: as many components as there are tasks, lines within 75 octets of whole characters, texts read back.
    [Law]
    public void HostileTexts_DoNotBreakOut(int seed)
    {
        Random random = new(seed);
        string boat = Hostile.Text(random);
        ServiceTask[] tasks = [.. Enumerable.Range(0, random.Next(1, 4)).Select(n => ServiceTask.Replace($"{n}{Hostile.Text(random)}", ServiceInterval.OfMonths(12)).WithTitle(Hostile.Text(random)))];
        DueList due = ServiceLog.Empty.DueList(EngineSpecification.Named("Corrie 60P").With(tasks), Club.Today);
        VisitPlan plan = VisitPlanner.From(Club.Today, 60m).LeastCost([VisitTask.Of(tasks[0].Id, new(2026, 11, 1), 0.01m, 1m)]).Value;
        string text = ServiceCalendar.Of(due, boat).With(plan).ToICalendar();

        List<(string Name, string Value)> lines = Lines(text);
        Assert.Equal(tasks.Length, lines.Count(line => line == ("BEGIN", "VTODO")));
        Assert.Equal(1, lines.Count(line => line == ("BEGIN", "VEVENT")));
        Assert.Equal(
            due.MostUrgentFirst.Select(task => Written($"{boat}: {task.Task.Title}")).Append(Written($"{boat}: service, {tasks[0].Id}")),
            lines.Where(line => line.Name == "SUMMARY").Select(line => Unescaped(line.Value)));
        Assert.Equal(
            due.MostUrgentFirst.Select(task => Written(task.Explain(DisplayUnits.Metric).ToString())),
            lines.Where(line => line.Name == "DESCRIPTION").Take(tasks.Length).Select(line => Unescaped(line.Value).Split("\n\nExpected: ")[0]),
            (written, read) => written.StartsWith(read, StringComparison.Ordinal));
        Ical.Net.Calendar foreign = Ical.Net.Calendar.Load(text)!;
        Assert.Equal((tasks.Length, 1), (foreign.Todos.Count, foreign.Events.Count));
    }

    // Characters of one to four octets at every place of the line.
    [Law]
    public void Folding_NeverSplitsACharacter_NorPassesSeventyFiveOctets(int seed)
    {
        Random random = new(seed);
        string[] characters = ["a", "é", "水", "\U0001F6A4"];
        string value = string.Concat(Enumerable.Range(0, random.Next(0, 400)).Select(_ => characters[random.Next(4)]));
        string text = new CalendarText().Line("DESCRIPTION", value).ToString();
        Assert.Equal([("DESCRIPTION", value)], Lines(text));

        // No line could take the first character of the next.
        string[] physical = text.TrimEnd().Split("\r\n");
        for (int i = 1; i < physical.Length; i++)
        {
            int next = Encoding.UTF8.GetByteCount(char.IsHighSurrogate(physical[i][1]) ? physical[i].Substring(1, 2) : physical[i].Substring(1, 1));
            Assert.True(Encoding.UTF8.GetByteCount(physical[i - 1]) + next > 75);
        }
    }

    // ----- the demo club -----

    [Theory]
    [MemberData(nameof(Boats))]
    public void ToDos_OfTheClub_AreReadByAForeignReader(string name)
    {
        BoatSpecification boat = Club.Boat(name);
        DueList due = Club.Log(name).DueList(boat, Club.Today);
        ServiceCalendar calendar = ServiceCalendar.Of(due, boat.Boat.Name);
        TaskDue[] tasks = [.. due.MostUrgentFirst.Where(task => task.Status != DueStatus.EachUse)];
        Ical.Net.Calendar foreign = Ical.Net.Calendar.Load(calendar.ToICalendar())!;
        Assert.Equal((tasks.Length, 0), (foreign.Todos.Count, foreign.Events.Count));
        Assert.Equal((tasks.Length, 0), (calendar.ToDoCount, calendar.EventCount));
        foreach ((TaskDue task, Todo todo) in tasks.Zip(foreign.Todos))
        {
            Assert.Equal($"{boat.Boat.Name}: {task.Task.Title}", todo.Summary);
            Assert.StartsWith(task.Explain(DisplayUnits.Metric).ToString(), todo.Description!.ReplaceLineEndings("\n"), StringComparison.Ordinal);
            Assert.Equal("NEEDS-ACTION", todo.Status);
            Assert.Equal(new DateTime(2026, 10, 12, 0, 0, 0, DateTimeKind.Utc), todo.DtStamp!.AsUtc);
            Assert.Equal(task.Status switch { DueStatus.Overdue => 1, DueStatus.Due => 3, DueStatus.DueSoon => 5, _ => 9 }, todo.Priority);
            if (todo.Due is { } day)
            {
                Assert.False(day.HasTime);
                Assert.True(task.Status is not (DueStatus.Due or DueStatus.Overdue) || task.PlanDate is not null || LocalDate.FromDateTime(day.Value) <= Club.Today);
                Assert.True(task.Due.Date is null || task.PlanDate is not null || LocalDate.FromDateTime(day.Value) <= task.Due.Date);
            }
            else
            {
                Assert.True(task.Forecast.Expected is null && task.Due.Date is null && task.PlanDate is null);
            }
        }

        Assert.Equal(tasks.Length, foreign.Todos.Select(todo => todo.Uid).Distinct().Count());
    }

    [Fact]
    public void Calendar_InAnyCultureAndTimeZone_IsTheSameBytes()
    {
        DueList due = Club.Log("curlew").DueList(Club.Boat("curlew"), Club.Today);
        string here = ServiceCalendar.Of(due, "Curlew").ToICalendar();
        Assert.Equal([here], InCulture.Each(() => ServiceCalendar.Of(due, "Curlew").ToICalendar()).Distinct());
        string? before = Environment.GetEnvironmentVariable("TZ");
        try
        {
            foreach (string zone in new[] { "Pacific/Kiritimati", "America/St_Johns", "UTC" })
            {
                Environment.SetEnvironmentVariable("TZ", zone);
                TimeZoneInfo.ClearCachedData();
                Assert.Equal(here, ServiceCalendar.Of(due, "Curlew").ToICalendar());
            }
        }
        finally
        {
            Environment.SetEnvironmentVariable("TZ", before);
            TimeZoneInfo.ClearCachedData();
        }
    }

    // ----- identifiers -----

    [Fact]
    public void Uuid_OfTheTestVector_IsAsPublished() =>
        // RFC 9562, appendix A.4: namespace of domain names, "www.example.com".
        Assert.Equal("2ed6657d-e927-568b-95e1-2665a8aea6a2", NameBasedUuid.Of("6ba7b810-9dad-11d1-80b4-00c04fd430c8", "www.example.com"));

    [Fact]
    public void Uid_StaysUntilTheTaskIsDone()
    {
        EngineSpecification spec = EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("coolant", ServiceInterval.OfMonths(24)));
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("coolant", new(2025, 4, 1)));
        string Uid(ServiceLog record, LocalDate today, string boat = "Curlew", string engine = "main") =>
            Lines(ServiceCalendar.Of(record.DueList(spec, today, engine), boat).ToICalendar()).Single(line => line.Name == "UID").Value;
        string uid = Uid(log, new(2026, 8, 2));
        Assert.Equal(uid, Uid(log, new(2027, 6, 1)));
        Assert.NotEqual(uid, Uid(log.With(Completion.Of("coolant", new(2026, 8, 3))), new(2026, 8, 4)));
        Assert.NotEqual(uid, Uid(log, new(2026, 8, 2), boat: "Tern"));
        Assert.NotEqual(Uid(ServiceLog.Empty, new(2026, 8, 2)), Uid(ServiceLog.Empty, new(2026, 8, 2), engine: "port"));
    }

    // A change of the namespace or of how names are put together would give every calendar its to-dos twice.
    [Fact]
    public void Uid_OfAKnownTask_NeverChanges()
    {
        EngineSpecification spec = EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("coolant", ServiceInterval.OfMonths(24)));
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("coolant", new(2025, 4, 1)));
        Assert.Contains("\r\nUID:82bcea0d-63de-568d-bc7f-57aa17322e99\r\n", ServiceCalendar.Of(log.DueList(spec, new(2026, 8, 2)), "Curlew").ToICalendar(), StringComparison.Ordinal);
    }

    // ----- examples -----

    [Fact]
    public void ToDo_Whole_IsAsRfc5545Says()
    {
        EngineSpecification spec = EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("coolant", ServiceInterval.OfMonths(24)).WithTitle("Coolant, renew"));
        DueList due = ServiceLog.Empty.With(Completion.Of("coolant", new(2025, 4, 1))).DueList(spec, new(2026, 8, 2));
        string text = ServiceCalendar.Of(due, "Curlew", Instant.FromUtc(2026, 8, 2, 9, 30, 5)).ToICalendar();
        string[] physical = text.Split("\r\n");
        Assert.Equal(["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//MarineService//MarineService.Reports//EN", "CALSCALE:GREGORIAN", "BEGIN:VTODO"], physical.Take(5));
        Assert.Equal(["DTSTAMP:20260802T093005Z", "SUMMARY:Curlew: Coolant\\, renew", "DUE;VALUE=DATE:20270401", "STATUS:NEEDS-ACTION", "PRIORITY:9"], physical.Skip(6).Take(5));
        Assert.Equal(["END:VTODO", "END:VCALENDAR", ""], physical[^3..]);
        Assert.Contains("The engine's own manual comes first.", Unescaped(Lines(text).Single(line => line.Name == "DESCRIPTION").Value), StringComparison.Ordinal);
    }

    [Fact]
    public void ToDo_WithoutAKnownDate_HasNone_AndSaysWhatIsMissing()
    {
        EngineSpecification spec = EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("engine-oil", ServiceInterval.OfHours(EngineHours.FromHours(100m))));
        DueList due = ServiceLog.Empty.With(Completion.Of("engine-oil", new(2026, 4, 1))).DueList(spec, new(2026, 8, 2));
        List<(string Name, string Value)> lines = Lines(ServiceCalendar.Of(due, "Curlew").ToICalendar());
        Assert.DoesNotContain(lines, line => line.Name.StartsWith("DUE", StringComparison.Ordinal));
        Assert.Contains("missing", Unescaped(lines.Single(line => line.Name == "DESCRIPTION").Value), StringComparison.Ordinal);
    }

    [Fact]
    public void ToDo_OverdueByHours_IsDueToday_NotAtItsCalendarDate()
    {
        EngineSpecification spec = EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("engine-oil", ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12)));
        DueList due = ServiceLog.Empty
            .With(Completion.Of("engine-oil", new(2026, 4, 1), EngineHours.FromHours(412m)))
            .With(Core.Engines.MeterReading.Of(new(2026, 8, 1), EngineHours.FromHours(530m))).DueList(spec, new(2026, 8, 2));
        string day = Lines(ServiceCalendar.Of(due, "Curlew").ToICalendar()).Single(line => line.Name == "DUE;VALUE=DATE").Value;
        Assert.True(string.CompareOrdinal(day, "20260802") <= 0, day);
    }

    [Fact]
    public void Visits_OnRequest_AreAllDayEvents()
    {
        DueList due = Club.Log("tern").DueList(Club.Boat("tern"), Club.Today);
        VisitPlan plan = VisitPlanner.From(Club.Today, 60m).LeastCost(
            [VisitTask.Of("engine-oil", new(2026, 12, 31), 0.01m, 1m), VisitTask.Of("anode", new(2027, 5, 1), 1m, 1m)]).Value;
        ServiceCalendar calendar = ServiceCalendar.Of(due, "Tern").With(plan);
        Ical.Net.Calendar foreign = Ical.Net.Calendar.Load(calendar.ToICalendar())!;
        Assert.Equal(plan.Visits.Select(visit => visit.Date), foreign.Events.Select(one => LocalDate.FromDateTime(one.Start!.Value)).Order());
        Assert.All(foreign.Events, one => Assert.True(one.IsAllDay));
        Assert.All(foreign.Events, one => Assert.Equal(one.Start!.Value.AddDays(1), one.End!.Value));
        Assert.Equal(plan.Visits.SelectMany(visit => visit.Items).Count(), foreign.Events.Sum(one => one.Description!.Split('\n').Count(line => line.Contains(": ", StringComparison.Ordinal))));
        Assert.Equal(plan.Visits.Count, calendar.EventCount);
    }

    [Fact]
    public void Stream_HoldsTheTextInUtf8()
    {
        ServiceCalendar calendar = ServiceCalendar.Of(Club.Log("dipper").DueList(Club.Boat("dipper"), Club.Today), "Dipper é");
        using MemoryStream stream = new();
        calendar.WriteTo(stream);
        Assert.Equal(calendar.ToICalendar(), Encoding.UTF8.GetString(stream.ToArray()));
        Assert.True(stream.CanWrite);
    }

    [Fact]
    public void BadInput_IsRefusedByName()
    {
        DueList due = ServiceLog.Empty.DueList(EngineSpecification.Named("Corrie 60P"), Club.Today);
        Assert.Equal("due", Assert.Throws<ArgumentNullException>(() => ServiceCalendar.Of(null!, "Curlew")).ParamName);
        Assert.Equal("boat", Assert.Throws<ArgumentNullException>(() => ServiceCalendar.Of(due, null!)).ParamName);
        Assert.Equal("boat", Assert.Throws<ArgumentException>(() => ServiceCalendar.Of(due, " ")).ParamName);
        Assert.Equal("stamp", Assert.Throws<ArgumentOutOfRangeException>(() => ServiceCalendar.Of(due, "Curlew", Instant.MinValue)).ParamName);
        Assert.Equal("plan", Assert.Throws<ArgumentNullException>(() => ServiceCalendar.Of(due, "Curlew").With(null!)).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => ServiceCalendar.Of(due, "Curlew").ToICalendar((DisplayUnits)9)).ParamName);
        Assert.Equal("stream", Assert.Throws<ArgumentNullException>(() => ServiceCalendar.Of(due, "Curlew").WriteTo(null!)).ParamName);
    }

    // What a calendar can hold of a text: no control character but the tab, and one kind of line break.
    private static string Written(string text) => Hostile.Held(text).Replace('\u007F', '\uFFFD').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    // RFC 5545, section 3.1: unfolded lines, each physical one within 75 octets and whole characters.
    private static List<(string Name, string Value)> Lines(string text)
    {
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        List<(string Name, string Value)> lines = [];
        UTF8Encoding strict = new(false, throwOnInvalidBytes: true);
        foreach (string physical in text[..^2].Split("\r\n"))
        {
            Assert.DoesNotContain('\n', physical);
            Assert.DoesNotContain('\r', physical);
            Assert.InRange(strict.GetByteCount(physical), 1, 75);
            if (physical[0] == ' ')
            {
                lines[^1] = (lines[^1].Name, lines[^1].Value + physical[1..]);
            }
            else
            {
                int colon = physical.IndexOf(':', StringComparison.Ordinal);
                lines.Add((physical[..colon], physical[(colon + 1)..]));
            }
        }

        return lines;
    }

    // RFC 5545, section 3.3.11.
    private static string Unescaped(string value)
    {
        StringBuilder text = new();
        for (int i = 0; i < value.Length; i++)
        {
            if (value[i] != '\\')
            {
                Assert.False(value[i] is ';' or ',', "Stands there without a backslash.");
                text.Append(value[i]);
                continue;
            }

            i++;
            Assert.Contains(value[i], "\\;,n");
            text.Append(value[i] == 'n' ? '\n' : value[i]);
        }

        return text.ToString();
    }
}
