using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Engines;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Many due points at once say what one says. Second opinion: the due list, task by task.</summary>
public sealed class DueColumnsTest
{
    private static readonly int Engines = RandomCases.Of(25_000);

    private const int TasksOfEach = 40;

    private static readonly LocalDate Epoch = new(1970, 1, 1);

    [Fact]
    public void AMillionRows_SayWhatTheirDueListsSay()
    {
        Random random = new(20261012);
        ushort[] codes = new ushort[TasksOfEach];
        int[] days = new int[TasksOfEach];
        int[] hours = new int[TasksOfEach];
        int[] now = new int[TasksOfEach];
        DueStatus[] statuses = new DueStatus[TasksOfEach];
        int[] seen = new int[5];
        for (int engine = 0; engine < Engines; engine++)
        {
            DueLimitTable limits = new();
            LocalDate today = Epoch.PlusDays(random.Next(15_000, 25_000));
            int reading = random.Next(0, 9_000_000);
            List<ServiceTask> tasks = [];
            List<ServiceFact> facts = [MeterReading.Of(today, EngineHours.FromHours(reading / 1000m))];
            for (int i = 0; i < TasksOfEach; i++)
            {
                int months = random.Next(1, 61);
                decimal limb = random.Next(1, 1_500_000) / 1000m;
                ServiceInterval interval = random.Next(3) switch
                {
                    0 => ServiceInterval.OfMonths(months),
                    1 => ServiceInterval.OfHours(EngineHours.FromHours(limb)),
                    _ => ServiceInterval.FirstOf(EngineHours.FromHours(limb), months),
                };
                decimal tolerance = random.Next(0, 501) / 10m;
                int day = DayNumber(today) + Near(random, Math.Min(30, 3 * months), (int)(months * 0.3m * tolerance));
                long at = Math.Max(0, reading + Near(random, (int)(limb * 100m), (int)(limb * 10m * tolerance)));
                tasks.Add(ServiceTask.Replace($"t{i}", interval).WithTolerance(tolerance));
                facts.Add(OpeningDuePoint.Of(
                    today.PlusDays(-1),
                    $"t{i}",
                    interval.Months is null ? null : Epoch.PlusDays(day),
                    interval.Hours is null ? null : EngineHours.FromHours(at / 1000m)));
                (codes[i], now[i]) = (limits.CodeOf(interval, tolerance), reading);
                days[i] = interval.Months is null ? DueColumns.NoDay : day;
                hours[i] = interval.Hours is null ? DueColumns.NoThousandths : (int)at;
            }

            DueList list = DueList.Evaluate(TaskPlan.Of(tasks), ServiceHistory.Of(HourMeter.Plain, facts, today));
            DueColumns.Evaluate(limits, codes, days, hours, now, today, statuses);
            for (int i = 0; i < TasksOfEach; i++)
            {
                Assert.True(list.Tasks[i].Status == statuses[i], $"{statuses[i]}: {list.Tasks[i]}");
                seen[(int)statuses[i]]++;
            }
        }

        // Every answer of an interval must come often, or the comparison proves little.
        Assert.All(new[] { DueStatus.NotDue, DueStatus.DueSoon, DueStatus.Due, DueStatus.Overdue }, status => Assert.True(seen[(int)status] > RandomCases.Of(10_000), $"{status}: {seen[(int)status]}"));
    }

    [Law]
    public Property Row_AmongAnyNumberOfOthers_SaysWhatItSaysAlone()
    {
        DueLimitTable limits = new();
        ushort[] kinds = [.. from months in Enumerable.Range(1, 12) from percent in new[] { 0m, 10m, 50m } select limits.CodeOf(ServiceInterval.FirstOf(EngineHours.FromHours(40m * months), months), percent)];
        Gen<int> near = Gen.Choose(-800, 800);
        Gen<int> column = Gen.Frequency(
            (4, near.Select(left => 20_738 + left)), (2, near.Select(left => 1000 * left)), (1, Gen.Choose(int.MinValue, int.MaxValue)),
            (1, Gen.Elements(int.MinValue, int.MinValue + 1, -1, 0, 1, int.MaxValue - 1, int.MaxValue, DueColumns.NoDay)));
        Gen<(ushort Code, int Day, int Hours, int Now)> row =
            from code in Gen.Elements(kinds)
            from day in column
            from hours in column
            from now in column
            select (code, day, hours, now < 0 ? ~now : now);
        return Prop.ForAll(
            Gen.Choose(0, 200).SelectMany(rows => Gen.ArrayOf(row, rows)).ToArbitrary(),
            rows =>
            {
                LocalDate today = new(2026, 10, 12);
                DueStatus[] together = new DueStatus[rows.Length];
                DueColumns.Evaluate(
                    limits, [.. rows.Select(one => one.Code)], [.. rows.Select(one => one.Day)], [.. rows.Select(one => one.Hours)], [.. rows.Select(one => one.Now)], today, together);
                DueStatus[] alone = new DueStatus[1];
                return rows.Select((one, i) =>
                {
                    DueColumns.Evaluate(limits, [one.Code], [one.Day], [one.Hours], [one.Now], today, alone);
                    return (alone[0] == together[i]).Label($"row {i} of {rows.Length}, {one}: {alone[0]} alone, {together[i]} among others");
                }).Aggregate(true.ToProperty(), (all, next) => all.And(next));
            });
    }

