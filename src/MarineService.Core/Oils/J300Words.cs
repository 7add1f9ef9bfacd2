namespace MarineService.Core.Oils;

/// <summary>What the classification says about each grade, in words; built only when asked for.</summary>
internal static class J300Words
{
    internal static string Why(OilTestReport report, SaeWGrade grade, SaeWGrade? labelled, DisplayUnits units)
    {
        List<string> parts = [];
        Add(parts, "cranking", report.Cranking(grade), grade.CrankingCelsius, grade.CrankingMax, units);
        Add(parts, "pumping", report.Pumping(grade), grade.PumpingCelsius, grade.PumpingMax, units);
        if (report.HasYieldStress(grade))
        {
            parts.Add("yield stress found, which fails it whatever the viscosity");
        }

        if (report.Kv100 is double kv100)
        {
            parts.Add(kv100 >= grade.Kv100Min ? $"{Kv(kv100)} at 100 °C, least {Kv(grade.Kv100Min)}" : $"{Kv(kv100)} at 100 °C is below {Kv(grade.Kv100Min)}");
        }

        GradeResult result = J300Math.Check(report, grade);
        string word = result == GradeResult.Met && labelled != grade ? $"met, but only the lowest winter grade ({labelled}) may be named" : Word(result);
        return parts.Count == 0 ? word : $"{word}: {string.Join("; ", parts)}";
    }

    internal static string Why(OilTestReport report, SaeNonWGrade grade, SaeWGrade? winter, SaeNonWGrade? labelled, DisplayUnits units)
    {
        List<string> parts = [];
        if (report.Kv100 is double kv100)
        {
            parts.Add(grade.Holds(kv100)
                ? $"{Kv(kv100)} at 100 °C lies from {Kv(grade.Kv100Min)} to below {Kv(grade.Kv100Max)}"
                : kv100 < grade.Kv100Min ? $"{Kv(kv100)} at 100 °C is below {Kv(grade.Kv100Min)}" : $"{Kv(kv100)} at 100 °C is not below {Kv(grade.Kv100Max)}");
        }

        if (report.HighShear is double highShear)
        {
            double least = grade.HighShearMin(winter);
            parts.Add($"high shear {Mu(highShear, units)} is {(highShear >= least ? "at least" : "below")} {Mu(least, units)}{Beside(grade, winter)}");
        }

        GradeResult result = J300Math.Check(report, grade, winter);
        string word = result == GradeResult.Met && labelled != grade ? "met, but not named" : Word(result);
        return parts.Count == 0 ? word : $"{word}: {string.Join("; ", parts)}";
    }

    internal static IReadOnlyList<string> Missing(OilTestReport report, SaeWGrade? winter)
    {
        List<string> missing = [];
        if (report.Kv100 is null)
        {
            missing.Add("Kinematic viscosity at 100 °C.");
        }

        if (report.HighShear is null && SaeNonWGrade.All.Any(grade => J300Math.Check(report, grade, winter) == GradeResult.NotKnown))
        {
            missing.Add("High-shear viscosity at 150 °C and 10⁶ s⁻¹.");
        }

        // A winter grade above the labelled one can never be named: no need to measure it.
        foreach (SaeWGrade grade in SaeWGrade.All)
        {
            if (winter is not null && grade.Index >= winter.Index)
            {
                break;
            }

            if (J300Math.Check(report, grade) == GradeResult.NotKnown)
            {
                Require(missing, report.Cranking(grade), FormattableString.Invariant($"Cranking viscosity (ASTM D5293) at {grade.CrankingCelsius} °C for {grade}."));
                Require(missing, report.Pumping(grade), FormattableString.Invariant($"Pumping viscosity and yield stress (ASTM D4684) at {grade.PumpingCelsius} °C for {grade}."));
            }
        }

        return missing.AsReadOnly();
    }

    private static void Require(List<string> missing, double? measured, string text)
    {
        if (measured is null)
        {
            missing.Add(text);
        }
    }

    private static void Add(List<string> parts, string test, double? measured, double celsius, double most, DisplayUnits units)
    {
        if (measured is double value)
        {
            parts.Add($"{test} {Mu(value, units)} at {FigureUnit.DegreeCelsius.Write(celsius, units)} is {(value <= most ? "within" : "above")} {Mu(most, units)}");
        }
    }

    private static string Beside(SaeNonWGrade grade, SaeWGrade? winter) =>
        grade != SaeNonWGrade.Sae40 ? string.Empty : winter is null ? " (as a single grade)" : $" (beside {winter})";

    private static string Word(GradeResult result) => result switch
    {
        GradeResult.Met => "met",
        GradeResult.NotMet => "not met",
        _ => "not known",
    };

    private static string Kv(double value) => FigureUnit.SquareMillimeterPerSecond.Write(value, DisplayUnits.Metric);

    private static string Mu(double value, DisplayUnits units) => FigureUnit.MillipascalSecond.Write(value, units);
}
