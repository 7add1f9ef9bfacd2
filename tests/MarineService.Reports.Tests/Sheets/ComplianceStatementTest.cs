using AngleSharp.Dom;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Reports.Internal;
using MarineService.Reports.Sheets;
using NodaTime;

namespace MarineService.Reports.Tests.Sheets;

public sealed class ComplianceStatementTest
{
    public static TheoryData<string, ComplianceBasis> Reports => new(
        from boat in Club.Boats from basis in new[] { ComplianceBasis.Warranty, ComplianceBasis.Planning } select (boat, basis));

    [Theory]
    [MemberData(nameof(Reports))]
    public void Statement_HoldsEveryItemWithItsVerdict_AndEveryFindingWithItsAdvice(string boat, ComplianceBasis basis)
    {
        ComplianceReport report = Report(boat, basis);
        IDocument page = SheetReader.Read(ComplianceStatement.Of(Club.Boat(boat), report));

        Assert.Equal(report.Items.Select(item => Words.Of(item.Verdict)), page.Seen("#items .state"));
        Assert.Equal(report.Items.Select(item => item.Occurrence.Task.Title), page.Seen("#items tbody th > bdi"));
        Assert.Equal(
            report.Findings.Select(finding => SheetReader.Seen(Words.InBoth(finding, DisplayUnits.Metric))).Order(StringComparer.Ordinal),
            page.Seen("#mending li").Order(StringComparer.Ordinal));
        string mending = page.QuerySelector("#mending")!.Seen();
        Assert.All(report.Findings.Select(finding => finding.Rule).Distinct(), rule =>
        {
            Assert.Contains($"{rule.Code}, {Words.Of(rule.Severity)}: {rule.Title}", mending, StringComparison.Ordinal);
            Assert.Contains(rule.Remedy ?? "Nothing mends it afterwards", mending, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Reports))]
    public void Summary_CountsEachVerdict(string boat, ComplianceBasis basis)
    {
        ComplianceReport report = Report(boat, basis);
        IElement summary = SheetReader.Read(ComplianceStatement.Of(Club.Boat(boat), report)).QuerySelector("#summary")!;
        Dictionary<string, string> facts = summary.QuerySelectorAll("dl > div").ToDictionary(fact => fact.QuerySelector("dt")!.Seen(), fact => fact.QuerySelector("dd")!.Seen());

        Assert.Equal($"{report.Kept} of {report.Of} that fell due", facts["Kept in all"]);
        Assert.All(report.Items.GroupBy(item => item.Verdict), verdict => Assert.Equal($"{verdict.Count()}", facts[Words.Of(verdict.Key)]));
    }

    /// <summary>The club's logs hold all verdicts but one, so that the tests above cannot pass on nothing.</summary>
    [Fact]
    public void ClubsReports_HoldEveryVerdict() => Assert.Equal(
        [ComplianceVerdict.Kept, ComplianceVerdict.KeptWithinTolerance, ComplianceVerdict.Exceeded, ComplianceVerdict.CannotBeShown, ComplianceVerdict.Missing, ComplianceVerdict.FirstOnRecord],
        Club.Boats.SelectMany(boat => new[] { Report(boat, ComplianceBasis.Warranty), Report(boat, ComplianceBasis.Planning) }).SelectMany(report => report.Items)
            .Select(item => item.Verdict).Distinct().Order());

    /// <summary>Twelve months from 2025-04-01 fall due on 2026-04-01; done on 2026-04-11, ten days late, without any tolerance.</summary>
    [Fact]
    public void Item_SaysWhyTheVerdict()
    {
        EngineSpecification engine = EngineSpecification.Named("Brae 16D").With(ServiceTask.Clean("strainer", ServiceInterval.OfMonths(12)));
        BoatSpecification boat = BoatSpecification.Of(Boat.Of("Tern")).WithEngine("main", engine);
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("strainer", new LocalDate(2025, 4, 1))).With(Completion.Of("strainer", new LocalDate(2026, 4, 11)));
        IDocument page = SheetReader.Read(ComplianceStatement.Of(boat, log.Compliance(engine, new LocalDate(2026, 4, 12))));

        string[] facts = [.. page.QuerySelectorAll("#items tbody tr")[1].QuerySelectorAll("dl > div").Select(fact => $"{fact.QuerySelector("dt")!.Seen()} {fact.QuerySelector("dd")!.Seen()}")];
        Assert.Equal(["due 2026-04-01", "done 2026-04-11, no reading", "by calendar 10 days late", "tolerance 0 %", "shown by the entry alone"], facts);
        Assert.Contains("Exceeded", page.Seen("#items .state"));
    }

    [Fact]
    public void Statement_OfNothing_IsRefused()
    {
        ComplianceReport report = Report("tern", ComplianceBasis.Warranty);
        Assert.Throws<ArgumentNullException>("boat", () => ComplianceStatement.Of(null!, report));
        Assert.Throws<ArgumentNullException>("report", () => ComplianceStatement.Of(Club.Boat("tern"), null!));
        Assert.Throws<ArgumentNullException>("engine", () => ComplianceStatement.Of(Club.Boat("tern"), report, engine: null!));
        Assert.Throws<KeyNotFoundException>(() => ComplianceStatement.Of(Club.Boat("tern"), report, engine: "port"));
        Assert.Throws<ArgumentOutOfRangeException>("lead", () => ComplianceStatement.Of(Club.Boat("tern"), report, (DisplayUnits)9));
        Assert.Throws<ArgumentOutOfRangeException>("paper", () => ComplianceStatement.Of(Club.Boat("tern"), report, paper: (Paper)9));
    }

    private static ComplianceReport Report(string boat, ComplianceBasis basis) =>
        Club.Log(boat).Compliance(Club.Boat(boat).Engines[0].Specification, Club.Today, basis);
}
