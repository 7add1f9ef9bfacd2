using System.CommandLine;
using Fleet;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using NodaTime;
using NodaTime.Text;

Option<long> engines = new("--engines") { Description = "How many engines to invent; 100000 unless said. Not with --input.", DefaultValueFactory = _ => 100_000 };
Option<int> seed = new("--seed") { Description = "The seed of the invented fleet; 7 unless said.", DefaultValueFactory = _ => 7 };
Option<string?> input = new("--input") { Description = "NDJSON with one engine on a line, or - for stdin, instead of an invented fleet." };
Option<string?> output = new("--output") { Description = "File that takes the results as NDJSON, or - for stdout (the summary then goes to stderr)." };
Option<bool> resume = new("--resume") { Description = "Go on where a killed run to the same --output stopped." };
Option<string?> invent = new("--invent") { Description = "Only write the invented fleet as NDJSON to this file." };
Option<int> threads = new("--threads") { Description = "How many threads; as many as the machine has unless said.", DefaultValueFactory = _ => Environment.ProcessorCount };
Option<bool> cluster = new("--cluster") { Description = "Judge on an Orleans cluster instead of threads: one silo on this machine, one grain for each engine." };
Option<string> today = new("--today") { Description = "The day, such as 2026-10-12.", DefaultValueFactory = _ => "2026-10-12" };
RootCommand root = new("Example: Fleet --engines 100000 --seed 7\n\nWhat is due on every engine of a fleet, and which parts that needs.")
{
    engines, seed, input, output, resume, invent, threads, cluster, today,
};
root.SetAction(async (parsed, cancellation) =>
{
    ParseResult<LocalDate> day = LocalDatePattern.Iso.Parse(parsed.GetValue(today)!);
    string? to = parsed.GetValue(output);
    bool goOn = parsed.GetValue(resume);
    if (!day.Success || day.Value.Year is < 1900 or > 2199 || parsed.GetValue(engines) is < 1 or > 1_000_000_000 || parsed.GetValue(threads) is < 1 or > 1024 || (goOn && to is null or "-"))
    {
        await Console.Error.WriteLineAsync("--today is a date from 1900 to 2199, --engines 1 to 1000000000, --threads 1 to 1024; --resume needs a file as --output.");
        return 64;
    }

    if (parsed.GetValue(invent) is string file)
    {
        using InventedFleet fleet = new(parsed.GetValue(engines), parsed.GetValue(seed), day.Value);
        await using FileStream made = File.Create(file);
        await fleet.CopyToAsync(made, cancellation);
        return 0;
    }

    string? from = parsed.GetValue(input);
    if (from is not null and not "-" && !File.Exists(from))
    {
        await Console.Error.WriteLineAsync($"There is no file {from}.");
        return 66;
    }

    string? checkpoint = to is null or "-" ? null : to + ".checkpoint";
    Checkpoint start = goOn ? Checkpoint.Read(checkpoint!) : Checkpoint.Start;
    await using Stream source = from switch
    {
        null => new InventedFleet(parsed.GetValue(engines), parsed.GetValue(seed), day.Value),
        "-" => Console.OpenStandardInput(),
        _ => File.OpenRead(from),
    };
    await Skip(source, start.InputBytes, cancellation);
    await using Stream? target = to switch
    {
        null => null,
        "-" => Console.OpenStandardOutput(),
        _ => Open(to, start.OutputBytes),
    };
    FleetSummary summary = parsed.GetValue(cluster)
        ? await OnCluster(source, target, start, checkpoint, day.Value, cancellation)
        : await new FleetJob($"{parsed.GetValue(threads)} threads", Console.Error).RunAsync(
            LocalRun.StretchesAsync(source, FleetEvaluation.Of(Catalogue.Invented, day.Value), parsed.GetValue(threads), start.NextLine, cancellation), target, start, checkpoint, cancellation);
    await (to == "-" ? Console.Error : Console.Out).WriteLineAsync(FleetSummaryJson.ToText(summary));
    return 0;
});
return await root.Parse(args).InvokeAsync();

static async Task<FleetSummary> OnCluster(Stream source, Stream? target, Checkpoint start, string? checkpoint, LocalDate day, CancellationToken cancellation)
{
    HostApplicationBuilder builder = Host.CreateApplicationBuilder();
    builder.Logging.SetMinimumLevel(LogLevel.Error);
    builder.UseOrleans(silo => silo.UseLocalhostClustering());
    using IHost host = builder.Build();
    await host.StartAsync(cancellation);
    FleetSummary summary = await new FleetJob("a cluster of one silo", Console.Error).RunAsync(
        new ClusterRun(host.Services.GetRequiredService<IGrainFactory>(), day).StretchesAsync(source, start.NextLine, cancellation), target, start, checkpoint, cancellation);
    await host.StopAsync(cancellation);
    return summary;
}

static FileStream Open(string path, long length)
{
    FileStream file = new(path, FileMode.OpenOrCreate, FileAccess.Write);
    // What was written after the last checkpoint is written again.
    file.SetLength(length);
    file.Seek(0, SeekOrigin.End);
    return file;
}

static async Task Skip(Stream stream, long bytes, CancellationToken cancellation)
{
    if (stream.CanSeek)
    {
        stream.Seek(bytes, SeekOrigin.Begin);
        return;
    }

    byte[] buffer = new byte[1 << 16];
    while (bytes > 0)
    {
        int read = await stream.ReadAsync(buffer.AsMemory(0, (int)Math.Min(buffer.Length, bytes)), cancellation);
        if (read == 0)
        {
            throw new InvalidDataException("The input is shorter than the checkpoint says.");
        }

        bytes -= read;
    }
}
