using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core;

/// <summary>Something that was read, done or happened on a date. A log is a list of facts.</summary>
/// <remarks>Each room declares its own facts; none can be added from outside the library. Facts never change.</remarks>
public abstract class ServiceFact
{
    private const long NotRead = -1;

    // In thousandths of an hour: half the size of a number that may be missing.
    private readonly long _dial;

    private protected ServiceFact(LocalDate date, EngineHours? dial = null) =>
        (Date, Day, _dial) = (Guard.Date(date), CalendarDay.Of(date), dial is EngineHours hours ? hours.Thousandths : NotRead);

    /// <summary>The date of the fact.</summary>
    public LocalDate Date { get; }

    /// <summary>The date as a day number: what the calculation runs on.</summary>
    internal int Day { get; }

    /// <summary>What the hour meter's dial showed, or null when it was not read.</summary>
    public EngineHours? Dial => _dial == NotRead ? null : EngineHours.FromThousandths(_dial);

    /// <summary>The same fact for a scope that has no meter of its own, such as the boat.</summary>
    internal virtual ServiceFact WithoutDial() => this;
}
