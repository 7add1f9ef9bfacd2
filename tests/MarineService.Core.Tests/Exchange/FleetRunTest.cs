using System.IO.Pipelines;
using System.Text;
using System.Text.Json;
using Json.Schema;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using MarineService.Core.Tests.Fleet;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Engines in, results out, line by line: in order, each by itself, whatever is wrong with the others.</summary>
public sealed class FleetRunTest
{
    private const int Engines = 400;

    private static readonly byte[] Input = Encoding.UTF8.GetBytes(RandomFleet.Lines(1, Engines));

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(1, 1 << 20)]
    [InlineData(2, 1 << 20)]
    [InlineData(8, 1 << 20)]
    [InlineData(3, 977)]
    public async Task Output_IsTheSame_OnAnyNumberOfWorkersAndHoweverTheInputComes(int workers, int piece)
    {
        using Pieces input = new(Input, piece);
        (string output, FleetSummary summary) = await Run(input, workers);
        string expected = string.Concat(Enumerable.Range(1, Engines).Select(Expected));
        Assert.Equal(expected, Anonymous(output));
        Assert.Equal(Engines, summary.Engines);
        Assert.Equal(0, summary.Refused);
    }

    [Fact]
    public async Task EachResult_IsValidByTheSchema()
    {
        (string output, _) = await Run(new MemoryStream([.. Input, .. "[]\n"u8]), 1);
        JsonSchema schema = JsonSchema.FromText(DocumentSchemas.FleetResult);
        Assert.All(output.Split('\n', StringSplitOptions.RemoveEmptyEntries), line => Assert.True(schema.Evaluate(JsonDocument.Parse(line).RootElement).IsValid, line));
    }

    [Fact]
    public async Task BadLines_GiveTheirFaults_AndStopNobodyElse()
    {
        string good = RandomFleet.Line(RandomFleet.Engine(1));
        string input = string.Join(
            "\n",
            good,
            "no JSON",
            good.Replace("\"completion\"", "\"complesion\"", StringComparison.Ordinal),
            "   ",
            string.Empty,
            good.Replace("corrie-60p", "corrie-61p", StringComparison.Ordinal) + "\r",
            good);
        (string output, FleetSummary summary) = await Run(new MemoryStream(Encoding.UTF8.GetBytes(input)), 2);
        JsonElement[] results = [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement)];
        Assert.Equal([1, 2, 3, 4, 6, 7], results.Select(result => result.GetProperty("line").GetInt32()));
        Assert.Equal([true, false, false, false, false, true], results.Select(result => result.TryGetProperty("tasks", out _)));
        Assert.Equal("E-1", results[2].GetProperty("engine").GetString());
        Assert.StartsWith("/log/entries/", results[2].GetProperty("faults")[0].GetProperty("place").GetString(), StringComparison.Ordinal);
        Assert.Equal((6, 4), (summary.Engines, summary.Refused));
    }

    [Fact]
    public async Task Line_LongerThanTheLimit_IsRefused_AndTheNextIsRead()
    {
        string good = RandomFleet.Line(RandomFleet.Engine(5));
        ReadLimits limits = ReadLimits.Of(32, 1 << 19, 1000);
        string input = $"{good}\n{new string(' ', 1 << 20)}{good}\n{good}\n";
        List<FleetBatch> batches = [];
        using Pieces stream = new(Encoding.UTF8.GetBytes(input), 50_000);
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(stream, RandomFleet.Evaluation, 2, limits, 1, Token))
        {
            batches.Add(batch);
        }

        string[] lines = Encoding.UTF8.GetString([.. batches.SelectMany(batch => batch.Output.ToArray())]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(3, lines.Length);
        Assert.Equal([1, 2, 3], lines.Select(line => JsonDocument.Parse(line).RootElement.GetProperty("line").GetInt32()));
        Assert.Contains("a longer line", lines[1], StringComparison.Ordinal);
        Assert.Equal(input.Length, batches[^1].InputBytes);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public async Task BrokenRun_GoneOnWith_EqualsAnUnbrokenOne(int batchesBeforeTheBreak)
    {
        using Pieces input = new(Input, 40_000);
        (string whole, FleetSummary wholeSummary) = await Run(input, 2);
        StringBuilder output = new();
        FleetTally tally = new();
        long done = 0;
        long nextLine = 1;
        int batches = 0;
        using Pieces again = new(Input, 40_000);
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(again, RandomFleet.Evaluation, 2, null, 1, Token))
        {
            output.Append(Encoding.UTF8.GetString(batch.Output.ToArray()));
            tally.Add(batch.Summary);
            (done, nextLine) = (batch.InputBytes, batch.NextLine);
            if (++batches == batchesBeforeTheBreak)
            {
                break;
            }
        }

        // What was remembered: the output so far, the summary so far as a document, and where the input was.
        FleetSummary remembered = FleetSummaryJson.Read(Encoding.UTF8.GetBytes(FleetSummaryJson.ToText(tally.ToSummary()))).Value;
        (string rest, FleetSummary restSummary) = await Run(new MemoryStream(Input, (int)done, Input.Length - (int)done), 2, nextLine);
        Assert.Equal(whole, output + rest);
        Assert.Equal(FleetSummaryJson.ToText(wholeSummary), FleetSummaryJson.ToText(remembered.Merge(restSummary)));
    }

    [Fact]
    public async Task Fingerprint_TellsTheSameInputFromAnother()
    {
        string line = RandomFleet.Line(RandomFleet.Engine(1));
        string other = line.Replace("E-1", "E-2", StringComparison.Ordinal);
        (string output, _) = await Run(new MemoryStream(Encoding.UTF8.GetBytes($"{line}\n{line}\n{other}\n")), 1);
        string[] prints = [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(result => JsonDocument.Parse(result).RootElement.GetProperty("fingerprint").GetString()!)];
        Assert.Equal(prints[0], prints[1]);
        Assert.NotEqual(prints[0], prints[2]);

        // The same line under a data sheet that uses up other parts is another input.
        FleetSpecification[] sheets = [.. RandomFleet.Evaluation.Catalogue.Specifications];
        FleetEvaluation changed = FleetEvaluation.Of(
            FleetCatalogue.Of([.. sheets.Select(sheet => FleetSpecification.Of(sheet.Reference, sheet.Specification))]), RandomFleet.Evaluation.Today);
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(new MemoryStream(Encoding.UTF8.GetBytes(line)), changed, cancellation: Token))
        {
            using JsonDocument result = JsonDocument.Parse(batch.Output);
            Assert.NotEqual(prints[0], result.RootElement.GetProperty("fingerprint").GetString());
        }
    }

    [Fact]
    public async Task Pipe_GivesTheSameAsTheStream_AndTellsHowFarItIs()
    {
        Pipe pipe = new(new PipeOptions(pauseWriterThreshold: 0));
        List<long> told = [];
        FleetSummary summary = await FleetRun.PipeAsync(
            PipeReader.Create(new MemoryStream(Input)), pipe.Writer, RandomFleet.Evaluation, 2, new Told(told), null, Token);
        await pipe.Writer.CompleteAsync();
        using StreamReader reader = new(pipe.Reader.AsStream());
        (string stream, FleetSummary streamSummary) = await Run(new MemoryStream(Input), 1);
        Assert.Equal(stream, await reader.ReadToEndAsync(Token));
        Assert.Equal(FleetSummaryJson.ToText(streamSummary), FleetSummaryJson.ToText(summary));
        Assert.Equal(Engines, told[^1]);
        Assert.Equal(told.Order(), told);
    }

    [Fact]
    public async Task SummaryOfAStretch_LookedAtAsItComes_IsWhatItAddsUpTo()
    {
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(new MemoryStream(Input), RandomFleet.Evaluation, cancellation: Token))
        {
            FleetTally tally = new();
            tally.Add(batch.Summary);
            Assert.Equal(FleetSummaryJson.ToText(tally.ToSummary()), FleetSummaryJson.ToText(batch.Summary));
            Assert.Equal(batch.Summary.DueDates.Count, batch.Summary.DueDates.Select(due => due.Date).Distinct().Count());
            Assert.Equal(batch.Summary.Parts.Count, batch.Summary.Parts.Select(part => (part.Depot, part.Week, part.Part)).Distinct().Count());
        }
    }

    private static async Task<(string Output, FleetSummary Summary)> Run(Stream input, int workers, long firstLine = 1)
    {
        using MemoryStream output = new();
        FleetTally tally = new();
        await foreach (FleetBatch batch in FleetRun.BatchesAsync(input, RandomFleet.Evaluation, workers, null, firstLine, Token))
        {
            output.Write(batch.Output.Span);
            tally.Add(batch.Summary);
        }

        return (Encoding.UTF8.GetString(output.ToArray()), tally.ToSummary());
    }

    // The result by the typed road; fingerprint and line belong to the stream.
    private static string Expected(int number)
    {
        System.Buffers.ArrayBufferWriter<byte> output = new();
        FleetResultJson.Write(RandomFleet.Evaluation.Evaluate(RandomFleet.Engine(number)), output);
        return Encoding.UTF8.GetString(output.WrittenSpan.ToArray()) + "\n";
    }

    private static string Anonymous(string output) =>
        System.Text.RegularExpressions.Regex.Replace(output, "\"(line\":[0-9]+|fingerprint\":\"[0-9a-f]{64}\"),", string.Empty);

    private sealed class Told(List<long> told) : IProgress<long>
    {
        public void Report(long value) => told.Add(value);
    }

    /// <summary>A stream that gives a little at a time, as a network does.</summary>
    private sealed class Pieces(byte[] bytes, int piece) : MemoryStream(bytes)
    {
        public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
            base.ReadAsync(buffer, offset, Math.Min(count, piece), cancellationToken);
    }
}
