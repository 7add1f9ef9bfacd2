using System.Globalization;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Records;

/// <summary>What was read and done, as entries that are added and never changed.</summary>
/// <remarks>
/// The order of entry does not matter: entries count in the order of their dates and hours, so that a back-dated entry recomputes all
/// that follows. A correction takes the place of the entry that it names; a withdrawal takes it away; both stay visible.
/// </remarks>
public sealed partial class ServiceLog
{
    private readonly LogEntry[] _entries;

    // Ids of the entries that another one corrects or withdraws.
    private readonly HashSet<string> _superseded;

    private ServiceLog(LogEntry[] entries, HashSet<string> superseded) =>
        (_entries, _superseded, Entries) = (entries, superseded, Array.AsReadOnly(entries));

    /// <summary>A log without entries.</summary>
    public static ServiceLog Empty { get; } = new([], []);

    /// <summary>All entries in the order of entry, corrected ones too.</summary>
    public IReadOnlyList<LogEntry> Entries { get; }

    /// <summary>A log from entries.</summary>
    /// <param name="entries">The entries; ids distinct, entries without an id get the next free number.</param>
    /// <returns>The log.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="entries"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">
    /// An id is used twice; an entry corrects one that is not there, that another corrects already, or itself by way of others.
    /// </exception>
    public static ServiceLog Of(IEnumerable<LogEntry> entries)
    {
        LogEntry[] all = Number(Guard.Items(entries));
        IReadOnlyList<ListFault> faults = Check(all);
        return faults.Count == 0 ? OfChecked(all) : throw new ArgumentException(faults[0].ToString(), nameof(entries));
    }

    /// <summary>The log with one more fact of the main engine.</summary>
    /// <param name="fact">What was read, done or happened.</param>
    /// <returns>The longer log.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fact"/> is null.</exception>
    public ServiceLog With(ServiceFact fact) => With(LogEntry.Of(fact));

    /// <summary>The log with one more entry.</summary>
    /// <param name="entry">The entry; without an id it gets the next free number.</param>
    /// <returns>The longer log.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="entry"/> is null.</exception>
    /// <exception cref="ArgumentException">Its id is used already, or it corrects an entry that is not there or that another corrects already.</exception>
    public ServiceLog With(LogEntry entry) => Of([.. _entries, Guard.NotNull(entry)]);

    /// <summary>An entry by its id.</summary>
    /// <param name="id">The id.</param>
    /// <returns>The entry, or null when there is none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    public LogEntry? Find(string id)
    {
        Guard.NotNull(id);
        return Array.Find(_entries, entry => entry.Id == id);
    }

    /// <summary>The entries that count: neither corrected nor withdrawn, nor themselves withdrawals.</summary>
    /// <returns>In the order of entry.</returns>
    public IEnumerable<LogEntry> Standing() => _entries.Where(Stands);

    /// <summary>The due list of one engine.</summary>
    /// <param name="specification">What the engine is and needs.</param>
    /// <param name="today">The day, from 1900 to 2199.</param>
    /// <param name="engine">The engine's id in the log; not blank.</param>
    /// <returns>Every task of the engine.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="specification"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// <paramref name="engine"/> is blank, or a task of the specification refers to one that is not there.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="today"/> is outside 1900 to 2199.</exception>
    public DueList DueList(EngineSpecification specification, LocalDate today, string engine = LogEntry.MainEngine)
    {
        Guard.NotNull(specification);
        return Scheduling.DueList.Evaluate(specification.Plan, History(specification, today, engine), engine);
    }

