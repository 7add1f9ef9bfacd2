using System.Text;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Exchange;

public sealed class ExerciseBookCsvTest
{
    private const string Book = """
        Date,Engine hours,Task,Oil added (L),By whom,Remarks
        2026-04-01,412.0,"engine-oil, oil-filter",,M. Kerr,"both changed;
        old filter was dry"
        2026-05-10,431.5,,0.5,MK,
        2026-06-02,448,,0,MK,nothing wanted
        """;

    private static ExerciseBookResult Read(string text, ExerciseBookForm? form = null, ReadLimits? limits = null) =>
        ExerciseBookCsv.Read(Encoding.UTF8.GetBytes(text), form, limits);

    // ----- laws -----

    // Good and bad lines in any mixture: every good line is an entry, every bad one comes back as it stood, under its number.
    [Law]
    public void Lines_GoodAndBad_AreAllAccountedFor(int seed)
    {
        Random random = new(seed);
        (string Text, bool IsGood)[] lines =
        [
            .. Enumerable.Range(0, random.Next(0, 30)).Select(_ => random.Next(9) switch
            {
                0 => ("2026-04-01,412.5,engine-oil,,", true),
                1 => ("2026-04-02,413,,0.5,\"a \"\"note\"\", with\r\nthree\nlines\"", true),
                2 => ("2026-04-03,414,,,水", true),
                3 => ("03/04/2026,414,,,", false),
                4 => ("2026-04-03,\"414,5\",,,", false),
                5 => ("2026-04-03,414,engine-oil,0.5,", false),
                6 => ("2026-04-03,414,,,,too many", false),
                7 => ("2026-04-03,\"414\"x,,,", false),
                _ => (",,,,only a note", false),
            }),
        ];
        string[] breaks = ["\n", "\r\n"];
        StringBuilder text = new("date,hours,task,oil added,note");
        List<int> badAt = [];
        int line = 2;
        foreach ((string one, bool isGood) in lines)
        {
            text.Append(breaks[random.Next(2)]).Append(one);
            if (!isGood)
            {
                badAt.Add(line);
            }

            line += 1 + one.Count(c => c == '\n');
        }

        ExerciseBookResult read = Read(text.ToString());
        Assert.Equal(lines.Count(l => l.IsGood), read.Entries.Count);
        Assert.Equal(lines.Where(l => !l.IsGood).Select(l => l.Text), read.BadLines.Select(bad => bad.Text));
        Assert.Equal(badAt, read.BadLines.Select(bad => bad.Number));
        Assert.All(read.BadLines, bad => Assert.NotEmpty(bad.Faults));
        Assert.Equal(read.BadLines.SelectMany(bad => bad.Faults), read.Faults);

        // What is written to be put right says the same when it is read again.
        using MemoryStream rest = new();
        read.WriteBadLines(rest);
        ExerciseBookResult again = ExerciseBookCsv.Read(rest.ToArray());
        Assert.Empty(again.Entries);
        Assert.Equal(read.Faults.Select(fault => (fault.Column, fault.Value, fault.Expected)), again.Faults.Select(fault => (fault.Column, fault.Value, fault.Expected)));
    }

    // Content never throws, and every byte that is no blank line is in an entry's line or comes back.
    [Law]
    public void Bytes_OfAnyKind_NeverThrow(int seed)
    {
        Random random = new(seed);
        byte[] book = Encoding.UTF8.GetBytes(Book);
        for (int n = 0; n < 30; n++)
        {
            byte[] bytes = [.. book];
            for (int k = random.Next(1, 20); k > 0; k--)
            {
                bytes[random.Next(bytes.Length)] = random.Next(3) == 0 ? (byte)random.Next(256) : book[random.Next(book.Length)];
            }

            ExerciseBookResult read = ExerciseBookCsv.Read(bytes.AsSpan(0, random.Next(bytes.Length + 1)));
            Assert.Equal(read.Entries.Count, read.Log.Entries.Count);
            Assert.Equal(read.IsComplete, read.Faults.Count == 0);
            _ = ServiceLogJson.ToText(read.Log);
        }
    }

