using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>The facts about one engine up to a day, in the order of time, with the engine's hours at each.</summary>
/// <remarks>
/// Every dial value in a fact counts as a meter reading. Facts dated after the day are left out, except planned lay-ups and planned use.
/// Identical completions count once. The order in which facts are given does not matter.
/// </remarks>
public sealed class ServiceHistory
{
    private readonly ReadOnlyMemory<ServiceStep> _steps;
    private readonly PlannedUse[] _plans;
    private SeasonalUse? _use;

    private ServiceHistory(LocalDate asOf, MeterHistory meter, ReadOnlyMemory<ServiceStep> steps, LayUpPeriod[] layUps, PlannedUse[] plans, IReadOnlyList<Finding> findings)
    {
        AsOf = asOf;
        AsOfDay = CalendarDay.Of(asOf);
        Meter = meter;
        _steps = steps;
        _plans = plans;
        LayUps = Array.AsReadOnly(layUps);
        Findings = findings;
        DutyChanges = ChangesOfDuty(steps.Span);
        Now = meter.FindHoursOn(AsOfDay);
    }

    /// <summary>The day up to which facts count.</summary>
    public LocalDate AsOf { get; }

    /// <summary>All meter readings on one scale.</summary>
    public MeterHistory Meter { get; }

    /// <summary>Lay-ups, earliest first: those that were done, and planned ones that do not overlap these.</summary>
    public IReadOnlyList<LayUpPeriod> LayUps { get; }

    /// <summary>What is odd about the facts: refused readings, entries after the day, entries made twice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The engine's use over the year, with its lay-ups and declared plans; of plans that overlap, the one that begins later counts. Worked out when asked for.</summary>
    public SeasonalUse Use => _use ??= SeasonalUse.Of(Meter, LayUps, _plans, AsOf);

    internal int AsOfDay { get; }

    /// <summary>The engine's hours on the day, or null when no reading tells.</summary>
    internal HoursEstimate? Now { get; }

    internal ReadOnlySpan<ServiceStep> Steps => _steps.Span;

    internal ServiceStep[] DutyChanges { get; }

    /// <summary>Puts facts in order.</summary>
    /// <param name="meter">The meter that the engine started with.</param>
    /// <param name="facts">The facts, in any order.</param>
    /// <param name="asOf">The day up to which facts count, from 1900 to 2199.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="asOf"/> is outside 1900 to 2199.</exception>
    public static ServiceHistory Of(HourMeter meter, IEnumerable<ServiceFact> facts, LocalDate asOf)
    {
        Guard.Date(asOf);
        List<ServiceFact> all = [.. Guard.Items(facts)];
        return OfOwn(Guard.NotNull(meter), all, asOf);
    }

    /// <summary>Puts facts in order that nobody else holds; the list is used up.</summary>
    internal static ServiceHistory OfOwn(HourMeter meter, List<ServiceFact> facts, LocalDate asOf)
    {
        int asOfDay = CalendarDay.Of(asOf);
        int later = facts.RemoveAll(fact => fact.Day > asOfDay && fact is not (PlannedLayUp or PlannedUse));
        MeterHistory history = MeterOf(meter, facts);
        List<Finding> findings = [.. history.Findings];
        if (later > 0)
        {
            findings.Add(SchedulingRules.AfterToday.On(
                "log", Figure.Of("entries", later, FigureUnit.Number), Figure.Of("today", asOf)));
        }

        ReadOnlyMemory<ServiceStep> steps = InOrder(facts, history, findings);
        return new(asOf, history, steps, LayUpPeriods(facts), PlannedUses(facts), findings.AsReadOnly());
    }

    /// <summary>Every dial value in the facts, on one scale.</summary>
    internal static MeterHistory MeterOf(HourMeter meter, List<ServiceFact> facts)
    {
        MeterHistoryBuilder readings = new(meter, facts.Count);
        foreach (ServiceFact fact in facts)
        {
            if (fact is MeterChange change)
            {
                readings.Add(change);
            }
            else if (fact.Dial is EngineHours dial)
            {
                readings.Add(fact.Day, dial, fact is MeterReading reading ? reading.Source : ReadingSource.Dial);
            }
        }

        return readings.Build();
    }

