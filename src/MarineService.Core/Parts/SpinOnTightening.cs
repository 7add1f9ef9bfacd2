using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>How a spin-on filter is tightened: by turn after its gasket touches, by hand.</summary>
/// <remarks>The turn is printed on the filter. Never a torque: the gasket seals by how far it is squeezed.</remarks>
/// <example><code>
/// SpinOnTightening.ByTurn(Angle.FromDegrees(270)).Judge(Angle.FromDegrees(180), oldGasketSeen: true, gasketOiled: true);
/// </code></example>
public sealed class SpinOnTightening
{
    private const double MostDegrees = 720;

    private readonly double? _degrees;

    private SpinOnTightening(double? degrees) => _degrees = degrees;

    /// <summary>The maker's turn is not stated: nothing is assumed in its place.</summary>
    public static SpinOnTightening NotStated { get; } = new(null);

    /// <summary>The turn after contact that the maker states.</summary>
    public Answer<Angle> Turn => _degrees is double degrees
        ? Answer.Known(Angle.FromDegrees(degrees))
        : Answer.NotKnown<Angle>("The turn after contact that is printed on the filter or stated in the engine's manual.");

    internal double? TurnDegrees => _degrees;

    /// <summary>By a turn that the maker states.</summary>
    /// <param name="turn">The turn after contact; above 0 and up to 720 degrees.</param>
    /// <returns>The way to tighten.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="turn"/> is outside its range.</exception>
    public static SpinOnTightening ByTurn(Angle turn) => new(CheckedDegrees(turn, nameof(turn)));

    /// <summary>Judges how a filter was fitted.</summary>
    /// <param name="turned">The turn after contact; above 0 and up to 720 degrees.</param>
    /// <param name="oldGasketSeen">Whether the old gasket was seen off the engine.</param>
    /// <param name="gasketOiled">Whether the new gasket was oiled.</param>
    /// <param name="tolerance">How far the turn may lie off; from 0 to 180 degrees, an eighth of a turn when left out (project choice).</param>
    /// <returns>What is wrong; empty when nothing is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public IReadOnlyList<Finding> Judge(Angle turned, bool oldGasketSeen, bool gasketOiled, Angle? tolerance = null)
    {
        double turn = CheckedDegrees(turned, nameof(turned));
        double off = tolerance is Angle given ? Guard.InRange(Canonical.Degrees(given), 0, 180, "degrees", nameof(tolerance)) : 45;
        List<Finding> findings = [];
        if (!oldGasketSeen)
        {
            findings.Add(TighteningRules.OldGasket.On("spin-on filter"));
        }

        if (!gasketOiled)
        {
            findings.Add(TighteningRules.DryGasket.On("spin-on filter"));
        }

        FindingRule? rule = _degrees is not double wanted ? TighteningRules.TurnNotKnown
            : turn < wanted - off ? TighteningRules.TurnedShort
            : turn > wanted + off ? TighteningRules.TurnedFar
            : null;
        if (rule is not null)
        {
            findings.Add(rule.On(
                "spin-on filter", Figure.Of("turned", turn, FigureUnit.Degree), Figure.Of("wanted", _degrees ?? 0, FigureUnit.Degree)));
        }

        return findings.AsReadOnly();
    }

    /// <summary>The way in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => _degrees is double degrees
        ? FormattableString.Invariant($"by hand to contact, then {degrees:0.#} degrees")
        : "by hand to contact, then the turn printed on the filter";

    private static double CheckedDegrees(Angle angle, string argument) =>
        Guard.InRange(Guard.Positive(Canonical.Degrees(angle), "degrees", argument), 0, MostDegrees, "degrees", argument);
}