    /// <summary>The due list of a boat: every engine's tasks, then the boat's own, each counted once.</summary>
    /// <param name="boat">The boat and its engines.</param>
    /// <param name="today">The day, from 1900 to 2199.</param>
    /// <returns>Every task.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="boat"/> is null.</exception>
    /// <exception cref="ArgumentException">A task refers to one that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="today"/> is outside 1900 to 2199.</exception>
    public DueList DueList(BoatSpecification boat, LocalDate today)
    {
        Guard.NotNull(boat);
        Guard.Date(today);
        List<DueList> lists = [.. boat.Engines.Select(engine => Scheduling.DueList.Evaluate(
            engine.Specification.Plan,
            ServiceHistory.OfOwn(engine.Specification.Meter, CountedFacts(engine.Id, engine.Specification.Sump, boat.Plan), today),
            engine.Id))];
        lists.Add(Scheduling.DueList.Evaluate(boat.Plan, ServiceHistory.Of(HourMeter.Plain, BoatFacts(boat.Plan), today), BoatSpecification.Scope));
        return Scheduling.DueList.Join(lists);
    }

    /// <summary>The facts of one engine in the order of time, with its hours at each.</summary>
    /// <param name="specification">What the engine is and needs.</param>
    /// <param name="today">The day up to which facts count, from 1900 to 2199.</param>
    /// <param name="engine">The engine's id in the log; not blank.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="specification"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="engine"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="today"/> is outside 1900 to 2199.</exception>
    public ServiceHistory History(EngineSpecification specification, LocalDate today, string engine = LogEntry.MainEngine) =>
        ServiceHistory.OfOwn(
            Guard.NotNull(specification).Meter, CountedFacts(Guard.NotBlank(engine), specification.Sump, null), Guard.Date(today));

    /// <summary>Everything that is wrong with a list of numbered entries.</summary>
    internal static IReadOnlyList<ListFault> Check(IReadOnlyList<LogEntry> entries)
    {
        if (IsPlain(entries))
        {
            return [];
        }

        List<ListFault> faults = [];
        Dictionary<string, int> index = new(entries.Count, StringComparer.Ordinal);
        for (int i = 0; i < entries.Count; i++)
        {
            if (index.ContainsKey(entries[i].Id!))
            {
                faults.Add(new("Entry", i, "id", entries[i].Id!, "an id that no other entry has"));
            }
            else
            {
                index[entries[i].Id!] = i;
            }
        }

        HashSet<int> loops = Loops(entries, index);
        HashSet<string> corrected = new(StringComparer.Ordinal);
        for (int i = 0; i < entries.Count; i++)
        {
            if (entries[i].Corrects is not string target)
            {
                continue;
            }

            string? expected = !index.ContainsKey(target) ? "the id of an entry in this log"
                : !corrected.Add(target) ? "an entry that no other corrects; correct the correction instead"
                : loops.Contains(i) ? "an entry that does not correct this one in turn"
                : null;
            if (expected is not null)
            {
                faults.Add(new("Entry", i, "corrects", target, expected));
            }
        }

        return faults;
    }

