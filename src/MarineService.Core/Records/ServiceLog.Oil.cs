using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Records;

/// <content>What the log says of the engine oil: accounts of changes, and the period between them.</content>
public sealed partial class ServiceLog
{
    /// <summary>Every recorded oil change of an engine, cast up, oldest first.</summary>
    /// <remarks>
    /// An account that was not told what happened since the change before gets it from the log: the level that the last change
    /// ended with, top-ups, hours, and what was used in earlier periods. So the consumption is judged against the engine's own.
    /// </remarks>
    /// <param name="specification">What the engine is and needs, its sump among it.</param>
    /// <param name="engine">The engine's id in the log; not blank.</param>
    /// <returns>The balances; not known when the sump is not stated or its figures do not fit together.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="specification"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="engine"/> is blank.</exception>
    public Answer<IReadOnlyList<FluidBalance>> OilBalances(EngineSpecification specification, string engine = LogEntry.MainEngine)
    {
        Guard.NotNull(specification);
        Guard.NotBlank(engine);
        return UsableSump(specification.Sump) is not Sump sump
            ? Answer.NotKnown<IReadOnlyList<FluidBalance>>("What the engine's oil system holds, by figures that fit together.")
            : Answer.Known<IReadOnlyList<FluidBalance>>(CastUp(specification, sump, engine, Guard.LatestDate).Balances.AsReadOnly());
    }

    /// <summary>What happened to an engine's oil between its last recorded change and a day.</summary>
    /// <param name="specification">What the engine is and needs, its sump among it.</param>
    /// <param name="until">The day, from 1900 to 2199; entries of the day itself count.</param>
    /// <param name="engine">The engine's id in the log; not blank.</param>
    /// <returns>The period; not known without a recorded change that ended with a settled reading.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="specification"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="engine"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="until"/> is outside 1900 to 2199.</exception>
    public Answer<PeriodSinceChange> PeriodSinceOilChange(EngineSpecification specification, LocalDate until, string engine = LogEntry.MainEngine)
    {
        Guard.NotNull(specification);
        Guard.Date(until);
        Guard.NotBlank(engine);
        OilChangeRecord[] records = [.. OilRecords(specification, engine).Where(record => record.Date <= until)];
        if (records.Length == 0 || Ending(records[records.Length - 1]) is not DipstickReading)
        {
            return Answer.NotKnown<PeriodSinceChange>("A recorded oil change that ended with a settled dipstick reading.");
        }

        List<double> earlier = UsableSump(specification.Sump) is Sump sump ? CastUp(specification, sump, engine, until).Rates : [];
        return Answer.Known(Period(specification, engine, records[records.Length - 1], until, MeterUntil(specification, engine, until), earlier)!);
    }

    /// <summary>An account counts by the fraction that it shows was exchanged; one that shows none counts as a plain entry would.</summary>
    private static Completion AsCompletion(OilChangeRecord record, Sump? sump)
    {
        FluidBalance? balance = UsableSump(sump) is Sump usable ? record.AccountFor(usable).Balance() : null;
        return balance is { ExchangedFraction: { IsKnown: true, Value: >= LeastFraction and double fraction } }
            ? Completion.Partial(
                record.TaskId,
                record.Date,
                record.Dial,
                Rounded(fraction),
                Rounded(Math.Min(1, balance.ExchangedUncertaintyFraction.Value)))
            : Completion.Of(record.TaskId, record.Date, record.Dial);
    }

    // The least fraction that a completion can hold.
    private const double LeastFraction = 0.000001;

    private static decimal Rounded(double fraction) => decimal.Round((decimal)fraction, 6);

    /// <summary>A sump whose figures contradict each other says nothing.</summary>
    private static Sump? UsableSump(Sump? sump) =>
        sump is not null && sump.Validate().All(finding => finding.Severity < Severity.Act) ? sump : null;

    private IEnumerable<OilChangeRecord> OilRecords(EngineSpecification specification, string engine) =>
        Standing()
            .Where(entry => entry.Scope == engine && entry.Fact is OilChangeRecord record && record.TaskId == specification.OilTaskId)
            .Select(entry => (OilChangeRecord)entry.Fact!)
            .OrderBy(record => record.Date);

    private (List<FluidBalance> Balances, List<double> Rates) CastUp(EngineSpecification specification, Sump sump, string engine, LocalDate until)
    {
        List<FluidBalance> balances = [];
        List<double> rates = [];
        MeterHistory meter = MeterUntil(specification, engine, until);
        OilChangeRecord? before = null;
        foreach (OilChangeRecord record in OilRecords(specification, engine).Where(record => record.Date <= until))
        {
            OilChange account = record.AccountFor(sump);
            if (account.FindPeriod() is null && before is not null
                && Period(specification, engine, before, record.Date, meter, rates) is PeriodSinceChange period)
            {
                account = account.Since(period);
            }

            FluidBalance balance = account.Balance();
            balances.Add(balance);
            if (balance.ConsumptionRate.IsKnown)
            {
                rates.Insert(0, balance.ConsumptionRate.Value.LitersPer100Hours);
            }

            before = record;
        }

        return (balances, rates);
    }

    private MeterHistory MeterUntil(EngineSpecification specification, string engine, LocalDate until) =>
        ServiceHistory.MeterOf(specification.Meter, EngineFacts(engine, null).FindAll(fact => fact.Date <= until));

    private PeriodSinceChange? Period(
        EngineSpecification specification, string engine, OilChangeRecord from, LocalDate until, MeterHistory meter, List<double> earlier)
    {
        if (Ending(from) is not DipstickReading level)
        {
            return null;
        }

        PeriodSinceChange period = PeriodSinceChange.From(level);
        foreach (LogEntry entry in Standing())
        {
            if (entry.Scope == engine && entry.Fact is TopUp topUp && topUp.Fluid == specification.OilTaskId
                && topUp.Date > from.Date && topUp.Date <= until)
            {
                period = period.ToppedUp(topUp.Amount);
            }
        }

        Answer<HoursEstimate> start = meter.HoursOn(from.Date);
        Answer<HoursEstimate> end = meter.HoursOn(until);
        if (start.IsKnown && end.IsKnown && end.Value.Estimate > start.Value.Estimate)
        {
            period = period.RunFor(end.Value.Estimate.Minus(start.Value.Estimate));
        }

        // What a period allows is from -100 to 100 L per 100 h; more is no consumption but a mistake.
        return period.After([.. earlier.Where(rate => Math.Abs(rate) <= 100)]);
    }

    /// <summary>The settled reading that a change ended with; nothing may have moved since.</summary>
    private static DipstickReading? Ending(OilChangeRecord record)
    {
        for (int i = record.Events.Count - 1; i > 0; i--)
        {
            switch (record.Events[i].Step)
            {
                case OilChangeStep.Settled:
                    return record.Events[i].Reading;
                case OilChangeStep.PeriodTold or OilChangeStep.Looked:
                    continue;
                default:
                    return null;
            }
        }

        return null;
    }
}
