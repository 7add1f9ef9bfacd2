using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>A lay-up as planned, from its first day to the first day back in commission.</summary>
/// <remarks>With planned use the only fact that may lie in the future: the due list counts on it.</remarks>
public sealed class PlannedLayUp : ServiceFact
{
    private PlannedLayUp(LocalDate from, LocalDate to)
        : base(from) => To = to;

    /// <summary>The first day of rest; the same as the date of the fact.</summary>
    public LocalDate From => Date;

    /// <summary>The first day back in commission.</summary>
    public LocalDate To { get; }

    /// <summary>A planned lay-up.</summary>
    /// <param name="from">The first day of rest, from 1900 to 2199.</param>
    /// <param name="to">The first day back in commission, after <paramref name="from"/>.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside 1900 to 2199, or <paramref name="to"/> is not after <paramref name="from"/>.</exception>
    public static PlannedLayUp Between(LocalDate from, LocalDate to)
    {
        Guard.Date(from);
        return Guard.Date(to) > from
            ? new(from, to)
            : throw new ArgumentOutOfRangeException(nameof(to), to, "Must be after the first day of the lay-up.");
    }
}
