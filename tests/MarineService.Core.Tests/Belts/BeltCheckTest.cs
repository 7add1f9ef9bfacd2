using MarineService.Core.Belts;
using MarineService.Core.Tests.Reference;

namespace MarineService.Core.Tests.Belts;

/// <summary>Verdicts and findings, exact, against the reference layouts and the wrong routings of S07.</summary>
public sealed class BeltCheckTest
{
    public static TheoryData<string> All => Layouts.Names;

    public static TheoryData<string> Wrong => [.. ReferenceTable.Read("belts-wrong-routings-s07.csv").Select(row => row["case"])];

    [Theory]
    [MemberData(nameof(All))]
    public void Check_OfReferenceLayout_GivesVerdictAndFindingsExactly(string layout)
    {
        IReadOnlyDictionary<string, string> totals = Layouts.TotalsOf(layout);
        BeltCheck check = Layouts.Routing(layout).Check();
        Assert.Equal(totals["verdict"], check.Verdict.ToString());
        string expected = string.Join(";", totals["findings"].Split(';').Where(finding => !finding.StartsWith("MissedPulley", StringComparison.Ordinal)));
        Assert.Equal(expected, string.Join(";", Geometric(check)));
        string[] missed = [.. Layouts.AllRows(layout).Where(row => row["routed"] == "0").Select(row => $"pulley '{row["name"]}'")];
        Assert.Equal(missed, check.Findings.Where(finding => finding.Rule == BeltRules.MissedPulley).Select(finding => finding.Subject));
    }

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Check_OfWrongRouting_GivesVerdictLengthAndNoPlaceForTheArm(string name)
    {
        IReadOnlyDictionary<string, string> row = ReferenceTable.Read("belts-wrong-routings-s07.csv").Single(r => r["case"] == name);
        BeltDrive drive = Layouts.S07WithArm();
        BeltRouting routing = Layouts.Starred(drive, row["order_asterisk_means_back"]);
        BeltCheck check = routing.Check();
        string[] findings = [.. Geometric(check)];
        string expected = row["verdict_and_findings_at_design_arm_angle"];
        Assert.Equal(expected, findings.Length == 0 ? check.Verdict.ToString() : string.Join(";", findings));
        double length = check.Geometry.Value.EffectiveLength.Millimeters;
        Assert.Equal(row.Number("effective_length_mm"), length, 1e-6);
        Assert.Equal(row.Number("difference_from_design_mm"), length - 1907.658958675, 1e-6);

        Answer<TensionerCheck> arm = routing.CheckTensioner(UnitsNet.Length.FromMillimeters(1907.658958675));
        Assert.Equal(row["design_belt_1907.659_fits"] == "yes", arm.Value.Arm.IsKnown);
    }

    /// <summary>The geometry's findings written as the tables write them.</summary>
    private static IEnumerable<string> Geometric(BeltCheck check)
    {
        Dictionary<FindingRule, string> words = new()
        {
            [BeltRules.Contained] = "Contained",
            [BeltRules.Overlap] = "Overlap",
            [BeltRules.NoTangent] = "NoTangent",
            [BeltRules.SpanThroughPulley] = "SpanThroughPulley",
            [BeltRules.SpansCross] = "SpansCross",
            [BeltRules.TurningNumber] = "TurningNumber",
            [BeltRules.NoContact] = "NoContact",
            [BeltRules.Touching] = "Touching",
            [BeltRules.AtLimit] = "AtLimit",
        };
        List<string> written = [];
        foreach (Finding finding in check.Findings)
        {
            if (!words.TryGetValue(finding.Rule, out string? word))
            {
                continue;
            }

            string[] names = [.. finding.Subject.Split('\'').Where((_, i) => i % 2 == 1)];
            written.Add(word switch
            {
                "SpanThroughPulley" => $"{word}:{names[0]}-{names[1]}/{finding["pulley"]!.Word}",
                "SpansCross" => $"{word}:{names[0]}-{names[1]} x {finding["from"]!.Word}-{finding["to"]!.Word}",
                "TurningNumber" => FormattableString.Invariant($"{word}:{finding["turns"]!.Number}"),
                "NoTangent" => word,
                _ => $"{word}:{names[0]}/{finding["other"]!.Word}",
            });
        }

        return written.Distinct();
    }
}
