using MarineService.Core.Internal;

namespace MarineService.Core.Fluids;

/// <summary>One event of an oil change as it is told, before any sump is known: what a log or a file holds.</summary>
/// <remarks><see cref="OilChange.Of"/> tells a list of them to an account; <see cref="OilChange.Told"/> gives them back.</remarks>
public sealed class OilChangeEvent
{
    private readonly object? _given;
    private readonly byte _option;

    private OilChangeEvent(OilChangeStep step, object? given = null, byte option = 0) => (Step, _given, _option) = (step, given, option);

    /// <summary>What kind of event.</summary>
    public OilChangeStep Step { get; }

    /// <summary>The volume that was drained, primed, poured or drawn off; null for other events.</summary>
    public MeasuredVolume? Measured => _given as MeasuredVolume;

    /// <summary>The dipstick reading; null for other events and for an account opened without one.</summary>
    public DipstickReading? Reading => _given as DipstickReading;

    /// <summary>The period since the last change; null for other events.</summary>
    public PeriodSinceChange? Period => _given as PeriodSinceChange;

    /// <summary>How it was drained; null for other events.</summary>
    public DrainMethod? DrainedBy => Step == OilChangeStep.Drained ? (DrainMethod)_option : null;

    /// <summary>Whether the old filter was emptied into the measure of the drain; null unless the filter was changed.</summary>
    public bool? OldFilterEmptiedIntoMeasure => Step == OilChangeStep.FilterChanged ? _option != 0 : null;

    /// <summary>How the oil looked; null unless it was looked at.</summary>
    public OilAppearance? Appearance => Step == OilChangeStep.Looked ? (OilAppearance)_option : null;

    /// <summary>The engine ran until the pressure was normal.</summary>
    public static OilChangeEvent Ran { get; } = new(OilChangeStep.Ran);

    /// <summary>The filter stayed on.</summary>
    public static OilChangeEvent FilterKept { get; } = new(OilChangeStep.FilterKept);

    /// <summary>The account was opened.</summary>
    /// <param name="before">The level before, or null when it was not read.</param>
    /// <returns>The event.</returns>
    public static OilChangeEvent Begun(DipstickReading? before) => new(OilChangeStep.Begun, before);

    /// <summary>The period since the last change was told.</summary>
    /// <param name="period">The period.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="period"/> is null.</exception>
    public static OilChangeEvent Since(PeriodSinceChange period) => new(OilChangeStep.PeriodTold, Guard.NotNull(period));

    /// <summary>The oil was looked at.</summary>
    /// <param name="appearance">How it looked.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="appearance"/> is not defined.</exception>
    public static OilChangeEvent Looked(OilAppearance appearance) => new(OilChangeStep.Looked, null, (byte)Guard.Defined(appearance));

    /// <summary>Oil was drained.</summary>
    /// <param name="measured">What the measure showed.</param>
    /// <param name="method">How it came out.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not defined.</exception>
    public static OilChangeEvent Drained(MeasuredVolume measured, DrainMethod method = DrainMethod.DrainPlug) =>
        new(OilChangeStep.Drained, Guard.NotNull(measured), (byte)Guard.Defined(method));

    /// <summary>The filter was changed.</summary>
    /// <param name="oldEmptiedIntoMeasure">Whether the drain's measure counts the old filter's oil.</param>
    /// <returns>The event.</returns>
    public static OilChangeEvent FilterChanged(bool oldEmptiedIntoMeasure) =>
        new(OilChangeStep.FilterChanged, null, oldEmptiedIntoMeasure ? (byte)1 : (byte)0);

    /// <summary>The new filter was primed.</summary>
    /// <param name="measured">What went in.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public static OilChangeEvent FilterPrimed(MeasuredVolume measured) => new(OilChangeStep.FilterPrimed, Guard.NotNull(measured));

    /// <summary>Oil was poured.</summary>
    /// <param name="measured">What went in.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public static OilChangeEvent Poured(MeasuredVolume measured) => new(OilChangeStep.Poured, Guard.NotNull(measured));

    /// <summary>The oil settled and the dipstick was read.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="reading"/> is null.</exception>
    public static OilChangeEvent Settled(DipstickReading reading) => new(OilChangeStep.Settled, Guard.NotNull(reading));

    /// <summary>Oil was drawn off again.</summary>
    /// <param name="measured">What came out.</param>
    /// <returns>The event.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public static OilChangeEvent DrawnOff(MeasuredVolume measured) => new(OilChangeStep.DrawnOff, Guard.NotNull(measured));

    /// <summary>The step and its figure, metric and invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => _given is null ? Step.ToString() : $"{Step} {_given}";

    internal static OilChangeEvent Of(OilChangeStep step, object? given, byte option) => new(step, given, option);

    /// <summary>The account after this event, which is not the opening one.</summary>
    internal OilChange TellTo(OilChange account) => Step switch
    {
        OilChangeStep.PeriodTold => account.Since(Period!),
        OilChangeStep.Looked => account.Looked((OilAppearance)_option),
        OilChangeStep.Drained => account.Drained(Measured!, (DrainMethod)_option),
        OilChangeStep.FilterChanged => account.FilterChanged(_option != 0),
        OilChangeStep.FilterKept => account.FilterKept(),
        OilChangeStep.FilterPrimed => account.FilterPrimed(Measured!),
        OilChangeStep.Poured => account.Poured(Measured!),
        OilChangeStep.Ran => account.Ran(),
        OilChangeStep.Settled => account.Settled(Reading!),
        _ => account.DrawnOff(Measured!),
    };
}
