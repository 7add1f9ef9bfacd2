using System.Globalization;
using AngleSharp.Dom;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Reports.Internal;
using MarineService.Reports.Sheets;

namespace MarineService.Reports.Tests.Sheets;

public sealed class ServiceSheetTest
{
    public static TheoryData<string> Boats => [.. Club.Boats];

    [Theory]
    [MemberData(nameof(Boats))]
    public void Sheet_HoldsEveryTaskOnce_WithWhatGoverns(string boat)
    {
        JobCard card = Cards.Of(boat);
        string[] heads = SheetReader.Read(ServiceSheet.Of(card)).Seen("#why tbody th");

        Assert.Equal(card.Tasks.Count, heads.Length);
        Assert.All(card.Tasks.Zip(heads), pair => Assert.StartsWith($"{pair.First.Due.Task.Title} {pair.First.TaskId},".Replace(" ", "", StringComparison.Ordinal), pair.Second.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal));
        // "id: Status, due, reason": the urgency has a column of its own.
        string[] whys = [.. SheetReader.Read(ServiceSheet.Of(card)).QuerySelectorAll("#why tbody td:nth-child(3) > p bdi").Select(SheetReader.Seen)];
        Assert.Equal(card.Tasks.Select(task => task.Due.ToString().Split(", ", 2)[1]), whys);
    }

    [Theory]
    [MemberData(nameof(Boats))]
    public void Sheet_HoldsEveryStepInItsOrder_CautionsBeforeTheStep_AndEveryHoldPoint(string boat)
    {
        JobCard card = Cards.Of(boat);
        IElement[] rows = [.. SheetReader.Read(ServiceSheet.Of(card)).QuerySelectorAll("#steps tbody tr")];

        Assert.Equal(card.Steps.Count, rows.Length);
        foreach ((ProcedureStep step, IElement row) in card.Steps.Zip(rows))
        {
            string seen = row.Seen();
            Assert.Contains(step.Why ?? "", seen, StringComparison.Ordinal);
            Assert.All(step.Tools, tool => Assert.Contains(tool.ToString(), seen, StringComparison.Ordinal));
            Assert.All(step.Consumables, item => Assert.Contains(item, seen, StringComparison.Ordinal));
            int at = seen.IndexOf(step.Text + ".", StringComparison.Ordinal);
            Assert.True(at >= 0, step.Text);
            string[] cautions = row.Seen(".caution");
            Assert.Equal(step.Cautions.Count, cautions.Length);
            Assert.All(step.Cautions, caution => Assert.Contains(cautions, text =>
                text.StartsWith(caution.Word.ToString().ToUpperInvariant() + caution.Text, StringComparison.Ordinal)));
            Assert.All(step.Cautions, caution => Assert.InRange(seen.IndexOf(caution.Text, StringComparison.Ordinal), 0, at));
            string[] points = row.Seen(".hold p");
            Assert.Equal(step.HoldPoints.Select(point => $"HOLD {point}."), points);
            Assert.Equal(1 + step.HoldPoints.Count, row.QuerySelectorAll("input[type=checkbox]").Length);
        }
    }

    [Theory]
    [MemberData(nameof(Boats))]
    public void Sheet_HoldsEveryFindingWithItsRemedy(string boat)
    {
        JobCard card = Cards.Of(boat);
        Finding[] findings =
        [
            .. card.Procedure.Findings,
            .. card.Oil is { Choice.IsKnown: true } ? card.Oil.Choice.Value.Findings : [],
            .. card.Oil is { LastChange.IsKnown: true } ? card.Oil.LastChange.Value.Findings : [],
            .. card.Kit.Findings,
            .. card.MovesBelt && card.Belt.IsKnown ? card.Belt.Value.Check().Findings : [],
        ];
        string[] rows = SheetReader.Read(ServiceSheet.Of(card)).Seen("#findings tbody tr");

        Assert.Equal(findings.Length, rows.Length);
        Assert.All(findings, finding => Assert.Contains(rows, row =>
            row.StartsWith(finding.Code, StringComparison.Ordinal) && row.Contains(SheetReader.Seen(Words.InBoth(finding, DisplayUnits.Metric)), StringComparison.Ordinal)
            && row.Contains(SheetReader.Seen(Words.Remedy(finding, DisplayUnits.Metric) ?? ""), StringComparison.Ordinal)));
    }

    /// <summary>Curlew's card has something to find, so that the test above cannot pass on nothing.</summary>
    [Fact]
    public void Sheet_OfCurlew_WarnsOfTheOilThatIsInHer() =>
        Assert.Contains(SheetReader.Read(ServiceSheet.Of(Cards.Of("curlew"))).Seen("#findings tbody th"), code => code == "OIL-003");