    private static ReadOnlyMemory<ServiceStep> InOrder(List<ServiceFact> facts, MeterHistory history, List<Finding> findings)
    {
        ServiceStep[] steps = new ServiceStep[facts.Count];
        int count = 0;
        bool inOrder = true;
        foreach (ServiceFact fact in facts)
        {
            if (fact is MeterReading or MeterChange or PlannedLayUp or PlannedUse or TopUp)
            {
                continue;
            }

            HoursEstimate? read = fact.Dial is EngineHours dial ? history.FindReading(fact.Day, dial) : null;
            steps[count] = new(fact, read ?? history.FindHoursOn(fact.Day));
            inOrder = inOrder && (count == 0 || steps[count - 1].CompareTo(steps[count]) <= 0);
            count++;
        }

        if (!inOrder)
        {
            Array.Sort(steps, 0, count);
        }

        int once = 0;
        for (int i = 0; i < count; i++)
        {
            if (steps[i].Fact is Completion completion && HasTwin(steps, once, steps[i].Day, completion))
            {
                findings.Add(SchedulingRules.EnteredTwice.On($"task '{completion.TaskId}'", Figure.Of("date", completion.Date)));
                continue;
            }

            steps[once++] = steps[i];
        }

        return steps.AsMemory(0, once);
    }

    private static ServiceStep[] ChangesOfDuty(ReadOnlySpan<ServiceStep> steps)
    {
        List<ServiceStep>? changes = null;
        foreach (ref readonly ServiceStep step in steps)
        {
            if (step.Fact is DutyChange)
            {
                (changes ??= []).Add(step);
            }
        }

        return changes is null ? [] : [.. changes];
    }

    private static bool HasTwin(ServiceStep[] steps, int count, int day, Completion completion)
    {
        for (int i = count - 1; i >= 0 && steps[i].Day == day; i--)
        {
            if (steps[i].Fact is Completion earlier && earlier.SaysTheSameAs(completion))
            {
                return true;
            }
        }

        return false;
    }

    private static PlannedUse[] PlannedUses(List<ServiceFact> facts) =>
        facts.Exists(fact => fact is PlannedUse)
            ? [.. facts.OfType<PlannedUse>().OrderBy(plan => plan.From).ThenBy(plan => plan.To).ThenBy(plan => plan.Hours)]
            : [];

    private static LayUpPeriod[] LayUpPeriods(List<ServiceFact> facts)
    {
        if (!facts.Exists(fact => fact is LaidUp or PlannedLayUp))
        {
            return [];
        }

        List<LocalDate> ends = [.. facts.OfType<Commissioned>().Select(fact => fact.Date).OrderBy(date => date)];
        List<PlannedLayUp> plans = [.. facts.OfType<PlannedLayUp>().OrderBy(plan => plan.From).ThenBy(plan => plan.To)];
        List<LayUpPeriod> periods = [];
        foreach (LocalDate from in facts.OfType<LaidUp>().Select(fact => fact.Date).OrderBy(date => date))
        {
            if (periods.Count > 0 && (periods[periods.Count - 1].To is not LocalDate earlier || earlier > from))
            {
                // Laid up again while still laid up: the first date stands.
                continue;
            }

            LocalDate? end = ends.Where(date => date >= from).Select(date => (LocalDate?)date).FirstOrDefault()
                ?? plans.Where(plan => plan.To > from).Select(plan => (LocalDate?)plan.To).FirstOrDefault();
            periods.Add(LayUpPeriod.Of(from, end));
        }

        foreach (PlannedLayUp plan in plans)
        {
            // A boat that was commissioned early is no longer laid up, whatever the plan said.
            LocalDate? ended = ends.Where(date => date > plan.From && date < plan.To).Select(date => (LocalDate?)date).FirstOrDefault();
            LayUpPeriod planned = LayUpPeriod.Of(plan.From, ended ?? plan.To);
            if (!periods.Exists(period => period.FromDay < planned.ToDay && planned.FromDay < period.ToDay))
            {
                periods.Add(planned);
            }
        }

        periods.Sort((left, right) => left.From.CompareTo(right.From));
        return [.. periods];
    }
}
