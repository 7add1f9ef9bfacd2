using MarineService.Core.Internal;

namespace MarineService.Core;

/// <summary>One line of an explanation: a label and what it says.</summary>
public sealed record ExplanationLine
{
    internal ExplanationLine(string label, string text) => (Label, Text) = (Guard.NotBlank(label), Guard.NotNull(text));

    /// <summary>What the line is about, in a word or two.</summary>
    public string Label { get; }

    /// <summary>What it says; invariant.</summary>
    public string Text { get; }

    /// <summary>The label and what it says.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Label}: {Text}";
}
