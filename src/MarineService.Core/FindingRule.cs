using MarineService.Core.Internal;

namespace MarineService.Core;

/// <summary>A rule that was checked: its stable code, how much a breach matters, what it says, and where it comes from.</summary>
/// <remarks>
/// Codes are never reused. Message and remedy may hold placeholders in braces, each the name of a figure of the finding:
/// "wrap is {wrap}, the least is {least wrap}". The text is built when asked for, in the reader's units.
/// </remarks>
public sealed class FindingRule
{
    internal FindingRule(string code, Severity severity, string title, string message, Citation citation, string? remedy = null) =>
        (Code, Severity, Title, Message, Citation, Remedy) =
            (Guard.NotBlank(code), Guard.Defined(severity), Guard.NotBlank(title), Guard.NotBlank(message), Guard.NotNull(citation), remedy);

    /// <summary>The stable code, such as "METER-001".</summary>
    public string Code { get; }

    /// <summary>How much a breach matters.</summary>
    public Severity Severity { get; }

    /// <summary>The rule in a few words, without figures.</summary>
    public string Title { get; }

    /// <summary>The sentence about one finding, with placeholders for its figures.</summary>
    public string Message { get; }

    /// <summary>What to do about it, or null when there is nothing to do; may hold placeholders.</summary>
    public string? Remedy { get; }

    /// <summary>Where the rule comes from.</summary>
    public Citation Citation { get; }

    /// <summary>Code and title.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Code} {Title}";

    internal Finding On(string subject, params Figure[] figures) => new(this, subject, figures);
}