    [Theory]
    [MemberData(nameof(Boats))]
    public void Sheet_AsksForEverythingThatTheCardDoesNotKnow(string boat)
    {
        JobCard card = Cards.Of(boat, JobConditions.NotStated);

        Assert.NotEmpty(card.Missing);
        Assert.Equal(card.Missing, SheetReader.Read(ServiceSheet.Of(card)).Seen("#open li bdi"));
    }

    [Theory]
    [MemberData(nameof(Boats))]
    public void Sheet_HasABoxForEveryToolAndEverythingUsedUp(string boat)
    {
        JobCard card = Cards.Of(boat);

        Assert.Equal(
            [.. card.Consumables, .. card.Tools.Select(tool => tool.ToString())],
            SheetReader.Read(ServiceSheet.Of(card)).QuerySelectorAll("#kit .columns label").Where(label => label.QuerySelector("input[type=checkbox]") is not null).Select(SheetReader.Seen));
    }

    [Theory]
    [MemberData(nameof(Boats))]
    public void Kit_HasABoxForEveryPart_WithItsAmountAndWhoWantsIt(string boat)
    {
        JobCard card = Cards.Of(boat);
        string[] rows = SheetReader.Read(ServiceSheet.Of(card)).Seen(".parts tbody tr");

        Assert.NotEmpty(card.Kit.List.Value.Lines);
        Assert.Equal(card.Kit.List.Value.Lines.Count, rows.Length);
        Assert.All(rows.Zip(card.Kit.List.Value.Lines), pair => Assert.StartsWith(
            string.Create(CultureInfo.InvariantCulture, $"{pair.Second.Part.Title} {pair.Second.Part.Number}{pair.Second.Total:0.###}{(pair.Second.Part.Unit is null ? "" : " " + pair.Second.Part.Unit)}"), pair.First, StringComparison.Ordinal));
        Assert.All(rows.Zip(card.Kit.List.Value.Lines), pair => Assert.EndsWith(string.Join(", ", pair.Second.WantedBy), pair.First, StringComparison.Ordinal));
        Assert.All(card.Kit.Purchases, purchase => Assert.Contains(rows, row => row.Contains($" to buy: {purchase.Packs.Value}", StringComparison.Ordinal)));
    }

    /// <summary>Six screws with a captive washer each are six screws to count and not twelve parts; what one counts is what the proof asks for.</summary>
    [Fact]
    public void Loose_HasALineForEverythingThatTheProofCountsBack()
    {
        JobCard card = Cards.Of("curlew");
        string[] rows = SheetReader.Read(ServiceSheet.Of(card)).Seen("#loose tbody tr");

        Assert.NotEmpty(rows);
        Assert.Equal(card.Kit.Tally.Open.Select(count => $"{count.Part.Name} {count.Part.Place}{count.Off} all back"), rows);
    }

    [Fact]
    public void Loose_WithoutAPartsSheet_SaysThatItIsNotKnown()
    {
        JobCard card = JobCard.PrepareFor(
            BoatSpecification.Of(Boat.Of("Wren")).WithEngine(
                "main",
                EngineSpecification.Of(Engine.Of("Brae 16D", Fuel.Diesel, CoolingKind.FreshWater, pumpDrive: RawWaterPumpDrive.Gear)).With(ServiceTask.Clean("strainer", ServiceInterval.OfMonths(1)))),
            ServiceLog.Empty,
            Cards.Spring,
            ["strainer"]).Value;
        IDocument page = SheetReader.Read(ServiceSheet.Of(card));

        Assert.StartsWith("Not known: The parts sheet of", page.QuerySelector("#kit .unknown")!.Seen(), StringComparison.Ordinal);
        Assert.StartsWith("Not known: The parts sheet of", page.QuerySelector("#loose .unknown")!.Seen(), StringComparison.Ordinal);
    }

    /// <summary>The US quart is a quarter of 231 cubic inches, 0.946352946 L: 6.00 L are 6.34, and a tenth more 6.97 (NIST Handbook 44, appendix C).</summary>
    [Fact]
    public void Amounts_StandInBothUnits_TheLeadingOnesFirst()
    {
        JobCard card = Cards.Of("curlew");
        string metric = SheetReader.Read(ServiceSheet.Of(card)).QuerySelector("#amounts")!.Seen();
        string us = SheetReader.Read(ServiceSheet.Of(card, lead: DisplayUnits.UsCustomary)).QuerySelector("#amounts")!.Seen();

        Assert.Contains("6.00 L (6.34 US qt)", metric, StringComparison.Ordinal);
        Assert.Contains("6.60 L (6.97 US qt)", metric, StringComparison.Ordinal);
        Assert.Contains("6.34 US qt (6.00 L)", us, StringComparison.Ordinal);
        Assert.Contains("-4 °C, 14 K (24.8 °F, 25.2 °F) to spare.", metric, StringComparison.Ordinal);
    }

