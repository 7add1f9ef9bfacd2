using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>Whether a filter is equal to what the engine needs, attribute by attribute, and which attribute decided.</summary>
/// <remarks>It advises and certifies nothing: the engine's manual outranks it.</remarks>
public sealed class FilterComparison
{
    internal FilterComparison(FilterNeed need, FilterSpecification filter)
    {
        (Need, Filter) = (need, filter);
        Attributes = Array.AsReadOnly<AttributeCheck>([.. FilterProperty.All.Select(Check)]);
        AttributeCheck? decisive =
            Attributes.FirstOrDefault(check => check.Outcome == AttributeOutcome.Fails)
            ?? Attributes.FirstOrDefault(check => check.Outcome == AttributeOutcome.NotKnown && check.Attribute.IsSafety)
            ?? Attributes.FirstOrDefault(check => check.Outcome == AttributeOutcome.NotKnown);
        DecidedBy = decisive?.Attribute;
        Verdict = decisive is null ? FilterVerdict.Equivalent
            : decisive.Outcome == AttributeOutcome.Fails ? FilterVerdict.NotEquivalent
            : decisive.Attribute.IsSafety ? FilterVerdict.Unknown
            : FilterVerdict.Conditional;
    }

    /// <summary>What the engine needs.</summary>
    public FilterNeed Need { get; }

    /// <summary>The filter that was held against it.</summary>
    public FilterSpecification Filter { get; }

    /// <summary>Whether it may stand in.</summary>
    public FilterVerdict Verdict { get; }

    /// <summary>The attribute that decided; null when everything passes.</summary>
    public FilterProperty? DecidedBy { get; }

    /// <summary>Every attribute with its outcome, in the order of <see cref="FilterProperty.All"/>.</summary>
    public IReadOnlyList<AttributeCheck> Attributes { get; }

    /// <summary>The safety attributes that are not known.</summary>
    public IReadOnlyList<FilterProperty> UnknownSafety =>
        [.. Attributes.Where(check => check.Outcome == AttributeOutcome.NotKnown && check.Attribute.IsSafety).Select(check => check.Attribute)];

    /// <summary>Whether the thread is a near miss: another thread that starts to turn on this one.</summary>
    public bool IsThreadNearMiss => Need.Thread is FilterThread wanted && Filter.Thread is FilterThread has && has.IsNearMissOf(wanted);

    /// <summary>Everything that is wrong or not known, in the order of the attributes.</summary>
    public IReadOnlyList<Finding> Findings => [.. Attributes.Where(check => check.Outcome is AttributeOutcome.Fails or AttributeOutcome.NotKnown).Select(Found)];

    /// <summary>Why: the verdict, each attribute that is asked, and the standards by title.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(ToString() + ".");
        foreach (AttributeCheck check in Attributes.Where(check => check.Outcome != AttributeOutcome.NotAsked))
        {
            lines.Add(check.Attribute.Name, check.ToString(units));
        }

        Citation[] sources = [.. Attributes.Where(check => check.Outcome != AttributeOutcome.NotAsked).Select(check => check.Attribute.Source).Distinct()];
        return lines.Build(sources);
    }

    /// <summary>The filter, the verdict and what decided it.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString()
    {
        string verdict = Verdict switch
        {
            FilterVerdict.Equivalent => "equivalent",
            FilterVerdict.Conditional => "conditional",
            FilterVerdict.NotEquivalent => "not equivalent",
            _ => "not known",
        };
        return DecidedBy is null ? $"{Filter}: {verdict}" : $"{Filter}: {verdict}, decided by {DecidedBy}";
    }

    private AttributeCheck Check(FilterProperty attribute)
    {
        Figure? has = Filter.FigureOf(attribute);
        double? value = Filter.Value(attribute);
        if (attribute == FilterProperty.Thread)
        {
            return new(attribute, Outcome(Need.Thread is not null, has is not null, Filter.Thread == Need.Thread), has,
                Need.Thread is null ? null : Figure.Of("needs", Need.Thread.ToString()), null);
        }

        double? least = Need.Least(attribute);
        double? most = Need.Most(attribute);
        if (attribute == FilterProperty.AntiDrainBack)
        {
            return AntiDrain(attribute, has, value);
        }

        if (attribute == FilterProperty.BypassOpening && (Need.Least(FilterProperty.Bypass) is not 1 || Filter.Value(FilterProperty.Bypass) == 0))
        {
            return new(attribute, AttributeOutcome.NotAsked, has, null, null);
        }

        bool isMust = attribute == FilterProperty.GasketOuter || attribute == FilterProperty.Bypass || attribute == FilterProperty.Burst;
        if (least is null && most is null)
        {
            return new(attribute, isMust ? AttributeOutcome.NotKnown : AttributeOutcome.NotAsked, has, null, null);
        }

        bool isComparable = attribute == FilterProperty.PressureDrop ? Filter.FlowLitersPerMinute == Need.FlowLitersPerMinute
            : attribute != FilterProperty.Efficiency || Filter.ParticleMicrometers == Need.ParticleMicrometers;
        bool passes = value is double v && !(v < least) && !(v > most);
        return attribute.IsYesOrNo
            ? new(attribute, Outcome(true, has is not null, passes), has, Figure.Of("needs", least > 0 ? "yes" : "none"), null)
            : new(attribute, Outcome(true, has is not null && isComparable, passes), has, Bound("least", least, attribute), Bound("most", most, attribute));
    }

    private AttributeCheck AntiDrain(FilterProperty attribute, Figure? has, double? value)
    {
        // Oil stays in a filter that hangs below its base; a fuel filter stands full either way.
        if (Need.Kind == FilterKind.Fuel || Need.Mounted == FilterOrientation.GasketUp)
        {
            return new(attribute, AttributeOutcome.NotAsked, has, null, null);
        }

        bool isKnown = value is not null && (value > 0 || Need.Mounted != FilterOrientation.NotStated);
        return new(attribute, Outcome(true, isKnown, value > 0), has, Figure.Of("needs", Need.Mounted == FilterOrientation.NotStated ? "yes, unless the gasket is up" : "yes"), null);
    }

    private Finding Found(AttributeCheck check)
    {
        Figure attribute = Figure.Of("attribute", check.Attribute.Name);
        if (check.Outcome == AttributeOutcome.NotKnown)
        {
            return (check.Attribute.IsSafety ? FilterRules.SafetyNotKnown : FilterRules.OtherNotKnown).On($"filter '{Filter}'", attribute);
        }

        Figure has = check.Has!;
        string subject = $"filter '{Filter}'";
        if (check.Attribute == FilterProperty.Thread)
        {
            return (IsThreadNearMiss ? FilterRules.ThreadNearMiss : FilterRules.Thread).On(subject, attribute, has, check.Least!);
        }

        FindingRule rule = FilterRules.For(check);
        return rule.On(subject, [.. new[] { attribute, has, check.Least, check.Most }.OfType<Figure>()]);
    }

    private static Figure? Bound(string name, double? value, FilterProperty attribute) =>
        value is double bound ? Figure.Of(name, bound, attribute.Unit) : null;

    private static AttributeOutcome Outcome(bool isNeedKnown, bool isKnown, bool passes) =>
        !isNeedKnown || !isKnown ? AttributeOutcome.NotKnown : passes ? AttributeOutcome.Passes : AttributeOutcome.Fails;
}
