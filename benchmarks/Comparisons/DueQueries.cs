using System.Data.Common;
using System.Globalization;
using System.Runtime.InteropServices;
using BenchmarkDotNet.Attributes;
using ClosedXML.Excel;
using DuckDB.NET.Data;
using MarineService.Core.Scheduling;
using Microsoft.Data.Sqlite;
using NodaTime.Text;

namespace MarineService.Core.Comparisons;

/// <summary>How many tasks of a million have which status: by columns and by general tools. Loading is not counted.</summary>
[MemoryDiagnoser]
public class DueQueries
{
    private const int Rows = 1_000_000;
    private const int SheetRows = 2_000;
    private static readonly string[] Parameters = ["$done", "$day", "$h", "$now"];
    private readonly DueTable _table = new(Rows);
    private DuckDBConnection _duck = null!;
    private SqliteConnection _lite = null!;
    private XLWorkbook _book = null!;

    [GlobalSetup]
    public void Load()
    {
        _duck = new("DataSource=:memory:");
        _duck.Open();
        Execute(_duck, "CREATE TABLE due (done DATE, day INTEGER, h INTEGER, now_h INTEGER)");
        using (DuckDBAppender appender = _duck.CreateAppender("due"))
        {
            for (int i = 0; i < Rows; i++)
            {
                appender.CreateRow()
                    .AppendValue(new DateOnly(1970, 1, 1).AddDays(_table.DoneDays[i])).AppendValue(_table.DueDays[i])
                    .AppendValue(_table.DueThousandths[i]).AppendValue(_table.NowThousandths[i]).EndRow();
            }
        }

        _lite = new("Data Source=:memory:");
        _lite.Open();
        Execute(_lite, "CREATE TABLE due (done TEXT, day INTEGER, h INTEGER, now_h INTEGER)");
        using (SqliteTransaction transaction = _lite.BeginTransaction())
        {
            using SqliteCommand insert = _lite.CreateCommand();
            insert.CommandText = "INSERT INTO due VALUES ($done, $day, $h, $now)";
            SqliteParameter[] values = [.. Parameters.Select(name => insert.Parameters.Add(new SqliteParameter(name, null)))];
            for (int i = 0; i < Rows; i++)
            {
                values[0].Value = LocalDatePattern.Iso.Format(DueTable.Epoch.PlusDays(_table.DoneDays[i]));
                (values[1].Value, values[2].Value, values[3].Value) = (_table.DueDays[i], _table.DueThousandths[i], _table.NowThousandths[i]);
                insert.ExecuteNonQuery();
            }

            transaction.Commit();
        }

        _book = Book();
        long[] expected = Columns();
        Same(expected, ColumnsOnTwoThreads(), "two threads");
        Same(expected, DuckStoredDay(2), "DuckDB");
        Same(expected, DuckMonths(), "DuckDB, months added");
        Same(expected, LiteStoredDay(), "SQLite");
        Same(expected, LiteText(), "SQLite, text");
        Same(JudgeAndCount(0, SheetRows), Spreadsheet(), "spreadsheet");
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public long[] Columns() => JudgeAndCount(0, Rows);

    // What DuckDB gets.
    [Benchmark(OperationsPerInvoke = Rows)]
    public long[] ColumnsOnTwoThreads()
    {
        long[][] halves = new long[2][];
        Parallel.For(0, 2, half => halves[half] = JudgeAndCount(half * Rows / 2, Rows / 2));
        return [.. halves[0].Zip(halves[1], (one, other) => one + other)];
    }

    [Benchmark(OperationsPerInvoke = Rows)]
    [Arguments(1)]
    [Arguments(2)]
    public long[] DuckStoredDay(int threads)
    {
        Execute(_duck, FormattableString.Invariant($"SET threads = {threads}"));
        return Counts(_duck, Query("day", "greatest"));
    }

    [Benchmark(OperationsPerInvoke = Rows)]
    public long[] DuckMonths() =>
        Counts(_duck, Query(FormattableString.Invariant($"(CAST(done + INTERVAL {DueTable.Months} MONTH AS DATE) - DATE '1970-01-01')"), "greatest"));

    [Benchmark(OperationsPerInvoke = Rows)]
    public long[] LiteStoredDay() => Counts(_lite, Query("day", "max"));

    // Without 'floor' SQLite goes from 31 January to 3 March.
    [Benchmark(OperationsPerInvoke = Rows)]
    public long[] LiteText() =>
        Counts(_lite, Query(FormattableString.Invariant($"CAST(julianday(done, '+{DueTable.Months} months', 'floor') - 2440587.5 AS INTEGER)"), "max"));

    [Benchmark(OperationsPerInvoke = SheetRows)]
    public long[] Spreadsheet()
    {
        IXLWorksheet sheet = _book.Worksheet(1);
        _book.RecalculateAllFormulas();
        long[] counts = new long[5];
        for (int row = 1; row <= SheetRows; row++)
        {
            counts[(int)sheet.Cell(row, 4).GetDouble()]++;
        }

        return counts;
    }

    [GlobalCleanup]
    public void Unload()
    {
        _duck.Dispose();
        _lite.Dispose();
        _book.Dispose();
    }

    private static string Query(string day, string max) => $"SELECT {DueTable.Status(day).Replace("max2", max, StringComparison.Ordinal)} AS s, count(*) FROM due GROUP BY s";

    private static long[] Counts(DbConnection connection, string query)
    {
        using DbCommand command = connection.CreateCommand();
        command.CommandText = query;
        using DbDataReader reader = command.ExecuteReader();
        long[] counts = new long[5];
        while (reader.Read())
        {
            counts[Convert.ToInt32(reader.GetValue(0), CultureInfo.InvariantCulture)] = Convert.ToInt64(reader.GetValue(1), CultureInfo.InvariantCulture);
        }

        return counts;
    }

    private static void Execute(DbConnection connection, string statement)
    {
        using DbCommand command = connection.CreateCommand();
        command.CommandText = statement;
        command.ExecuteNonQuery();
    }

    private static void Same(long[] expected, long[] found, string who)
    {
        if (!expected.SequenceEqual(found))
        {
            throw new InvalidOperationException($"{who} says {string.Join(' ', found)}, the library {string.Join(' ', expected)}.");
        }
    }

    // A stretch at a time, as databases do it, so that what was judged is counted before it leaves the cache.
    private long[] JudgeAndCount(int from, int rows)
    {
        const int Stretch = 4096;
        DueStatus[] statuses = new DueStatus[Stretch];
        long[] counts = new long[5];
        for (int start = from; start < from + rows; start += Stretch)
        {
            int length = Math.Min(Stretch, from + rows - start);
            DueColumns.Evaluate(
                _table.Limits,
                _table.Codes.AsSpan(start, length),
                _table.DueDays.AsSpan(start, length),
                _table.DueThousandths.AsSpan(start, length),
                _table.NowThousandths.AsSpan(start, length),
                DueTable.Today,
                statuses);
            ReadOnlySpan<int> judged = MemoryMarshal.Cast<DueStatus, int>(statuses.AsSpan(0, length));
            for (int status = 0; status < counts.Length; status++)
            {
                counts[status] += judged.Count(status);
            }
        }

        return counts;
    }

    private XLWorkbook Book()
    {
        XLWorkbook book = new();
        IXLWorksheet sheet = book.AddWorksheet("due");
        int today = DueTable.DayNumber(DueTable.Today);
        for (int row = 1; row <= SheetRows; row++)
        {
            // Serial days of a spreadsheet: 25569 is 1 January 1970.
            sheet.Cell(row, 1).Value = 25569 + _table.DoneDays[row - 1];
            sheet.Cell(row, 2).Value = _table.DueThousandths[row - 1] - _table.NowThousandths[row - 1];
            sheet.Cell(row, 3).FormulaA1 = FormattableString.Invariant($"EDATE(A{row},{DueTable.Months})-{25569 + today}");
            sheet.Cell(row, 4).FormulaA1 = FormattableString.Invariant(
                $"MAX(IF(C{row}<={DueTable.SoonDays},2,0)+IF(C{row}<=0,1,0)+IF(C{row}<-{DueTable.ToleranceDays},1,0),IF(B{row}<={DueTable.SoonThousandths},2,0)+IF(B{row}<=0,1,0)+IF(B{row}<-{DueTable.ToleranceThousandths},1,0))");
        }

        return book;
    }
}
