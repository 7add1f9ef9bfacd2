using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Comparisons;

/// <summary>A million made-up rows: when a task of 100 h or 12 months was last done, and how the engine's meter stands.</summary>
internal sealed class DueTable
{
    internal const int SoonDays = 30;
    internal const int ToleranceDays = 36;
    internal const int SoonThousandths = 10_000;
    internal const int ToleranceThousandths = 10_000;
    internal const int Months = 12;

    internal static readonly LocalDate Epoch = new(1970, 1, 1);
    internal static readonly LocalDate Today = new(2026, 10, 12);

    internal DueTable(int rows)
    {
        Random random = new(20261012);
        (DoneDays, DueDays, DueThousandths, NowThousandths, Codes) = (new int[rows], new int[rows], new int[rows], new int[rows], new ushort[rows]);
        ushort code = Limits.CodeOf(ServiceInterval.FirstOf(EngineHours.FromHours(100m), Months));
        int today = DayNumber(Today);
        for (int i = 0; i < rows; i++)
        {
            // Month ends and 29 February among them.
            DoneDays[i] = today - random.Next(60, 430);
            DueDays[i] = DayNumber(Epoch.PlusDays(DoneDays[i]).PlusMonths(Months));
            NowThousandths[i] = random.Next(200_000, 900_000);
            DueThousandths[i] = NowThousandths[i] + random.Next(-20_000, 90_000);
            Codes[i] = code;
        }
    }

    internal DueLimitTable Limits { get; } = new();

    internal int[] DoneDays { get; }

    internal int[] DueDays { get; }

    internal int[] DueThousandths { get; }

    internal int[] NowThousandths { get; }

    internal ushort[] Codes { get; }

    internal static int DayNumber(LocalDate date) => Period.DaysBetween(Epoch, date);

    /// <summary>The statuses of a due day and due hours as a SQL expression over the columns day, h and now_h.</summary>
    internal static string Status(string day) => FormattableString.Invariant($"""
        max2(
            (CASE WHEN {day} - {DayNumber(Today)} <= {SoonDays} THEN 2 ELSE 0 END) + (CASE WHEN {day} - {DayNumber(Today)} <= 0 THEN 1 ELSE 0 END) + (CASE WHEN {day} - {DayNumber(Today)} < -{ToleranceDays} THEN 1 ELSE 0 END),
            (CASE WHEN h - now_h <= {SoonThousandths} THEN 2 ELSE 0 END) + (CASE WHEN h - now_h <= 0 THEN 1 ELSE 0 END) + (CASE WHEN h - now_h < -{ToleranceThousandths} THEN 1 ELSE 0 END))
        """);
}
