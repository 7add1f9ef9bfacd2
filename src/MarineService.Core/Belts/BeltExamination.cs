using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>Everything that a careful second person would look at on a belt as it lies: is it possible, is it right, in line, tight enough.</summary>
/// <remarks>What a check needs and the drive does not say comes back as not known, with what is missing.</remarks>
/// <example><code>
/// BeltExamination seen = BeltExamination.Of(drive.Route("crank", "alternator"), RotationalSpeed.FromRevolutionsPerMinute(3000));
/// seen.Findings;
/// </code></example>
public sealed class BeltExamination
{
    private readonly double _turnsPerMinute;
    private readonly Answer<TensionCheck> _unpulled;

    private BeltExamination(BeltRouting asItLies, double turnsPerMinute)
    {
        (AsItLies, _turnsPerMinute) = (asItLies, turnsPerMinute);
        Answer<BeltRouting> right = asItLies.Drive.EngineRouting;
        Comparison = right.IsKnown ? Answer.Known(asItLies.CompareWith(right.Value)) : Answer.NotKnown<RoutingComparison>([.. right.Missing]);
        Check = right.IsKnown ? Comparison.Value.Check : asItLies.Check();
        Alignment = asItLies.CheckAlignment();
        Tension = Running(() => asItLies.CheckSpringTension(CrankSpeed));
        _unpulled = Running(() => asItLies.CheckTension(CrankSpeed, Force.Zero));
        Findings = Array.AsReadOnly<Finding>(
        [
            .. right.IsKnown ? Comparison.Value.Findings : Check.Findings,
            .. Alignment.IsKnown ? Alignment.Value.Findings : [],
            .. Tension.IsKnown ? Tension.Value.Findings : [],
        ]);
    }

    /// <summary>The belt as it lies.</summary>
    public BeltRouting AsItLies { get; }

    /// <summary>The speed of the crank at which the loads are taken.</summary>
    public RotationalSpeed CrankSpeed => RotationalSpeed.FromRevolutionsPerMinute(_turnsPerMinute);

    /// <summary>The geometry, the faces, the senses, and the tensioner.</summary>
    public BeltCheck Check { get; }

    /// <summary>The comparison with the engine's own routing; not known when that is not.</summary>
    public Answer<RoutingComparison> Comparison { get; }

    /// <summary>Whether the pulleys are in line; not known without their positions along the crankshaft.</summary>
    public Answer<AlignmentCheck> Alignment { get; }

    /// <summary>Pull and slip with what the tensioner's spring sets; not known without spring, loads or belt.</summary>
    public Answer<TensionCheck> Tension { get; }

    /// <summary>The least pull at which nothing slips: at a spring tensioner less the centrifugal part, otherwise of the standing belt.</summary>
    public Answer<Force> LeastPull => _unpulled.IsKnown ? Answer.Known(_unpulled.Value.LeastPull) : Answer.NotKnown<Force>([.. _unpulled.Missing]);

    /// <summary>The pulley that decides the least pull.</summary>
    public Answer<string> DecidingPulley => _unpulled.IsKnown ? Answer.Known(_unpulled.Value.DecidingPulley) : Answer.NotKnown<string>([.. _unpulled.Missing]);

    /// <summary>Everything that was found: what differs from the engine's routing, the geometry, the line of the pulleys, the pull.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>True when nothing was found that must be put right.</summary>
    public bool IsFine => Findings.All(finding => finding.Severity < Severity.Act);

    /// <summary>Examines a belt.</summary>
    /// <param name="asItLies">The belt as it lies.</param>
    /// <param name="crankSpeed">The speed of the crank at which the loads are taken; above 0 and up to 20,000 turns a minute.</param>
    /// <returns>What was seen.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="asItLies"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="crankSpeed"/> is outside its range.</exception>
    public static BeltExamination Of(BeltRouting asItLies, RotationalSpeed crankSpeed)
    {
        double turns = Guard.Positive(Canonical.RevolutionsPerMinute(crankSpeed), "turns a minute", nameof(crankSpeed));
        Guard.InRange(turns, 0, BeltRouting.FastestTurnsPerMinute, "turns a minute", nameof(crankSpeed));
        return new(Guard.NotNull(asItLies), turns);
    }

    /// <summary>The answer, how the belt lies and should lie, the steps, the tensioner and the pull, then what was found.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Headline(units));
        lines.Add("as it lies", AsItLies.ToString());
        if (Comparison.IsKnown && !Comparison.Value.IsSame)
        {
            lines.Add("should lie", Comparison.Value.Right.ToString());
            for (int i = 0; i < Comparison.Value.Edits.Count; i++)
            {
                lines.Add(FormattableString.Invariant($"step {i + 1}"), Comparison.Value.Edits[i].ToString());
            }
        }

        lines.AddIf(Check.Geometry.IsKnown, "length", () => FigureUnit.Millimeter.Write(Check.Geometry.Value.EffectiveLengthMm, units) + " effective, with the tensioner where it is drawn");
        lines.AddIf(Check.Tensioner.IsKnown, "tensioner", () => Check.Tensioner.Value.Explain(units).Answer);
        lines.Add("least pull", LeastPull.IsKnown
            ? $"{FigureUnit.Newton.Write(Canonical.Newtons(LeastPull.Value), units)} at {FormattableString.Invariant($"{_turnsPerMinute:0}")} turns a minute; '{DecidingPulley.Value}' decides it"
            : LeastPull.ToString());
        lines.AddIf(Tension.IsKnown, "spring", () => Tension.Value.Explain(units).Answer);
        lines.Add("in line", Alignment.IsKnown ? Alignment.Value.Explain(units).Answer : Alignment.ToString());
        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build([BeltRules.Geometry, .. Findings.Select(finding => finding.Rule.Citation).Where(citation => citation != BeltRules.Geometry).Distinct()]);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Headline(DisplayUnits.Metric);

    private string Headline(DisplayUnits units) => Comparison.IsKnown ? Comparison.Value.Explain(units).Answer : Check.Explain(units).Answer;

    // Pulls in a belt that cannot lie so mean nothing.
    private Answer<TensionCheck> Running(Func<Answer<TensionCheck>> check) => Check.Verdict is BeltVerdict.Closes or BeltVerdict.AtLimit
        ? check()
        : Answer.NotKnown<TensionCheck>("A routing that closes.");
}
