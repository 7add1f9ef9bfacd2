using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Oils;

/// <summary>The verdict on one oil by its label: its grade in this weather, and its service categories against the maker's.</summary>
public sealed class OilVerdict
{
    internal OilVerdict(LabelledOil oil, GradeVerdict grade, PermittedOils permitted, OilSelection selection)
    {
        (Oil, Grade) = (oil, grade);
        List<CategoryCoverage> categories = [];
        List<Finding> findings = [];
        foreach (ServiceCategory forbidden in oil.Claims.Select(claim => claim.Category).Where(permitted.Forbidden.Contains))
        {
            findings.Add(OilRules.CategoryForbidden.On(oil.ToString(), Figure.Of("category", forbidden.Name)));
        }

        foreach (CategoryRequirement required in permitted.Required)
        {
            CategoryCoverage? best = Best(oil, required, permitted.Forbidden, selection.AsOf);
            if (best is not null)
            {
                categories.Add(best);
            }

            if (best?.Coverage != Coverage.Covered)
            {
                findings.Add(OilRules.CategoryNotCovered.On(
                    oil.ToString(), Figure.Of("required", required.ToString()), Figure.Of("missing", best?.Reason ?? "the label claims no category")));
            }
        }

        HasCategories = findings.Count == 0;
        if (!grade.IsPermitted)
        {
            findings.Add(OilRules.NotPermitted.On(
                oil.ToString(), Figure.Of("grade", grade.Designation), Figure.Of("permitted", string.Join(", ", permitted.Grades.Select(p => p.Grade.Designation)))));
        }
        else if (grade.Suitability != Suitability.Accepted && !selection.IsLaidUp)
        {
            FindingRule rule = grade.IsTooHot && grade.MarginKelvins >= 0 ? OilRules.FittedTooThin
                : !grade.IsFloorKnown && grade.Suitability == Suitability.Marginal ? OilRules.NoColdLimitKnown
                : grade.Suitability == Suitability.Marginal ? OilRules.FittedMarginal
                : OilRules.FittedNotAccepted;
            findings.Add(rule.On(
                oil.ToString(), Figure.Of("grade", grade.Designation), Figure.Of("suitability", GradeVerdict.Words(grade.Suitability)),
                Figure.Of("start", selection.StartCelsius, FigureUnit.DegreeCelsius), Figure.Of("floor", grade.FloorCelsius, FigureUnit.DegreeCelsius)));
        }

        Categories = categories.AsReadOnly();
        Findings = findings.AsReadOnly();
    }

    /// <summary>The oil.</summary>
    public LabelledOil Oil { get; }

    /// <summary>The verdict on its grade.</summary>
    public GradeVerdict Grade { get; }

    /// <summary>For each requirement of the maker the best coverage among the label's claims; fewer when the label claims nothing.</summary>
    public IReadOnlyList<CategoryCoverage> Categories { get; }

    /// <summary>True when every requirement is covered and nothing forbidden is claimed.</summary>
    public bool HasCategories { get; }

    /// <summary>The verdict on the whole oil: refused when its categories are, else its grade's.</summary>
    public Suitability Suitability => HasCategories ? Grade.Suitability : Suitability.Refused;

    /// <summary>What is wrong with the oil; empty when nothing is.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The verdict, the grade's reason, and each category.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new($"{Oil} {GradeVerdict.Words(Suitability)}.");
        lines.Add("grade", Grade.Explain(units).Answer);
        foreach (CategoryCoverage category in Categories)
        {
            lines.Add("category", $"{category} Because {category.Reason}.");
            foreach (string caution in category.Cautions)
            {
                lines.Add("caution", caution);
            }
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, finding.Message(units));
        }

        return lines.Build([.. Grade.Explain(units).Citations.Concat(Categories.SelectMany(category => category.Citations)).Distinct()]);
    }

    /// <summary>The oil and the verdict.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => $"{Oil} {GradeVerdict.Words(Suitability)}";

    /// <summary>The best coverage of a requirement by any claim: covered before not stated before excluded; null when nothing is claimed.</summary>
    private static CategoryCoverage? Best(LabelledOil oil, CategoryRequirement required, IReadOnlyList<ServiceCategory> forbidden, LocalDate? asOf) =>
        (from claim in oil.Claims
         from wanted in required.AnyOf
         let coverage = CategoryCoverage.Of(claim, wanted, asOf, forbidden)
         orderby coverage.Coverage == Coverage.Covered ? 0 : coverage.Coverage == Coverage.NoneStated ? 1 : 2
         select coverage).FirstOrDefault();
}
