namespace MarineService.Core.Oils;

/// <summary>The classification rule of SAE J300 on one report; allocates nothing. Source: table 1 and the labelling rule.</summary>
internal static class J300Math
{
    /// <summary>Cranking and pumping at the grade's own temperatures, no yield stress, and the least viscosity at 100 °C.</summary>
    internal static GradeResult Check(OilTestReport report, SaeWGrade grade)
    {
        double? cranking = report.Cranking(grade);
        double? pumping = report.Pumping(grade);
        if (cranking > grade.CrankingMax || pumping > grade.PumpingMax || report.HasYieldStress(grade) || report.Kv100 < grade.Kv100Min)
        {
            return GradeResult.NotMet;
        }

        return cranking is null || pumping is null || report.Kv100 is null ? GradeResult.NotKnown : GradeResult.Met;
    }

    /// <summary>Viscosity at 100 °C within bounds and the high-shear limit, which for SAE 40 hangs on the winter grade beside it.</summary>
    internal static GradeResult Check(OilTestReport report, SaeNonWGrade grade, SaeWGrade? labelledWith)
    {
        if (report.Kv100 is double kv100 && !grade.Holds(kv100))
        {
            return GradeResult.NotMet;
        }

        if (report.HighShear < grade.HighShearMin(labelledWith))
        {
            return OnlyAThinWinterGradeWouldHelp(report, grade, labelledWith) ? GradeResult.NotKnown : GradeResult.NotMet;
        }

        return report.Kv100 is null || report.HighShear is null ? GradeResult.NotKnown : GradeResult.Met;
    }

    /// <summary>The lowest winter grade that is met: of several, only that one may be named.</summary>
    internal static SaeWGrade? LowestMet(OilTestReport report)
    {
        for (int i = 0; i < SaeWGrade.All.Count; i++)
        {
            if (Check(report, SaeWGrade.All[i]) == GradeResult.Met)
            {
                return SaeWGrade.All[i];
            }
        }

        return null;
    }

    /// <summary>The thickest grade without W that is met beside this winter grade; the thin grades overlap.</summary>
    internal static SaeNonWGrade? ThickestMet(OilTestReport report, SaeWGrade? labelledWith)
    {
        for (int i = SaeNonWGrade.All.Count - 1; i >= 0; i--)
        {
            if (Check(report, SaeNonWGrade.All[i], labelledWith) == GradeResult.Met)
            {
                return SaeNonWGrade.All[i];
            }
        }

        return null;
    }

    /// <summary>True when SAE 40 fails as a single grade, and the winter grade that would lower its limit has not been measured.</summary>
    internal static bool OnlyAThinWinterGradeWouldHelp(OilTestReport report, SaeNonWGrade grade, SaeWGrade? labelledWith)
    {
        if (labelledWith is not null || !(report.HighShear >= grade.HighShearMin(SaeWGrade.Sae10W)))
        {
            return false;
        }

        for (int i = 0; i <= SaeWGrade.Sae10W.Index; i++)
        {
            if (Check(report, SaeWGrade.All[i]) == GradeResult.NotKnown)
            {
                return true;
            }
        }

        return false;
    }
}
