using System.Text;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;

namespace MarineService.Core.Tests.Jobs;

/// <summary>What a card takes along, what to buy of it, and the tally that must return to zero.</summary>
public sealed class JobKitTest
{
    private static readonly JobCard Card = Curlew.Card;

    /// <summary>The tally is at zero exactly when as many of each went back as came off, and their washers.</summary>
    [Law(MaxTest = 100)]
    public Property Proof_StandsByItsTally_ExactlyWhenEverythingIsBack() => Prop.ForAll(Gen.Choose(0, int.MaxValue - 1).ToArbitrary(), seed =>
    {
        Random random = new(seed);
        LooseParts given = LooseParts.Empty;
        bool isAllBack = true;
        foreach (LooseItem item in Card.Kit.ComesOff.Value)
        {
            int count = random.Next(4) > 0 ? item.Count : random.Next(1, item.Count + 2);
            int washers = random.Next(6) > 0 ? count * item.Part.CaptiveWashers : 0;
            isAllBack &= count == item.Count && washers == item.Count * item.Part.CaptiveWashers;
            given = given.PutBack(item.Part, count, washers);
        }

        JobProof proof = Card.Prove(Curlew.AllOf(Card).With(given));
        return proof.IsProved == isAllBack && proof.Findings.Any(finding => finding.Code.StartsWith("TALLY", StringComparison.Ordinal)) != isAllBack;
    });

    /// <summary>What the library adds up for several tasks is what the tasks take one by one, less what they share.</summary>
    [Fact]
    public void Kit_IsTheUnionOverTheTasks_AndSkipsWhatAnotherTaskIncludes()
    {
        KitList list = Card.Kit.List.Value;
        Assert.Equal(6.6m, list["LV-OIL-40"]!.Total);
        Assert.Equal(6m, list["LV-PAD-1"]!.Wanted);
        Assert.Equal(1m, list["LV-GSK-60"]!.Wanted);
        Assert.Equal(["impeller-replace"], list["LV-GLY-1"]!.WantedBy);
        Assert.Equal((1m, 1m), (list["LV-IMP-60"]!.Wanted, list["LV-IMP-60"]!.Aboard));
        Assert.Equal(["LV-FIL-60"], Card.Kit.Filters.Select(one => one.Part));
    }

    [Fact]
    public void Shelf_IsTakenOff_AndWhoSaysNothingOfItIsTold()
    {
        Assert.Contains(Card.Missing, line => line.Contains("shelf", StringComparison.Ordinal));
        JobCard stocked = JobCard.PrepareFor(Curlew.Boat, Curlew.Log, Curlew.Day, ["engine-oil"], Curlew.Spring.WithShelf(KitItem.Of("LV-OIL-40", 2.5m), KitItem.Of("of another boat"))).Value;
        Assert.DoesNotContain(stocked.Missing, line => line.Contains("shelf", StringComparison.Ordinal));
        Assert.Equal(4.1m, stocked.Kit.List.Value["LV-OIL-40"]!.ToBuy);
        Assert.Equal("4.1 L of LV-OIL-40 engine oil 15W-40: 1 x can of 5 L: 41.50", stocked.Kit.Purchases.Single(one => one.Line.Part.Number == "LV-OIL-40").ToString());
        Assert.True(JobCard.PrepareFor(Curlew.Boat, Curlew.Log, Curlew.Day, ["engine-oil"], Curlew.Spring.WithShelf()).Value.Missing.Count < Card.Missing.Count + 1);
    }

    /// <summary>Filter 12.80, oil 6.6 L as a can and two bottles 41.50 + 20.40, a bag of washers 4.00, pads 8.40, spare belt 58.00, spare impeller and gasket 46.00 + 3.60.</summary>
    [Fact]
    public void Price_IsTheSumOfThePurchases()
    {
        JobCard oil = JobCard.PrepareFor(Curlew.Boat, Curlew.Log, Curlew.Day, ["engine-oil"], Curlew.Spring).Value;
        Assert.Equal(194.70m, oil.Kit.Price.Value);
    }

