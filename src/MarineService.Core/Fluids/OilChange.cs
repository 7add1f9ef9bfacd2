namespace MarineService.Core.Fluids;

/// <summary>The account of an oil change: one event after another, each with what is in the engine now, how sure, and how much more may be poured.</summary>
/// <remarks>
/// <para>An account never changes: every event gives a new one that knows the one before. An event that cannot be right
/// is refused: the new account says why in <see cref="Findings"/>, and what was known stays known. An event that can be
/// right but is odd is taken in and remarked on.</para>
/// <para>The oil in the sump is an estimate with a standard uncertainty. Pours and drains move it; settled readings and
/// the book's figures for an empty sump are weighed in by their uncertainties (weighted least squares). When drain and
/// book disagree, it takes the one that leaves less room, so that the next pour errs on the safe side.</para>
/// <para>Hot oil burns. The engine's own manual goes first wherever it differs.</para>
/// </remarks>
/// <example><code>
/// OilChange change = OilChange.Begin(sump, DipstickReading.OfRange(0.6))
///     .Drained(MeasuringVessel.WorkshopJug.Read(Volume.FromLiters(5.5), Temperature.FromDegreesCelsius(70)))
///     .FilterChanged(oldEmptiedIntoMeasure: true);
/// Answer&lt;SafePour&gt; next = change.NextSafePour();
/// </code></example>
public sealed partial class OilChange
{
    /// <summary>The method of the account.</summary>
    internal static readonly Citation Method =
        Citation.Derived("conservation of volume at 15 °C and weighted least squares (the Kalman filter of a linear account)");

    private readonly object? _given;
    private readonly byte _step;
    private readonly byte _option;
    private readonly int _eventsBefore;

    // Worked out when first asked for, from the nearest event before that knows its own; never changes after that.
    private AccountOutcome? _outcome;

    private OilChange(OilChangeOpening opening) => _given = opening;

    private OilChange(OilChange previous, OilChangeStep step, object? given = null, byte option = 0) =>
        (Previous, _eventsBefore, _step, _given, _option) = (previous, previous._eventsBefore + 1, (byte)step, given, option);

    /// <summary>The account before this event; null for the first.</summary>
    public OilChange? Previous { get; }

    /// <summary>What kind of event this was.</summary>
    public OilChangeStep Step => (OilChangeStep)_step;

    /// <summary>The sump.</summary>
    public Sump Sump => Opened.Sump;

    /// <summary>The limits that the account is kept by.</summary>
    public OilChangeLimits Limits => Opened.Limits;

    /// <summary>The volume that this event drained, primed, poured or drew off; null for other events.</summary>
    public MeasuredVolume? Measured => _given as MeasuredVolume;

    /// <summary>The dipstick reading of this event; null for other events and for an account opened without one.</summary>
    public DipstickReading? Reading => _given is OilChangeOpening opening ? opening.Before : _given as DipstickReading;

    /// <summary>The period that this event told of; null for other events.</summary>
    public PeriodSinceChange? Period => _given as PeriodSinceChange;

    /// <summary>How this event drained; null for other events.</summary>
    public DrainMethod? DrainedBy => Step == OilChangeStep.Drained ? (DrainMethod)_option : null;

    /// <summary>Whether the old filter was emptied into the measure of the drain; null unless this event changed the filter.</summary>
    public bool? OldFilterEmptiedIntoMeasure => Step == OilChangeStep.FilterChanged ? _option != 0 : null;

    /// <summary>How the oil looked; null unless this event looked at it.</summary>
    public OilAppearance? Appearance => Step == OilChangeStep.Looked ? (OilAppearance)_option : null;

    /// <summary>Whether the event was refused; <see cref="Findings"/> says why. The account then stands as before.</summary>
    public bool IsRefused => (Remarks & OilChangeRemark.Refusals) != 0;

    /// <summary>What there is to say about this event; empty when it went as it should.</summary>
    public IReadOnlyList<Finding> Findings => OilChangeFindings.Of(this);