    [Fact]
    public void Columns_AllocateNothing()
    {
        DueLimitTable limits = new();
        ushort code = limits.CodeOf(ServiceInterval.OfMonths(12));
        ushort[] codes = [code, code];
        int[] days = [20_000, DueColumns.NoDay];
        int[] hours = [DueColumns.NoThousandths, 100];
        int[] now = [0, 5];
        DueStatus[] statuses = new DueStatus[2];
        LocalDate today = new(2026, 10, 12);
        Assert.Equal(0, Allocation.Of(() => DueColumns.Evaluate(limits, codes, days, hours, now, today, statuses)));
    }

    [Fact]
    public void Column_ThatCannotBe_IsRefusedByName()
    {
        DueLimitTable limits = new();
        ushort code = limits.CodeOf(ServiceInterval.OfMonths(12));
        LocalDate today = new(2026, 10, 12);
        DueStatus[] statuses = new DueStatus[1];
        Assert.Equal("codes", Assert.Throws<ArgumentOutOfRangeException>(() => DueColumns.Evaluate(limits, [(ushort)(code + 1)], [0], [0], [0], today, statuses)).ParamName);
        Assert.Equal("nowThousandths", Assert.Throws<ArgumentOutOfRangeException>(() => DueColumns.Evaluate(limits, [code], [0], [0], [-1], today, statuses)).ParamName);
        Assert.Contains("Row 100:", Assert.Throws<ArgumentOutOfRangeException>(() => DueColumns.Evaluate(
            limits, new ushort[150], new int[150], new int[150], [.. Enumerable.Range(0, 150).Select(i => i == 100 ? -1 : 0)], today, new DueStatus[150])).Message, StringComparison.Ordinal);
        Assert.Equal("dueDays", Assert.Throws<ArgumentException>(() => DueColumns.Evaluate(limits, [code], [], [0], [0], today, statuses)).ParamName);
        Assert.Equal("dueThousandths", Assert.Throws<ArgumentException>(() => DueColumns.Evaluate(limits, [code], [0], [0, 1], [0], today, statuses)).ParamName);
        Assert.Equal("nowThousandths", Assert.Throws<ArgumentException>(() => DueColumns.Evaluate(limits, [code], [0], [0], [], today, statuses)).ParamName);
        Assert.Equal("statuses", Assert.Throws<ArgumentException>(() => DueColumns.Evaluate(limits, [code], [0], [0], [0], today, [])).ParamName);
        Assert.Equal("today", Assert.Throws<ArgumentOutOfRangeException>(() => DueColumns.Evaluate(limits, [code], [0], [0], [0], default, statuses)).ParamName);
    }

    [Fact]
    public void Code_OfTheSameLimits_IsTheSame_OnAnyThread()
    {
        DueLimitTable limits = new();
        ushort[] codes = new ushort[10_000];
        Parallel.For(0, codes.Length, i => codes[i] = limits.CodeOf(ServiceInterval.OfMonths(1 + (i % 60))));
        Assert.Equal(limits.Count, codes.Distinct().Count());
        Assert.All(Enumerable.Range(0, codes.Length), i => Assert.Equal(codes[i % 60], codes[i]));
    }

    private static int DayNumber(LocalDate date) => Period.DaysBetween(Epoch, date);

    // On a limit, one grain beside it, or anywhere.
    private static int Near(Random random, int soon, int tolerance) => random.Next(4) switch
    {
        0 => soon + random.Next(-1, 2),
        1 => random.Next(-1, 2),
        2 => -tolerance + random.Next(-1, 2),
        _ => random.Next(-3 * (tolerance + 10), 3 * (soon + 10)),
    };
}