    [Fact]
    public void Price_OfAPartThatNobodyOffers_IsNotKnown()
    {
        PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of(ServicePart.Of("LV-1", "strainer seal"))).With(TaskKit.Of("strainer", KitItem.Of("LV-1")));
        JobKit kit = CardOf(sheet).Kit;
        Assert.False(kit.Price.IsKnown);
        Assert.Contains("LV-1", Assert.Single(kit.Price.Missing), StringComparison.Ordinal);
        Assert.Equal("1 of LV-1 strainer seal: price not known", kit.Purchases[0].ToString());
        Assert.Equal(4m, CardOf(sheet.With(PartOffers.Of("LV-1", PackOffer.Of("one", 1m, 4m)))).Kit.Price.Value);
    }

    /// <summary>An amount that no whole number of grains covers is not known, and nothing throws.</summary>
    [Fact]
    public void Purchase_OfMoreThanCanBeReckoned_IsNotKnown()
    {
        PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of(ServicePart.Measured("LV-1", "grease", "g")))
            .With(TaskKit.Of("strainer", KitItem.Of("LV-1", 100_000m))).WithSparesAboard(KitItem.Of("LV-1", 1m)).With(PartOffers.Of("LV-1", PackOffer.Of("tube", 1.001m, 1m)));
        Assert.False(CardOf(sheet).Kit.Purchases[0].Packs.IsKnown);
        Assert.Contains("LV-1", CardOf(sheet).Kit.Price.Missing[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Kit_OfAnEngineWithoutAPartsSheet_IsNotKnown_AndTheCardCanBeProvedWithoutIt()
    {
        JobCard card = CardOf(null);
        Assert.False(card.Kit.List.IsKnown);
        Assert.False(card.Kit.ComesOff.IsKnown);
        Assert.False(card.Kit.Price.IsKnown);
        Assert.Contains("The parts sheet of 'Brae 16D': kit, purchases and loose parts.", card.Missing);
        Assert.True(card.Prove(Curlew.AllOf(card)).IsProved);
        Assert.Empty(card.BlankReport().Tally);
    }

    [Fact]
    public void Kit_OfATaskThatTheSheetDoesNotKnow_IsSaid()
    {
        PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of(ServicePart.Of("LV-1", "seal"))).With(TaskKit.Of("engine-oil", KitItem.Of("LV-1")));
        JobCard card = CardOf(sheet);
        Assert.False(card.Kit.List.IsKnown);
        Assert.Contains("What 'strainer' takes: the parts sheet has no kit for it.", card.Missing);
        Assert.Contains("What 'strainer' takes off: the parts sheet does not count it.", card.Missing);
        JobCard empty = CardOf(sheet.With(TaskKit.Of("strainer")).With(TaskLooseParts.Of("strainer")));
        Assert.Empty(empty.Kit.List.Value.Lines);
        Assert.True(empty.Kit.Tally.IsZero);
        Assert.DoesNotContain(empty.Missing, line => line.Contains("sheet", StringComparison.Ordinal) || line.Contains("shelf", StringComparison.Ordinal));
    }

    /// <summary>That a filter does not fit is told before the old one is off.</summary>
    [Fact]
    public void Filter_ThatDoesNotFitItsBase_IsFoundOnTheCard()
    {
        FilterBase spin = FilterBase.Of("LV-1", FilterNeed.Of(FilterKind.EngineOil).WithThread(FilterThread.Inch(3, 4, 16)));
        PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of(ServicePart.Of("LV-1", "filter"))).With(TaskKit.Of("strainer", KitItem.Of("LV-1"))).With(TaskLooseParts.Of("strainer"));
        JobKit near = CardOf(sheet.With(spin.With(FilterSpecification.Named("LV-1").WithThread(FilterThread.Metric(20, 1.5))))).Kit;
        Assert.Equal(("FILTER-002", Severity.Stop), (near.Findings[0].Code, near.Findings[0].Severity));
        JobKit silent = CardOf(sheet.With(spin)).Kit;
        Assert.Empty(silent.Findings);
        Assert.Contains(silent.Missing, line => line.Contains("'LV-1'", StringComparison.Ordinal));
        Assert.Empty(CardOf(sheet.With(TaskKit.Of("hoses")).With(spin), "hoses").Kit.Filters);
    }

    /// <summary>The pump's cover is opened once, whichever of two tasks wants it open.</summary>
    [Fact]
    public void ComesOff_OfTwoTasksAtOnePlace_IsCountedOnce()
    {
        LoosePart screw = LoosePart.Of("M5 screw", LoosePartKind.Screw, "lid");
        PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of()).With(
            TaskLooseParts.Of("strainer", LooseItem.Of(screw, 4)), TaskLooseParts.Of("hoses", LooseItem.Of(screw, 2), LooseItem.Of(LoosePart.Of("clip", LoosePartKind.Clip, "hose"), 3)));
        Assert.Equal(["3 x clip of hose", "4 x M5 screw of lid"], CardOf(sheet, "strainer", "hoses").Kit.ComesOff.Value.Select(item => item.ToString()));
    }

    [Fact]
    public void Report_OfTheWholeTally_IsProved_AndSurvivesTheDocument()
    {
        VisitReport report = ReportOf(Card, [.. Card.Kit.ComesOff.Value.Select(item => TallyLine.Of(item.Part.Name, item.Part.Place, item.Count, item.Count * item.Part.CaptiveWashers))]);
        VisitReport read = VisitReportJson.Read(Encoding.UTF8.GetBytes(VisitReportJson.ToText(report))).Value;
        Assert.Equal(report.Tally.Select(line => line.ToString()), read.Tally.Select(line => line.ToString()));
        Assert.DoesNotContain(Card.Prove(read).Findings, finding => finding.Code.StartsWith("TALLY", StringComparison.Ordinal) || finding.Code == "JOB-008");
    }

    [Fact]
    public void Report_OfNewScrewsWithTheOldInTheHand_IsBack_AndWithoutThemIsAstray()
    {
        LooseItem screw = Card.Kit.ComesOff.Value.First(item => item.Part.Place == "raw-water pump cover");
        string[] Codes(TallyLine line) => [.. Card.Prove(ReportOf(Card, Back(line))).Findings.Select(finding => finding.Code).Where(code => code.StartsWith("TALLY", StringComparison.Ordinal))];
        TallyLine Mixed(int inHand) => TallyLine.Of(screw.Part.Name, screw.Part.Place, 4, 4).WithRenewed(2, inHand);
        Assert.Empty(Codes(Mixed(2)));
        Assert.Equal(["TALLY-003"], Codes(Mixed(1)));
    }

    [Fact]
    public void Report_OfWhatIsNotOnTheCard_IsStrange_UnlessItSaysThatItCameOff()
    {
        JobProof proof = Card.Prove(ReportOf(Card, [TallyLine.Of("M99 screw", "moon", 1)]));
        Assert.Contains(proof.Findings, finding => finding.Code == "JOB-008" && finding.Message(DisplayUnits.Metric).Contains("M99 screw", StringComparison.Ordinal));
        JobProof counted = Card.Prove(ReportOf(Card, [.. Back(null), TallyLine.Of("M8 nut", "alternator bracket", 1).WithTakenOff(2)]));
        Assert.Equal("TALLY-001", Assert.Single(counted.Findings, finding => finding.Code.StartsWith("TALLY", StringComparison.Ordinal)).Code);
    }

    [Fact]
    public void BlankReport_HoldsEveryCountAndProvesNothing()
    {
        VisitReport blank = Card.BlankReport();
        Assert.Equal(Card.Kit.ComesOff.Value.Count, blank.Tally.Count);
        Assert.Contains(Card.Prove(blank).Findings, finding => finding.Code == "TALLY-001");
    }

    [Fact]
    public void Card_AsADocument_HoldsKitPurchasesAndLooseParts()
    {
        System.Text.Json.JsonElement card = System.Text.Json.JsonDocument.Parse(JobCardJson.ToText(Card)).RootElement;
        Assert.True(Json.Schema.JsonSchema.FromText(DocumentSchemas.JobCard).Evaluate(card).IsValid);
        Assert.Equal(Card.Kit.List.Value.Lines.Count, card.GetProperty("kit").GetArrayLength());
        Assert.Equal(Card.Kit.Price.Value, card.GetProperty("price").GetDecimal());
        Assert.Equal(Card.Kit.ComesOff.Value.Count, card.GetProperty("comesOff").GetArrayLength());
        Assert.Equal("equivalent", card.GetProperty("filters")[0].GetProperty("verdict").GetString());
        System.Text.Json.JsonElement bare = System.Text.Json.JsonDocument.Parse(JobCardJson.ToText(CardOf(null))).RootElement;
        Assert.False(bare.TryGetProperty("kit", out _) || bare.TryGetProperty("comesOff", out _) || bare.TryGetProperty("price", out _));
    }

    private static TallyLine[] Back(TallyLine? instead) =>
    [
        .. Card.Kit.ComesOff.Value.Select(item => instead?.Place == item.Part.Place && instead.Name == item.Part.Name
            ? instead
            : TallyLine.Of(item.Part.Name, item.Part.Place, item.Count, item.Count * item.Part.CaptiveWashers)),
    ];

    private static VisitReport ReportOf(JobCard card, TallyLine[] tally) => VisitReport.Of(card.Id, Curlew.Day, [VisitEvent.Step("read-dial", StepProof.Passed("dial").WithNote("104.2 h"))]).WithTally(tally);

    private static JobCard CardOf(PartsSheet? sheet, params string[] tasks)
    {
        EngineSpecification engine = EngineSpecification.Of(Engine.Of("Brae 16D", Fuel.Diesel, CoolingKind.FreshWater, pumpDrive: RawWaterPumpDrive.Gear))
            .With(ServiceTask.Clean("strainer", ServiceInterval.OfMonths(1)), ServiceTask.Clean("hoses", ServiceInterval.OfMonths(1)));
        BoatSpecification boat = BoatSpecification.Of(Boat.Of("Tern", hasSeacock: true)).WithEngine("main", sheet is null ? engine : engine.WithPartsSheet(sheet));
        return JobCard.PrepareFor(boat, ServiceLog.Empty, Curlew.Day, tasks.Length == 0 ? ["strainer"] : tasks).Value;
    }
}
