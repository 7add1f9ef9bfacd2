using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>Whether an engine that is laid up between two dates must be protected from frost, and down to which temperature.</summary>
/// <remarks>
/// <para>The lowest temperature to expect is the lowest that the site's records hold for those days of the year, in whatever
/// winter, less a margin. At or below 0 °C: protect. A month of the lay-up without a record leaves the temperature not known.</para>
/// <para>A heated shed is no protection: heaters fail with the mains, just when it freezes.</para>
/// </remarks>
public sealed class FreezeDecision
{
    private readonly IReadOnlyList<string> _missing;

    private FreezeDecision(
        FreezeVerdict verdict, double? lowCelsius, LocalDate? from, LocalDate? to, SiteMinimum? coldest, double marginKelvins, IReadOnlyList<string> missing, IReadOnlyList<Finding> findings)
    {
        (Verdict, LowCelsius, From, To, Coldest) = (verdict, lowCelsius, from, to, coldest);
        (MarginKelvins, _missing, Findings) = (marginKelvins, missing, findings);
    }

    /// <summary>Whether to protect.</summary>
    public FreezeVerdict Verdict { get; }

    /// <summary>The lowest temperature to protect against.</summary>
    public Answer<Temperature> Low =>
        LowCelsius is double low ? Answer.Known(Temperature.FromDegreesCelsius(low)) : Answer.NotKnown<Temperature>([.. _missing]);

    /// <summary>The first day of rest, or null when the temperature was chosen without dates.</summary>
    public LocalDate? From { get; }

    /// <summary>The first day back in commission, or null when the temperature was chosen without dates.</summary>
    public LocalDate? To { get; }

    /// <summary>The coldest record on the days of the lay-up, or null when there is none.</summary>
    public SiteMinimum? Coldest { get; }

    /// <summary>What is weak about the records, and what a mild winter does not mean.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    internal double? LowCelsius { get; }

    internal double MarginKelvins { get; }

    internal IReadOnlyList<string> Missing => _missing;

    /// <summary>A decision for a temperature that somebody has chosen; nothing is added to it.</summary>
    /// <param name="low">The lowest air temperature to protect against, from -60 to 60 °C.</param>
    /// <returns>The decision.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="low"/> is outside its range.</exception>
    /// <example><code>FreezeDecision.ForLow(Temperature.FromDegreesCelsius(-20)).Verdict; // Protect</code></example>
    public static FreezeDecision ForLow(Temperature low)
    {
        double celsius = LayUpGuard.AirCelsius(low);
        FreezeVerdict verdict = VerdictAt(celsius);
        return new(verdict, celsius, null, null, null, 0, [], verdict == FreezeVerdict.Protect ? [] : [Mild(celsius)]);
    }

    /// <summary>The same decision with the dates of the lay-up, which the age of fuel is judged by.</summary>
    /// <param name="from">The first day of rest, from 1900 to 2199.</param>
    /// <param name="to">The first day back in commission, after <paramref name="from"/>.</param>
    /// <returns>The decision with dates.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside its range.</exception>
    public FreezeDecision Between(LocalDate from, LocalDate to) =>
        new(Verdict, LowCelsius, Guard.Date(from), After(from, to), Coldest, MarginKelvins, _missing, Findings);

