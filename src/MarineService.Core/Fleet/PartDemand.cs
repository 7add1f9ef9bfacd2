using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>So much of one part, wanted at one depot in one week.</summary>
public sealed class PartDemand
{
    internal PartDemand(string? depot, int? monday, string part, decimal quantity) =>
        (Depot, Monday, Part, Quantity) = (depot, monday, part, quantity);

    /// <summary>The depot, or null when none is stated.</summary>
    public string? Depot { get; }

    /// <summary>The Monday of the week (ISO 8601): the present one for what is due; null when only hours are due and no date tells when.</summary>
    public LocalDate? Week => CalendarDay.ToDate(Monday);

    internal int? Monday { get; }

    /// <summary>The part.</summary>
    public string Part { get; }

    /// <summary>How much, above 0, in the part's own unit of issue.</summary>
    public decimal Quantity { get; }
}
