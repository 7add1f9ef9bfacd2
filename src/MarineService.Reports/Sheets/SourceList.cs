using System.Xml.Linq;
using MarineService.Core;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <summary>The sources that a sheet names: a number where one is used, the list at the end. Common practice without a source has no number.</summary>
internal sealed class SourceList
{
    private readonly List<Citation> _sources = [];

    /// <summary>The numbers of these sources in brackets; null when all of them are common practice without a source.</summary>
    internal XElement? Mark(params IEnumerable<Citation> citations)
    {
        int[] numbers = [.. citations.Where(citation => citation != Citation.CommonPractice).Distinct().Select(Number).OrderBy(number => number)];
        return numbers.Length == 0
            ? null
            : Html.Tag("span", Html.Class("mark"), $" [{string.Join(", ", numbers.Select(number => FormattableString.Invariant($"{number}")))}]");
    }

    internal XElement? Section() => _sources.Count == 0 ? null : SheetFrame.Section(
        "sources",
        "Sources",
        Html.Tag("ol", Html.Class("quiet"), _sources.Select(source => Html.Tag("li", Html.Words(source.ToString())))));

    private int Number(Citation citation)
    {
        int index = _sources.IndexOf(citation);
        if (index < 0)
        {
            _sources.Add(citation);
            index = _sources.Count - 1;
        }

        return index + 1;
    }
}
