using MarineService.Core.Internal;
using NodaTime.Text;

namespace MarineService.Core.Engines;

/// <summary>What a forecast says of itself: what it stands on and how sure it can be.</summary>
internal static class ForecastWords
{
    private static readonly Citation Repeat = Citation.PracticeDescribedIn("the documentation of the R package forecast (snaive): repeat the last season");
    private static readonly Citation Ranks = Citation.Derived("n + 1 equally likely ranks of the next of n exchangeable seasons, n - 1 of them inside");

    internal static Explanation Basis(
        ExplanationBuilder lines, SeasonalUse use, ForecastBasis basis, bool onPlan, bool onAssumedLayUp, IEnumerable<string> seasons)
    {
        lines.Add("stands on", InWords(basis));
        lines.Add("last read", LocalDatePattern.Iso.Format(use.LastReadingDate!.Value) + (use.Quality == ReadingQuality.Estimated ? ", an estimate" : ""));
        foreach (string season in seasons)
        {
            lines.Add("season", season);
        }

        lines.AddIf(onPlan, "plan", () => "the declared plan counts instead of past seasons on its days");
        lines.AddIf(onAssumedLayUp, "lay-up", () => "assumed to come again as the last one on record");
        lines.Add("how sure", HowSure(basis, use));
        return lines.Build(basis switch
        {
            ForecastBasis.PastSeasons => [Repeat, Ranks, Citation.CommonPractice],
            ForecastBasis.OneSeason => [Repeat, Citation.CommonPractice],
            _ => [Citation.CommonPractice],
        });
    }

    private static string InWords(ForecastBasis basis) => basis switch
    {
        ForecastBasis.Readings => "the readings",
        ForecastBasis.MeanRate => "the mean rate between first and last reading; no season is covered whole yet",
        ForecastBasis.OneSeason => "the monthly rates of one season",
        _ => "the monthly rates over all readings; range from repeating each season",
    };

    /// <summary>The statement of coverage. The figures of simulated boats are those that the tests hold.</summary>
    internal static string HowSure(ForecastBasis basis, SeasonalUse use) => basis switch
    {
        ForecastBasis.Readings => "certain within the readings around it",
        ForecastBasis.MeanRate => "not to the month: winter counts like summer until a season is covered",
        ForecastBasis.OneSeason => "no range: one season does not show how seasons differ; weeks either way are usual, months where the date falls near the season's end",
        _ when use.CompleteYears.Count == 2 => "a third: with two seasons the next falls between them in 33 of 100 cases, in simulated boats in somewhat more; take it as a hint",
        _ => FormattableString.Invariant(
            $"of {use.CompleteYears.Count} seasons the next falls inside their range in {100 * use.CoverageFraction!.Value:0} of 100 cases, if use neither grows nor shrinks from year to year"),
    };
}