    [Fact]
    public void Amounts_ThatAreNotKnown_SaySo_AndWhatIsMissing()
    {
        string seen = SheetReader.Read(ServiceSheet.Of(Cards.Of("curlew", JobConditions.NotStated))).QuerySelector("#amounts")!.Seen();

        Assert.Contains("Not known: The lowest and the highest air temperature until the next oil change.", seen, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Boats))]
    public void Proof_NamesTheStepsThatProveEachTask_ByTheirNumbersOnTheSheet(string boat)
    {
        JobCard card = Cards.Of(boat);
        IDocument page = SheetReader.Read(ServiceSheet.Of(card));

        foreach (JobTask task in card.Tasks.Where(task => task.How is not null))
        {
            IElement row = Assert.Single(page.QuerySelectorAll("#proof tbody tr"), row => row.QuerySelector("th")!.Seen() == $"Task {task.TaskId}");
            string[] numbers = row.QuerySelectorAll("td")[0].Seen().Split(' ', 2)[1].Split(", ");
            Assert.Equal(
                task.How!.ProvedBy.Select(card.Procedure.Find).OfType<ProcedureStep>().Select(step => step.Text).ToHashSet(),
                numbers.Select(number => page.QuerySelector($"#step-{number} .do")!.Seen().TrimEnd('.')).ToHashSet());
            Assert.Equal(task.NeedsVerdict ? 2 : 1, row.QuerySelectorAll("input").Length);
        }
    }

    [Fact]
    public void Proof_OfTheBelt_HasALineForEachPulley()
    {
        JobCard card = Cards.Of("curlew");

        IElement row = Assert.Single(SheetReader.Read(ServiceSheet.Of(card)).QuerySelectorAll("#proof tbody tr"), row => row.Seen().StartsWith("Belt", StringComparison.Ordinal));
        Assert.Equal(card.Belt.Value.Stops.Count, row.QuerySelectorAll(".write").Length);
    }

    [Fact]
    public void Waste_OfAnOilChange_SaysWhereOilAndFilterGo()
    {
        string[] heads = SheetReader.Read(ServiceSheet.Of(Cards.Of("curlew"))).Seen("#waste tbody th");

        Assert.Contains("Old oilup to 6.00 L (6.34 US qt)", heads);
        Assert.Contains("Old oil filter", heads);
        Assert.Contains(heads, head => head.StartsWith("Coolant", StringComparison.Ordinal));
    }

    [Fact]
    public void Drawings_OfOneKind_KeepTheirIdsApart()
    {
        Drawing[] drawings = [.. new[] { "as it lies", "as it should" }.Select(title => new Drawing(
            "belt", title, $"The belt {title}.", Svg.Picture(10, 10, Svg.Group("run", new System.Xml.Linq.XAttribute("id", "run"), new System.Xml.Linq.XAttribute("clip-path", "url(#run)")))))];
        IDocument page = SheetReader.Read(ServiceSheet.Of(Cards.Of("tern"), drawings));

        Assert.Equal(["as it lies. The belt as it lies.", "as it should. The belt as it should."], page.Seen("#drawings figcaption"));
        Assert.Equal(["belt-title belt-description", "belt-title-2 belt-description-2"], page.QuerySelectorAll("svg").Select(svg => svg.GetAttribute("aria-labelledby")));
        Assert.Equal(["url(#run)", "url(#run-2)"], page.QuerySelectorAll("svg g").Select(group => group.GetAttribute("clip-path")));
        string[] ids = [.. page.QuerySelectorAll("[id]").Select(element => element.Id!)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Fact]
    public void Sheet_OfNothing_IsRefused()
    {
        Assert.Throws<ArgumentNullException>("card", () => ServiceSheet.Of(null!));
        Assert.Throws<ArgumentException>("drawings", () => ServiceSheet.Of(Cards.Of("tern"), [null!]));
        Assert.Throws<ArgumentOutOfRangeException>("lead", () => ServiceSheet.Of(Cards.Of("tern"), lead: (DisplayUnits)9));
        Assert.Throws<ArgumentOutOfRangeException>("paper", () => ServiceSheet.Of(Cards.Of("tern"), paper: (Paper)9));
        Assert.Throws<ArgumentNullException>("stream", () => ServiceSheet.Of(Cards.Of("tern")).WriteTo(null!));
    }
}
