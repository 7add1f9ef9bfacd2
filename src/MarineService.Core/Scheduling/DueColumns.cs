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

    private const int StretchRows = 64;

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

        for (int start = 0; start < codes.Length; start += StretchRows)
        {
            int rows = Math.Min(StretchRows, codes.Length - start);
            EvaluateStretch(
                table, start, codes.Slice(start, rows), dueDays.Slice(start, rows), dueThousandths.Slice(start, rows), nowThousandths.Slice(start, rows), day,
                statuses.Slice(start, rows));
        }
    }

    internal static DueStatus Status(in DueLimits limits, int dueDay, int dueThousandths, int today, int nowThousandths)
    {
        DueStatus byDay = limits.ByDay((long)dueDay - today);
        DueStatus byHours = limits.ByHours((long)dueThousandths - nowThousandths);
        return byDay > byHours ? byDay : byHours;
    }

    /// <summary>The limits of a stretch are laid out as columns first, so that the processor can judge several rows at a time; what is left over goes row by row.</summary>
    private static void EvaluateStretch(
        ReadOnlySpan<DueLimits> table,
        int firstRow,
        ReadOnlySpan<ushort> codes,
        ReadOnlySpan<int> dueDays,
        ReadOnlySpan<int> dueThousandths,
        ReadOnlySpan<int> nowThousandths,
        int today,
        Span<DueStatus> statuses)
    {
        Span<int> soonDays = stackalloc int[StretchRows];
        Span<int> toleranceDays = stackalloc int[StretchRows];
        Span<int> soonThousandths = stackalloc int[StretchRows];
        Span<int> toleranceThousandths = stackalloc int[StretchRows];
        for (int i = 0; i < codes.Length; i++)
        {
            int code = codes[i];
            if (code >= table.Length || nowThousandths[i] < 0)
            {
                throw code >= table.Length
                    ? new ArgumentOutOfRangeException(nameof(codes), code, FormattableString.Invariant($"Row {firstRow + i}: must be the number of limits in the table, 0 to {table.Length - 1}."))
                    : new ArgumentOutOfRangeException(
                        nameof(nowThousandths), nowThousandths[i], FormattableString.Invariant($"Row {firstRow + i}: must be 0 or more, in thousandths of an hour."));
            }

            ref readonly DueLimits limits = ref table[code];
            (soonDays[i], toleranceDays[i]) = (limits.SoonDays, limits.ToleranceDays);
            (soonThousandths[i], toleranceThousandths[i]) = (limits.SoonThousandths, limits.ToleranceThousandths);
        }

        int vectors = Vector.IsHardwareAccelerated ? codes.Length / Vector<int>.Count : 0;
        Vector<int> day = new(today);
        Span<Vector<int>> judged = AsVectors(MemoryMarshal.Cast<DueStatus, int>(statuses));
        for (int i = 0; i < vectors; i++)
        {
            Vector<int> byDay = IntervalMath.Status(
                IntervalMath.Left(AsVectors(dueDays)[i], day), AsVectors(soonDays)[i], AsVectors(toleranceDays)[i]);
            Vector<int> byHours = IntervalMath.Status(
                IntervalMath.Left(AsVectors(dueThousandths)[i], AsVectors(nowThousandths)[i]), AsVectors(soonThousandths)[i], AsVectors(toleranceThousandths)[i]);
            judged[i] = Vector.Max(byDay, byHours);
        }

        for (int i = vectors * Vector<int>.Count; i < codes.Length; i++)
        {
            statuses[i] = Status(in table[codes[i]], dueDays[i], dueThousandths[i], today, nowThousandths[i]);
        }
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
