using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>One occasion on which the boat is opened up: its day, the tasks that are done on it with their due days and reasons, and what it costs.</summary>
public sealed class Visit
{
    internal Visit(LocalDate date, IReadOnlyList<VisitItem> items, decimal setUpCost, decimal accessCost) =>
        (Date, Items, SetUpCost, AccessCost) = (date, items, setUpCost, accessCost);

    /// <summary>The day.</summary>
    public LocalDate Date { get; }

    /// <summary>The tasks in the order of their due days, each with why it is on this day.</summary>
    public IReadOnlyList<VisitItem> Items { get; }

    /// <summary>What the visit costs before anything is done; 0 on a day that is paid for already.</summary>
    public decimal SetUpCost { get; }

    /// <summary>What the shared removals of this visit cost, in the caller's currency.</summary>
    public decimal AccessCost { get; }

    /// <summary>Life thrown away by tasks done early, in the caller's currency.</summary>
    public decimal EarlyCost => Items.Where(item => item.DaysEarly > 0).Sum(item => item.Cost);

    /// <summary>The price put on tasks done late, in the caller's currency.</summary>
    public decimal LateCost => Items.Where(item => item.DaysLate > 0).Sum(item => item.Cost);

    /// <summary>Everything together, in the caller's currency.</summary>
    public decimal Cost => SetUpCost + AccessCost + EarlyCost + LateCost;

    /// <summary>The day and the tasks.</summary>
    /// <returns>Invariant text, such as "2024-07-20: engine-oil, fuel-filter".</returns>
    public override string ToString() => $"{LocalDatePattern.Iso.Format(Date)}: {string.Join(", ", Items.Select(item => item.Task.Id))}";
}
