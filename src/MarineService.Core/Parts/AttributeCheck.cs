namespace MarineService.Core.Parts;

/// <summary>One attribute of a filter, held against what the engine needs.</summary>
public sealed class AttributeCheck
{
    internal AttributeCheck(FilterProperty attribute, AttributeOutcome outcome, Figure? has, Figure? least, Figure? most) =>
        (Attribute, Outcome, Has, Least, Most) = (attribute, outcome, has, least, most);

    /// <summary>The attribute.</summary>
    public FilterProperty Attribute { get; }

    /// <summary>How it came out.</summary>
    public AttributeOutcome Outcome { get; }

    /// <summary>What the filter has, or null when that is not known.</summary>
    public Figure? Has { get; }

    /// <summary>The least that the engine needs, or the very thing for words; null when nothing is asked.</summary>
    public Figure? Least { get; }

    /// <summary>The most that the engine bears; null when nothing is asked.</summary>
    public Figure? Most { get; }

    /// <summary>The attribute, what the filter has and what is needed.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Invariant text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string ToString(DisplayUnits units) =>
        $"{Outcome switch { AttributeOutcome.Passes => "passes", AttributeOutcome.Fails => "fails", AttributeOutcome.NotKnown => "not known", _ => "not asked" }}: "
        + $"has {Has?.ToString(Internal.Guard.Defined(units)) ?? "?"}, needs {Needs(Internal.Guard.Defined(units))}";

    /// <summary>The attribute and its outcome in metric units.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Attribute} {ToString(DisplayUnits.Metric)}";

    private string Needs(DisplayUnits units) =>
        Least is null && Most is null ? Outcome == AttributeOutcome.NotAsked ? "nothing of it" : "?"
        : Most is null ? Least!.Word is string word ? word : $"at least {Least.ToString(units)}"
        : Least is null ? $"at most {Most.ToString(units)}"
        : $"{Least.ToString(units)} to {Most.ToString(units)}";
}
