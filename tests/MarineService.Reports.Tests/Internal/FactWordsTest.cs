using MarineService.Core;
using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Reports.Internal;
using NodaTime;
using UnitsNet;

namespace MarineService.Reports.Tests.Internal;

public sealed class FactWordsTest
{
    private static readonly LocalDate Day = new(2026, 5, 1);

    private static readonly FactWords Words = new([ServiceTask.Replace("engine-oil", ServiceInterval.OfMonths(12)).WithTitle("Engine oil and filter")]);

    private static readonly (ServiceFact Fact, string Words)[] Facts =
    [
        (Completion.Of("engine-oil", Day), "Engine oil and filter \u2013 done"),
        (Completion.Passed("belt", Day), "belt \u2013 looked at, passed"),
        (Completion.Failed("belt", Day), "belt \u2013 looked at, failed"),
        (Completion.Partial("engine-oil", Day, null, 0.85m), "Engine oil and filter \u2013 done in part, 85 % exchanged"),
        (MeterReading.Of(Day, Hours(5)), "Hour meter read"),
        (MeterReading.Of(Day, Hours(5), ReadingSource.Estimate), "Hours estimated"),
        (MeterChange.Of(Day, Hours(884.7m), Hours(0), Hours(6), new LocalDate(2026, 4, 1)), "Hour meter changed: the old one showed 884.7 h, the new one began at 0.0 h, 6.0 h ran without a meter, dead since 2026-04-01"),
        (MeterChange.Of(Day, null), "Hour meter changed: the old one showed nothing that could be read, the new one began at 0.0 h"),
        (EnteredService.New(Day), "Entered service, new"),
        (EnteredService.AfterRebuild(Day, Hours(1200)), "Entered service after a rebuild, counted from 1200.0 h"),
        (LaidUp.On(Day), "Laid up"),
        (Commissioned.On(Day), "Commissioned out of lay-up"),
        (PlannedLayUp.Between(Day, new LocalDate(2026, 6, 1)), "Lay-up planned until 2026-06-01"),
        (PlannedUse.Between(Day, new LocalDate(2026, 6, 1), Hours(20)), "Use planned until 2026-06-01: 20.0 h"),
        (ServiceEvent.Of("overheat", Day), "Happened: overheat"),
        (DutyChange.Of(Day, ["towing", "dust"]), "Duty: towing, dust"),
        (DutyChange.Of(Day, []), "Duty: ordinary again"),
        (TopUp.Of("coolant", Day, MeasuredVolume.Of(Volume.FromLiters(0.5)), null), "Topped up coolant: 0.50 L (0.53 US qt)"),
        (OpeningDuePoint.Of(Day, "engine-oil", new LocalDate(2026, 9, 1), Hours(300)), "Engine oil and filter \u2013 stated due 300.0 h or 2026-09-01 as the record was opened"),
        (GridOrigin.Of(Day, "engine-oil"), "Engine oil and filter \u2013 counted from this day on, by a fixed grid"),
        (AnodeInspection.Of(Day, "cooler", AnodeMetal.Zinc, 0.4, 12), "Anode looked at: cooler, 40 % gone"),
        (BucketTest.Of(Day, RotationalSpeed.FromRevolutionsPerMinute(1500), [BucketCatch.Of("exhaust", MeasuredVolume.Of(Volume.FromLiters(10)), UnitsNet.Duration.FromSeconds(10))]), "Raw water caught: 60.0 L/min (15.9 US gal/min) at 1500 rpm"),
        (WinterWork.On(Day, [LowPointWork.Drained("block", 2, 2)]), "Winter work: block: 2 drains rodded, 2 ran"),
        (OilChangeRecord.Of("engine-oil", Day,
        [
            OilChangeEvent.Begun(null),
            OilChangeEvent.Drained(MeasuredVolume.Of(Volume.FromLiters(5))),
            OilChangeEvent.FilterChanged(true),
            OilChangeEvent.Poured(MeasuredVolume.Of(Volume.FromLiters(5.1))),
        ]), "Engine oil and filter \u2013 changed, with its account: level before not read, drained 5.00 L (5.28 US qt), filter changed, the old one emptied into the measure, poured 5.10 L (5.39 US qt)"),
    ];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Facts.Length)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Fact_IsSaidInALine(int number) => Assert.Equal(Facts[number].Words, Words.Of(Facts[number].Fact, DisplayUnits.Metric));

    [Fact]
    public void ImpellerInspection_IsSaidInALine() => Assert.StartsWith(
        "Impeller looked at: ", Words.Of(ImpellerInspection.Of(6, Day).WithOthersWhole(), DisplayUnits.Metric), StringComparison.Ordinal);

    /// <summary>A new kind of entry needs words here before it can be printed.</summary>
    [Fact]
    public void EveryKindOfFact_HasWords() => Assert.Empty(
        typeof(ServiceFact).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(ServiceFact)) && type != typeof(ImpellerInspection))
            .Except(Facts.Select(fact => fact.Fact.GetType())));

    [Fact]
    public void Withdrawal_NamesTheEntry() =>
        Assert.Equal("Withdrawn: entry 7 does not stand", Words.Of(LogEntry.Withdrawing("7", Day), DisplayUnits.Metric));

    private static EngineHours Hours(decimal hours) => EngineHours.FromHours(hours);
}
