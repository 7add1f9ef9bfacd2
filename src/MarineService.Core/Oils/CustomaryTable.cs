namespace MarineService.Core.Oils;

/// <summary>The customary lowest ambient figures. They disagree, so each has its own source and none is a standard's.</summary>
internal static class CustomaryTable
{
    private static readonly Citation Chart = Citation.PracticeDescribedIn("a chart on a retail question page");
    private static readonly Citation OperatorManual = Citation.PracticeDescribedIn("a small-diesel operator manual");
    private static readonly Citation ArmyManual = Citation.PracticeDescribedIn("army manual TM 5-3805-254-14&P and an oil vendor's guide");
    private static readonly Citation VendorGuide = Citation.PracticeDescribedIn("an oil vendor's guide");

    /// <summary>The general chart, which is the cranking test temperature used as an ambient: the most optimistic reading.</summary>
    internal static (double Celsius, Citation Citation) ChartOf(SaeWGrade grade) => grade.Designation switch
    {
        "0W" => (-35, Chart),
        "5W" => (-30, Chart),
        "10W" => (-25, Chart),
        "15W" => (-20, Chart),
        "20W" => (-15, Chart),
        _ => (-10, Chart),
    };

    /// <summary>The warmest figure that was seen published for the winter grade, where it is warmer than the chart's.</summary>
    internal static (double Celsius, Citation Citation)? WarmestOf(SaeWGrade grade) => grade.Designation switch
    {
        "10W" or "15W" => (-10, OperatorManual),
        "20W" => (-7, ArmyManual),
        _ => null,
    };

    /// <summary>
    /// The customary floor of a grade without W. 30 and 40 are published; thinner ones take 30's, which is careful; of 50 and 60 only
    /// this is known, that they need no less than 40.
    /// </summary>
    internal static (double Celsius, bool IsKnown, Citation Citation) WithoutWinter(SaeNonWGrade grade) =>
        grade.Index < SaeNonWGrade.Sae30.Index ? (4, true, Citation.Derived("the customary figure of the next thicker grade with one, SAE 30"))
        : grade.Index == SaeNonWGrade.Sae30.Index ? (4, true, ArmyManual)
        : grade.Index == SaeNonWGrade.Sae40.Index ? (16, true, VendorGuide)
        : (16, false, Citation.Derived("the customary figure of the thinner SAE 40; none was seen for this grade"));
}
