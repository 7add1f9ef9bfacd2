using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>What the engine has run on the day that was asked about, beside each task.</summary>
public sealed class TaskDueHoursTest
{
    private static readonly EngineSpecification Engine = EngineSpecification.Named("Brae 16D")
        .With(ServiceTask.Clean("strainer", ServiceInterval.OfMonths(1)));

    [Fact]
    public void HoursNow_WithoutReading_NamesWhatIsMissing()
    {
        TaskDue due = ServiceLog.Empty.DueList(Engine, new LocalDate(2026, 5, 1))["strainer"];

        Assert.Equal(["A meter reading."], due.HoursNow.Missing);
        Assert.Equal(["A meter reading."], due.DialNow.Missing);
        Assert.Null(due.LastReading);
    }

    /// <summary>An old meter taken off at 500 h, a new one that starts at 0 h and shows 40 h: 540 h in all.</summary>
    [Fact]
    public void HoursNow_AfterNewMeter_AreHoursInAll_AndDialIsTheNewMeters()
    {
        LocalDate day = new(2026, 5, 1);
        TaskDue due = ServiceLog.Empty
            .With(MeterReading.Of(new LocalDate(2025, 5, 1), EngineHours.FromHours(480m)))
            .With(MeterChange.Of(new LocalDate(2025, 8, 1), EngineHours.FromHours(500m)))
            .With(MeterReading.Of(day, EngineHours.FromHours(40m)))
            .DueList(Engine, day)["strainer"];

        Assert.Equal(540m, due.HoursNow.Value.Estimate.ToHours());
        Assert.Equal(40m, due.DialNow.Value.ToHours());
        Assert.Equal(day, due.LastReading);
    }
}
