namespace MarineService.Core;

/// <summary>One line of an explanation: a label and what it says.</summary>
/// <param name="Label">What the line is about, in a word or two.</param>
/// <param name="Text">What it says; invariant.</param>
public sealed record ExplanationLine(string Label, string Text);
