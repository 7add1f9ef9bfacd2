using System.Xml.Linq;
using MarineService.Core;
using MarineService.Core.Parts;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>One or two views of a bolt pattern side by side, and the words below.</summary>
internal sealed class BoltScene
{
    private const double Width = 720;
    private const double Margin = 24;
    private const double Top = 92;
    private const double Radius = 118;
    private const double ViewHeight = (2 * Radius) + 92;

    /// <summary>More views than these would be too small: the words name the rest.</summary>
    private const int MostViews = 4;

    private readonly CoverFit _fit;
    private readonly HeldCover? _held;
    private readonly DisplayUnits _units;

    internal BoltScene(CoverFit fit, HeldCover? held, DisplayUnits units) => (_fit, _held, _units) = (fit, held, units);

    internal Drawing Draw()
    {
        BoltViewOf[] views = [.. Views().Take(MostViews)];
        XElement drawn = Svg.Group("patterns");
        double bottom = Top;
        for (int i = 0; i < views.Length; i++)
        {
            double x = Width * (views.Length == 1 ? 0.5 : i % 2 == 0 ? 0.27 : 0.73);
            double y = Top + (i / 2 * ViewHeight) + Radius + 42;
            drawn.Add(new BoltView(_fit, views[i], x, y, Radius).Draw());
            bottom = Top + ((i / 2) + 1) * ViewHeight;
        }

        Notes head = new Notes(Margin, 12, Width - (2 * Margin))
            .Paragraph("Cover on its bolt pattern, seen from outside", 19, bold: true)
            .Paragraph("Rings: the block's holes, as wide as the screws' play is shown. Crosses: the cover's holes. A cross within its ring goes in. "
                + "Numbers outside are the block's, inside the cover's.", 12, color: Palette.Quiet);
        Notes notes = new(Margin, bottom, Width - (2 * Margin));
        foreach (string line in Lines())
        {
            notes.Paragraph(line).Gap(2);
        }

        notes.Gap(4).Findings(null, Findings(), _units);
        notes.Paragraph("How far holes are off is drawn enlarged, so that the screws' play can be seen; the words have the true figures.", 12, color: Palette.Quiet);
        return new Drawing(
            "bolt-pattern",
            "Cover on its bolt pattern, seen from outside",
            string.Join(" ", Lines().Concat(Findings().Select(finding => Notes.Sentence(finding, _units)))),
            Svg.Picture(Width, notes.Bottom + Margin, head.Elements, drawn, notes.Elements));
    }

    private IEnumerable<BoltViewOf> Views()
    {
        if (_held is not null)
        {
            yield return new(
                _held.Goes && !_held.IsWrongFit ? "as held: the screws go in" : _held.IsWrongFit ? "as held: goes in, but wrong" : "as held: does not go in",
                _held.Nearest,
                _held.TurnDegrees,
                _held.Goes,
                _held.WorstHole,
                _held.TurnToFitDegrees.IsKnown ? _held.TurnToFitDegrees.Value : null);
            if (Wanted() is CoverRotation wanted)
            {
                yield return new(FormattableString.Invariant($"as it fits: hole 1 on {wanted.FirstHoleOn}"), wanted);
            }

            yield break;
        }

        foreach (CoverRotation rotation in _fit.Fitting)
        {
            string right = _fit.FirstHoleOn is not int first ? "fits" : rotation.FirstHoleOn == first ? "fits, and belongs so" : "fits, but is wrong";
            yield return new(FormattableString.Invariant($"hole 1 on {rotation.FirstHoleOn}: {right}"), rotation);
        }

        if (!_fit.Fits && _fit.Best.IsKnown)
        {
            CoverRotation best = _fit.Best.Value;
            yield return new(FormattableString.Invariant($"nearest, hole 1 on {best.FirstHoleOn}: does not fit"), best);
        }
        else if (!_fit.Fits)
        {
            yield return new("the cover has another number of holes", null, 0, false, null, null);
        }
    }

    /// <summary>The rotation that <see cref="HeldCover.TurnToFitDegrees"/> leads to.</summary>
    private CoverRotation? Wanted() => !_held!.TurnToFitDegrees.IsKnown
        ? null
        : _fit.Fitting.OrderBy(rotation => Math.Abs(Math.IEEERemainder(_held.TurnDegrees + _held.TurnToFitDegrees.Value - rotation.TurnDegrees, 360))).FirstOrDefault();

    private IEnumerable<string> Lines()
    {
        if (_held is not null)
        {
            yield return FormattableString.Invariant($"As held, turned {_held.TurnDegrees:0.##} deg from the drawing: hole {_held.WorstHole} is worst, ") + $"{Shown(_held.WorstOffMm)} off.";
            yield return _held.TurnToFitDegrees.IsKnown
                ? FormattableString.Invariant($"To fit, turn it {Math.Abs(_held.TurnToFitDegrees.Value):0.##} deg {(_held.TurnToFitDegrees.Value < 0 ? "clockwise" : "counter-clockwise")}, seen from outside.")
                : $"How far to turn it is not known: {string.Join(" ", _held.TurnToFitDegrees.Missing)}";
        }

        Explanation explained = _fit.Explain(_units);
        yield return explained.Answer;
        foreach (ExplanationLine line in explained.Lines.Where(line => line.Label is "block" or "cover" or "screws" or "held by" || line.Label.StartsWith("1 on ", StringComparison.Ordinal)))
        {
            string label = line.Label.StartsWith("1 on ", StringComparison.Ordinal) ? $"Hole {line.Label}" : char.ToUpperInvariant(line.Label[0]) + line.Label.Substring(1);
            yield return $"{label}: {line.Text}.";
        }
    }

    private IReadOnlyCollection<Finding> Findings() => _held is null ? _fit.Findings : [.. _held.Findings, .. _fit.Findings];

    private string Shown(double mm) => Figure.Of("off", mm, FigureUnit.FineMillimeter).ToString(_units);
}
