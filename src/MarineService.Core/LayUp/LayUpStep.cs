using MarineService.Core.Internal;

namespace MarineService.Core.LayUp;

/// <summary>One thing to do: what, with which amounts, who says so, and what to beware of.</summary>
public sealed class LayUpStep
{
    private readonly string _template;

    internal LayUpStep(LayUpTopic topic, string template, Citation citation, Caution? caution, Figure[] figures) =>
        (Topic, _template, Citation, Caution, Figures) = (topic, template, citation, caution, Array.AsReadOnly(figures));

    /// <summary>What it is about.</summary>
    public LayUpTopic Topic { get; }

    /// <summary>The amounts in it, as data.</summary>
    public IReadOnlyList<Figure> Figures { get; }

    /// <summary>What to beware of, or null.</summary>
    public Caution? Caution { get; }

    /// <summary>Who says so.</summary>
    public Citation Citation { get; }

    /// <summary>What to do, in a sentence or two.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Invariant text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string Text(DisplayUnits units) => MessageTemplate.Fill(_template, Figures, Guard.Defined(units));

    /// <summary>What to do, metric.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Text(DisplayUnits.Metric);
}
