using AngleSharp.Dom;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Reports.Sheets;
using NodaTime;

namespace MarineService.Reports.Tests.Sheets;

public sealed class LogbookTest
{
    private static readonly LocalDate Day = new(2026, 10, 12);

    private static readonly BoatSpecification Tern = BoatSpecification.Of(Boat.Of("Tern")).WithEngine(
        "main", EngineSpecification.Of(Engine.Of("Brae 16D", serialNumber: "B-1606")).With(ServiceTask.Replace("engine-oil", ServiceInterval.OfMonths(12)).WithTitle("Engine oil and filter")));

    public static TheoryData<string> Boats => [.. Club.Boats];

    [Theory]
    [MemberData(nameof(Boats))]
    public void Logbook_HoldsEveryEntryOnce_ByDate(string boat)
    {
        ServiceLog log = Club.Log(boat);
        IDocument page = SheetReader.Read(Logbook.Of(Club.Boat(boat), log, Day));

        Assert.Equal(log.Entries.Select(entry => entry.Id).Order(StringComparer.Ordinal), page.Seen("section[id^=entries] tbody th").Order(StringComparer.Ordinal));
        Assert.All(page.QuerySelectorAll("section[id^=entries]"), section =>
        {
            string[] dates = section.Seen(".date");
            Assert.Equal(dates.Order(StringComparer.Ordinal), dates);
        });
    }

    [Fact]
    public void Entry_SaysWhatWhenWhoAndWhatShowsIt()
    {
        string row = Assert.Single(Rows(ServiceLog.Of(
        [
            LogEntry.Of(Completion.Of("engine-oil", new LocalDate(2026, 4, 1), EngineHours.FromHours(310.5m))).DoneBy("M. Kerr").WithChecker("J. Tait").WithNote("Drained hot.")
                .WithEvidence(Evidence.Of(EvidenceKind.DialPhoto, "dial.jpg", new string('a', 64)), Evidence.Of(EvidenceKind.Receipt, "R 12")),
        ])));

        Assert.Equal(
            "1 | 2026-04-01 | 310.5 h | Engine oil and filter \u2013 doneDrained hot. | M. Kerrchecked by J. Tait"
            + " | photograph of the dial, receipt and second signaturephotograph of the dial: dial.jpg, SHA-256 " + new string('a', 64) + " receipt: R 12",
            row);
    }

    [Fact]
    public void CorrectedEntry_StaysLegible_AndBothNameEachOther()
    {
        ServiceLog log = ServiceLog.Of(
        [
            LogEntry.Of(Completion.Of("engine-oil", new LocalDate(2026, 4, 1), EngineHours.FromHours(3105m))),
            LogEntry.Of(Completion.Of("engine-oil", new LocalDate(2026, 4, 1), EngineHours.FromHours(310.5m))).Correcting("1").AsReconstructed(),
        ]);
        string[] rows = Rows(log);

        Assert.Equal("1 | 2026-04-01 | 3105.0 h on the dial | Engine oil and filter \u2013 doneCorrected by entry 2. | not stated | the entry alone", rows[0]);
        Assert.Equal("2 | 2026-04-01 | 310.5 h | Engine oil and filter \u2013 doneCorrects entry 1. | not stated | written later", rows[1]);
        Assert.Equal("Engine oil and filter \u2013 done", Assert.Single(Page(log).Seen("s")));
        Assert.Contains("2, of which 1 stand and 1 were corrected, withdrawn or withdraw another", Page(log).Seen("#subject dd"));
    }

    [Fact]
    public void WithdrawnEntry_StaysLegible_AndTheWithdrawalIsAnEntry()
    {
        string[] rows = Rows(ServiceLog.Of(
        [
            LogEntry.Of(MeterReading.Of(new LocalDate(2026, 4, 1), EngineHours.FromHours(999m))),
            LogEntry.Withdrawing("1", new LocalDate(2026, 4, 9)),
        ]));

        Assert.Equal("1 | 2026-04-01 | 999.0 h on the dial | Hour meter readWithdrawn by entry 2. | not stated | the entry alone", rows[0]);
        Assert.Equal("2 | 2026-04-09 | no reading | Withdrawn: entry 1 does not stand | not stated | the entry alone", rows[1]);
    }

    /// <summary>An old meter taken off at 500 h; the new one shows 40 h: 540 h in all.</summary>
    [Fact]
    public void Hours_AfterANewMeter_StandInAll()
    {
        string[] rows = Rows(ServiceLog.Empty
            .With(MeterChange.Of(new LocalDate(2025, 8, 1), EngineHours.FromHours(500m)))
            .With(MeterReading.Of(new LocalDate(2026, 5, 1), EngineHours.FromHours(40m))));

        Assert.Contains(" | 40.0 h on the dial540.0 h in all | ", rows[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Entries_OfAnEngineThatTheBoatHasNot_AreNotLost() =>
        Assert.Contains("Engine port, not in the data sheet", Page(ServiceLog.Of([LogEntry.Of(LaidUp.On(Day)).For("port")])).Seen("h2"));

    [Fact]
    public void Logbook_OfNothing_IsRefused()
    {
        Assert.Throws<ArgumentNullException>("boat", () => Logbook.Of(null!, ServiceLog.Empty, Day));
        Assert.Throws<ArgumentNullException>("log", () => Logbook.Of(Tern, null!, Day));
        Assert.Throws<ArgumentOutOfRangeException>("asOf", () => Logbook.Of(Tern, ServiceLog.Empty, default));
        Assert.Throws<ArgumentOutOfRangeException>("lead", () => Logbook.Of(Tern, ServiceLog.Empty, Day, (DisplayUnits)9));
        Assert.Throws<ArgumentOutOfRangeException>("paper", () => Logbook.Of(Tern, ServiceLog.Empty, Day, paper: (Paper)9));
    }

    private static IDocument Page(ServiceLog log) => SheetReader.Read(Logbook.Of(Tern, log, Day));

    private static string[] Rows(ServiceLog log) =>
        [.. Page(log).QuerySelectorAll("#entries-1 tbody tr").Select(row => string.Join(" | ", row.Children.Select(SheetReader.Seen)))];
}