    /// <summary>All events in the order in which they were told, this one last.</summary>
    public IReadOnlyList<OilChange> Events
    {
        get
        {
            List<OilChange> events = [];
            for (OilChange? change = this; change is not null; change = change.Previous)
            {
                events.Add(change);
            }

            events.Reverse();
            return events.AsReadOnly();
        }
    }

    /// <summary>What was told, without the sump, in order: what a log keeps.</summary>
    public IReadOnlyList<OilChangeEvent> Told
    {
        get
        {
            OilChangeEvent[] told = new OilChangeEvent[_eventsBefore + 1];
            for (OilChange? change = this; change is not null; change = change.Previous)
            {
                told[change._eventsBefore] = OilChangeEvent.Of(change.Step, change.Previous is null ? change.Reading : change._given, change._option);
            }

            return Array.AsReadOnly(told);
        }
    }

    internal OilChangeRemark Remarks => Outcome.Remarks;

    /// <summary>The state as it was written down: a drain that may go on is not yet weighed against the book.</summary>
    internal ref readonly AccountState State => ref Outcome.State;

    /// <summary>The state as it stands now: a drain whose filter is told of counts as ended.</summary>
    internal AccountOutcome Current
    {
        get
        {
            AccountOutcome outcome = Outcome;
            if (!outcome.State.FilterSaid || outcome.State.DrainClosed)
            {
                return outcome;
            }

            AccountState state = outcome.State;
            EndDrain(ref state, outcome.Opening);
            return new AccountOutcome(state, outcome.Remarks, outcome.Opening);
        }
    }

    /// <summary>What the account was opened with: only the first event holds it, so that the others stay small.</summary>
    private OilChangeOpening Opened
    {
        get
        {
            OilChange first = this;
            while (first.Previous is OilChange previous)
            {
                first = previous;
            }

            return (OilChangeOpening)first._given!;
        }
    }

    private AccountOutcome Outcome
    {
        get
        {
            if (_outcome is AccountOutcome known)
            {
                return known;
            }

            ReckonMilestones();
            AccountState state = default;
            OilChangeRemark remarks = Reckon(ref state, out OilChangeOpening opening);
            return _outcome = new AccountOutcome(state, remarks, opening);
        }
    }

    /// <summary>The step in a few words with its figures, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Step}{(Given.Length == 0 ? "" : $" {Given}")}{(IsRefused ? ", refused" : "")}";

    /// <summary>The state after this event: the state before it, and the event applied.</summary>
    private OilChangeRemark Reckon(ref AccountState state, out OilChangeOpening opening)
    {
        if (_outcome is AccountOutcome known)
        {
            (state, opening) = (known.State, known.Opening);
            return known.Remarks;
        }

        if (Previous is OilChange previous)
        {
            previous.Reckon(ref state, out opening);
        }
        else
        {
            opening = (OilChangeOpening)_given!;
            state = AccountState.At(opening.Sump);
        }

        return Apply(ref state, opening);
    }

    /// <summary>Very long accounts are reckoned in stretches, so that the stack stays shallow.</summary>
    private void ReckonMilestones()
    {
        const int Stretch = 200;
        if (_eventsBefore < Stretch)
        {
            return;
        }

        Stack<OilChange> milestones = new();
        for (OilChange? change = Previous; change is not null && change._outcome is null; change = change.Previous)
        {
            if (change._eventsBefore % Stretch == 0)
            {
                milestones.Push(change);
            }
        }

        foreach (OilChange milestone in milestones)
        {
            AccountState state = default;
            OilChangeRemark remarks = milestone.Reckon(ref state, out OilChangeOpening opening);
            milestone._outcome = new AccountOutcome(state, remarks, opening);
        }
    }

    /// <summary>The figure of this event, metric and invariant; empty when it has none.</summary>
    private string Given => _given is OilChangeOpening opening ? opening.Before?.ToString() ?? "" : _given?.ToString() ?? "";
}
