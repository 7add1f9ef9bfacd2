namespace MarineService.Core.Internal;

/// <summary>Gathers the lines of an explanation.</summary>
internal sealed class ExplanationBuilder(string answer)
{
    private readonly List<ExplanationLine> _lines = [];

    internal ExplanationBuilder Add(string label, string text)
    {
        _lines.Add(new ExplanationLine(label, text));
        return this;
    }

    internal ExplanationBuilder AddIf(bool condition, string label, Func<string> text) => condition ? Add(label, text()) : this;

    internal Explanation Build(params Citation[] citations) =>
        new(answer, _lines.AsReadOnly(), Array.AsReadOnly(citations));
}
