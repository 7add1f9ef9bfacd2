using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Engines;

/// <summary>A new hour meter in place of the old one: what the old one ended at, what ran unmetered, what the new one started at.</summary>
public sealed class MeterChange : ServiceFact
{
    private MeterChange(LocalDate date, EngineHours? oldFinal, EngineHours newInitial, EngineHours unmetered, LocalDate? deadSince, HourMeter? newMeter)
        : base(date) =>
        (OldFinal, NewInitial, Unmetered, DeadSince, NewMeter) = (oldFinal, newInitial, unmetered, deadSince, newMeter);

    /// <summary>The last dial value of the old meter, or null when it could not be read; then the last accepted reading counts.</summary>
    public EngineHours? OldFinal { get; }

    /// <summary>The dial value that the new meter started at.</summary>
    public EngineHours NewInitial { get; }

    /// <summary>Hours run while no meter counted: a person's estimate, zero when there were none.</summary>
    public EngineHours Unmetered { get; }

    /// <summary>The date on which the old meter stopped, or null when it counted to the day of the change.</summary>
    public LocalDate? DeadSince { get; }

    /// <summary>What is known of the new meter, or null when it is like the old one.</summary>
    public HourMeter? NewMeter { get; }

    /// <summary>A meter change.</summary>
    /// <param name="date">The date of the change, from 1900 to 2199.</param>
    /// <param name="oldFinal">The last dial value of the old meter, or null when it could not be read.</param>
    /// <param name="newInitial">The dial value that the new meter started at.</param>
    /// <param name="unmetered">Hours run while no meter counted.</param>
    /// <param name="deadSince">The date on which the old meter stopped, on or before <paramref name="date"/>; or null.</param>
    /// <param name="newMeter">What is known of the new meter, or null when it is like the old one.</param>
    /// <returns>The meter change.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside 1900 to 2199, or <paramref name="deadSince"/> is after <paramref name="date"/>.</exception>
    public static MeterChange Of(
        LocalDate date,
        EngineHours? oldFinal,
        EngineHours newInitial = default,
        EngineHours unmetered = default,
        LocalDate? deadSince = null,
        HourMeter? newMeter = null)
    {
        Guard.Date(date);
        if (deadSince is LocalDate dead && Guard.Date(dead, nameof(deadSince)) > date)
        {
            throw new ArgumentOutOfRangeException(nameof(deadSince), dead, "Must be on or before the date of the change.");
        }

        return new(date, oldFinal, newInitial, unmetered, deadSince, newMeter);
    }

    /// <summary>Date, then the old meter's end, then all else that tells two changes apart; 0 when they say the same.</summary>
    internal int CompareTo(MeterChange other)
    {
        int order = Date.CompareTo(other.Date);
        order = order != 0 ? order : Nullable.Compare(OldFinal, other.OldFinal);
        order = order != 0 ? order : NewInitial.CompareTo(other.NewInitial);
        order = order != 0 ? order : Unmetered.CompareTo(other.Unmetered);
        order = order != 0 ? order : Nullable.Compare(DeadSince, other.DeadSince);
        order = order != 0 ? order : (NewMeter is null).CompareTo(other.NewMeter is null);
        order = order != 0 ? order : Nullable.Compare(NewMeter?.Modulus, other.NewMeter?.Modulus);
        return order != 0 ? order : Nullable.Compare(NewMeter?.Drive, other.NewMeter?.Drive);
    }
}
