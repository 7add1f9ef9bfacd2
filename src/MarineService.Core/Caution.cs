using MarineService.Core.Internal;

namespace MarineService.Core;

/// <summary>A hazard and how to avoid it, said beside the step that it belongs to.</summary>
/// <remarks>Two are equal when all three parts are.</remarks>
public sealed record Caution
{
    private Caution(SignalWord word, string text, Citation citation) => (Word, Text, Citation) = (word, text, citation);

    /// <summary>How grave the hazard is.</summary>
    public SignalWord Word { get; }

    /// <summary>The hazard and how to avoid it.</summary>
    public string Text { get; }

    /// <summary>Where it comes from.</summary>
    public Citation Citation { get; }

    /// <summary>A caution.</summary>
    /// <param name="word">How grave the hazard is.</param>
    /// <param name="text">The hazard and how to avoid it; not blank.</param>
    /// <param name="citation">Where it comes from.</param>
    /// <returns>The caution.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="citation"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="text"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="word"/> is not defined.</exception>
    public static Caution Of(SignalWord word, string text, Citation citation) =>
        new(Guard.Defined(word), Guard.NotBlank(text), Guard.NotNull(citation));

    /// <summary>Signal word and text: "WARNING: ...".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Word.ToString().ToUpperInvariant()}: {Text}";
}