    // Ids that rise, as numbers do, and nothing corrected: so nearly all logs are, and need no tables to be found right.
    private static bool IsPlain(IReadOnlyList<LogEntry> entries)
    {
        for (int i = 0; i < entries.Count; i++)
        {
            if (entries[i].Corrects is not null || (i > 0 && !Rises(entries[i - 1].Id!, entries[i].Id!)))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Rises(string earlier, string later) =>
        earlier.Length == later.Length ? string.CompareOrdinal(earlier, later) < 0 : earlier.Length < later.Length;

    /// <summary>A log from numbered entries in which <see cref="Check"/> found nothing wrong.</summary>
    internal static ServiceLog OfChecked(LogEntry[] entries) =>
        Array.Exists(entries, entry => entry.Corrects is not null)
            ? new(entries, [.. entries.Where(entry => entry.Corrects is not null).Select(entry => entry.Corrects!)])
            : new(entries, Empty._superseded);

    internal static LogEntry[] Number(IReadOnlyList<LogEntry> entries)
    {
        LogEntry[] numbered = [.. entries];
        if (Array.TrueForAll(numbered, entry => entry.Id is not null))
        {
            return numbered;
        }

        HashSet<string> used = [.. entries.Where(entry => entry.Id is not null).Select(entry => entry.Id!)];
        int number = 0;
        for (int i = 0; i < numbered.Length; i++)
        {
            while (numbered[i].Id is null)
            {
                // Numbers up to the last one given are taken, so none is tried twice.
                number = Math.Max(number, i) + 1;
                string id = number.ToString(CultureInfo.InvariantCulture);
                numbered[i] = used.Add(id) ? entries[i].WithId(id) : numbered[i];
            }
        }

        return numbered;
    }

    // The entries that correct themselves by way of others. Each chain is followed until it meets an entry that was seen before.
    private static HashSet<int> Loops(IReadOnlyList<LogEntry> entries, Dictionary<string, int> index)
    {
        HashSet<int> loops = [];
        int[] seenFrom = new int[entries.Count];
        for (int start = 0; start < entries.Count; start++)
        {
            int at = start;
            while (seenFrom[at] == 0 && entries[at].Corrects is string next && index.TryGetValue(next, out int corrected))
            {
                seenFrom[at] = start + 1;
                at = corrected;
            }

            while (seenFrom[at] == start + 1 && loops.Add(at))
            {
                at = index[entries[at].Corrects!];
            }
        }

        return loops;
    }

    private bool Stands(LogEntry entry) => entry.Fact is not null && !_superseded.Contains(entry.Id!);

    // An account of an oil change counts as a completion.
    private List<ServiceFact> CountedFacts(string engine, Sump? sump, TaskPlan? boatTasks)
    {
        List<ServiceFact> facts = EngineFacts(engine, boatTasks);
        for (int i = 0; i < facts.Count; i++)
        {
            facts[i] = Counted(facts[i], sump);
        }

        return facts;
    }

    // What happened to the boat happened to each of its engines; a dial value there says nothing of a single engine.
    private List<ServiceFact> EngineFacts(string engine, TaskPlan? boatTasks)
    {
        List<ServiceFact> facts = new(_entries.Length);
        foreach (LogEntry entry in _entries)
        {
            if (!Stands(entry))
            {
                continue;
            }

            ServiceFact fact = entry.Fact!;
            if (entry.Scope == engine)
            {
                if (boatTasks is null || TaskOf(fact) is not string task || boatTasks.IndexOf(task) < 0)
                {
                    facts.Add(fact);
                }
                else if (fact.Dial is EngineHours dial)
                {
                    facts.Add(MeterReading.Of(fact.Date, dial));
                }
            }
            else if (entry.Scope == BoatSpecification.Scope && fact is LaidUp or Commissioned or PlannedLayUp or PlannedUse or ServiceEvent or DutyChange)
            {
                facts.Add(fact.WithoutDial());
            }
        }

        return facts;
    }

    // Entries for the boat's tasks count under whichever engine they were made.
    private IEnumerable<ServiceFact> BoatFacts(TaskPlan boatTasks) =>
        from entry in Standing()
        let fact = entry.Fact!
        where fact is not (MeterReading or MeterChange)
            && (entry.Scope == BoatSpecification.Scope || (TaskOf(fact) is string task && boatTasks.IndexOf(task) >= 0)
                || fact is LaidUp or Commissioned or PlannedLayUp)
        select Counted(fact, null).WithoutDial();

    // An account of an oil change counts as a completion by the fraction that it shows was exchanged.
    private static ServiceFact Counted(ServiceFact fact, Sump? sump) => fact is OilChangeRecord record ? AsCompletion(record, sump) : fact;

    private static string? TaskOf(ServiceFact fact) => fact switch
    {
        Completion completion => completion.TaskId,
        OilChangeRecord record => record.TaskId,
        OpeningDuePoint opening => opening.TaskId,
        GridOrigin grid => grid.TaskId,
        _ => null,
    };
}
