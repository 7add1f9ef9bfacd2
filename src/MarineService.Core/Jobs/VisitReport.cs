using MarineService.Core.Belts;
using MarineService.Core.Cooling;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using NodaTime;

namespace MarineService.Core.Jobs;

/// <summary>What somebody reports of a visit, as plain facts: it is held against its card by <see cref="ProveOn"/>.</summary>
/// <remarks>A report may say anything; what does not fit the card becomes a finding.</remarks>
public sealed class VisitReport
{
    private VisitReport(string cardId, LocalDate day, IReadOnlyList<VisitEvent> events) => (CardId, Day, Events) = (cardId, day, events);

    private VisitReport(VisitReport other)
        : this(other.CardId, other.Day, other.Events)
    {
        (Dial, Oil, Belt, Verdicts) = (other.Dial, other.Oil, other.Belt, other.Verdicts);
        (By, CheckedBy, Evidence, Tally) = (other.By, other.CheckedBy, other.Evidence, other.Tally);
        (Start, Impeller, Bucket) = (other.Start, other.Impeller, other.Bucket);
    }

    /// <summary>The card's id.</summary>
    public string CardId { get; }

    /// <summary>The first day of work.</summary>
    public LocalDate Day { get; }

    /// <summary>What was done, in real order.</summary>
    public IReadOnlyList<VisitEvent> Events { get; }

    /// <summary>What the hour meter showed, or null.</summary>
    public EngineHours? Dial { get; private set; }

    /// <summary>The events of the oil change; none when it was not told.</summary>
    public IReadOnlyList<OilChangeEvent> Oil { get; private set; } = [];

    /// <summary>The pulleys that the belt passes, in order; none when it was not told.</summary>
    public IReadOnlyList<string> Belt { get; private set; } = [];

    /// <summary>Whether inspections passed, by task.</summary>
    public IReadOnlyDictionary<string, bool> Verdicts { get; private set; } = new Dictionary<string, bool>();

    /// <summary>Who did it, or null.</summary>
    public string? By { get; private set; }

    /// <summary>Who checked it, or null.</summary>
    public string? CheckedBy { get; private set; }

    /// <summary>Photos and receipts.</summary>
    public IReadOnlyList<Evidence> Evidence { get; private set; } = [];

    /// <summary>What was seen after the start, or null.</summary>
    public StartTimes? Start { get; private set; }

    /// <summary>What was seen on the impeller that came out, or null.</summary>
    public ImpellerInspection? Impeller { get; private set; }

    /// <summary>The bucket test, or null.</summary>
    public BucketTest? Bucket { get; private set; }

    /// <summary>The counts of loose parts; none when they were not told.</summary>
    public IReadOnlyList<TallyLine> Tally { get; private set; } = [];

    /// <summary>A report.</summary>
    /// <param name="cardId">The card's id; not blank.</param>
    /// <param name="day">The first day of work, from 1900 to 2199.</param>
    /// <param name="events">What was done, in real order.</param>
    /// <returns>The report.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="cardId"/> or <paramref name="events"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="cardId"/> is blank, or an item is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="day"/> is outside 1900 to 2199.</exception>
    public static VisitReport Of(string cardId, LocalDate day, IEnumerable<VisitEvent> events) =>
        new(Guard.NotBlank(cardId), Guard.Date(day), Guard.Items(events));

