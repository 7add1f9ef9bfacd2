using MarineService.Core.Engines;
using NodaTime;

namespace MarineService.Core.Tests.Surface;

/// <content>What only readings over some years make: a use over the year, and its forecasts.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfEngines()
    {
        MeterReading[] readings =
        [
            .. Enumerable.Range(0, 12).Select(i => MeterReading.Of(new LocalDate(2023, 4, 1).PlusMonths(4 * i), EngineHours.FromHours(100 + (30 * i)))),
        ];
        PlannedUse plan = PlannedUse.Between(new(2027, 4, 17), new(2027, 10, 23), EngineHours.FromHours(90m));
        SeasonalUse use = SeasonalUse.Of(MeterHistory.Of(HourMeter.Plain, readings, []), [], [plan], new(2026, 12, 1));
        DateForecast date = use.DateReaching(EngineHours.FromHours(500m)).Value;
        HoursForecast hours = use.HoursOn(new LocalDate(2027, 8, 1)).Value;
        return [LayUpPeriod.Of(new(2026, 10, 24), new LocalDate(2027, 4, 17)), plan, use, date, hours, date.BySeason[0], hours.BySeason[0], use.Months[0], use.Seasons[0]];
    }
}
