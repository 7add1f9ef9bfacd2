using System.Text;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using NodaTime;
using Orleans.TestingHost;
using Xunit;

namespace Fleet.Tests;

/// <summary>A fleet comes to the same bytes on one thread, on many, after a kill, and on a cluster that loses a silo.</summary>
public sealed class FleetRunTest
{
    private const int Engines = 2_000;
    private static readonly LocalDate Today = new(2026, 10, 12);
    private static readonly FleetEvaluation Evaluation = FleetEvaluation.Of(Catalogue.Invented, Today);

    [Fact]
    public async Task InventedFleet_IsTheSameForTheSameSeed_AndAnotherForAnother()
    {
        Assert.Equal(Ndjson(50, 7), Ndjson(50, 7));
        Assert.NotEqual(Ndjson(50, 7), Ndjson(50, 8));
        (byte[] output, FleetSummary summary) = await RunAsync(Ndjson(50, 7), 1);
        Assert.Equal(50, summary.Engines);
        Assert.Equal(0, summary.Refused);
        Assert.Equal(50, output.Count(one => one == '\n'));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(7)]
    public async Task Threads_ChangeNothing(int threads)
    {
        byte[] input = Ndjson(Engines, 7);
        (byte[] one, FleetSummary summary) = await RunAsync(input, 1);
        (byte[] many, FleetSummary other) = await RunAsync(input, threads);
        Assert.Equal(one, many);
        Assert.Equal(FleetSummaryJson.ToText(summary), FleetSummaryJson.ToText(other));
    }

    /// <summary>What was written after the checkpoint is cut off and written again; nothing is lost or counted twice.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public async Task KilledAndResumed_EqualsUnbroken(int stretchesBeforeTheKill)
    {
        byte[] input = Ndjson(Engines, 7);
        (byte[] unbroken, FleetSummary summary) = await RunAsync(input, 2);
        using MemoryStream output = new();
        Checkpoint reached = Checkpoint.Start;
        int count = 0;
        await foreach (Stretch stretch in LocalRun.StretchesAsync(new MemoryStream(input), Evaluation, 2, 1, Cancel))
        {
            output.Write(stretch.Output.Span);
            FleetTally tally = new();
            tally.Add(reached.Summary);
            tally.Add(stretch.Summary);
            reached = new(stretch.InputBytes, output.Length, stretch.NextLine, tally.ToSummary());
            if (++count == stretchesBeforeTheKill)
            {
                break;
            }
        }

        Assert.InRange(reached.Summary.Engines, 1, Engines - 1);
        string file = Path.GetTempFileName();
        reached.Write(file);
        Checkpoint from = Checkpoint.Read(file);
        File.Delete(file);
        output.Write("half a line that was never remembered"u8);
        output.SetLength(from.OutputBytes);
        output.Seek(0, SeekOrigin.End);
        FleetSummary resumed = await new FleetJob("2 threads", TextWriter.Null).RunAsync(
            LocalRun.StretchesAsync(new MemoryStream(input[(int)from.InputBytes..]), Evaluation, 2, from.NextLine, Cancel), output, from, null, Cancel);
        Assert.Equal(unbroken, output.ToArray());
        Assert.Equal(FleetSummaryJson.ToText(summary), FleetSummaryJson.ToText(resumed));
    }

    [Fact]
    public async Task ClusterThatLosesASilo_LosesNothing_AndCountsNothingTwice()
    {
        byte[] input = [.. Ndjson(Engines, 7), .. "not a document\n"u8];
        (byte[] local, FleetSummary summary) = await RunAsync(input, 1);
        TestClusterBuilder builder = new(3);
        TestCluster cluster = builder.Build();
        await cluster.DeployAsync(Cancel);
        try
        {
            using MemoryStream output = new();
            FleetTally tally = new();
            int stretches = 0;
            await foreach (Stretch stretch in new ClusterRun(cluster.GrainFactory, Today).StretchesAsync(new MemoryStream(input), 1, Cancel))
            {
                output.Write(stretch.Output.Span);
                tally.Add(stretch.Summary);
                if (++stretches == 4)
                {
                    await cluster.KillSiloAsync(cluster.SecondarySilos[0], Cancel);
                }
            }

            Assert.True(stretches > 8);
            Assert.Equal(Encoding.UTF8.GetString(local), Encoding.UTF8.GetString(output.ToArray()));
            Assert.Equal(FleetSummaryJson.ToText(summary), FleetSummaryJson.ToText(tally.ToSummary()));
        }
        finally
        {
            await cluster.StopAllSilosAsync(Cancel);
            await cluster.DisposeAsync();
        }
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static byte[] Ndjson(int engines, int seed)
    {
        using InventedFleet fleet = new(engines, seed, Today);
        using MemoryStream made = new();
        fleet.CopyTo(made);
        return made.ToArray();
    }

    private static async Task<(byte[] Output, FleetSummary Summary)> RunAsync(byte[] input, int threads)
    {
        using MemoryStream output = new();
        FleetSummary summary = await new FleetJob($"{threads} threads", TextWriter.Null).RunAsync(
            LocalRun.StretchesAsync(new MemoryStream(input), Evaluation, threads, 1, Cancel), output, Checkpoint.Start, null, Cancel);
        return (output.ToArray(), summary);
    }
}
