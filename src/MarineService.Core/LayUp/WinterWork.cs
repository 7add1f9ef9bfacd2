using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.LayUp;

/// <summary>What was done against frost on a date: low points drained, antifreeze read. An event of the log.</summary>
/// <remarks>It proves something only together with the data sheet and the lowest temperature; see <see cref="LayUpPlan.Prove"/>.</remarks>
public sealed class WinterWork : ServiceFact
{
    private WinterWork(LocalDate date, EngineHours? dial, IReadOnlyList<LowPointWork> works)
        : base(date, dial) => Works = works;

    /// <summary>What was done, in the order in which it was done; at least one.</summary>
    public IReadOnlyList<LowPointWork> Works { get; }

    /// <summary>Work on a date.</summary>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="works">What was done, in the order in which it was done; at least one.</param>
    /// <param name="dial">What the dial showed, or null when it was not read; with it a later start is found out.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="works"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="works"/> is empty or holds null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static WinterWork On(LocalDate date, IEnumerable<LowPointWork> works, EngineHours? dial = null)
    {
        Guard.Date(date);
        IReadOnlyList<LowPointWork> copy = Guard.Items(works);
        return copy.Count > 0 ? new(date, dial, copy) : throw new ArgumentException("Must hold at least one work.", nameof(works));
    }

    internal override ServiceFact WithoutDial() => new WinterWork(Date, null, Works);
}
