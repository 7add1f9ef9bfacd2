using MarineService.Core.Internal;

namespace MarineService.Core;

/// <summary>A rule applied to one thing: what was found, with its figures as data.</summary>
public sealed class Finding
{
    internal Finding(FindingRule rule, string subject, Figure[] figures) =>
        (Rule, Subject, Figures) = (Guard.NotNull(rule), Guard.NotBlank(subject), Guard.Items(figures));

    /// <summary>The rule that was applied.</summary>
    public FindingRule Rule { get; }

    /// <summary>The rule's stable code.</summary>
    public string Code => Rule.Code;

    /// <summary>How much it matters.</summary>
    public Severity Severity => Rule.Severity;

    /// <summary>What it concerns, such as "pulley 'alternator'".</summary>
    public string Subject { get; }

    /// <summary>The figures behind it, in the order in which the message names them.</summary>
    public IReadOnlyList<Figure> Figures { get; }

    /// <summary>A figure by its name.</summary>
    /// <param name="name">The name of the figure.</param>
    /// <returns>The figure, or null when the finding has none of that name.</returns>
    public Figure? this[string name] => Figures.FirstOrDefault(figure => figure.Name == name);

    /// <summary>The finding as one sentence.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Invariant text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string Message(DisplayUnits units) => $"{Subject}: {Fill(Rule.Message, Guard.Defined(units))}";

    /// <summary>The whole finding: what, each figure, what to do, and the source.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{Code} {Severity}: {Message(units)}");
        foreach (Figure figure in Figures)
        {
            lines.Add(figure.Name, figure.ToString(units));
        }

        if (Rule.Remedy is not null)
        {
            lines.Add("do", Fill(Rule.Remedy, units));
        }

        return lines.Add("rule", Rule.Title).Build(Rule.Citation);
    }

    /// <summary>Code, severity and message in metric units.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Code} {Severity}: {Message(DisplayUnits.Metric)}";

    private string Fill(string template, DisplayUnits units) => MessageTemplate.Fill(template, Figures, units);
}