    /// <summary>A decision from what the site's winters were like.</summary>
    /// <param name="from">The first day of rest, from 1900 to 2199.</param>
    /// <param name="to">The first day back in commission, after <paramref name="from"/>.</param>
    /// <param name="records">Recorded minima in any order and of any years; only those on days of the year inside the lay-up count.</param>
    /// <param name="limits">The margin and how many winters are expected; <see cref="LayUpLimits.Default"/> when null.</param>
    /// <returns>The decision.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="records"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="records"/> holds null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside its range.</exception>
    public static FreezeDecision ForSite(LocalDate from, LocalDate to, IEnumerable<SiteMinimum> records, LayUpLimits? limits = null)
    {
        Guard.Date(from);
        After(from, to);
        limits ??= LayUpLimits.Default;
        SiteMinimum[] inside = [.. Guard.Items(records).Where(record => IsInside(record.Date, from, to))];
        string[] gaps = [.. MonthsWithout(inside, from, to)];
        if (inside.Length == 0)
        {
            return new(FreezeVerdict.NotKnown, null, from, to, null, limits.SiteMarginKelvins, ["The site's minimum temperatures on the days of the lay-up."],
                [LayUpRules.NoRecords.On("site", Figure.Of("from", from), Figure.Of("to", to))]);
        }

        SiteMinimum coldest = inside.Aggregate((a, b) => b.Celsius < a.Celsius ? b : a);
        double low = coldest.Celsius - limits.SiteMarginKelvins;
        FreezeVerdict verdict = VerdictAt(low);
        List<Finding> findings = [];
        int winters = inside.Select(record => WinterOf(record.Date, from)).Distinct().Count();
        if (winters < limits.LeastWinters)
        {
            findings.Add(LayUpRules.FewWinters.On("site", Figure.Of("winters", winters, FigureUnit.Number), Figure.Of("expected", limits.LeastWinters, FigureUnit.Number)));
        }

        if (gaps.Length > 0)
        {
            findings.Add(LayUpRules.MonthsWithoutRecord.On("site", Figure.Of("months", string.Join(", ", gaps))));
            return new(verdict == FreezeVerdict.Protect ? verdict : FreezeVerdict.NotKnown, null, from, to, coldest, limits.SiteMarginKelvins,
                [$"The site's minimum temperatures in {string.Join(", ", gaps)}."], findings);
        }

        if (verdict == FreezeVerdict.NoFrostExpected)
        {
            findings.Add(Mild(low));
        }

        return new(verdict, low, from, to, coldest, limits.SiteMarginKelvins, [], findings);
    }

    /// <summary>The decision, the record that made it, the margin, and the sources.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string low = LowCelsius is double celsius ? FigureUnit.DegreeCelsius.Write(celsius, units) : "not known: " + string.Join(" ", _missing);
        ExplanationBuilder lines = new(Verdict switch
        {
            FreezeVerdict.Protect => LowCelsius is null ? "Protect: frost is on record." : $"Protect down to {low}.",
            FreezeVerdict.NoFrostExpected => $"No frost to expect: not below {low}.",
            _ => "Not known whether it will freeze: protect.",
        });
        lines.AddIf(From is not null, "laid up", () => $"{LocalDatePattern.Iso.Format(From!.Value)} to {LocalDatePattern.Iso.Format(To!.Value)}");
        lines.AddIf(Coldest is not null, "coldest", () => $"{FigureUnit.DegreeCelsius.Write(Coldest!.Celsius, units)} on {LocalDatePattern.Iso.Format(Coldest.Date)}");
        lines.AddIf(Coldest is not null, "margin", () => FigureUnit.Kelvin.Write(MarginKelvins, units));
        lines.Add("lowest", low);
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, finding.Message(units));
        }

        return lines.Add("heated shed", "no protection: heaters fail with the mains").Build(Coldest is null && LowCelsius is not null
            ? [Citation.GivenByCaller, LayUpSources.FreezeClaims]
            : [Citation.ProjectChoice, LayUpSources.FreezeClaims]);
    }

    /// <summary>The decision in one line, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    private static FreezeVerdict VerdictAt(double celsius) => celsius <= 0 ? FreezeVerdict.Protect : FreezeVerdict.NoFrostExpected;

    private static Finding Mild(double celsius) => LayUpRules.MildWinter.On("site", Figure.Of("lowest", celsius, FigureUnit.DegreeCelsius));

    private static LocalDate After(LocalDate from, LocalDate to) =>
        Guard.Date(to) > from ? to : throw new ArgumentOutOfRangeException(nameof(to), to, "Must be after the first day of the lay-up.");

    private static int DayOfYear(LocalDate date) => date.Month * 100 + date.Day;

    private static bool IsInside(LocalDate date, LocalDate from, LocalDate to)
    {
        if (to >= from.PlusYears(1))
        {
            return true;
        }

        (int day, int first, int end) = (DayOfYear(date), DayOfYear(from), DayOfYear(to));
        return first < end ? day >= first && day < end : day >= first || day < end;
    }

    // The year in which the winter of a record began.
    private static int WinterOf(LocalDate date, LocalDate from) => DayOfYear(date) >= DayOfYear(from) ? date.Year : date.Year - 1;

    private static IEnumerable<string> MonthsWithout(SiteMinimum[] records, LocalDate from, LocalDate to)
    {
        LocalDate last = LocalDate.Min(to.PlusDays(-1), from.PlusYears(1).PlusDays(-1));
        for (YearMonth month = from.ToYearMonth(); month <= last.ToYearMonth(); month = month.PlusMonths(1))
        {
            if (!Array.Exists(records, record => record.Date.Month == month.Month))
            {
                yield return FormattableString.Invariant($"{month.Year:0000}-{month.Month:00}");
            }
        }
    }
}
