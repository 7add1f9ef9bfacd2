using MarineService.Core.Belts;
using MarineService.Core.Cooling;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;
using MarineService.Core.Records;

namespace MarineService.Core.Jobs;

/// <summary>What was done and measured at a visit: the steps in real order, the oil account, the belt as it lies, the first seconds of the run.</summary>
public sealed class JobMeasurements
{
    private JobMeasurements(WorkRecord work) => Work = work;

    private JobMeasurements(JobMeasurements other)
        : this(other.Work)
    {
        (Oil, Belt, Start, Dial, Verdicts) = (other.Oil, other.Belt, other.Start, other.Dial, other.Verdicts);
        (By, CheckedBy, Evidence, Tally) = (other.By, other.CheckedBy, other.Evidence, other.Tally);
        (Impeller, Bucket) = (other.Impeller, other.Bucket);
    }

    /// <summary>The steps in real order.</summary>
    public WorkRecord Work { get; }

    /// <summary>The account of the oil change, or null.</summary>
    public OilChange? Oil { get; private set; }

    /// <summary>The belt as it lies now, or null.</summary>
    public BeltRouting? Belt { get; private set; }

    /// <summary>Water and pressure in the first seconds of the run, or null.</summary>
    public StartReport? Start { get; private set; }

    /// <summary>What was seen on the impeller that came out, or null.</summary>
    public ImpellerInspection? Impeller { get; private set; }

    /// <summary>The bucket test, or null.</summary>
    public BucketTest? Bucket { get; private set; }

    /// <summary>What the hour meter showed, or null.</summary>
    public EngineHours? Dial { get; private set; }

    /// <summary>Whether inspections passed, by task.</summary>
    public IReadOnlyDictionary<string, bool> Verdicts { get; private set; } = new Dictionary<string, bool>();

    /// <summary>Who did it, or null.</summary>
    public string? By { get; private set; }

    /// <summary>Who checked it, or null.</summary>
    public string? CheckedBy { get; private set; }

    /// <summary>Photos and receipts.</summary>
    public IReadOnlyList<Evidence> Evidence { get; private set; } = [];

    /// <summary>What was put back, renewed and found, and what came off beyond the card's own list; null when it was not told.</summary>
    public LooseParts? Tally { get; private set; }

    /// <summary>The steps alone.</summary>
    /// <param name="work">The steps in real order.</param>
    /// <returns>The measurements.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="work"/> is null.</exception>
    public static JobMeasurements Of(WorkRecord work) => new(Guard.NotNull(work));

    /// <summary>A copy with the oil account.</summary>
    /// <param name="oil">The account after its last event.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="oil"/> is null.</exception>
    public JobMeasurements With(OilChange oil) => new(this) { Oil = Guard.NotNull(oil) };

    /// <summary>A copy with the belt as it lies.</summary>
    /// <param name="belt">Every pulley that it passes, in order.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="belt"/> is null.</exception>
    public JobMeasurements With(BeltRouting belt) => new(this) { Belt = Guard.NotNull(belt) };

    /// <summary>A copy with what was seen after the start.</summary>
    /// <param name="start">The report.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="start"/> is null.</exception>
    public JobMeasurements With(StartReport start) => new(this) { Start = Guard.NotNull(start) };

    /// <summary>A copy with what was seen on the impeller that came out.</summary>
    /// <param name="impeller">The inspection.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="impeller"/> is null.</exception>
    public JobMeasurements With(ImpellerInspection impeller) => new(this) { Impeller = Guard.NotNull(impeller) };

    /// <summary>A copy with a bucket test.</summary>
    /// <param name="bucket">The test.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="bucket"/> is null.</exception>
    public JobMeasurements With(BucketTest bucket) => new(this) { Bucket = Guard.NotNull(bucket) };

    /// <summary>A copy with the counts of loose parts.</summary>
    /// <param name="tally">
    /// What was put back, renewed and found, beginning with <see cref="LooseParts.Empty"/>: the card has counted off already what its data
    /// sheet says comes off. What came off beyond that is counted off here.
    /// </param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tally"/> is null.</exception>
    public JobMeasurements With(LooseParts tally) => new(this) { Tally = Guard.NotNull(tally) };

    /// <summary>A copy with the hour meter's dial.</summary>
    /// <param name="dial">What it showed.</param>
    /// <returns>The copy.</returns>
    public JobMeasurements WithDial(EngineHours dial) => new(this) { Dial = dial };

    /// <summary>A copy with the verdict of an inspection.</summary>
    /// <param name="taskId">The task; not blank.</param>
    /// <param name="passed">Whether it passed.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="taskId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="taskId"/> is blank.</exception>
    public JobMeasurements Inspected(string taskId, bool passed)
    {
        Guard.NotBlank(taskId);
        Dictionary<string, bool> verdicts = Verdicts.ToDictionary(one => one.Key, one => one.Value, StringComparer.Ordinal);
        verdicts[taskId] = passed;
        return new(this) { Verdicts = verdicts };
    }

    /// <summary>A copy with who did it.</summary>
    /// <param name="name">Name or initials; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public JobMeasurements DoneBy(string name) => new(this) { By = Guard.NotBlank(name) };

    /// <summary>A copy with who checked it.</summary>
    /// <param name="name">Name or initials; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public JobMeasurements WithChecker(string name) => new(this) { CheckedBy = Guard.NotBlank(name) };

    /// <summary>A copy with more photos and receipts.</summary>
    /// <param name="proofs">The proofs.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="proofs"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public JobMeasurements WithEvidence(params Evidence[] proofs) =>
        new(this) { Evidence = Array.AsReadOnly<Evidence>([.. Evidence, .. Guard.Items(proofs)]) };
}
