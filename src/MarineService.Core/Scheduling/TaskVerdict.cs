using MarineService.Core.Engines;

namespace MarineService.Core.Scheduling;

/// <summary>What is decided about one task on a day.</summary>
internal struct TaskVerdict
{
    internal DueStatus Status;
    internal DueBasis Basis;
    internal GoverningLimb Governs;
    internal DueAt Due;
    internal DueAt IntervalDue;
    internal LimbState HoursLimb;
    internal LimbState CalendarLimb;
    internal long? HoursLeft;
    internal int? DaysLeft;
    internal double UsedFraction;
    internal int SuspendedDays;
    internal int? PlanDay;
    internal int OverrunDays;
    internal bool OverrunExcused;
    internal HoursEstimate? Now;
}
