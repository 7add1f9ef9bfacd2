using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Parts;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using MarineService.Core.Tests;
using MarineService.Reports.Tables;
using nietras.SeparatedValues;
using NodaTime;
using UnitsNet;

namespace MarineService.Reports.Tests.Tables;

/// <summary>Against RFC 4180, read back by two foreign readers (CsvHelper and Sep).</summary>
public sealed class CsvTableTest
{
    private static readonly char[] Separators = [',', ';', '\t'];

    // OWASP, CSV injection: what a cell must not begin with.
    private static readonly HashSet<int> FormulaMarks = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];

    // ----- laws -----

    [Law]
    public void Log_OfHostileTexts_IsReadBackByBothReaders_WithoutAFormula(int seed)
    {
        Random random = new(seed);
        LogEntry[] entries = [.. Enumerable.Range(0, random.Next(1, 6)).Select(_ => LogEntry
            .Of(random.Next(3) switch
            {
                0 => Completion.Of(Hostile.Text(random), new(2026, 4, 1), EngineHours.FromHours(412.5m)),
                1 => ServiceEvent.Of(Hostile.Text(random), new(2026, 4, 2)),
                _ => TopUp.Of(Hostile.Text(random), new(2026, 4, 3), MeasuredVolume.Of(Volume.FromLiters(0.5))),
            })
            .For(Hostile.Text(random)).DoneBy(Hostile.Text(random)).WithChecker(Hostile.Text(random)).WithNote(Hostile.Text(random))
            .WithEvidence(Evidence.Of(EvidenceKind.Receipt, Hostile.Text(random))))];
        CsvTable table = CsvTable.Of(ServiceLog.Of(entries));
        foreach (IReadOnlyList<string[]> rows in ReadBack(table))
        {
            Assert.Equal(entries.Length, rows.Count);
            foreach ((LogEntry entry, string[] row) in entries.Zip(rows))
            {
                Assert.Equal(entry.Fact!.Dial?.ToHours() ?? -1, row[3].Length == 0 ? -1 : decimal.Parse(row[3], CultureInfo.InvariantCulture));
                Assert.Equal(
                    new[] { entry.Scope, (entry.Fact as Completion)?.TaskId, (entry.Fact as ServiceEvent)?.Kind, (entry.Fact as TopUp)?.Fluid, entry.By, entry.CheckedBy, entry.Note }
                        .Select(text => Hostile.Held(text ?? "")),
                    new[] { row[2], row[5], row[6], row[7], row[9], row[10], row[11] }.Select(Unguarded));
                Assert.EndsWith(Hostile.Held(entry.Evidence[0].Reference), row[13], StringComparison.Ordinal);
                Assert.All(row, AssertNoFormula);
            }
        }
    }

    [Law]
    public void DueAndKit_OfHostileTexts_AreReadBackByBothReaders_WithoutAFormula(int seed)
    {
        Random random = new(seed);
        string id = Hostile.Text(random);
        string title = Hostile.Text(random);
        ServiceTask task = ServiceTask.Replace(id, ServiceInterval.OfMonths(12)).WithTitle(title);
        DueList due = ServiceLog.Empty.DueList(EngineSpecification.Named("Corrie 60P").With(task), new(2026, 10, 12));
        foreach (IReadOnlyList<string[]> rows in ReadBack(CsvTable.Of(due)))
        {
            Assert.Equal([Hostile.Held(id), Hostile.Held(title)], Assert.Single(rows).Skip(1).Take(2).Select(Unguarded));
            Assert.All(rows[0].Where((_, column) => column is not (5 or 9)), AssertNoFormula);
        }

        KitList kit = KitList.For(PartsCatalogue.Of(ServicePart.Of(id, title)), [TaskKit.Of(title, KitItem.Of(id))]);
        foreach (IReadOnlyList<string[]> rows in ReadBack(CsvTable.Of(kit)))
        {
            string[] row = Assert.Single(rows);
            Assert.Equal([Hostile.Held(id), Hostile.Held(title), Hostile.Held(title)], new[] { row[0], row[1], row[11] }.Select(Unguarded));
            Assert.All(row, AssertNoFormula);
        }

        IReadOnlyList<Finding> findings = ServiceLog.Empty.With(Completion.Failed(id, new(2026, 10, 1))).DueList(EngineSpecification.Named("Corrie 60P").With(task), Club.Today).Findings;
        Assert.NotEmpty(findings);
        foreach (IReadOnlyList<string[]> rows in ReadBack(CsvTable.Of(findings)))
        {
            Assert.Equal(findings.Select(finding => Hostile.Held(finding.Subject)), rows.Select(row => Unguarded(row[2])));
            Assert.All(rows.SelectMany(row => row), AssertNoFormula);
        }
    }

    // What the table calls by the exercise book's names, the exercise book's reader takes for the same facts.
    [Law]
    public void Log_OfPlainFacts_ComesBackThroughTheExerciseBook(int seed)
    {
        Random random = new(seed);
        LocalDate Day() => new LocalDate(2026, 1, 1).PlusDays(random.Next(300));
        EngineHours? Dial() => random.Next(2) == 0 ? null : EngineHours.FromHours(random.Next(1, 1_000_000) / 1000m);
        LogEntry[] entries = [.. Enumerable.Range(0, random.Next(1, 8)).Select(_ => LogEntry
            .Of(random.Next(8) switch
            {
                0 => MeterReading.Of(Day(), EngineHours.FromHours(random.Next(1_000_000) / 1000m), ReadingSource.Log),
                1 => Completion.Of("engine-oil", Day(), Dial()),
                2 => Completion.Passed("impeller-look", Day(), Dial()),
                3 => Completion.Failed("impeller-look", Day(), Dial()),
                4 => ServiceEvent.Of("=overheat; \"hot\"", Day(), Dial()),
                5 => TopUp.Of("coolant", Day(), MeasuredVolume.Of(Volume.FromLiters(random.Next(1, 100) / 10.0)), Dial()),
                6 => LaidUp.On(Day(), Dial()),
                _ => Commissioned.On(Day(), Dial()),
            })
            .For(random.Next(2) == 0 ? "main" : "port").DoneBy("M. Kerr"))];
        ServiceLog log = ServiceLog.Of(entries);
        char separator = random.Next(2) == 0 ? ',' : ';';
        using MemoryStream stream = new();
        CsvTable.Of(log).WriteTo(stream, separator, withMark: random.Next(2) == 0);
        ExerciseBookResult back = ExerciseBookCsv.Read(
            stream.ToArray(), ExerciseBookForm.Default.KeepingAsNotes("id", "detail", "evidence", "reconstructed", "corrects", "corrected by"));
        Assert.Empty(back.Faults);
        ServiceLog plain = ServiceLog.Of(back.Entries.Select(entry => LogEntry.Of(entry.Fact!).For(entry.Scope).DoneBy(entry.By!)));
        Assert.Equal(ServiceLogJson.ToText(log), ServiceLogJson.ToText(plain));
    }

    // ----- the demo club -----

    public static TheoryData<string> Boats => [.. Club.Boats];

    [Theory]
    [MemberData(nameof(Boats))]
    public void Tables_OfTheClub_HoldEveryEntryTaskAndFinding(string boat)
    {
        ServiceLog log = Club.Log(boat);
        DueList due = log.DueList(Club.Boat(boat), Club.Today);
        foreach (IReadOnlyList<string[]> rows in ReadBack(CsvTable.Of(log)))
        {
            Assert.Equal(log.Entries.Select(entry => entry.Id), rows.Select(row => row[0]));
        }

        foreach (IReadOnlyList<string[]> rows in ReadBack(CsvTable.Of(due)))
        {
            Assert.Equal(due.MostUrgentFirst.Select(task => task.TaskId), rows.Select(row => row[1]));
            Assert.Equal(due.MostUrgentFirst.Select(task => task.Explain(DisplayUnits.Metric).Answer), rows.Select(row => row[19]));
        }

        foreach (IReadOnlyList<string[]> rows in ReadBack(CsvTable.Of(due.Findings)))
        {
            Assert.Equal(due.Findings.Select(finding => finding.Message(DisplayUnits.Metric)), rows.Select(row => row[3]));
        }
    }

    [Fact]
    public void Tables_InAnyCulture_AreTheSameBytes()
    {
        ServiceLog log = Club.Log("curlew");
        DueList due = log.DueList(Club.Boat("curlew"), Club.Today);
        Assert.Single(InCulture.Each(() => CsvTable.Of(log).ToCsv() + CsvTable.Of(due).ToCsv() + CsvTable.Of(due.Findings).ToCsv()).Distinct());
    }

    // ----- examples -----

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+44 1234", "'+44 1234")]
    [InlineData("-2 °C", "'-2 °C")]
    [InlineData("@home", "'@home")]
    [InlineData("＝1", "'＝1")]
    [InlineData(" \u200B=1", "' \u200B=1")]
    [InlineData("\tx", "'\tx")]
    [InlineData("'quoted'", "''quoted'")]
    [InlineData("a=1", "a=1")]
    [InlineData("5.7 L", "5.7 L")]
    [InlineData("", "")]
    public void Text_LikeAFormula_HasAnApostropheInFront(string text, string guarded) => Assert.Equal(guarded, CsvText.Guarded(text));

    [Fact]
    public void Kit_InWords_IsTheTable()
    {
        PartsCatalogue catalogue = PartsCatalogue.Of(
            ServicePart.Measured("LV-OIL", "Engine oil", "L", 0.05m), ServicePart.Of("LV-FIL", "Oil filter; spin-on"), ServicePart.Tool("LV-KEY", "Strap wrench"));
        KitList kit = KitList.For(
            catalogue, [TaskKit.Of("engine-oil", KitItem.Of("LV-OIL", 5.7m), KitItem.Of("LV-FIL"), KitItem.Of("LV-KEY"))], shelf: [KitItem.Of("LV-OIL", 2m), KitItem.Of("LV-KEY")]);
        Assert.Equal(
            "part,title,unit,tool,for the tasks,reserve,spare aboard,total,on shelf,off the shelf,to buy,wanted by\r\n"
            + "LV-FIL,\"Oil filter; spin-on\",piece,no,1,0,0,1,0,0,1,engine-oil\r\n"
            + "LV-KEY,Strap wrench,piece,yes,1,0,0,1,1,1,0,engine-oil\r\n"
            + "LV-OIL,Engine oil,L,no,5.7,0.285,0,5.985,2,2,3.985,engine-oil\r\n",
            CsvTable.Of(kit).ToCsv());
    }

    [Fact]
    public void Due_NotKnown_SaysSoAndWhatIsMissing()
    {
        EngineSpecification spec = EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("engine-oil", ServiceInterval.FirstOf(EngineHours.FromHours(100), 12)));
        DueList due = ServiceLog.Empty.With(Completion.Of("engine-oil", new(2026, 4, 1), EngineHours.FromHours(412m))).DueList(spec, new(2026, 6, 1));
        foreach (IReadOnlyList<string[]> rows in ReadBack(CsvTable.Of(due)))
        {
            string[] row = Assert.Single(rows);
            Assert.Equal(("2027-04-01", "304", "known", "not known", ""), (row[4], row[5], row[6], row[10], row[9]));
            Assert.NotEqual("", row[20]);
        }
    }

    [Fact]
    public void Numbers_BelowNought_AreUntouched()
    {
        EngineSpecification spec = EngineSpecification.Named("Corrie 60P").With(ServiceTask.Replace("coolant", ServiceInterval.OfMonths(12)));
        DueList due = ServiceLog.Empty.With(Completion.Of("coolant", new(2025, 4, 1))).DueList(spec, new(2026, 4, 11));
        Assert.All(ReadBack(CsvTable.Of(due)), rows => Assert.Equal("-10", Assert.Single(rows)[5]));
    }

    [Fact]
    public void EveryKindOfFact_HasAWordOfItsOwn()
    {
        Type[] facts = [.. typeof(ServiceFact).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(ServiceFact)))];
        Assert.NotEmpty(facts);
        string[] words = [.. facts.Select(type => LogTable.What((ServiceFact)RuntimeHelpers.GetUninitializedObject(type)))];
        Assert.Equal(words.Length, words.Distinct().Count());
    }

    [Fact]
    public void Entries_CorrectedAndWithdrawn_SayByWhich()
    {
        ServiceLog log = ServiceLog.Empty
            .With(MeterReading.Of(new(2026, 4, 1), EngineHours.FromHours(421m)))
            .With(LogEntry.Of(MeterReading.Of(new(2026, 4, 1), EngineHours.FromHours(412m))).Correcting("1"))
            .With(LogEntry.Withdrawing("2", new(2026, 4, 2)));
        Assert.All(ReadBack(CsvTable.Of(log)), rows => Assert.Equal(
            [("reading", "", "2"), ("reading", "1", "3"), ("withdrawal", "2", "")], rows.Select(row => (row[4], row[15], row[16]))));
    }

    [Fact]
    public void Mark_OnRequest_ComesFirst()
    {
        using MemoryStream stream = new();
        CsvTable.Of(ServiceLog.Empty).WriteTo(stream, ';', withMark: true);
        Assert.Equal([0xEF, 0xBB, 0xBF, (byte)'i', (byte)'d', (byte)';'], stream.ToArray()[..6]);
        Assert.True(stream.CanWrite);
    }

    [Fact]
    public void BadInput_IsRefusedByName()
    {
        CsvTable table = CsvTable.Of(ServiceLog.Empty);
        Assert.Equal("separator", Assert.Throws<ArgumentOutOfRangeException>(() => table.ToCsv('|')).ParamName);
        Assert.Equal("stream", Assert.Throws<ArgumentNullException>(() => table.WriteTo(null!)).ParamName);
        Assert.Equal("log", Assert.Throws<ArgumentNullException>(() => CsvTable.Of((ServiceLog)null!)).ParamName);
        Assert.Equal("due", Assert.Throws<ArgumentNullException>(() => CsvTable.Of((DueList)null!)).ParamName);
        Assert.Equal("kit", Assert.Throws<ArgumentNullException>(() => CsvTable.Of((KitList)null!)).ParamName);
        Assert.Equal("findings", Assert.Throws<ArgumentNullException>(() => CsvTable.Of((IEnumerable<Finding>)null!)).ParamName);
        Assert.Equal("units", Assert.Throws<ArgumentOutOfRangeException>(() => CsvTable.Of([], (DisplayUnits)9)).ParamName);
    }

    private static string Unguarded(string cell) => cell.StartsWith('\'') ? cell.Substring(1) : cell;

    private static void AssertNoFormula(string cell)
    {
        foreach (Rune rune in cell.EnumerateRunes())
        {
            Assert.False(FormulaMarks.Contains(rune.Value), $"'{cell}' begins like a formula.");
            if (!Rune.IsWhiteSpace(rune) && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Format or UnicodeCategory.Control))
            {
                return;
            }
        }
    }

    // By each foreign reader and with each separator; the header is checked on the way.
    private static IEnumerable<IReadOnlyList<string[]>> ReadBack(CsvTable table)
    {
        foreach (char separator in Separators)
        {
            string text = table.ToCsv(separator);
            Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
            foreach (List<string[]> rows in new[] { ByCsvHelper(text, separator), BySep(text, separator) })
            {
                Assert.Equal(table.Columns, rows[0]);
                Assert.Equal(table.RowCount, rows.Count - 1);
                yield return [.. rows.Skip(1)];
            }
        }
    }

    private static List<string[]> ByCsvHelper(string text, char separator)
    {
        using CsvParser parser = new(new StringReader(text), new CsvConfiguration(CultureInfo.InvariantCulture) { Delimiter = separator.ToString(), IgnoreBlankLines = false });
        List<string[]> rows = [];
        while (parser.Read())
        {
            rows.Add(parser.Record!);
        }

        return rows;
    }

    private static List<string[]> BySep(string text, char separator)
    {
        using SepReader reader = Sep.New(separator).Reader(options => options with { Unescape = true, HasHeader = false }).FromText(text);
        List<string[]> rows = [];
        foreach (SepReader.Row row in reader)
        {
            string[] cells = new string[row.ColCount];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = row[i].ToString();
            }

            rows.Add(cells);
        }

        return rows;
    }
}
