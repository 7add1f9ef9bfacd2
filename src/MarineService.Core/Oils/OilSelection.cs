using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>Every permitted grade for one coldest start, ranked by verdict, then the maker's order, then margin; and what to do.</summary>
/// <remarks>
/// The margin alone would favour thin oils, so it comes last. The second number of a grade is never traded for an easier start: only
/// permitted grades are ranked. The policy stands with <see cref="OilChoice"/>.
/// </remarks>
public sealed class OilSelection
{
    private readonly OilChoice _choice;
    private readonly OilConditions _conditions;
    private readonly GradeLimits[] _limits;

    internal OilSelection(OilChoice choice, OilConditions conditions, GradeLimits[] limits, double startCelsius, bool isLaidUp)
    {
        (_choice, _conditions, _limits, StartCelsius, IsLaidUp) = (choice, conditions, limits, startCelsius, isLaidUp);
        Ranked = Array.AsReadOnly<GradeVerdict>(
        [
            .. limits.Select(grade => new GradeVerdict(grade, conditions, startCelsius))
                .OrderByDescending(verdict => verdict.Suitability)
                .ThenBy(verdict => verdict.MakersPreference)
                .ThenByDescending(verdict => verdict.MarginKelvins),
        ]);
        Advice = OilAdvice.Of(this);
        Fitted = choice.Fitted is null ? null : Judge(choice.Fitted);
        Findings = OilAdvice.Findings(this);
    }

    /// <summary>What the engine's maker permits.</summary>
    public PermittedOils Permitted => _choice.Permitted;

    /// <summary>The temperature of the sump at the start: the lowest air less the allowance for cold soak.</summary>
    public Temperature Start => Temperature.FromDegreesCelsius(StartCelsius);

    /// <summary>The hottest ambient with the allowance for shade, or null when it was not given.</summary>
    public Temperature? Hottest => _conditions.HottestCelsius is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>True when the engine is laid up: the verdicts are for a start, but none is expected and no change is asked for.</summary>
    public bool IsLaidUp { get; }

    /// <summary>Every permitted grade, the best first.</summary>
    public IReadOnlyList<GradeVerdict> Ranked { get; }

    /// <summary>The accepted grade that the maker prefers; not known when none is accepted.</summary>
    public Answer<GradeVerdict> Best => Ranked[0].Suitability == Suitability.Accepted
        ? Answer.Known(Ranked[0])
        : Answer.NotKnown<GradeVerdict>("A permitted grade that is accepted for this start; see the advice.");

    /// <summary>What to do about the coldest start.</summary>
    public ColdStartAdvice Advice { get; }

    /// <summary>The lowest temperature to which the oil must be warmed so that a permitted grade is accepted.</summary>
    /// <remarks>Not known when a grade is accepted as it is, or when warming helps none.</remarks>
    public Answer<Temperature> WarmOilTo => Best.IsKnown
        ? Answer.NotKnown<Temperature>("A colder start: a permitted grade is accepted for this one without warming.")
        : OilAdvice.Nearest(this) is GradeVerdict nearest && nearest.MarginKelvins < 0
        ? Answer.Known(nearest.Floor)
        : Answer.NotKnown<Temperature>("A permitted grade whose cold limit is known.");

    /// <summary>The verdict on the fitted oil, or null when it was not given.</summary>
    public OilVerdict? Fitted { get; }

    /// <summary>What must or may be done, gravest first; the fitted oil's findings are among them.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The revision of SAE J300 that the limits are taken from.</summary>
    public static string Revision => OilSources.J300Revision;

    internal double StartCelsius { get; }

    internal NodaTime.LocalDate? AsOf => _choice.AsOf;

    internal double? HottestCelsius => _conditions.HottestCelsius;

    /// <summary>Begins a question among the maker's permitted grades.</summary>
    /// <param name="designations">The grades, such as "15W-40", the maker's first choice first; none twice.</param>
    /// <returns>The question.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designations"/> or an item is null.</exception>
    /// <exception cref="ArgumentException">It is empty, names a grade twice, or holds text that is not a grade.</exception>
    /// <example><code>
    /// OilSelection oils = OilSelection.Among("10W-30", "15W-40").ForColdestStart(Temperature.FromDegreesCelsius(-17));
    /// // 10W-30 accepted: 3 K inside floor -20 °C = SAE J300 cranking -25 °C + 5 K
    /// // 15W-40 marginal: 2 K outside floor -15 °C = SAE J300 cranking -20 °C + 5 K
    /// </code></example>
    public static OilChoice Among(params string[] designations) => Among(PermittedOils.Of(designations: designations));

    /// <summary>Begins a question among the maker's permitted grades, with the maker's limits and categories.</summary>
    /// <param name="permitted">What the maker permits.</param>
    /// <returns>The question.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="permitted"/> is null.</exception>
    public static OilChoice Among(PermittedOils permitted) => new(Guard.NotNull(permitted));

    /// <summary>The verdict on any oil by its label: the one in the sump, the one on the shelf.</summary>
    /// <param name="oil">The oil.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="oil"/> is null.</exception>
    public OilVerdict Judge(LabelledOil oil)
    {
        GradeLimits limits = LimitsOf(Guard.NotNull(oil).Grade, _limits, _conditions);
        return new(oil, new GradeVerdict(limits, _conditions, StartCelsius), Permitted, this);
    }

    /// <summary>The answer, each grade with its reason, the conditions, the advice, and the sources.</summary>
    /// <param name="units">Which units to write; the decisions are the same.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string start = FigureUnit.DegreeCelsius.Write(StartCelsius, units);
        ExplanationBuilder lines = new(
            IsLaidUp ? $"Laid up: {start} asks for no change of oil."
            : Ranked[0].Suitability == Suitability.Accepted ? $"{Ranked[0].Designation} for a start at {start}, {FigureUnit.Kelvin.Write(Ranked[0].MarginKelvins, units)} to spare."
            : $"No permitted grade is accepted for a start at {start}.");
        foreach (GradeVerdict verdict in Ranked)
        {
            lines.Add(verdict.Designation, $"{GradeVerdict.Words(verdict.Suitability)}: {verdict.Reason(units)}");
        }

        lines.Add("start", start).Add("hottest", HottestCelsius is double hot ? FigureUnit.DegreeCelsius.Write(hot, units) : "not given")
            .Add("margin", $"{FigureUnit.Kelvin.Write(_conditions.MarginKelvins, units)} above the cranking test")
            .AddIf(_conditions.ColdSoakKelvins > 0, "cold soak", () => $"{FigureUnit.Kelvin.Write(_conditions.ColdSoakKelvins, units)} colder than the forecast");
        foreach (CategoryRequirement required in Permitted.Required)
        {
            lines.Add("label", $"must claim {required}, or a category stated to cover it");
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, finding.Message(units));
        }

        return lines.Add("outranked by", "the engine's own manual").Build(
            [.. Ranked.Select(verdict => verdict.DecidedBy.Citation).Concat([OilSources.J300, Citation.ProjectChoice]).Distinct()]);
    }

    /// <summary>The limits of a grade that may be in the sump without being permitted.</summary>
    internal static GradeLimits LimitsOf(SaeGrade grade, GradeLimits[] permitted, OilConditions conditions) =>
        permitted.FirstOrDefault(limits => limits.Grade == grade)
        ?? new GradeLimits(PermittedGrade.Of(grade), permitted.Length, permitted.Length + 1, isPermitted: false, conditions);
}
