using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Records;

/// <summary>Entries are added, never changed; corrections refer back; what was entered late counts from its own date.</summary>
public sealed class ServiceLogTest
{
    private static readonly LocalDate Day = new(2024, 5, 1);

    private static readonly EngineSpecification Specification = EngineSpecification.Named("Corrie 60P").With(
        ServiceTask.Replace("oil", ServiceInterval.FirstOf(Hours(100), 12)).WithSevereDuty("towing", 0.5m).WithAnchorPolicy(AnchorPolicy.ChargeLateExcess),
        ServiceTask.Inspect("impeller", ServiceInterval.FirstOf(Hours(100), 12)).DueAfterEvents("overheat").IfFailedDo("impeller-new"),
        ServiceTask.Replace("impeller-new", ServiceInterval.FirstOf(Hours(300), 36)).Including("impeller"));

    [Law]
    public Property Of_AnyIds_IsRefusedWhereOneIsUsedTwice() => Prop.ForAll(
        Gen.OneOf(Gen.Choose(1, 30).Select(number => $"{number}"), Gen.Elements("a", "b", "aa", "B", "ä")).ArrayOf().ToArbitrary(),
        ids =>
        {
            Exception? refused = Record.Exception(() => ServiceLog.Of(ids.Select(id => LogEntry.Of(MeterReading.Of(Day, Hours(1))).WithId(id))));
            Assert.Equal(ids.Distinct().Count() < ids.Length, refused is ArgumentException);
        });

    [Law]
    public void Of_IdsThatRise_IsTakenAndTheLastOneAgainIsRefused(PositiveInt first, PositiveInt count)
    {
        string[] ids = [.. Enumerable.Range(first.Get, Math.Min(count.Get, 200)).Select(number => $"{number}")];
        Assert.Equal(ids, ServiceLog.Of(Entries(ids)).Entries.Select(entry => entry.Id));
        ArgumentException refused = Assert.Throws<ArgumentException>(() => ServiceLog.Of(Entries([.. ids, ids[^1]])));
        Assert.Contains("an id that no other entry has", refused.Message, StringComparison.Ordinal);

        static IEnumerable<LogEntry> Entries(IEnumerable<string> ids) => ids.Select(id => LogEntry.Of(MeterReading.Of(Day, Hours(1))).WithId(id));
    }

