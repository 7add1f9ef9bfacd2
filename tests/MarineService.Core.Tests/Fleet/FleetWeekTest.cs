using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Fleet;
using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Calendars;

namespace MarineService.Core.Tests.Fleet;

public sealed class FleetWeekTest
{
    /// <summary>Held against NodaTime's week-year rules for ISO 8601.</summary>
    [Law]
    public Property Of_AnyDay_IsTheMondayOfItsIsoWeek() => Prop.ForAll(
        Gen.Choose(CalendarDay.Of(new(1900, 1, 1)), CalendarDay.Of(new(2199, 12, 31))).ToArbitrary(),
        day =>
        {
            LocalDate date = CalendarDay.ToDate(day);
            IWeekYearRule iso = WeekYearRules.Iso;
            LocalDate monday = iso.GetLocalDate(iso.GetWeekYear(date), iso.GetWeekOfWeekYear(date), IsoDayOfWeek.Monday);
            Assert.Equal(monday, CalendarDay.ToDate(FleetWeek.Of(day)));
        });
}
