using MarineService.Core.Engines;
using MarineService.Core.Internal;

namespace MarineService.Core.Cooling;

/// <summary>A sacrificial anode that was looked at: worn, unworn, and whether its metal suits the water.</summary>
/// <remarks>An unworn anode is no pass: it may be passivated or not bonded.</remarks>
public sealed class AnodeCheck
{
    private const double WornLimit = 0.5;
    private const double UnwornLimit = 0.05;
    private const int MonthsToWear = 3;

    private AnodeCheck(AnodeMetal metal, WaterKind water, double worn, int months, IReadOnlyList<Finding> findings) =>
        (Metal, Water, WornFraction, MonthsInWater, Findings) = (metal, water, worn, months, findings);

    /// <summary>What it is made of.</summary>
    public AnodeMetal Metal { get; }

    /// <summary>The water.</summary>
    public WaterKind Water { get; }

    /// <summary>How much of it is gone.</summary>
    public double WornFraction { get; }

    /// <summary>How long it was in the water, in months.</summary>
    public int MonthsInWater { get; }

    /// <summary>What was found.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>True when nothing must be put right.</summary>
    public bool Passes => Findings.All(finding => finding.Severity < Severity.Act);

    /// <summary>Judges an anode.</summary>
    /// <param name="metal">What it is made of.</param>
    /// <param name="water">The water.</param>
    /// <param name="wornFraction">How much of it is gone, from 0 to 1 (fraction).</param>
    /// <param name="monthsInWater">How long it was in the water, from 0 to 600 months.</param>
    /// <param name="wornLimitFraction">From which wear on it is replaced, from 0.1 to 0.9 (fraction).</param>
    /// <param name="unwornLimitFraction">Up to which wear it counts as unworn, from 0 to 0.3 (fraction); project choice.</param>
    /// <param name="monthsToWear">After how many months it must have worn, from 1 to 60 months; project choice.</param>
    /// <param name="anode">Which anode it is; not blank.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="anode"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="anode"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static AnodeCheck Of(
        AnodeMetal metal,
        WaterKind water,
        double wornFraction,
        int monthsInWater,
        double wornLimitFraction = WornLimit,
        double unwornLimitFraction = UnwornLimit,
        int monthsToWear = MonthsToWear,
        string anode = "anode")
    {
        Guard.Defined(metal);
        Guard.NotBlank(anode);
        Guard.Defined(water);
        double worn = Guard.InRange(wornFraction, 0, 1, "(fraction)");
        int months = Guard.InRange(monthsInWater, 0, AnodeInspection.MostMonths, "months");
        double limit = Guard.InRange(wornLimitFraction, 0.1, 0.9, "(fraction)");
        double unworn = Guard.InRange(unwornLimitFraction, 0, 0.3, "(fraction)");
        int time = Guard.InRange(monthsToWear, 1, 60, "months");
        List<Finding> findings = [];
        Figure gone = Figure.Of("worn", worn, FigureUnit.Fraction);
        if (worn >= limit)
        {
            findings.Add(AnodeRules.WornOut.On(anode, gone, Figure.Of("limit", limit, FigureUnit.Fraction)));
        }
        else if (worn <= unworn)
        {
            findings.Add((months >= time ? AnodeRules.Unworn : AnodeRules.TooNew).On(anode, gone, Figure.Of("months", months, FigureUnit.Month)));
        }

        if (metal == AnodeMetal.NotStated || water == WaterKind.NotStated)
        {
            findings.Add(AnodeRules.NotStated.On(anode, Figure.Of("what", metal == AnodeMetal.NotStated ? "the metal" : "the water")));
        }
        else if (!Suits(metal, water))
        {
            findings.Add(AnodeRules.WrongMetal.On(
                anode, Figure.Of("metal", Word(metal)), Figure.Of("water", Word(water)), Figure.Of("right", Right(water))));
        }

        return new(metal, water, worn, months, findings.AsReadOnly());
    }

    /// <summary>Metal, wear and what was found.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{Word(Metal)} anode, {WornFraction * 100:0} % gone: {(Passes ? "passes" : string.Join(", ", Findings.Select(finding => finding.Code)))}");

    private static bool Suits(AnodeMetal metal, WaterKind water) => water switch
    {
        WaterKind.Fresh => metal is AnodeMetal.Aluminium or AnodeMetal.Magnesium,
        WaterKind.Brackish => metal == AnodeMetal.Aluminium,
        _ => metal is AnodeMetal.Zinc or AnodeMetal.Aluminium,
    };

    private static string Right(WaterKind water) => water switch
    {
        WaterKind.Fresh => "aluminium or magnesium",
        WaterKind.Brackish => "aluminium",
        _ => "zinc or aluminium",
    };

    private static string Word(AnodeMetal metal) => metal switch
    {
        AnodeMetal.Zinc => "zinc",
        AnodeMetal.Aluminium => "aluminium",
        AnodeMetal.Magnesium => "magnesium",
        _ => "unknown",
    };

    private static string Word(WaterKind water) => water switch
    {
        WaterKind.Fresh => "fresh",
        WaterKind.Brackish => "brackish",
        WaterKind.Salt => "salt",
        _ => "unknown",
    };
}