    [Fact]
    public void Correction_TakesThePlaceOfTheEntry_AndBothStayVisible()
    {
        ServiceLog log = ServiceLog.Empty
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(520))).WithId("typo"))
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(250))).Correcting("typo"));
        Assert.Equal(Hours(350), log.DueList(Specification, Day)["oil"].Due.Hours);
        Assert.Equal(2, log.Entries.Count);
        Assert.Equal("typo", Assert.Single(log.Standing()).Corrects);
        Assert.Equal(Hours(520), log.Find("typo")!.Fact!.Dial);
    }

    [Fact]
    public void Correction_OfACorrection_IsTheOneThatCounts()
    {
        ServiceLog log = ServiceLog.Empty
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(520))).WithId("a"))
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(200))).WithId("b").Correcting("a"))
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(250))).WithId("c").Correcting("b"));
        Assert.Equal(Hours(350), log.DueList(Specification, Day)["oil"].Due.Hours);
    }

    [Fact]
    public void Withdrawal_OfACorrection_BringsNothingBack()
    {
        ServiceLog log = ServiceLog.Empty
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(520))).WithId("a"))
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(200))).WithId("b").Correcting("a"))
            .With(LogEntry.Withdrawing("b", Day));
        Assert.Empty(log.Standing());
        Assert.Equal(DueBasis.NoRecord, log.DueList(Specification, Day)["oil"].Basis);
    }

    [Theory]
    [InlineData("nobody", "the id of an entry in this log")]
    [InlineData("own", "an entry that does not correct this one in turn")]
    [InlineData("taken", "correct the correction instead")]
    public void Correction_OfNothingItselfOrSomethingCorrected_IsRefused(string target, string expected)
    {
        LogEntry[] entries =
        [
            LogEntry.Of(MeterReading.Of(Day, Hours(1))).WithId("taken"),
            LogEntry.Of(MeterReading.Of(Day, Hours(2))).WithId("first").Correcting("taken"),
            LogEntry.Of(MeterReading.Of(Day, Hours(3))).WithId("own").Correcting(target),
        ];
        ArgumentException refused = Assert.Throws<ArgumentException>("entries", () => ServiceLog.Of(entries));
        Assert.Contains(expected, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Entries_WithoutAnId_GetTheNextFreeNumber()
    {
        ServiceLog log = ServiceLog.Of([LogEntry.Of(MeterReading.Of(Day, Hours(1))).WithId("2"), LogEntry.Of(MeterReading.Of(Day, Hours(2))), LogEntry.Of(MeterReading.Of(Day, Hours(3)))]);
        Assert.Equal(["2", "3", "4"], log.Entries.Select(entry => entry.Id));
    }

    [Fact]
    public void Id_UsedTwice_IsRefused() => Assert.Throws<ArgumentException>(
        "entries", () => ServiceLog.Of([LogEntry.Of(MeterReading.Of(Day, Hours(1))).WithId("a"), LogEntry.Of(MeterReading.Of(Day, Hours(2))).WithId("a")]));

    // Due 350 h, done 358 h: charged, next 450 h. The change at 300 h that turns up afterwards makes 400 h the due point, so 358 h was early.
    [Fact]
    public void BackDatedEntry_RecomputesAllThatFollows()
    {
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("oil", Day, Hours(250))).With(Completion.Of("oil", Day.PlusDays(90), Hours(358)));
        Assert.Equal(Hours(450), log.DueList(Specification, Day.PlusDays(90))["oil"].Due.Hours);
        ServiceLog found = log.With(Completion.Of("oil", Day.PlusDays(40), Hours(300)));
        Assert.Equal(Hours(458), found.DueList(Specification, Day.PlusDays(90))["oil"].Due.Hours);
    }

    [Fact]
    public void TopUp_ResetsNothing_ButItsDialCounts()
    {
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("oil", Day, Hours(250)))
            .With(TopUp.Of("engine-oil", Day.PlusDays(30), MeasuredVolume.Of(Volume.FromLiters(1)), Hours(341)));
        TaskDue oil = log.DueList(Specification, Day.PlusDays(30))["oil"];
        Assert.Equal((Hours(350), 9m, DueStatus.DueSoon), (oil.Due.Hours, oil.HoursLeft, oil.Status));
    }

    [Fact]
    public void DutyChange_CountsFromItsOwnHours()
    {
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("oil", Day, Hours(250))).With(DutyChange.Of(Day.PlusDays(30), ["towing"], Hours(290)));
        TaskDue oil = log.DueList(Specification, Day.PlusDays(30))["oil"];
        Assert.Equal(Hours(320), oil.Due.Hours);
        Assert.Equal(0.4, oil.UsedFraction, 12);
    }

    [Fact]
    public void Trigger_MakesDueAtOnce_UntilItIsAnswered_AndLeavesTheInterval()
    {
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("impeller-new", Day, Hours(250))).With(ServiceEvent.Of("overheat", Day.PlusDays(20), Hours(268)));
        TaskDue look = log.DueList(Specification, Day.PlusDays(20))["impeller"];
        Assert.Equal((DueBasis.Event, DueStatus.Due, Hours(350)), (look.Basis, look.Status, look.IntervalDue.Hours));
        Assert.Equal(DueStatus.Overdue, log.DueList(Specification, Day.PlusDays(21))["impeller"].Status);
        Assert.Equal(DueStatus.NotDue, log.DueList(Specification, Day.PlusDays(21))["impeller-new"].Status);
        TaskDue answered = log.With(Completion.Passed("impeller", Day.PlusDays(22), Hours(269))).DueList(Specification, Day.PlusDays(22))["impeller"];
        Assert.Equal((DueBasis.LastDone, DueStatus.NotDue), (answered.Basis, answered.Status));
    }

    [Fact]
    public void FailedInspection_StaysUntilTheReplacement_WhateverIsInspectedAgain()
    {
        ServiceLog log = ServiceLog.Empty.With(Completion.Of("impeller-new", Day, Hours(250))).With(Completion.Failed("impeller", Day.PlusDays(20), Hours(268)));
        ServiceLog passed = log.With(Completion.Passed("impeller", Day.PlusDays(21), Hours(268)));
        Assert.Equal(DueBasis.FailedInspection, passed.DueList(Specification, Day.PlusDays(21))["impeller-new"].Basis);
        ServiceLog replaced = passed.With(Completion.Of("impeller-new", Day.PlusDays(22), Hours(268)));
        Assert.All(replaced.DueList(Specification, Day.PlusDays(22)).Tasks.Skip(1), task => Assert.Equal(DueStatus.NotDue, task.Status));
    }

    private static EngineHours Hours(int hours) => EngineHours.FromHours(hours);
}
