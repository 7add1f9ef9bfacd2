using MarineService.Core.Internal;

namespace MarineService.Core.Oils;

/// <summary>What a top-up with another oil makes of the oil in the sump: viscosity at both temperatures and viscosity index.</summary>
/// <remarks>
/// <para>
/// Rule: ln ln(ν + 0.7) adds by volume share, at 40 and at 100 °C apart; the blending index and the single log are the other methods.
/// The double log agrees with the Hydraulic Institute's chart (figure 2.C.2); that ASTM D7152 has it as its blending method is from memory.
/// </para>
/// <para>
/// D7152 section 1.3: may not hold for polymer viscosity-index improvers and additive packages, so for finished multigrades it is an
/// estimate. A blend has no SAE J300 grade until it is tested: cranking, pumping and high shear do not follow these rules.
/// </para>
/// </remarks>
public sealed class OilBlend
{
    private OilBlend(OilViscosity first, OilViscosity second, double secondFraction) =>
        (First, Second, SecondFraction) = (first, second, secondFraction);

    /// <summary>The oil that was there.</summary>
    public OilViscosity First { get; }

    /// <summary>The oil that was added.</summary>
    public OilViscosity Second { get; }

    /// <summary>The added oil as a share of the whole volume after the top-up, from 0 to 1.</summary>
    public double SecondFraction { get; }

    /// <summary>The mix by the double log: the best estimate.</summary>
    public OilViscosity Estimate => By(BlendingMethod.DoubleLog);

    /// <summary>The estimate's viscosity index; indices themselves never add.</summary>
    public Answer<ViscosityIndex> Index => Estimate.Index();

    /// <summary>The viscosity at 40 °C between the double log and the single log.</summary>
    public ViscosityBracket At40C => new(By(BlendingMethod.DoubleLog).Kv40, By(BlendingMethod.SingleLog).Kv40);

    /// <summary>The viscosity at 100 °C between the double log and the single log.</summary>
    public ViscosityBracket At100C => new(By(BlendingMethod.DoubleLog).Kv100, By(BlendingMethod.SingleLog).Kv100);

    /// <summary>The blend's grade: never known until the blend is tested.</summary>
    public Answer<SaeGrade> Grade => Answer.NotKnown<SaeGrade>(SecondFraction is 0 or 1
        ? "The grade on the label of the one oil that is there: nothing is mixed."
        : "A blend of two oils has no SAE J300 grade until it is tested: cranking (ASTM D5293), pumping (ASTM D4684), high shear (ASTM D4683) and viscosity at 100 °C of the mix.");

    /// <summary>A mix of two oils.</summary>
    /// <param name="first">The oil that was there.</param>
    /// <param name="second">The oil that was added.</param>
    /// <param name="secondFraction">The added oil as a share of the whole volume after the top-up, from 0 to 1.</param>
    /// <returns>The mix.</returns>
    /// <exception cref="ArgumentNullException">An oil is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="secondFraction"/> is outside 0 to 1.</exception>
    public static OilBlend Of(OilViscosity first, OilViscosity second, double secondFraction) =>
        new(Guard.NotNull(first), Guard.NotNull(second), OilGuard.Fraction(secondFraction));

    /// <summary>How much of another oil an oil takes before its viscosity at 100 °C leaves the bounds of a grade.</summary>
    /// <remarks>
    /// The bounds of the grade without W, or the least viscosity of a winter grade alone. Only the viscosity at 100 °C is looked at. The
    /// smaller end of the bracket is the careful one.
    /// </remarks>
    /// <param name="first">The oil that was there.</param>
    /// <param name="second">The oil to be added.</param>
    /// <param name="grade">The grade whose bounds must hold.</param>
    /// <returns>
    /// The added oil's share of the whole, 1 when the bounds are never left; not known when the first oil itself is outside the bounds.
    /// </returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Answer<FractionBracket> Tolerable(OilViscosity first, OilViscosity second, SaeGrade grade)
    {
        Guard.NotNull(first);
        Guard.NotNull(second);
        Guard.NotNull(grade);
        double least = Math.Max(grade.Hot?.Kv100Min ?? 0, grade.Winter?.Kv100Min ?? 0);
        double below = grade.Hot?.Kv100Max ?? double.PositiveInfinity;
        if (first.Kv100 < least || first.Kv100 >= below)
        {
            return Answer.NotKnown<FractionBracket>(FormattableString.Invariant(
                $"An oil that is itself within {grade}: {first.Kv100} mm²/s at 100 °C is outside {least} to below {below} mm²/s."));
        }

        double bound = second.Kv100 < first.Kv100 ? least : below;
        bool isNeverLeft = second.Kv100 >= least && second.Kv100 < below;
        return Answer.Known(isNeverLeft
            ? new FractionBracket(1, 1)
            : new FractionBracket(
                BlendMath.SecondFraction(BlendingMethod.DoubleLog, first.Kv100, second.Kv100, bound),
                BlendMath.SecondFraction(BlendingMethod.SingleLog, first.Kv100, second.Kv100, bound)));
    }

    /// <summary>The mix by one method.</summary>
    /// <param name="method">The method.</param>
    /// <returns>The viscosity at both temperatures.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not a defined value.</exception>
    public OilViscosity By(BlendingMethod method)
    {
        Guard.Defined(method);
        return OilViscosity.FromKernel(
            BlendMath.Mix(method, First.Kv40, Second.Kv40, SecondFraction), BlendMath.Mix(method, First.Kv100, Second.Kv100, SecondFraction));
    }

    /// <summary>The mix, its parts, both brackets, and what it does not have.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        Answer<ViscosityIndex> index = Index;
        return new ExplanationBuilder($"About {Estimate}; viscosity index {(index.IsKnown ? index.Value.ToString() : "not defined")}.")
            .Add("was there", First.ToString())
            .Add("added", $"{Second}, {FigureUnit.Fraction.Write(SecondFraction, units)} of the whole")
            .Add("at 40 °C", At40C.ToString(units))
            .Add("at 100 °C", At100C.ToString(units))
            .Add("bracket", "double log to single log; finished multigrades need not obey either")
            .Add("grade", Grade.Missing[0])
            .Build(OilSources.BlendChart, OilSources.BlendScope, OilSources.BlendIndex, Citation.FromMemory);
    }
}
