using MarineService.Core.Internal;
using NodaTime.Text;

namespace MarineService.Core.Scheduling;

/// <summary>On which days to take the boat out of service, what is done on each, why, and what it costs.</summary>
public sealed class VisitPlan
{
    internal VisitPlan(
        VisitMethod method, IReadOnlyList<Visit> visits, decimal? lowerBound, decimal separateCost, Visit? single)
    {
        (Method, Visits, LowerBound, SeparateCost, BestSingleVisit) = (method, visits, lowerBound, separateCost, single);
        Cost = visits.Sum(visit => visit.Cost);
    }

    /// <summary>How it was found.</summary>
    public VisitMethod Method { get; }

    /// <summary>The visits, earliest first.</summary>
    public IReadOnlyList<Visit> Visits { get; }

    /// <summary>Everything together, in the caller's currency.</summary>
    public decimal Cost { get; }

    /// <summary>No plan can cost less than this, in the caller's currency; null when the plan was not made for least cost.</summary>
    public decimal? LowerBound { get; }

    /// <summary>How much the plan may cost above the least, as a share of its cost, from 0 to 1; 0 when it is proven the best; null without a bound.</summary>
    public double? GapFraction => LowerBound is not decimal bound ? null : Cost == bound ? 0 : (double)((Cost - bound) / Cost);

    /// <summary>Whether no plan can cost less.</summary>
    public bool IsProvenLeastCost => LowerBound == Cost;

    /// <summary>Life thrown away by tasks done early, in the caller's currency.</summary>
    public decimal EarlyCost => Visits.Sum(visit => visit.EarlyCost);

    /// <summary>The price put on tasks done late, in the caller's currency.</summary>
    public decimal LateCost => Visits.Sum(visit => visit.LateCost);

    /// <summary>What it would cost to go for each task by itself, each on its own best day, in the caller's currency.</summary>
    public decimal SeparateCost { get; }

    /// <summary>The best plan with one visit for everything; null when no single day fits all windows.</summary>
    public Visit? BestSingleVisit { get; }

    /// <summary>What the visits of a season cost together, in the caller's currency.</summary>
    /// <param name="year">The calendar year, from 1900 to 2199.</param>
    /// <returns>0 when it has none.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="year"/> is outside its range.</exception>
    public decimal CostOfSeason(int year)
    {
        Guard.InRange(year, 1900, 2199, "(year)");
        return Visits.Where(visit => visit.Date.Year == year).Sum(visit => visit.Cost);
    }

    /// <summary>The life that the visits of a season throw away by tasks done early, in the caller's currency.</summary>
    /// <param name="year">The calendar year, from 1900 to 2199.</param>
    /// <returns>0 when it has none.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="year"/> is outside its range.</exception>
    public decimal EarlyCostOfSeason(int year)
    {
        Guard.InRange(year, 1900, 2199, "(year)");
        return Visits.Where(visit => visit.Date.Year == year).Sum(visit => visit.EarlyCost);
    }

    /// <summary>The calendar years that have visits, earliest first.</summary>
    public IReadOnlyList<int> Seasons => [.. Visits.Select(visit => visit.Date.Year).Distinct()];

    /// <summary>Why: each visit, each task on its day and the next best, the two plain alternatives, and how far from the least it can be.</summary>
    /// <param name="units">Which units to write; money and dates are the same in all.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{this}.");
        foreach (Visit visit in Visits)
        {
            lines.Add("visit", FormattableString.Invariant($"{visit}, {visit.Cost:0.00}"));
            foreach (VisitItem item in visit.Items)
            {
                lines.Add("task", item.ToString());
            }
        }

        foreach (int year in Seasons)
        {
            lines.Add("season", FormattableString.Invariant($"{year}: {CostOfSeason(year):0.00}, of it {EarlyCostOfSeason(year):0.00} life thrown away"));
        }

        lines.Add("separately", FormattableString.Invariant($"{SeparateCost:0.00}"));
        lines.AddIf(BestSingleVisit is not null, "all at once", () => FormattableString.Invariant($"{BestSingleVisit!.Cost:0.00} on {LocalDatePattern.Iso.Format(BestSingleVisit.Date)}"));
        lines.Add("how sure", Method == VisitMethod.FewestVisits ? "fewest visits, proven; not made for least cost"
            : IsProvenLeastCost ? "least cost, proven"
            : FormattableString.Invariant($"at most {100 * GapFraction:0.0} % above the least; no plan costs less than {LowerBound:0.00}"));
        return lines.Build(VisitSources.Of(Method));
    }

    /// <summary>How many visits and what they cost.</summary>
    /// <returns>Invariant text, such as "2 visits, 190.30".</returns>
    public override string ToString() => FormattableString.Invariant($"{Visits.Count} visit{(Visits.Count == 1 ? "" : "s")}, {Cost:0.00}");
}
