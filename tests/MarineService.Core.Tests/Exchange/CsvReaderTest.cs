using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using CsvReader = MarineService.Core.Exchange.CsvReader;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Against RFC 4180 and against a foreign reader and writer (CsvHelper).</summary>
public sealed class CsvReaderTest
{
    private static readonly string[] Pieces =
        ["", "a", "b c", " ", "\"", "\"\"", ",", ";", "\n", "\r\n", "\r", "é", "水", "\U0001F6A4", "\uFFFD", "=1+1", "'", "\t", "2026-04-01", "0"];

    [Law]
    public void Cells_WrittenByAForeignWriter_AreReadBack(int seed)
    {
        Random random = new(seed);
        for (int n = 0; n < 20; n++)
        {
            string[][] table = Table(random);
            char separator = random.Next(2) == 0 ? ',' : ';';
            using StringWriter text = new(CultureInfo.InvariantCulture);
            using (CsvWriter writer = new(text, Foreign(separator, random.Next(2) == 0 ? "\n" : "\r\n")))
            {
                foreach (string[] row in table)
                {
                    Array.ForEach(row, writer.WriteField);
                    writer.NextRecord();
                }
            }

            Assert.Equal(table, Ours(Encoding.UTF8.GetBytes(text.ToString()), separator, out string? fault));
            Assert.Null(fault);
        }
    }

    // Any mixture of quotes, separators and line breaks: what ours takes for CSV, the foreign reader takes for the same cells.
    [Law]
    public void Text_OfAnyKind_IsReadAsAForeignReaderReadsIt_OrRefused(int seed)
    {
        Random random = new(seed);
        for (int n = 0; n < 50; n++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(1, 12)).Select(_ => Pieces[random.Next(Pieces.Length)]));
            string[][] ours = Ours(Encoding.UTF8.GetBytes(text), ',', out string? fault);
            if (fault is null)
            {
                Assert.Equal(Theirs(text), ours);
            }
        }
    }

    // Nothing is lost: records and line breaks together are the text, and line numbers count its breaks.
    [Law]
    public void Records_OfAnyBytes_CoverTheText_WithTheirLineNumbers(int seed)
    {
        Random random = new(seed);
        byte[] alphabet = [(byte)'"', (byte)'"', (byte)',', (byte)'\n', (byte)'\r', (byte)'a', 0xC3, 0xA9, 0xFF, 0];
        for (int n = 0; n < 50; n++)
        {
            byte[] bytes = [.. Enumerable.Range(0, random.Next(0, 40)).Select(_ => alphabet[random.Next(alphabet.Length)])];
            CsvReader csv = new(bytes, 0, (byte)',');
            int at = 0;
            while (csv.Read())
            {
                Assert.Equal(at, csv.Start);
                Assert.Equal(1 + Breaks(bytes, at), csv.Line);
                at = csv.End;
                at += at < bytes.Length && bytes[at] == '\r' && at + 1 < bytes.Length && bytes[at + 1] == '\n' ? 2 : at < bytes.Length ? 1 : 0;
            }

            Assert.Equal(bytes.Length, at);
        }
    }

    [Theory]
    [InlineData("a,\"b", 1, "a closing quote")]
    [InlineData("a,\"b\"c", 1, "the end of the cell behind its closing quote")]
    [InlineData("a\"b,c", 0, "a cell with quotes in quotes, and its own quotes doubled")]
    public void Record_ThatIsNone_SaysWhere_AndTheNextLineIsRead(string line, int cell, string expected)
    {
        CsvReader csv = new(Encoding.UTF8.GetBytes(line + "\r\nx,y"), 0, (byte)',');
        Assert.True(csv.Read());
        Assert.Equal((cell, expected), (csv.Cells.Count, csv.Expected));
        Assert.Equal(line.Length, csv.End);
        Assert.True(csv.Read());
        Assert.Equal((2, null), (csv.Line, csv.Expected));
        Assert.Equal(["x", "y"], csv.Cells);
        Assert.False(csv.Read());
    }

    // Lines that each open a quote, or hold doubled ones, must not each be searched to the end of the text.
    [Theory]
    [InlineData("\"\n")]
    [InlineData("x,\"\n")]
    [InlineData("\"\"\"\"x\n")]
    [InlineData("\"a\"b\n")]
    [InlineData("\"\"\"\n")]
    public void Quotes_WithoutEnd_CostNoMoreThanTheirLine(string line)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(line, 200_000)));
        CsvReader csv = new(bytes, 0, (byte)',');
        int records = 0;
        while (csv.Read())
        {
            records++;
        }

        Assert.InRange(records, 1, 200_000);
    }

    private static int Breaks(byte[] bytes, int to)
    {
        int breaks = 0;
        for (int i = 0; i < to; i++)
        {
            breaks += bytes[i] == '\n' || (bytes[i] == '\r' && (i + 1 == bytes.Length || bytes[i + 1] != '\n')) ? 1 : 0;
        }

        return breaks;
    }

    private static string[][] Table(Random random)
    {
        int columns = random.Next(1, 5);

        // A line with one empty cell is a blank line, of which readers make this or that.
        string Cell() => string.Concat(Enumerable.Range(0, random.Next(columns == 1 ? 1 : 0, 4)).Select(_ => Pieces[random.Next(columns == 1 ? 1 : 0, Pieces.Length)]));
        return [.. Enumerable.Range(0, random.Next(1, 6)).Select(_ => Enumerable.Range(0, columns).Select(_ => Cell()).ToArray())];
    }

    private static string[][] Ours(byte[] utf8, char separator, out string? fault)
    {
        List<string[]> rows = [];
        fault = null;
        CsvReader csv = new(utf8, 0, (byte)separator);
        while (csv.Read())
        {
            rows.Add([.. csv.Cells]);
            fault ??= csv.Expected;
        }

        return [.. rows];
    }

    private static string[][] Theirs(string text)
    {
        using CsvParser parser = new(new StringReader(text), Foreign(',', null));
        List<string[]> rows = [];
        while (parser.Read())
        {
            rows.Add(parser.Record!);
        }

        return [.. rows];
    }

    private static CsvConfiguration Foreign(char separator, string? newLine)
    {
        CsvConfiguration configuration = new(CultureInfo.InvariantCulture)
        {
            Delimiter = separator.ToString(),
            HasHeaderRecord = false,
            IgnoreBlankLines = false,
            InjectionOptions = InjectionOptions.None,

            // By itself it leaves a CR bare where lines end in LF.
            ShouldQuote = cell => cell.Field?.IndexOfAny([separator, (char)34, (char)10, (char)13]) >= 0,
        };
        if (newLine is not null)
        {
            configuration.NewLine = newLine;
        }

        return configuration;
    }
}
