using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Cooling;

/// <summary>What to do with an impeller that was looked at: verdict, the rule that decided, everything that was found.</summary>
/// <remarks>The verdict never moves the replace limit: an impeller that passes is replaced at its hours and months all the same.</remarks>
public sealed class ImpellerAssessment
{
    internal ImpellerAssessment(ImpellerInspection inspection, double setLimitDegrees, int serviceLimitMonths)
    {
        Inspection = inspection;
        Account = inspection.Account;
        Findings = Array.AsReadOnly<Finding>(
        [
            .. All(inspection, Account, setLimitDegrees, serviceLimitMonths).OrderByDescending(finding => finding.Severity).ThenBy(finding => finding.Code, StringComparer.Ordinal),
        ]);
        bool mustReplace = Findings.Any(finding => finding.Severity >= Severity.Act && finding.Rule != ImpellerRules.NotLookedAt && finding.Rule != ImpellerRules.PiecesOver);
        Verdict = Account.IsShort ? Answer.Known(ImpellerVerdict.ReplaceAndSearch)
            : Account.NotLookedAt > 0 ? Answer.NotKnown<ImpellerVerdict>([.. Account.OutstandingVanesRatio.Missing])
            : Answer.Known(mustReplace ? ImpellerVerdict.Replace : ImpellerVerdict.InspectAgain);
    }

    /// <summary>What was seen.</summary>
    public ImpellerInspection Inspection { get; }

    /// <summary>The vane account.</summary>
    public VaneAccount Account { get; }

    /// <summary>What to do; not known while vanes were not looked at, unless rubber is known to be missing.</summary>
    public Answer<ImpellerVerdict> Verdict { get; }

    /// <summary>What was found, gravest first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The finding that decided; null when nothing was found.</summary>
    public Finding? DecidedBy => Findings.Count > 0 ? Findings[0] : null;

    /// <summary>Where to look for what is missing, in this engine's own circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <returns>The places, first things first; empty when nothing is missing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="circuit"/> is null.</exception>
    public IReadOnlyList<SearchPlace> WhereToSearch(RawWaterCircuit circuit)
    {
        Guard.NotNull(circuit);
        return Account.IsShort ? circuit.WhereToSearch() : [];
    }

    /// <summary>The verdict, the account and every finding.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Verdict.IsKnown ? Word(Verdict.Value) : $"Not known: {string.Join(" ", Verdict.Missing)}");
        lines.AddIf(DecidedBy is not null, "decided by", () => $"{DecidedBy!.Code} {DecidedBy.Rule.Title}");
        lines.Add("account", Account.ToString());
        foreach (VaneRecord vane in Inspection.Vanes.Where(vane => vane.State != VaneState.Whole))
        {
            lines.Add("seen", vane.ToString());
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        lines.Add("limit", "hours and months of the replace task stay as they are");
        return lines.Build(DecidedBy?.Rule.Citation ?? CoolingSources.Impellers);
    }

    /// <summary>The verdict in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    private static string Word(ImpellerVerdict verdict) => verdict switch
    {
        ImpellerVerdict.InspectAgain => "It goes back in and is inspected again.",
        ImpellerVerdict.Replace => "Replace it.",
        _ => "Replace it, and search for what is missing before the pump is closed.",
    };

    private static IEnumerable<Finding> All(ImpellerInspection seen, VaneAccount account, double setLimit, int serviceMonths)
    {
        if (account.IsShort)
        {
            yield return ImpellerRules.PiecesOutstanding.On(
                "impeller", Figure.Of("outstanding", account.MissingVanesRatio - account.FoundVanesRatio, FigureUnit.Number));
        }

        if (account.IsOver)
        {
            yield return ImpellerRules.PiecesOver.On(
                "impeller", Figure.Of("over", account.FoundVanesRatio - account.MissingVanesRatio, FigureUnit.Number));
        }

        if (account.NotLookedAt > 0)
        {
            yield return ImpellerRules.NotLookedAt.On("impeller", Figure.Of("vanes", account.NotLookedAt, FigureUnit.Number));
        }

        foreach (Finding finding in seen.Vanes.Select(vane => OfVane(vane, setLimit)).OfType<Finding>().Concat(seen.Faults.Select(OfFault)))
        {
            yield return finding;
        }

        if (seen.FittedOn is LocalDate fitted && fitted.PlusMonths(serviceMonths) < seen.Date)
        {
            yield return ImpellerRules.TooOld.On(
                "impeller", Figure.Of("fitted", fitted), Figure.Of("limit", serviceMonths, FigureUnit.Month));
        }
    }

    private static Finding? OfVane(VaneRecord vane, double setLimit)
    {
        string subject = FormattableString.Invariant($"vane {vane.Number}");
        return vane.State switch
        {
            VaneState.Missing => ImpellerRules.VaneMissing.On(subject),
            VaneState.Torn => ImpellerRules.VaneTorn.On(subject, Figure.Of("share", vane.MissingFraction, FigureUnit.Fraction)),
            VaneState.Cracked => ImpellerRules.VaneCracked.On(subject),
            VaneState.Set => (vane.SetDegrees > setLimit ? ImpellerRules.VaneSet : ImpellerRules.SlightSet).On(
                subject, Figure.Of("bend", vane.SetDegrees ?? 0, FigureUnit.Degree), Figure.Of("limit", setLimit, FigureUnit.Degree)),
            _ => null,
        };
    }

    private static Finding OfFault(ImpellerFault fault) => fault switch
    {
        ImpellerFault.TipsWornFlat => ImpellerRules.TipsWorn.On("impeller"),
        ImpellerFault.HubLoose => ImpellerRules.HubLoose.On("impeller"),
        ImpellerFault.HubDriveWorn => ImpellerRules.HubDriveWorn.On("impeller"),
        ImpellerFault.Melted => ImpellerRules.Melted.On("impeller"),
        ImpellerFault.Hard => ImpellerRules.RubberChanged.On("impeller", Figure.Of("state", "hard")),
        ImpellerFault.Sticky => ImpellerRules.RubberChanged.On("impeller", Figure.Of("state", "sticky")),
        _ => ImpellerRules.RubberChanged.On("impeller", Figure.Of("state", "swollen")),
    };
}
