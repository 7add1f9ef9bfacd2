using MarineService.Core.Engines;
using NodaTime;

namespace MarineService.Core.Tests.Engines;

public sealed class MeterHistoryTest
{
    private static readonly LocalDate Start = new(2024, 5, 1);

    [Law]
    public void Gap_SplitByAReadingInside_KeepsTheHoursAtItsEnds(byte days, byte perDay, byte at)
    {
        int length = days + 2;
        int split = 1 + (at % (length - 1));
        int rate = perDay % 25;
        MeterReading[] ends = [Read(0, 100), Read(length, 100 + (rate * length))];
        MeterHistory whole = Of(ends);
        MeterHistory parts = Of([.. ends, Read(split, 100 + (rate * split))]);
        Assert.Equal(whole.FindHoursOn(Day(Start)), parts.FindHoursOn(Day(Start)));
        Assert.Equal(whole.FindHoursOn(Day(Start.PlusDays(length))), parts.FindHoursOn(Day(Start.PlusDays(length))));
    }

    [Fact]
    public void Reading_ThatFalls_IsRefusedWithItsFigures() =>
        Refused(EngineRules.FallingReading, "398.0 h, after 412.0 h on 2024-05-01", Read(0, 412), Read(9, 398));

    [Fact]
    public void Reading_FasterThanTheClock_IsRefusedWithItsFigures() =>
        Refused(EngineRules.ImpossibleRate, "gained 100.0 h since 2024-05-01, at most 48.0 h", Read(0, 400), Read(2, 500));

    [Fact]
    public void Reading_BeyondTheDial_IsRefusedWithItsFigures() =>
        Refused(EngineRules.BeyondDial, "10000.0 h", Read(0, 10_000));

    [Fact]
    public void Meter_ReplacedAfterDeadTime_AddsTheUnmeteredHoursWithBounds()
    {
        MeterChange change = MeterChange.Of(Start.PlusDays(10), Hours(500), Hours(0), Hours(14), Start.PlusDays(4));
        MeterHistory history = MeterHistory.Of(HourMeter.Plain, [Read(0, 490), Read(20, 6)], [change]);
        HoursEstimate hours = history.FindHoursOn(Day(Start.PlusDays(20)))!;

        // 500 + 14 + 6; none of the 14 may have run, or all of six days: 6 x 24 = 144.
        Assert.Equal((Hours(506), Hours(520), Hours(650)), (hours.Lower, hours.Estimate, hours.Upper));
        Assert.Equal(EngineRules.UnmeteredHours, Assert.Single(history.Findings).Rule);
    }

    [Fact]
    public void ReadingDates_AreTheDaysOfAcceptedReadings_EachOnce()
    {
        MeterHistory history = MeterHistory.Of(HourMeter.Plain, [Read(20, 430), Read(0, 412), Read(9, 398), Read(20, 431)], []);
        Assert.Equal([Start, Start.PlusDays(20)], history.ReadingDates);
        Assert.All(history.ReadingDates, day => Assert.Equal(ReadingQuality.Measured, history.HoursOn(day).Value.Quality));
        Assert.Empty(MeterHistory.Of(HourMeter.Plain, [], []).ReadingDates);
    }

    private static void Refused(FindingRule rule, string figures, params MeterReading[] readings)
    {
        Finding finding = Assert.Single(MeterHistory.Of(HourMeter.Of(Hours(10_000)), readings, []).Findings);
        Assert.Equal(rule, finding.Rule);
        Assert.Contains(figures, finding.ToString(), StringComparison.Ordinal);
    }

    private static MeterHistory Of(MeterReading[] readings) => MeterHistory.Of(HourMeter.Plain, readings, []);

    private static MeterReading Read(int day, int hours) => MeterReading.Of(Start.PlusDays(day), Hours(hours));

    private static int Day(LocalDate date) => Core.Internal.CalendarDay.Of(date);

    private static EngineHours Hours(int hours) => EngineHours.FromHours(hours);
}
