using System.Numerics;
using System.Runtime.CompilerServices;
using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>The arithmetic of intervals on day numbers and thousandths of an hour.</summary>
internal static class IntervalMath
{
    private const int DaysPerMonthOfTolerance = 30;

    /// <summary>INTERVAL-04: the tolerance in days, 30 days to the month, rounded down. Source: see that rule.</summary>
    internal static int ToleranceDays(int months, decimal percent) =>
        (int)decimal.Floor(percent * DaysPerMonthOfTolerance * months * 0.01m);

    /// <summary>INTERVAL-04: the tolerance in thousandths of an hour, rounded down. Source: see that rule.</summary>
    internal static long ToleranceHours(long hours, decimal percent) => (long)decimal.Floor(percent * hours * 0.01m);

    /// <summary>INTERVAL-15: an hours limb under a factor, rounded down to a thousandth. Source: see that rule.</summary>
    internal static long Scale(long hours, decimal factor) => factor == 1m ? hours : (long)decimal.Floor(hours * factor);

    /// <summary>INTERVAL-15: a calendar limb under a factor: whole months, one at least. Source: see that rule.</summary>
    internal static int Scale(int months, decimal factor) => factor == 1m ? months : Math.Max(1, (int)decimal.Floor(months * factor));

    /// <summary>INTERVAL-05: due soon within a tenth of the hours. Source: see that rule.</summary>
    internal static long SoonHours(long interval) => interval / 10;

    /// <summary>INTERVAL-05: due soon within 30 days, three days a month for short intervals. Source: see that rule.</summary>
    internal static int SoonDays(int months) => Math.Min(30, 3 * Math.Max(1, months));

    /// <summary>
    /// INTERVAL-01, -04 and -05: the status from what is left of a limb, without branches: soon counts two steps, the due point and the
    /// end of the tolerance one each. Source: see those rules.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static DueStatus Status(long left, long soon, long tolerance) =>
        (DueStatus)((left <= soon ? (int)DueStatus.DueSoon : 0) + (left <= 0 ? 1 : 0) + (left < -tolerance ? 1 : 0));

    /// <summary>
    /// INTERVAL-01, -04 and -05 for several rows at a time: due, two steps less before it is soon, one less before the due point, one more
    /// past the tolerance; a comparison that holds is -1. Source: see those rules.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector<int> Status(Vector<int> left, Vector<int> soon, Vector<int> tolerance)
    {
        Vector<int> notSoon = Vector.GreaterThan(left, soon);
        return new Vector<int>((int)DueStatus.Due)
            + notSoon + notSoon + Vector.GreaterThan(left, Vector<int>.Zero) - Vector.GreaterThan(-tolerance, left);
    }

    /// <summary>INTERVAL-01: what is left of a limb, due less now, for several rows at a time; a difference too large for 32 bits is the largest there is. Source: see that rule.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector<int> Left(Vector<int> due, Vector<int> now)
    {
        Vector<int> left = due - now;
        Vector<int> isTooLarge = Vector.LessThan((due ^ now) & (due ^ left), Vector<int>.Zero);
        Vector<int> largest = Vector.ConditionalSelect(
            Vector.LessThan(due, Vector<int>.Zero), new Vector<int>(int.MinValue), new Vector<int>(int.MaxValue));
        return Vector.ConditionalSelect(isTooLarge, largest, left);
    }

    /// <summary>INTERVAL-17 for hours: where the life of an interval that starts at an anchor is used up, through changes of duty. Source: see that rule.</summary>
    /// <param name="anchor">Thousandths of an hour.</param>
    /// <param name="anchorDay">Day number.</param>
    /// <param name="interval">The limb under normal duty, thousandths of an hour.</param>
    /// <param name="task">Whose factors count.</param>
    /// <param name="duties">Changes of duty in the order of time.</param>
    /// <param name="untilDay">Later changes are not known yet.</param>
    /// <param name="factor">The factor in force where the life is used up.</param>
    internal static long DueHours(
        long anchor, int anchorDay, long interval, ServiceTask task, ReadOnlySpan<ServiceStep> duties, int untilDay, out decimal factor)
    {
        factor = 1m;
        if (duties.Length == 0 || task.SevereDuty.Count == 0)
        {
            return anchor + interval;
        }

        DutyWalk walk = new(task, duties, untilDay);
        factor = walk.StartByHours(anchor, anchorDay);
        decimal remaining = interval;
        long position = anchor;
        while (walk.NextByHours(out long at, out decimal next))
        {
            decimal used = (at - position) / factor;
            if (used >= remaining)
            {
                break;
            }

            remaining -= used;
            position = at;
            factor = next;
        }

        return position + (long)decimal.Floor(remaining * factor);
    }

    /// <summary>INTERVAL-17: the share of an hours limb used between an anchor and now. Source: see that rule.</summary>
    internal static double UsedHours(
        long anchor, int anchorDay, long now, long interval, ServiceTask task, ReadOnlySpan<ServiceStep> duties, int untilDay)
    {
        if (now <= anchor)
        {
            return 0;
        }

        if (duties.Length == 0 || task.SevereDuty.Count == 0)
        {
            return (double)(now - anchor) / interval;
        }

        DutyWalk walk = new(task, duties, untilDay);
        decimal factor = walk.StartByHours(anchor, anchorDay);
        decimal used = 0;
        long position = anchor;
        while (walk.NextByHours(out long at, out decimal next) && at < now)
        {
            used += (at - position) / factor;
            position = at;
            factor = next;
        }

        return (double)((used + ((now - position) / factor)) / interval);
    }

    /// <summary>INTERVAL-17 for the calendar: each day uses up one day of the interval in force; one duty throughout is plain month addition. Source: see that rule.</summary>
    internal static int DueDay(
        int anchorDay, int months, ServiceTask task, ReadOnlySpan<ServiceStep> duties, int untilDay, out decimal factor)
    {
        factor = 1m;
        if (duties.Length == 0 || task.SevereDuty.Count == 0)
        {
            return CalendarDay.PlusMonths(anchorDay, months);
        }

        DutyWalk walk = new(task, duties, untilDay);
        factor = walk.StartByDay(anchorDay);
        int length = CalendarDay.PlusMonths(anchorDay, Scale(months, factor)) - anchorDay;
        decimal remaining = 1m;
        int position = anchorDay;
        while (walk.NextByDay(out int at, out decimal next))
        {
            decimal used = (decimal)(at - position) / length;
            if (used >= remaining)
            {
                break;
            }

            remaining -= used;
            position = at;
            factor = next;
            length = CalendarDay.PlusMonths(anchorDay, Scale(months, factor)) - anchorDay;
        }

        return position + (int)decimal.Floor(remaining * length);
    }
}
