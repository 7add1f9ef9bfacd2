using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>How one joint is tightened: the way, the figure where there is one, and what decided.</summary>
/// <remarks>
/// First the maker's figure; a soft joint goes to contact and no further; a torque is worked out only for a steel screw in steel on a hard
/// seat; everything else asks the maker. Screws of one joint are tightened crosswise, in two rounds at least (common practice).
/// </remarks>
public sealed class TighteningInstruction
{
    // Torque wrenches are allowed 4 % by ISO 6789-1 (from memory); what lies inside is no fault of the person.
    private const double WrenchFraction = 0.04;

    private readonly double? _newtonMeters;

    internal TighteningInstruction(Joint joint, TighteningTorque? computed)
    {
        (Joint, Computed) = (joint, computed);
        _newtonMeters = joint.MakersNewtonMeters ?? (joint.IsSoft || computed is null ? null : Canonical.NewtonMeters(computed.Torque));
        Way = joint.IsSoft ? TighteningWay.ToContactThenNoMore
            : _newtonMeters is null ? TighteningWay.AskTheMaker
            : TighteningWay.ByTorque;
    }

    /// <summary>The joint.</summary>
    public Joint Joint { get; }

    /// <summary>How it is tightened.</summary>
    public TighteningWay Way { get; }

    /// <summary>The torque worked out from the screw, also where the maker's figure goes before it; null where none may be.</summary>
    public TighteningTorque? Computed { get; }

    /// <summary>The torque; on a soft joint the most that the specification allows.</summary>
    public Answer<Torque> Torque => _newtonMeters is double value
        ? Answer.Known(UnitsNet.Torque.FromNewtonMeters(value))
        : Answer.NotKnown<Torque>(Joint.IsSoft
            ? $"The figure of the engine's maker for '{Joint.Name}'; until then it is made snug, and no more."
            : $"The torque that the engine's maker states for '{Joint.Name}'.");

    /// <summary>Judges a torque that was applied.</summary>
    /// <param name="applied">The torque; above 0 and up to 2000 N·m.</param>
    /// <returns>What is wrong with it; empty when nothing is, or when there is no figure to compare with.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="applied"/> is outside its range.</exception>
    public IReadOnlyList<Finding> Judge(Torque applied)
    {
        double torque = Joint.CheckedNewtonMeters(applied, nameof(applied));
        if (_newtonMeters is not double figure)
        {
            return [];
        }

        FindingRule? rule = torque > figure * (1 + WrenchFraction)
            ? Joint.IsSoft ? TighteningRules.SoftJointOverTightened : TighteningRules.TooTight
            : torque < figure * (1 - WrenchFraction) && !Joint.IsSoft ? TighteningRules.TooLoose
            : null;
        return rule is null
            ? []
            : [rule.On(
                $"joint '{Joint.Name}'",
                Figure.Of("torque", torque, FigureUnit.NewtonMeter),
                Figure.Of("limit", figure, FigureUnit.NewtonMeter))];
    }

    /// <summary>The way, the figure, what decided and what lost.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string figure = _newtonMeters is double value ? FigureUnit.NewtonMeter.Write(value, units) : "";
        ExplanationBuilder lines = new($"{Joint.Name}: " + Way switch
        {
            TighteningWay.ToContactThenNoMore => figure.Length == 0 ? "to contact, then no more." : $"to contact, then no more; {figure} at most.",
            TighteningWay.ByTorque => $"{figure}.",
            _ => "ask the maker; no torque is worked out for it.",
        });
        lines.Add("because", Reason());
        lines.AddIf(Joint.Thread is not null, "thread", () => $"{Joint.Thread} {Joint.PropertyClass}".TrimEnd());
        lines.AddIf(Computed is not null && Joint.MakersNewtonMeters is not null, "not used", () => $"worked out: {Computed!.Explain(units).Answer}");
        lines.Add("how", "all screws by hand, then crosswise in at least two rounds");
        return lines.Build(Joint.MakersNewtonMeters is not null ? Citation.GivenByCaller
            : Way == TighteningWay.ByTorque ? PartsSources.StressArea
            : Citation.CommonPractice);
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    private string Reason() =>
        Joint.IsSoft ? "the seat is soft: more torque crushes it and seals no better"
        : Joint.MakersNewtonMeters is not null ? "the engine's maker states it"
        : Computed is not null ? "a steel screw in steel on a hard seat, and no maker's figure"
        : Joint.Seat == JointSeat.Metal && Joint.ThreadedInto is not ThreadMaterial.Steel and not ThreadMaterial.NotStated
            ? "the thread in the part is weaker than the screw, so the screw's class says nothing"
        : "seat, thread, class or the part's material is not stated";
}