    // The order of the columns, the separator, the mark in front and the culture say nothing.
    [Law]
    public void Columns_InAnyOrder_AndEitherSeparator_GiveTheSameLog(int seed)
    {
        Random random = new(seed);
        string[] names = ["date", "engine", "hours", "what", "task", "by", "note"];
        string[][] rows =
        [
            ["2026-04-01", "port", "412.5", "failed", "impeller", "MK", "one; vane, cracked"],
            ["2026-04-02", "", "413", "", "", "", "said \"nothing\""],
            ["2026-10-30", "boat", "", "laid up", "", "", ""],
        ];
        int[] order = [.. Enumerable.Range(0, names.Length).OrderBy(_ => random.Next())];
        char separator = random.Next(2) == 0 ? ',' : ';';
        string Line(string[] cells) => string.Join(separator, order.Select(i => "\"" + cells[i].Replace("\"", "\"\"", StringComparison.Ordinal) + "\""));
        string text = (random.Next(2) == 0 ? "\uFEFF" : "") + string.Join("\r\n", rows.Prepend(names).Select(Line));
        string expected = ServiceLogJson.ToText(ServiceLog.Of(
        [
            LogEntry.Of(Completion.Failed("impeller", new(2026, 4, 1), EngineHours.FromHours(412.5m))).For("port").DoneBy("MK").WithNote("one; vane, cracked"),
            LogEntry.Of(MeterReading.Of(new(2026, 4, 2), EngineHours.FromHours(413m), ReadingSource.Log)).WithNote("said \"nothing\""),
            LogEntry.Of(LaidUp.On(new(2026, 10, 30))).For("boat"),
        ]));
        string culture = new[] { "de-DE", "tr-TR", "ar-SA", "en-US", "th-TH" }[random.Next(5)];
        Assert.Equal(expected, Root.InCulture.Run(culture, () => ServiceLogJson.ToText(Read(text).Log)));
    }

    // ----- examples -----

    [Fact]
    public void Book_AsPeopleTypeIt_BecomesEntries()
    {
        ExerciseBookResult read = Read(Book);
        Assert.Empty(read.Faults);
        Assert.Equal(4, read.Entries.Count);
        Assert.Equal(["engine-oil", "oil-filter"], read.Entries.Take(2).Select(entry => Assert.IsType<Completion>(entry.Fact).TaskId));
        Assert.All(read.Entries.Take(2), entry => Assert.Equal("both changed;\nold filter was dry", entry.Note!.ReplaceLineEndings("\n")));
        TopUp topUp = Assert.IsType<TopUp>(read.Entries[2].Fact);
        Assert.Equal(("engine-oil", 0.5), (topUp.Fluid, topUp.Amount.Volume.Liters));
        Assert.Equal(EngineHours.FromHours(431.5m), topUp.Dial);
        MeterReading reading = Assert.IsType<MeterReading>(read.Entries[3].Fact);
        Assert.Equal((EngineHours.FromHours(448m), ReadingSource.Log), (reading.Shown, reading.Source));
        Assert.Equal(["1", "2", "3", "4"], read.Log.Entries.Select(entry => entry.Id));
    }

