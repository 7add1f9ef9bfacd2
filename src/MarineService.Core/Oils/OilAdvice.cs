namespace MarineService.Core.Oils;

/// <summary>What to do when the ranking is done, and the findings that say so.</summary>
internal static class OilAdvice
{
    internal static ColdStartAdvice Of(OilSelection selection) =>
        selection.IsLaidUp ? ColdStartAdvice.NoStartWhileLaidUp
        : selection.Ranked[0].Suitability == Suitability.Accepted ? ColdStartAdvice.StartWithAcceptedGrade
        : Nearest(selection) is null || Nearest(selection)!.MarginKelvins >= 0 ? ColdStartAdvice.AskTheMaker
        : IsNonePumpable(selection) ? ColdStartAdvice.DoNotStart
        : ColdStartAdvice.WarmTheOilFirst;

    /// <summary>The grade that needs the least warming, or null when no cold limit is known or the heat refuses them all.</summary>
    internal static GradeVerdict? Nearest(OilSelection selection) =>
        selection.Ranked.Where(verdict => !verdict.IsTooHot && verdict.IsFloorKnown).OrderBy(verdict => verdict.FloorCelsius).FirstOrDefault();

    internal static IReadOnlyList<Finding> Findings(OilSelection selection)
    {
        List<Finding> findings = [];
        Figure start = Figure.Of("start", selection.StartCelsius, FigureUnit.DegreeCelsius);
        if (selection.IsLaidUp)
        {
            findings.Add(OilRules.LaidUp.On("engine", start));
        }
        else if (selection.Ranked[0].Suitability != Suitability.Accepted)
        {
            findings.Add(NoneAccepted(selection, start));
        }

        if (selection.Fitted is not null)
        {
            findings.AddRange(selection.Fitted.Findings);
        }

        string? missing = selection.Ranked.Select(verdict => verdict.HotMargin).FirstOrDefault(margin => !margin.IsKnown)?.Missing[0];
        if (missing is not null)
        {
            findings.Add(OilRules.HotSideNotKnown.On("hot side", Figure.Of("missing", missing.TrimEnd('.'))));
        }

        return [.. findings.OrderByDescending(finding => finding.Severity)];
    }

    private static Finding NoneAccepted(OilSelection selection, Figure start)
    {
        GradeVerdict? nearest = Nearest(selection);
        if (nearest is null || nearest.MarginKelvins >= 0)
        {
            return selection.HottestCelsius is double hottest && selection.Ranked.Any(verdict => verdict.IsTooHot)
                ? selection.Ranked.All(verdict => verdict.IsTooHot)
                    ? OilRules.NoGradeFitsHot.On("permitted oils", Figure.Of("hottest", hottest, FigureUnit.DegreeCelsius))
                    : OilRules.NoGradeFitsBoth.On("permitted oils", start, Figure.Of("hottest", hottest, FigureUnit.DegreeCelsius))
                : OilRules.NoColdLimitKnown.On("permitted oils", Figure.Of("grade", selection.Ranked[0].Designation), start);
        }

        return IsNonePumpable(selection)
            ? OilRules.NotPumpable.On("permitted oils", start)
            : (selection.Ranked[0].Suitability == Suitability.Marginal ? OilRules.OnlyMarginal : OilRules.NoGradeFitsCold).On(
                "permitted oils", start, Figure.Of("grade", nearest.Designation), Figure.Of("floor", nearest.FloorCelsius, FigureUnit.DegreeCelsius));
    }

    /// <summary>No winter grade among the permitted ones can be pumped; grades without W promise nothing in the cold.</summary>
    private static bool IsNonePumpable(OilSelection selection) =>
        selection.Ranked.Any(verdict => verdict.Grade.Winter is not null)
        && selection.Ranked.All(verdict => verdict.Grade.Winter is null ? verdict.Suitability == Suitability.Refused : !verdict.IsPumpable);
}
