using System.Numerics;
using System.Runtime.InteropServices;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Scheduling;

/// <summary>Judges many due points at once, kept as columns of plain numbers: one row is one task of one engine.</summary>
/// <remarks>
/// <para>Days are counted from 1 January 1970, hours are thousandths of an hour. A limb that is not in use or not known holds
/// <see cref="NoDay"/> or <see cref="NoThousandths"/>. The rules are those of a <see cref="DueList"/>, in the same code. Nothing is allocated.</para>
/// <para>A due day is worked out when a service is recorded, not every night; <see cref="PreparedDue"/> does that.</para>
/// <para>Source: as the rules INTERVAL-01, -04 and -05 say.</para>
/// </remarks>
public static class DueColumns
{
    /// <summary>The due day of a task without a due date.</summary>
    public const int NoDay = int.MaxValue / 2;

    /// <summary>The due hours of a task without due hours, or of which no reading tells.</summary>
    public const int NoThousandths = int.MaxValue;

    /// <summary>The due day of a task that has never been recorded: it is due whatever the day.</summary>
    internal const int EveryDay = -NoDay;

    /// <summary>The status of each row.</summary>
    /// <param name="limits">What the codes stand for.</param>
    /// <param name="codes">The number of each row's limits in the table.</param>
    /// <param name="dueDays">Each row's due day, counted from 1 January 1970.</param>
    /// <param name="dueThousandths">Each row's due hours, in thousandths of an hour.</param>
    /// <param name="nowThousandths">The hours now of each row's engine, 0 or more, in thousandths of an hour.</param>
    /// <param name="today">The day, from 1900 to 2199.</param>
    /// <param name="statuses">Takes the status of each row; as long as the columns or longer.</param>
    /// <exception cref="ArgumentNullException"><paramref name="limits"/> is null.</exception>
    /// <exception cref="ArgumentException">A column is longer or shorter than <paramref name="codes"/>, or <paramref name="statuses"/> is shorter.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="today"/> is outside 1900 to 2199; a code is not in the table; hours are negative.</exception>
    public static void Evaluate(
        DueLimitTable limits,
        ReadOnlySpan<ushort> codes,
        ReadOnlySpan<int> dueDays,
        ReadOnlySpan<int> dueThousandths,
        ReadOnlySpan<int> nowThousandths,
        LocalDate today,
        Span<DueStatus> statuses)
    {
        ReadOnlySpan<DueLimits> table = Guard.NotNull(limits).Limits;
        int day = CalendarDay.Of(Guard.Date(today));
        SameLength(dueDays.Length, codes.Length, nameof(dueDays));
        SameLength(dueThousandths.Length, codes.Length, nameof(dueThousandths));
        SameLength(nowThousandths.Length, codes.Length, nameof(nowThousandths));
        if (statuses.Length < codes.Length)
        {
            throw new ArgumentException(FormattableString.Invariant($"Must hold {codes.Length} rows or more, holds {statuses.Length}."), nameof(statuses));
        }

        LimitColumns laidOut = new(stackalloc int[LimitColumns.Room]);
        for (int start = 0; start < codes.Length; start += LimitColumns.MostRows)
        {
            int rows = Math.Min(LimitColumns.MostRows, codes.Length - start);
            ReadOnlySpan<int> now = nowThousandths.Slice(start, rows);
            laidOut.Take(table, codes.Slice(start, rows), start);
            RefuseNegative(now, start);
            EvaluateStretch(laidOut, dueDays.Slice(start, rows), dueThousandths.Slice(start, rows), day, now, statuses.Slice(start, rows));
        }
    }

    internal static DueStatus Status(in DueLimits limits, int dueDay, int dueThousandths, int today, int nowThousandths)
    {
        DueStatus byDay = limits.ByDay((long)dueDay - today);
        DueStatus byHours = limits.ByHours((long)dueThousandths - nowThousandths);
        return byDay > byHours ? byDay : byHours;
    }

    /// <summary>Judges several rows at a time, as many as the processor can; what is left over goes row by row.</summary>
    private static void EvaluateStretch(
        LimitColumns limits, ReadOnlySpan<int> dueDays, ReadOnlySpan<int> dueThousandths, int today, ReadOnlySpan<int> nowThousandths, Span<DueStatus> statuses)
    {
        Vector<int> day = new(today);
        Span<Vector<int>> judged = AsVectors(MemoryMarshal.Cast<DueStatus, int>(statuses));
        int vectors = Vector.IsHardwareAccelerated ? judged.Length : 0;

        // Once for the stretch, for the compiler does not see that they stay the same.
        ReadOnlySpan<Vector<int>> days = AsVectors(dueDays);
        ReadOnlySpan<Vector<int>> hours = AsVectors(dueThousandths);
        ReadOnlySpan<Vector<int>> now = AsVectors(nowThousandths);
        ReadOnlySpan<Vector<int>> soonDays = AsVectors(limits.SoonDays);
        ReadOnlySpan<Vector<int>> toleranceDays = AsVectors(limits.ToleranceDays);
        ReadOnlySpan<Vector<int>> soonHours = AsVectors(limits.SoonThousandths);
        ReadOnlySpan<Vector<int>> toleranceHours = AsVectors(limits.ToleranceThousandths);
        for (int i = 0; i < vectors; i++)
        {
            judged[i] = Vector.Max(
                IntervalMath.Status(IntervalMath.Left(days[i], day), soonDays[i], toleranceDays[i]),
                IntervalMath.Status(IntervalMath.Left(hours[i], now[i]), soonHours[i], toleranceHours[i]));
        }

        for (int i = vectors * Vector<int>.Count; i < statuses.Length; i++)
        {
            statuses[i] = Status(limits[i], dueDays[i], dueThousandths[i], today, nowThousandths[i]);
        }
    }

    private static void RefuseNegative(ReadOnlySpan<int> nowThousandths, int firstRow)
    {
        if (!AnyNegative(nowThousandths))
        {
            return;
        }

        int row = 0;
        while (nowThousandths[row] >= 0)
        {
            row++;
        }

        throw new ArgumentOutOfRangeException(
            nameof(nowThousandths), nowThousandths[row], FormattableString.Invariant($"Row {firstRow + row}: must be 0 or more, in thousandths of an hour."));
    }

    // The sign of a number is a bit, and bits can be gathered.
    private static bool AnyNegative(ReadOnlySpan<int> numbers)
    {
        Vector<int> gathered = Vector<int>.Zero;
        ReadOnlySpan<Vector<int>> vectors = AsVectors(numbers);
        foreach (Vector<int> vector in vectors)
        {
            gathered |= vector;
        }

        int rest = 0;
        foreach (int number in numbers.Slice(vectors.Length * Vector<int>.Count))
        {
            rest |= number;
        }

        return rest < 0 || Vector.LessThanAny(gathered, Vector<int>.Zero);
    }

    private static ReadOnlySpan<Vector<int>> AsVectors(ReadOnlySpan<int> column) => MemoryMarshal.Cast<int, Vector<int>>(column);

    private static Span<Vector<int>> AsVectors(Span<int> column) => MemoryMarshal.Cast<int, Vector<int>>(column);

    private static void SameLength(int length, int rows, string name)
    {
        if (length != rows)
        {
            throw new ArgumentException(FormattableString.Invariant($"Must have as many rows as the codes, {rows}; has {length}."), name);
        }
    }
}