    [Theory]
    [InlineData("date,hours\n03/04/2026,1", 2, "date", "03/04/2026", "a date from 1900-01-01")]
    [InlineData("date,hours\n2026-02-29,1", 2, "date", "2026-02-29", "a date from 1900-01-01")]
    [InlineData("date,hours\n2026-4-1,1", 2, "date", "2026-4-1", "a date from 1900-01-01")]
    [InlineData("date,Dial\n\n2026-04-01,\"412,5\"", 3, "Dial", "412,5", "hours from 0 to 1000000")]
    [InlineData("date,hours\n2026-04-01,-1", 2, "hours", "-1", "hours from 0 to 1000000")]
    [InlineData("date,hours\n2026-04-01,1000001", 2, "hours", "1000001", "hours from 0 to 1000000")]
    [InlineData("date,hours\n2026-04-01,1.0001", 2, "hours", "1.0001", "hours from 0 to 1000000")]
    [InlineData("date,hours\n2026-04-01,1e3", 2, "hours", "1e3", "hours from 0 to 1000000")]
    [InlineData("date,hours\n2026-04-01,NaN", 2, "hours", "NaN", "hours from 0 to 1000000")]
    [InlineData("date,hours\n2026-04-01,\"1,234.5\"", 2, "hours", "1,234.5", "hours from 0 to 1000000")]
    [InlineData("date,hours\n2026-04-01,", 2, "hours", "", "hours, a task, an event or an amount added, or a word")]
    [InlineData("date,hours,what\n2026-04-01,1,painted", 2, "what", "painted", "one of reading, done, passed")]
    [InlineData("date,what\n2026-04-01,reading", 2, "hours", "", "the hours that were read")]
    [InlineData("date,what\n2026-04-01,done", 2, "task", "", "something in a line that says 'done'")]
    [InlineData("date,what,event\n2026-04-01,laid up,overheat", 2, "event", "overheat", "nothing in a line that says 'laid-up'")]
    [InlineData("date,task,oil added\n2026-04-01,engine-oil,5.7", 2, "oil added", "5.7", "a line of its own; what is filled in at a change")]
    [InlineData("date,oil added\n2026-04-01,half a can", 2, "oil added", "half a can", "an amount from 0 to 10000 L")]
    [InlineData("date,hours,fluid\n2026-04-01,1,coolant", 2, "fluid", "coolant", "nothing in a line that says 'reading'")]
    [InlineData("date,hours\n2026-04-01,1,x", 2, "cell 3", "x", "no more cells than the header has")]
    [InlineData("hours\n1", 1, "", "hours", "a column 'date'")]
    [InlineData("date,hours,weather\n2026-04-01,1,rain", 1, "weather", "weather", "one of date, engine, hours")]
    [InlineData("date,hours,Engine Hours\n2026-04-01,1,2", 1, "Engine Hours", "Engine Hours", "a column that is not there already as 'hours'")]
    [InlineData("date,oil added,oil added (US qt)\n2026-04-01,1,", 1, "oil added (US qt)", "oil added (US qt)", "a column that is not there already as 'oil added'")]
    [InlineData("", 1, "", "", "a column 'date'")]
    public void Fault_SaysLineColumnValueAndExpectation(string text, int line, string column, string value, string expected)
    {
        ExerciseBookFault fault = Read(text).Faults[0];
        Assert.Equal((line, column, value), (fault.Line, fault.Column, fault.Value));
        Assert.StartsWith(expected, fault.Expected, StringComparison.Ordinal);
        Assert.StartsWith($"line {line}", fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Line_WithSeveralFaults_ReportsThemAll()
    {
        ExerciseBookResult read = Read("date,hours,what,oil added\n1.4.26,x,y,z\n2026-04-01,1,,");
        Assert.Equal(["date", "hours", "oil added", "what"], read.Faults.Select(fault => fault.Column));
        Assert.Single(read.Entries);
        Assert.Equal("1.4.26,x,y,z", Assert.Single(read.BadLines).ToString());
    }

    [Theory]
    [InlineData(DateOrder.DayMonthYear, "03/04/2026", 4, 3)]
    [InlineData(DateOrder.DayMonthYear, "3.4.2026", 4, 3)]
    [InlineData(DateOrder.MonthDayYear, "03/04/2026", 3, 4)]
    [InlineData(DateOrder.MonthDayYear, "3-4-2026", 3, 4)]
    [InlineData(DateOrder.DayMonthYear, "2026-04-03", 4, 3)]
    public void Dates_InAStatedOrder_AreRead(DateOrder order, string date, int month, int day) =>
        Assert.Equal(new LocalDate(2026, month, day), Assert.Single(Read($"date,hours\n{date},1", ExerciseBookForm.Default.WithDates(order)).Entries).Date);

    [Theory]
    [InlineData(DateOrder.DayMonthYear, "04/31/2026")]
    [InlineData(DateOrder.MonthDayYear, "31/04/2026")]
    [InlineData(DateOrder.DayMonthYear, "3/4/26")]
    [InlineData(DateOrder.DayMonthYear, "3/4.2026")]
    [InlineData(DateOrder.DayMonthYear, "003/4/2026")]
    [InlineData(DateOrder.DayMonthYear, "/4/2026")]
    [InlineData(DateOrder.DayMonthYear, "3/4/2026 10:00")]
    [InlineData(DateOrder.DayMonthYear, "2026/04/03")]
    public void Dates_ThatAreNoneInTheStatedOrder_AreRefused(DateOrder order, string date) =>
        Assert.Equal("date", Assert.Single(Read($"date,hours\n{date},1", ExerciseBookForm.Default.WithDates(order)).Faults).Column);

    [Fact]
    public void DecimalComma_WhenStated_IsRead_AndAPointRefused()
    {
        ExerciseBookForm form = ExerciseBookForm.Default.WithDecimalComma();
        ExerciseBookResult read = Read("date;hours;oil added\n2026-04-01;412,5;0,25\n2026-04-02;412.5;", form);
        Assert.Equal(EngineHours.FromHours(412.5m), Assert.Single(read.Entries).Fact!.Dial);
        Assert.Equal((3, "hours", "412.5"), (read.Faults[0].Line, read.Faults[0].Column, read.Faults[0].Value));
    }

    [Fact]
    public void Quarts_BecomeLitres()
    {
        TopUp topUp = Assert.IsType<TopUp>(Assert.Single(Read("date,oil added (US qt)\n2026-04-01,1").Entries).Fact);

        // 57.75 cubic inches of 0.0254 m: NIST Handbook 44, appendix C.
        Assert.Equal(0.946352946, topUp.Amount.Volume.Liters, 9);
    }

    [Fact]
    public void Columns_KeptAsNotes_StandBehindTheNote()
    {
        ExerciseBookForm form = ExerciseBookForm.Default.KeepingAsNotes("WEATHER", "crew");
        ExerciseBookResult read = Read("date,Weather,hours,note,crew\n2026-04-01,rain,1,cold,2\n2026-04-02,,2,,", form);
        Assert.Empty(read.Faults);
        Assert.Equal(["cold; Weather: rain; crew: 2", null], read.Entries.Select(entry => entry.Note));
    }

    [Fact]
    public void Words_OfTheBook_StandForTasks()
    {
        ExerciseBookForm form = ExerciseBookForm.Default.Calling("Oil + filter", "engine-oil", "oil-filter");
        ExerciseBookResult read = Read("date,task\n2026-04-01,oil + FILTER\n2026-04-02,\"oil + filter; anodes\"", form);
        Assert.Equal(["engine-oil", "oil-filter", "engine-oil", "oil-filter", "anodes"], read.Entries.Select(entry => ((Completion)entry.Fact!).TaskId));
    }

    [Fact]
    public void Words_CheckedAgainstABoat_TakeItsEnginesTasksAndTitles()
    {
        EngineSpecification sheet = EngineSpecification.Named("Corrie 24P").With(
            ServiceTask.Replace("engine-oil", ServiceInterval.OfMonths(12)).WithTitle("Oil, engine"));
        BoatSpecification twin = BoatSpecification.Of(Boat.Of("Dipper")).WithEngine("port", sheet).WithEngine("starboard", sheet)
            .With(ServiceTask.Inspect("bilge-pump", ServiceInterval.OfMonths(3)));
        ExerciseBookResult read = Read(
            """
            date,engine,task
            2026-04-01,port,"oil, engine"
            2026-04-01,port,bilge-pump
            2026-04-01,,engine-oil
            2026-04-01,main,engine-oil
            2026-04-01,starboard,engine-oli
            2026-04-01,boat,engine-oil
            """,
            ExerciseBookForm.Default.For(twin));
        Assert.Equal(["engine-oil", "bilge-pump"], read.Entries.Select(entry => ((Completion)entry.Fact!).TaskId));
        Assert.Equal(
            [
                "line 4, engine: ''; expected one of port, starboard, boat",
                "line 5, engine: 'main'; expected one of port, starboard, boat",
                "line 6, task: 'engine-oli'; expected tasks of 'starboard': engine-oil, bilge-pump",
                "line 7, task: 'engine-oil'; expected tasks of 'boat': bilge-pump",
            ],
            read.Faults.Select(fault => fault.ToString()));
    }

    [Fact]
    public void GuardAgainstFormulas_IsTakenOff() =>
        Assert.Equal("-2 °C overnight", Assert.Single(Read("date,hours,note\n2026-04-01,1,'-2 °C overnight").Entries).Note);

    [Fact]
    public void Text_OfAnotherEncoding_ComesBackByteByByte()
    {
        byte[] latin = [.. "date,hours,note\n2026-04-01,1,caf"u8, 0xE9, .. "\n2026-04-02,2,"u8];
        ExerciseBookResult read = ExerciseBookCsv.Read(latin);
        Assert.Single(read.Entries);
        ExerciseBookLine bad = Assert.Single(read.BadLines);
        Assert.Equal(0xE9, bad.Utf8.ToArray()[^1]);
        Assert.Equal(("note", "text in UTF-8"), (bad.Faults[0].Column, bad.Faults[0].Expected));
    }

    [Fact]
    public void Limits_StopTheReading_AndTheRestComesBack()
    {
        ReadLimits limits = ReadLimits.Of(8, 1000, 2);
        ExerciseBookResult read = Read("date,hours\nx,1\ny,1\nz,1\n2026-04-01,1", null, limits);
        Assert.Equal(["x,1", "y,1", "z,1\n2026-04-01,1"], read.BadLines.Select(line => line.Text));
        Assert.Empty(read.Entries);
        Assert.Contains("at most 2 faults", read.Faults[^1].ToString(), StringComparison.Ordinal);

        string tooLong = "date,hours\n" + new string('\n', 1000);
        Assert.Equal("file: '1011 bytes'; expected at most 1000 bytes; nothing was read", Assert.Single(Read(tooLong, null, limits).Faults).ToString());
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(tooLong));
        Assert.False(ExerciseBookCsv.ReadFrom(stream, null, limits).IsComplete);
    }

    [Fact]
    public void Header_WithMillionsOfColumns_IsRefusedAtOnce()
    {
        ExerciseBookResult read = Read(string.Concat(Enumerable.Repeat("x,", 500_000)) + "\n2026-04-01" + string.Concat(Enumerable.Repeat(",y", 500_000)));
        Assert.InRange(read.Faults.Count, 1, 1000);
    }

    [Fact]
    public void Stream_IsReadLikeBytes()
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(Book));
        Assert.Equal(ServiceLogJson.ToText(Read(Book).Log), ServiceLogJson.ToText(ExerciseBookCsv.ReadFrom(stream).Log));
        Assert.True(stream.CanRead);
    }

    [Fact]
    public void Form_RefusesWhatCannotBeMeant()
    {
        Assert.Throws<ArgumentException>(() => ExerciseBookForm.Default.Calling("oil"));
        Assert.Throws<ArgumentException>(() => ExerciseBookForm.Default.Calling(" ", "engine-oil"));
        Assert.Throws<ArgumentException>(() => ExerciseBookForm.Default.KeepingAsNotes("crew", "crew"));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExerciseBookForm.Default.WithDates((DateOrder)9));
    }
}
