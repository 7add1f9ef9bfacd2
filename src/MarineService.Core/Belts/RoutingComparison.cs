using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>A belt as it lies against the engine's own routing: what differs, what that does, and the steps to put it right.</summary>
public sealed class RoutingComparison
{
    private readonly double? _lengthMm;
    private readonly double? _rightLengthMm;

    internal RoutingComparison(BeltRouting asItLies, BeltRouting right, IReadOnlyList<RoutingEdit> edits)
    {
        (AsItLies, Right, Edits) = (asItLies, right, edits);
        Check = asItLies.Check();
        _lengthMm = Check.Geometry.IsKnown ? Check.Geometry.Value.EffectiveLengthMm : null;
        _rightLengthMm = right.TryMeasure()?.EffectiveLengthMm;
        List<Finding> findings = [];
        AddDifferences(findings);
        if (!IsSame && LengthDifferenceMm is double difference)
        {
            findings.Add(ComparisonRules.LengthDiffers.On("belt", Mm("difference", difference), Mm("length", _lengthMm!.Value), Mm("right length", _rightLengthMm!.Value)));
        }

        // A missed pulley is said once, with its place, rather than twice.
        findings.AddRange(Check.Findings.Where(finding => finding.Rule != BeltRules.MissedPulley));
        Findings = findings.AsReadOnly();
    }

    /// <summary>The belt as it lies.</summary>
    public BeltRouting AsItLies { get; }

    /// <summary>The routing that it is compared with.</summary>
    public BeltRouting Right { get; }

    /// <summary>The check of the belt as it lies, by itself.</summary>
    public BeltCheck Check { get; }

    /// <summary>The fewest steps that put it right, in the order to do them; empty when nothing differs.</summary>
    public IReadOnlyList<RoutingEdit> Edits { get; }

    /// <summary>What differs, then what the check of the belt as it lies found.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>True when order and faces are the same.</summary>
    public bool IsSame => Edits.Count == 0;

    /// <summary>How much longer the path is than the right one; negative when shorter.</summary>
    public Answer<Length> LengthDifference => LengthDifferenceMm is double mm
        ? Answer.Known(Length.FromMillimeters(mm))
        : Answer.NotKnown<Length>("Both paths measured: two pulleys in a row leave no room for a span.");

    private double? LengthDifferenceMm => _lengthMm - _rightLengthMm;

    /// <summary>What differs and what to do, step by step.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(IsSame
            ? "The belt lies as the engine's routing says."
            : $"The belt is not on right: {(Edits.Count == 1 ? "one step puts" : FormattableString.Invariant($"{Edits.Count} steps put"))} it right.");
        lines.Add("as it lies", AsItLies.ToString());
        lines.Add("should lie", Right.ToString());
        for (int i = 0; i < Edits.Count; i++)
        {
            lines.Add(FormattableString.Invariant($"step {i + 1}"), Edits[i].ToString());
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build([Citation.GivenByCaller, BeltRules.Geometry]);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    private void AddDifferences(List<Finding> findings)
    {
        for (int i = 1; i < Right.Stops.Count; i++)
        {
            RoutingStop stop = Right.Stops[i];
            if (Place(AsItLies, stop.PulleyName) < 0)
            {
                findings.Add(ComparisonRules.Missed.On(
                    Subject(stop), Figure.Of("after", Right.NameOf(i - 1)), Figure.Of("face", Word(stop.Face))));
            }
        }

        for (int i = 0; i < AsItLies.Stops.Count; i++)
        {
            RoutingStop stop = AsItLies.Stops[i];
            int place = Place(Right, stop.PulleyName);
            if (place < 0)
            {
                findings.Add(ComparisonRules.Extra.On(Subject(stop)));
            }
            else if (Right.Stops[place].Face != stop.Face)
            {
                findings.Add(ComparisonRules.FaceDiffers.On(
                    Subject(stop),
                    Figure.Of("face", Word(stop.Face)),
                    Figure.Of("right face", Word(Right.Stops[place].Face)),
                    Figure.Of("turns", AsItLies.TurningOf(i).ToString()),
                    Figure.Of("should turn", Right.TurningOf(place).ToString())));
            }
        }

        AddOrder(findings);
    }

    /// <summary>Swaps by name; when the order is wrong otherwise, the first place where it departs.</summary>
    private void AddOrder(List<Finding> findings)
    {
        string[] common = [.. AsItLies.Stops.Select(stop => stop.PulleyName).Where(name => Place(Right, name) >= 0)];
        string[] wanted = [.. Right.Stops.Select(stop => stop.PulleyName).Where(name => Place(AsItLies, name) >= 0)];
        int first = Enumerable.Range(0, common.Length).FirstOrDefault(i => common[i] != wanted[i]);
        if (first == 0)
        {
            return;
        }

        RoutingEdit[] swaps = [.. Edits.Where(edit => edit.Kind == RoutingEditKind.Swap)];
        foreach (RoutingEdit swap in swaps)
        {
            findings.Add(ComparisonRules.Swapped.On(
                "belt", Figure.Of("first", swap.PulleyName), Figure.Of("second", swap.OtherName!)));
        }

        if (swaps.Length == 0)
        {
            findings.Add(ComparisonRules.OrderDiffers.On(
                $"pulley '{common[first - 1]}'", Figure.Of("goes to", common[first]), Figure.Of("should go to", wanted[first])));
        }
    }

    private static int Place(BeltRouting routing, string pulley)
    {
        for (int i = 0; i < routing.Stops.Count; i++)
        {
            if (string.Equals(routing.NameOf(i), pulley, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return -1;
    }

    private static string Subject(RoutingStop stop) => $"pulley '{stop.PulleyName}'";

    private static string Word(BeltFace face) => face == BeltFace.Back ? "back" : "ribs";

    private static Figure Mm(string name, double mm) => Figure.Of(name, mm, FigureUnit.Millimeter);
}
