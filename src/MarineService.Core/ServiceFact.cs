using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core;

/// <summary>Something that was read, done or happened on a date. A log is a list of facts.</summary>
/// <remarks>Each room declares its own facts; none can be added from outside the library. Facts never change.</remarks>
public abstract class ServiceFact
{
    private protected ServiceFact(LocalDate date) => Date = Guard.Date(date);

    /// <summary>The date of the fact.</summary>
    public LocalDate Date { get; }
}