    /// <summary>A copy with what was measured.</summary>
    /// <param name="dial">What the hour meter showed, or null.</param>
    /// <param name="oil">The events of the oil change, the opening first; null for none.</param>
    /// <param name="belt">The pulleys that the belt passes, in order; null for none.</param>
    /// <param name="verdicts">Whether inspections passed, by task; null for none.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException">A list is null; a list that is left out counts as empty.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public VisitReport Measured(
        EngineHours? dial = null,
        IEnumerable<OilChangeEvent>? oil = null,
        IEnumerable<string>? belt = null,
        IReadOnlyDictionary<string, bool>? verdicts = null) => new(this)
        {
            Dial = dial,
            Oil = Guard.Items(oil ?? [], nameof(oil)),
            Belt = Guard.Items(belt ?? [], nameof(belt)),
            Verdicts = (verdicts ?? Verdicts).ToDictionary(one => one.Key, one => one.Value, StringComparer.Ordinal),
        };

    /// <summary>A copy with what was seen of the raw water.</summary>
    /// <param name="start">What was seen after the start, or null.</param>
    /// <param name="impeller">What was seen on the impeller that came out, on the report's day; null when nothing.</param>
    /// <param name="bucket">The bucket test, of the report's day; null when there was none.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentException">The inspection or the test is of another day than the report.</exception>
    public VisitReport Seen(StartTimes? start = null, ImpellerInspection? impeller = null, BucketTest? bucket = null) =>
        impeller is not null && impeller.Date != Day ? throw new ArgumentException("Must be of the report's day.", nameof(impeller))
        : bucket is not null && bucket.Date != Day ? throw new ArgumentException("Must be of the report's day.", nameof(bucket))
        : new(this) { Start = start, Impeller = impeller, Bucket = bucket };

    /// <summary>A copy with who did it, who checked it, and what proves it.</summary>
    /// <param name="by">Who did it, or null.</param>
    /// <param name="checkedBy">Who checked it, or null.</param>
    /// <param name="evidence">Photos and receipts.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="evidence"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public VisitReport WithNames(string? by, string? checkedBy, params Evidence[] evidence) =>
        new(this) { By = by, CheckedBy = checkedBy, Evidence = Guard.Items(evidence) };

    /// <summary>A copy with the counts of loose parts.</summary>
    /// <param name="lines">What went back on and what was renewed; each name at one place once.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="lines"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, or a name at one place is there twice.</exception>
    public VisitReport WithTally(params TallyLine[] lines)
    {
        IReadOnlyList<TallyLine> all = Guard.Items(lines);
        HashSet<(string, string)> seen = [];
        return all.FirstOrDefault(line => !seen.Add((line.Name, line.Place))) is TallyLine twice
            ? throw new ArgumentException($"'{twice.Name}' of '{twice.Place}' is named twice.", nameof(lines))
            : new(this) { Tally = all };
    }

    /// <summary>Holds the report against its card.</summary>
    /// <param name="card">The card.</param>
    /// <returns>One verdict, and everything that stands against it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="card"/> is null.</exception>
    public JobProof ProveOn(JobCard card)
    {
        Guard.NotNull(card);
        List<Finding> strange = [];
        JobMeasurements given = JobMeasurements.Of(Replay(card, strange)).WithEvidence([.. Evidence]);
        if (CardId != card.Id)
        {
            return JobProof.Refused(card, given, [JobRules.OtherCard.On($"card '{card.Id}'", Figure.Of("proof", CardId))]);
        }

        given = Dial is EngineHours dial ? given.WithDial(dial) : given;
        given = By is not null ? given.DoneBy(By) : given;
        given = CheckedBy is not null ? given.WithChecker(CheckedBy) : given;
        given = Verdicts.Aggregate(given, (all, one) => all.Inspected(one.Key, one.Value));
        given = Impeller is not null ? given.With(Impeller) : given;
        given = Bucket is not null ? given.With(Bucket) : given;
        if (Start?.ReportFor(card.Engine.Specification.RawWater?.Circuit) is Answer<StartReport> watched)
        {
            strange.AddRange(watched.Missing.Select(fault => Unfit("start", fault)));
            given = watched.IsKnown ? given.With(watched.Value) : given;
        }

        if (Belt.Count > 0)
        {
            Answer<BeltRouting> lies = card.Engine.Specification.BeltDrive is BeltDrive drive
                ? drive.ReadRouting(string.Join(",", Belt))
                : Answer.NotKnown<BeltRouting>("The engine's belt drive.");
            strange.AddRange(lies.Missing.Select(fault => Unfit("belt", fault)));
            given = lies.IsKnown ? given.With(lies.Value) : given;
        }

        if (Oil.Count > 0)
        {
            if (card.Oil is not { Sump: { IsKnown: true } sump })
            {
                strange.Add(Unfit("engine oil", "the card has no oil change, or nothing is known of the oil system"));
            }
            else if (Oil[0].Step is not OilChangeStep.Begun || Oil.Skip(1).Any(one => one.Step is OilChangeStep.Begun))
            {
                strange.Add(Unfit("engine oil", "an account opens with its first event, and only there"));
            }
            else
            {
                given = given.With(OilChange.Of(sump.Value, Oil));
            }
        }

        given = Tally.Count > 0 ? given.With(card.Kit.TallyOf(Tally, fault => strange.Add(Unfit("tally", fault)))) : given;
        JobProof proof = card.Prove(given);
        return strange.Count == 0 ? proof : JobProof.Refused(card, given, [.. strange, .. proof.Findings]);
    }

    /// <summary>Card and day.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{CardId}: {Events.Count} events");

    private WorkRecord Replay(JobCard card, List<Finding> strange)
    {
        WorkRecord work = WorkRecord.Begin(card.Procedure, Day);
        foreach (VisitEvent one in Events)
        {
            switch (one.Kind)
            {
                case WorkEventKind.Step:
                    work = work.Do(one.Text, [.. one.Proofs]);
                    break;
                case WorkEventKind.PutDown:
                    work = work.PutDown(one.Text);
                    break;
                case WorkEventKind.Found when work.Circumstances[one.Circumstance!.Value] is bool known && known != one.Holds:
                    strange.Add(Unfit("visit", $"{one.Circumstance} was said to {(one.Holds ? "hold" : "fail")}, and the opposite is known"));
                    break;
                case WorkEventKind.Found:
                    work = work.Found(one.Circumstance!.Value, one.Holds);
                    break;
                case WorkEventKind.TakenUp when one.Day < work.Day:
                    strange.Add(Unfit("visit", "the work was taken up before it was put down"));
                    break;
                default:
                    work = work.TakeUp(one.Day!.Value);
                    break;
            }
        }

        return work;
    }

    private static Finding Unfit(string subject, string what) => JobRules.DoesNotFit.On(subject, Figure.Of("what", what.TrimEnd('.')));
}
