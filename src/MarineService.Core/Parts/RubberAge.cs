using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core.Parts;

/// <summary>How old a rubber part is, on the shelf and in service, and whether it may go on or stay on.</summary>
public sealed class RubberAge
{
    private const string HowKept = "How it was kept: below 25 °C, dark, dry, away from ozone, unstrained; kept otherwise no storage limit holds.";

    internal RubberAge(RubberPart part, LocalDate today, StorageGuide guide, int? serviceMonths)
    {
        (Part, Today, Guide, ServiceMonths) = (part, today, guide, serviceMonths);
        Limit = guide.LimitFor(part.Polymer);

        Storage = Judge(InStoreUntil);
    }

    /// <summary>The part.</summary>
    public RubberPart Part { get; }

    /// <summary>The day of the judgement.</summary>
    public LocalDate Today { get; }

    /// <summary>Whose storage limits were taken.</summary>
    public StorageGuide Guide { get; }

    /// <summary>The part's service life by the engine's maker, in months; null when nobody states it.</summary>
    public int? ServiceMonths { get; }

    /// <summary>How long the guide lets this rubber lie in store.</summary>
    public Answer<StorageLimit> Limit { get; }

    /// <summary>Whether it may go on from the shelf, or might when it was fitted.</summary>
    public StorageVerdict Storage { get; }

    /// <summary>The last day of the initial limit; not known when quarter, polymer or limit is not, or when there is no limit.</summary>
    public Answer<LocalDate> InitialLimit => LastDay(0);

    /// <summary>The last day after an inspection that passed; not known when quarter, polymer or limit is not, or when there is no limit.</summary>
    public Answer<LocalDate> ExtendedLimit => LastDay(Limit.IsKnown ? Limit.Value.ExtensionYears : 0);

    /// <summary>Whole months in service; not known for a part on the shelf.</summary>
    public Answer<int> MonthsInService => Part.FittedOn is LocalDate fitted && fitted <= Today
        ? Answer.Known((int)Period.Between(fitted, Today, PeriodUnits.Months).Months)
        : Answer.NotKnown<int>("The day, not after today, on which it went into service.");

    /// <summary>The day on which its service life ends; not known unless the maker's figure and the day of fitting are.</summary>
    public Answer<LocalDate> ServiceEnds => Part.FittedOn is not LocalDate fitted ? Answer.NotKnown<LocalDate>("The day on which it went into service.")
        : ServiceMonths is not int months ? Answer.NotKnown<LocalDate>("The service life by the engine's maker: a storage limit does not say it.")
        : Answer.Known(fitted.PlusMonths(months));

    /// <summary>What is wrong or missing; empty when nothing is.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [];
            string subject = $"'{Part.Name}'";
            FindingRule? rule = Storage switch
            {
                StorageVerdict.TooOld => RubberRules.TooOld,
                StorageVerdict.Inspect => RubberRules.Inspect,
                StorageVerdict.NotKnown => RubberRules.NotKnown,
                _ => null,
            };
            if (rule == RubberRules.NotKnown)
            {
                findings.Add(rule.On(subject, Figure.Of("missing", string.Join(" ", Missing))));
            }
            else if (rule is not null)
            {
                findings.Add(rule.On(subject, Figure.Of("initial limit", InitialLimit.Value), Figure.Of("last limit", ExtendedLimit.Value)));
            }

            if (ServiceEnds.IsKnown && ServiceEnds.Value <= Today)
            {
                findings.Add(RubberRules.ServiceOver.On(subject, Figure.Of("end", ServiceEnds.Value)));
            }

            return findings.AsReadOnly();
        }
    }

    /// <summary>What would settle the verdict on the shelf; empty when it is known.</summary>
    public IReadOnlyList<string> Missing => Storage != StorageVerdict.NotKnown ? []
        : Array.AsReadOnly<string>(
        [
            .. OneIf(Part.Cured is null, "The quarter of cure."),
            .. OneIf(Part.Cured is CureQuarter cured && cured.End > InStoreUntil.PlusMonths(3), "A quarter of cure that is not after the day it was fitted, nor in the future."),
            .. Limit.Missing,
            .. OneIf(Part.IsKeptAsGuided != true, HowKept),
        ]);

    /// <summary>Why: the verdict, both ages, the limit and its source.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        return new ExplanationBuilder(ToString() + ".")
            .Add("part", Part.ToString())
            .Add("limit", Limit.ToString())
            .Add("initial limit", Day(InitialLimit))
            .Add("after inspection", Part.IsInspected ? $"{Day(ExtendedLimit)}, inspected" : $"{Day(ExtendedLimit)}, not inspected")
            .AddIf(Part.FittedOn is not null, "in service", () => $"{MonthsInService} months, until {Day(ServiceEnds)}")
            .AddIf(Missing.Count > 0, "missing", () => string.Join(" ", Missing))
            .Build(Guide.Source, Citation.PracticeDescribedIn("a seal maker's guide that counts from the end of the quarter of cure"));
    }

    /// <summary>The verdict in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Storage switch
    {
        StorageVerdict.Good => $"{Part.Name}: within its storage limit",
        StorageVerdict.Inspect => $"{Part.Name}: past its initial storage limit, good only when an inspection passes it",
        StorageVerdict.TooOld => $"{Part.Name}: past every storage limit",
        _ => $"{Part.Name}: storage age not known",
    };

    // What lay in store until it was fitted stopped lying there on that day.
    private LocalDate InStoreUntil => Part.FittedOn is LocalDate fitted && fitted < Today ? fitted : Today;

    private static IEnumerable<string> OneIf(bool condition, string text) => condition ? [text] : [];

    private static string Day(Answer<LocalDate> day) => day.IsKnown ? LocalDatePattern.Iso.Format(day.Value) : day.ToString();

    private StorageVerdict Judge(LocalDate until)
    {
        if (Part.Cured is not CureQuarter cured || !Limit.IsKnown || cured.EndAfter(0) > until.PlusMonths(3))
        {
            return StorageVerdict.NotKnown;
        }

        // Too old is too old, however well it was kept; good is known only when it was kept as the guide says.
        if (Limit.Value.InitialYears is int years)
        {
            if (until > cured.EndAfter(years + Limit.Value.ExtensionYears))
            {
                return StorageVerdict.TooOld;
            }

            if (Part.IsKeptAsGuided == true && until > cured.EndAfter(years) && !Part.IsInspected)
            {
                return StorageVerdict.Inspect;
            }
        }

        return Part.IsKeptAsGuided == true ? StorageVerdict.Good : StorageVerdict.NotKnown;
    }

    private Answer<LocalDate> LastDay(int more) =>
        Part.Cured is not CureQuarter cured ? Answer.NotKnown<LocalDate>("The quarter of cure.")
        : !Limit.IsKnown ? Answer.NotKnown<LocalDate>([.. Limit.Missing])
        : Limit.Value.InitialYears is not int years ? Answer.NotKnown<LocalDate>($"Nothing: {Guide} sets no limit for {Part.Polymer}.")
        : Answer.Known(cured.EndAfter(years + more));
}
