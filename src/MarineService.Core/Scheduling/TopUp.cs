using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>Fluid added between changes. It is never a change: it resets nothing.</summary>
public sealed class TopUp : ServiceFact
{
    private TopUp(string fluid, LocalDate date, MeasuredVolume amount, EngineHours? dial)
        : base(date, dial) => (Fluid, Amount) = (fluid, amount);

    /// <summary>Which fluid, such as "engine-oil".</summary>
    public string Fluid { get; }

    /// <summary>How much was added.</summary>
    public MeasuredVolume Amount { get; }

    /// <summary>A top-up.</summary>
    /// <param name="fluid">Which fluid, such as "engine-oil"; not blank.</param>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="amount">How much was added.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The fact.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fluid"/> or <paramref name="amount"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="fluid"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static TopUp Of(string fluid, LocalDate date, MeasuredVolume amount, EngineHours? dial = null) =>
        new(Guard.NotBlank(fluid), Guard.Date(date), Guard.NotNull(amount), dial);
}
