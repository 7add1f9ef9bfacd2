using MarineService.Core.Internal;

namespace MarineService.Core.Fluids;

/// <content>The events, in the order of a usual change. Telling one costs one small object; nothing is reckoned until asked.</content>
public sealed partial class OilChange
{
    /// <summary>Opens an account with the level before anything is drained.</summary>
    /// <param name="sump">What the engine holds; without faults.</param>
    /// <param name="before">The level before, read cold before any start.</param>
    /// <param name="limits">The limits, or null for <see cref="OilChangeLimits.Default"/>.</param>
    /// <returns>The account. When the reading cannot be used it is refused with a finding and the level before is not known.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sump"/> or <paramref name="before"/> is null.</exception>
    /// <exception cref="ArgumentException">The sump's figures do not fit together; the message names the faults of <see cref="Sump.Validate"/>.</exception>
    public static OilChange Begin(Sump sump, DipstickReading before, OilChangeLimits? limits = null)
    {
        Guard.NotNull(sump);
        Guard.NotNull(before);
        RefuseFaults(sump);
        return new(new OilChangeOpening(sump, limits ?? OilChangeLimits.Default, before));
    }

    /// <summary>Opens an account without a reading: the level is known only once the sump has been drained.</summary>
    /// <param name="sump">What the engine holds; without faults.</param>
    /// <param name="limits">The limits, or null for <see cref="OilChangeLimits.Default"/>.</param>
    /// <returns>The account.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sump"/> is null.</exception>
    /// <exception cref="ArgumentException">The sump's figures do not fit together; the message names the faults of <see cref="Sump.Validate"/>.</exception>
    public static OilChange BeginWithoutReading(Sump sump, OilChangeLimits? limits = null)
    {
        Guard.NotNull(sump);
        RefuseFaults(sump);
        return new(new OilChangeOpening(sump, limits ?? OilChangeLimits.Default, null));
    }

    /// <summary>Opens an account and tells it a list of events.</summary>
    /// <param name="sump">What the engine holds; without faults.</param>
    /// <param name="events">The events; the first opens the account, no other does.</param>
    /// <param name="limits">The limits, or null for <see cref="OilChangeLimits.Default"/>.</param>
    /// <returns>The account after the last event.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sump"/>, <paramref name="events"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">
    /// The sump's figures do not fit together, or the opening is not the first event and the only one of its kind.
    /// </exception>
    public static OilChange Of(Sump sump, IEnumerable<OilChangeEvent> events, OilChangeLimits? limits = null)
    {
        Guard.NotNull(sump);
        IReadOnlyList<OilChangeEvent> all = InOrder(events);
        OilChange account = all[0].Reading is DipstickReading before ? Begin(sump, before, limits) : BeginWithoutReading(sump, limits);
        for (int i = 1; i < all.Count; i++)
        {
            account = all[i].TellTo(account);
        }

        return account;
    }

    /// <summary>Tells what happened since the last change, so that the consumption can be reckoned.</summary>
    /// <param name="period">The level it began with, top-ups, hours, mean power.</param>
    /// <returns>The account with the period; refused when one was told already.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="period"/> is null.</exception>
    public OilChange Since(PeriodSinceChange period) => new(this, OilChangeStep.PeriodTold, Guard.NotNull(period));

    /// <summary>Tells how the oil looked or smelled, on the stick or in the pan.</summary>
    /// <param name="appearance">How.</param>
    /// <returns>The account with the look.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="appearance"/> is not defined.</exception>
    public OilChange Looked(OilAppearance appearance) => new(this, OilChangeStep.Looked, null, (byte)Guard.Defined(appearance));

    /// <summary>Oil came out. May be told more than once: through the plug, then with the extractor.</summary>
    /// <param name="measured">What the measure showed; with the old filter's oil in it when that is emptied there too.</param>
    /// <param name="method">How it came out.</param>
    /// <returns>The account with the drain; refused after the first pour, and when it is more than the engine can hold.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not defined.</exception>
    public OilChange Drained(MeasuredVolume measured, DrainMethod method = DrainMethod.DrainPlug) =>
        new(this, OilChangeStep.Drained, Guard.NotNull(measured), (byte)Guard.Defined(method));

    /// <summary>The old filter came off and a new, dry one went on.</summary>
    /// <param name="oldEmptiedIntoMeasure">Whether the old filter was emptied into the measure of the drain, so that the drain counts its oil.</param>
    /// <returns>The account with the filter; refused the second time and after the first pour.</returns>
    public OilChange FilterChanged(bool oldEmptiedIntoMeasure) =>
        new(this, OilChangeStep.FilterChanged, null, oldEmptiedIntoMeasure ? (byte)1 : (byte)0);

    /// <summary>The filter stays on, full of old oil.</summary>
    /// <returns>The account; refused when the filter was told of already.</returns>
    public OilChange FilterKept() => new(this, OilChangeStep.FilterKept);

    /// <summary>The new filter was filled by hand before it went on. It counts as poured.</summary>
    /// <remarks>Only upright oil filters, through the outer holes; never a diesel's fine fuel filter with unfiltered fuel.</remarks>
    /// <param name="measured">What went in.</param>
    /// <returns>The account; refused without a new filter, and when it is more than the filter holds.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange FilterPrimed(MeasuredVolume measured) => new(this, OilChangeStep.FilterPrimed, Guard.NotNull(measured));

    /// <summary>Oil was poured into the engine.</summary>
    /// <param name="measured">What went in.</param>
    /// <returns>The account with the pour; remarked on when it may pass the full mark.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange Poured(MeasuredVolume measured) => new(this, OilChangeStep.Poured, Guard.NotNull(measured));

    /// <summary>The engine ran until the pressure was normal, so that a new filter is full.</summary>
    /// <returns>The account; remarked on when the level was below the add mark.</returns>
    public OilChange Ran() => new(this, OilChangeStep.Ran);

    /// <summary>The oil settled and the dipstick was read.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>
    /// The account with the reading weighed in; refused when it was read before settling or in another way than the marks
    /// expect. Before anything was drained or poured it sharpens the level before.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="reading"/> is null.</exception>
    public OilChange Settled(DipstickReading reading) => new(this, OilChangeStep.Settled, Guard.NotNull(reading));

    /// <summary>Oil was taken out again because the level was too high.</summary>
    /// <param name="measured">What came out.</param>
    /// <returns>The account; refused when it is more than the sump holds.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange DrawnOff(MeasuredVolume measured) => new(this, OilChangeStep.DrawnOff, Guard.NotNull(measured));

    internal static IReadOnlyList<OilChangeEvent> InOrder(IEnumerable<OilChangeEvent> events)
    {
        IReadOnlyList<OilChangeEvent> all = Guard.Items(events);
        for (int i = 0; i < Math.Max(1, all.Count); i++)
        {
            if (all.Count == 0 || all[i].Step == OilChangeStep.Begun != (i == 0))
            {
                throw new ArgumentException("Must open the account with its first event and no other.", nameof(events));
            }
        }

        return all;
    }

    private static void RefuseFaults(Sump sump)
    {
        IReadOnlyList<Finding> faults = sump.Validate();
        for (int i = 0; i < faults.Count; i++)
        {
            if (faults[i].Severity >= Severity.Act)
            {
                throw new ArgumentException($"Must hold figures that fit together. {string.Join(" ", faults)}", nameof(sump));
            }
        }
    }
}
