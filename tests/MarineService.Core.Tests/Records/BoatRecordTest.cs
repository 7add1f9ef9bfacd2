using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Records;

/// <summary>Two engines in one boat; the boat's own tasks counted once; a rebuilt engine; a boat bought with papers.</summary>
public sealed class BoatRecordTest
{
    private static readonly LocalDate Day = new(2024, 5, 1);

    private static readonly EngineSpecification Engine = EngineSpecification.Named("Brae 16D").With(
        ServiceTask.Replace("oil", ServiceInterval.FirstOf(Hours(100), 12)).WithFirstService(ServiceInterval.FirstOf(Hours(20), 6)),
        ServiceTask.Replace("impeller", ServiceInterval.FirstOf(Hours(300), 24)).DueAfterEvents("grounding"),
        ServiceTask.AtLayUp("drain"));

    private static readonly BoatSpecification Boat = BoatSpecification.Of(Core.Engines.Boat.Of("Tern"))
        .WithEngine("port", Engine)
        .WithEngine("starboard", Engine)
        .With(ServiceTask.Inspect("bilge-pump", ServiceInterval.OfMonths(1)));

    [Fact]
    public void DueList_OfTwoEngines_HasEachEnginesTasksAndTheBoatsOnce()
    {
        DueList list = ServiceLog.Empty.DueList(Boat, Day);
        Assert.Equal(
            ["port/oil", "port/impeller", "port/drain", "starboard/oil", "starboard/impeller", "starboard/drain", "boat/bilge-pump"],
            list.Tasks.Select(task => $"{task.Scope}/{task.TaskId}"));
    }

    [Fact]
    public void Engines_KeepTheirOwnHoursAndCompletions()
    {
        ServiceLog log = ServiceLog.Empty
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(500))).For("port"))
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(620))).For("starboard"))
            .With(LogEntry.Of(MeterReading.Of(Day.PlusDays(30), Hours(601))).For("port"))
            .With(LogEntry.Of(MeterReading.Of(Day.PlusDays(30), Hours(640))).For("starboard"));
        DueList list = log.DueList(Boat, Day.PlusDays(30));
        Assert.Equal([DueStatus.Due, DueStatus.NotDue], list.Tasks.Where(task => task.TaskId == "oil").Select(task => task.Status));
        Assert.Equal([Hours(600), Hours(720)], list.Tasks.Where(task => task.TaskId == "oil").Select(task => task.Due.Hours!.Value));
    }

    [Fact]
    public void BoatTask_DoneUnderAnEnginesName_CountsOnceAndItsDialIsAReading()
    {
        ServiceLog log = ServiceLog.Empty
            .With(LogEntry.Of(Completion.Of("oil", Day, Hours(500))).For("port"))
            .With(LogEntry.Of(Completion.Passed("bilge-pump", Day.PlusDays(30), Hours(595))).For("port"));
        DueList list = log.DueList(Boat, Day.PlusDays(30));
        TaskDue pump = Assert.Single(list.Tasks, task => task.TaskId == "bilge-pump");
        Assert.Equal((Day.PlusDays(30), DueStatus.NotDue), (pump.LastDone, pump.Status));
        Assert.Equal(5m, list.Tasks[0].HoursLeft);
        Assert.DoesNotContain(list.Findings, finding => finding.Rule == SchedulingRules.UnknownTask);
    }

    [Fact]
    public void WhatHappensToTheBoat_HappensToEachEngine_WithoutItsDial()
    {
        ServiceLog log = ServiceLog.Empty
            .With(LogEntry.Of(Completion.Of("impeller", Day, Hours(500))).For("port"))
            .With(LogEntry.Of(Completion.Of("impeller", Day, Hours(620))).For("starboard"))
            .With(LogEntry.Of(ServiceEvent.Of("grounding", Day.PlusDays(3), Hours(1))).For(BoatSpecification.Scope))
            .With(LogEntry.Of(LaidUp.On(Day.PlusDays(4))).For(BoatSpecification.Scope));
        DueList list = log.DueList(Boat, Day.PlusDays(4));
        Assert.All(list.Tasks.Where(task => task.TaskId == "impeller"), task => Assert.Equal(DueBasis.Event, task.Basis));
        Assert.All(list.Tasks.Where(task => task.TaskId == "drain"), task => Assert.Equal(DueStatus.Due, task.Status));
        Assert.DoesNotContain(list.Findings, finding => finding.Rule == EngineRules.FallingReading);
    }

    // First service at 20 h from zero; after a rebuild at 1,500 h again at 1,520 h, while the impeller's hours go on.
    [Fact]
    public void Rebuild_StartsBreakInAnew_AndHoursInAllGoOn()
    {
        ServiceLog log = ServiceLog.Empty
            .With(EnteredService.New(Day, EngineHours.FromHours(0.5m)))
            .With(Completion.Of("oil", Day.PlusDays(30), Hours(19)))
            .With(Completion.Of("impeller", Day.PlusDays(1000), Hours(1490)))
            .With(EnteredService.AfterRebuild(Day.PlusDays(1100), Hours(1500), Hours(1500)));
        DueList list = log.DueList(Engine, Day.PlusDays(1100));
        Assert.Equal((DueBasis.FirstService, Hours(1520)), (list["oil"].Basis, list["oil"].Due.Hours));
        Assert.Equal((DueBasis.LastDone, Hours(1790)), (list["impeller"].Basis, list["impeller"].Due.Hours));
        ServiceLog late = log.With(Completion.Of("oil", Day.PlusDays(1110), Hours(1523)));
        ComplianceItem first = late.Compliance(Engine, Day.PlusDays(1110), ComplianceBasis.Planning).Items.Last(item => item.Occurrence.IsFirstService);
        Assert.Equal((3m, ComplianceVerdict.Exceeded), (first.Occurrence.HoursLate, first.Verdict));
        Assert.Equal(Hours(1623), late.DueList(Engine, Day.PlusDays(1110))["oil"].Due.Hours);
    }

    [Fact]
    public void BoughtBoat_GoesByWhatItsPapersSay_AndNoRecordIsNeverFresh()
    {
        ServiceLog log = ServiceLog.Empty
            .With(MeterReading.Of(Day, Hours(640)))
            .With(OpeningDuePoint.Of(Day, "oil", new LocalDate(2024, 9, 1), Hours(700)));
        DueList list = log.DueList(Engine, Day);
        Assert.Equal((DueBasis.Opening, DueStatus.NotDue, "700.0 h or 2024-09-01"), (list["oil"].Basis, list["oil"].Status, list["oil"].Due.ToString()));
        Assert.Equal((DueBasis.NoRecord, DueStatus.Due), (list["impeller"].Basis, list["impeller"].Status));
        ComplianceItem done = log.With(Completion.Of("oil", new LocalDate(2024, 9, 1), Hours(700)))
            .Compliance(Engine, new(2024, 9, 1)).Items.Single(item => item.Occurrence.DoneOn is not null);
        Assert.Equal(ComplianceVerdict.Kept, done.Verdict);
    }

    [Fact]
    public void OpeningStatement_SupersedesWhatWasDoneBefore()
    {
        ServiceLog log = ServiceLog.Empty
            .With(Completion.Of("oil", Day.PlusDays(-30), Hours(600)))
            .With(OpeningDuePoint.Of(Day, "oil", null, Hours(650)));
        Assert.Equal("650.0 h", log.DueList(Engine, Day)["oil"].Due.ToString());
    }

    private static EngineHours Hours(int hours) => EngineHours.FromHours(hours);
}
