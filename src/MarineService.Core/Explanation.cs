using System.Text;
using MarineService.Core.Internal;

namespace MarineService.Core;

/// <summary>Why a result is what it is: the answer first, then each input with its unit, then the rule and its source.</summary>
public sealed class Explanation
{
    internal Explanation(string answer, IReadOnlyList<ExplanationLine> lines, IReadOnlyList<Citation> citations) =>
        (Answer, Lines, Citations) = (Guard.NotBlank(answer), lines, citations);

    /// <summary>The answer in one line.</summary>
    public string Answer { get; }

    /// <summary>Inputs, the losing candidate, and the rule, in reading order.</summary>
    public IReadOnlyList<ExplanationLine> Lines { get; }

    /// <summary>The sources that the result stands on; at least one.</summary>
    public IReadOnlyList<Citation> Citations { get; }

    /// <summary>The explanation as lines of text with aligned labels, ending with the sources.</summary>
    /// <returns>Invariant text; lines are separated by a line feed.</returns>
    public override string ToString()
    {
        int width = Math.Max(10, Lines.Count == 0 ? 0 : Lines.Max(line => line.Label.Length));
        StringBuilder text = new(Answer);
        foreach (ExplanationLine line in Lines)
        {
            Append(text, line.Label, line.Text, width);
        }

        foreach (Citation citation in Citations)
        {
            Append(text, "source", citation.ToString(), width);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, string label, string value, int width) =>
        text.Append("\n  ").Append(label.PadRight(width)).Append("  ").Append(value);
}
