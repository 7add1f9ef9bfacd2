using MarineService.Core.Engines;
using MarineService.Core.Internal;
using MarineService.Core.LayUp;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Records;

/// <content>What the log says of protection from frost.</content>
public sealed partial class ServiceLog
{
    /// <summary>Whether an engine is safe from frost by what is on record since it was last commissioned.</summary>
    /// <remarks>Hours that it gained after the last work void the proof: a start brings water in again.</remarks>
    /// <param name="specification">What the engine is and needs, its low points among it.</param>
    /// <param name="freeze">The lowest temperature.</param>
    /// <param name="today">The day up to which entries count, from 1900 to 2199.</param>
    /// <param name="antifreeze">The antifreeze that was used; null when none was.</param>
    /// <param name="boat">The boat, or null.</param>
    /// <param name="engine">The engine's id in the log; not blank.</param>
    /// <returns>The proof; not known when the data sheet does not state the low points.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="specification"/>, <paramref name="freeze"/> or <paramref name="engine"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="engine"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="today"/> is outside 1900 to 2199.</exception>
    public Answer<WinterProof> WinterProof(
        EngineSpecification specification, FreezeDecision freeze, LocalDate today, Antifreeze? antifreeze = null, Boat? boat = null, string engine = LogEntry.MainEngine)
    {
        Guard.NotNull(specification);
        Guard.NotNull(freeze);
        ServiceHistory history = History(specification, Guard.Date(today), engine);
        ServiceFact[] facts = [.. EngineFacts(engine, null).Where(fact => fact.Date <= today).OrderBy(fact => fact.Date)];
        LocalDate? commissioned = facts.OfType<Commissioned>().Select(fact => (LocalDate?)fact.Date).LastOrDefault();
        WinterWork[] works = [.. facts.OfType<WinterWork>().Where(work => commissioned is not LocalDate date || work.Date >= date)];
        LayUpPlan plan = specification.PlanLayUp(freeze);
        plan = antifreeze is null ? plan : plan.WithAntifreeze(antifreeze);
        plan = boat is null ? plan : plan.WithBoat(boat);
        Answer<WinterProof> proof = plan.Prove(works.SelectMany(work => work.Works));
        return proof.IsKnown && works.Length > 0 && GainedSince(history, works[works.Length - 1]) is EngineHours gained
            ? Answer.Known(proof.Value.Voided(LayUp.LayUpRules.Void.On("engine", Figure.Of("hours", gained), Figure.Of("date", works[works.Length - 1].Date))))
            : proof;
    }

    // Only hours that were gained for certain count: from the most that it can have had then to the least that it must have now.
    private static EngineHours? GainedSince(ServiceHistory history, WinterWork work)
    {
        foreach (ServiceStep step in history.Steps)
        {
            if (ReferenceEquals(step.Fact, work))
            {
                return step.Hours is HoursEstimate then && history.Now is HoursEstimate now && now.Lower > then.Upper ? now.Lower.Minus(then.Upper) : null;
            }
        }

        return null;
    }
}
