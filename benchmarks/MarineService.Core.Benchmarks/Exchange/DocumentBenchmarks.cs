using System.Buffers;
using System.Text.Json;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Specifications;

namespace MarineService.Core.Benchmarks.Exchange;

/// <summary>
/// Reading and writing both documents, against the same bytes as plain objects through a source-generated context of System.Text.Json.
/// Ours checks every member, every reference and every unit, and builds the values of the library.
/// </summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class DocumentBenchmarks
{
    private readonly ArrayBufferWriter<byte> _buffer = new(1 << 20);
    private byte[] _log = null!;
    private byte[] _sheet = null!;
    private PlainLog _plainLog = null!;
    private PlainSpecification _plainSheet = null!;

    [GlobalSetup]
    public void Build()
    {
        _log = Written(output => ServiceLogJson.Write(ClubRecord.Log, output));
        _sheet = Written(output => EngineSpecificationJson.Write(ClubRecord.Specification, output));
        _plainLog = JsonSerializer.Deserialize(_log, PlainContext.Default.PlainLog)!;
        _plainSheet = JsonSerializer.Deserialize(_sheet, PlainContext.Default.PlainSpecification)!;
        Same(_log, Written(PlainLogTo));
        Same(_sheet, Written(PlainSheetTo));
    }

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("write log")]
    public int PlainWriteLog() => Count(PlainLogTo);

    [Benchmark]
    [BenchmarkCategory("write log")]
    public int WriteLog() => Count(output => ServiceLogJson.Write(ClubRecord.Log, output));

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("read log")]
    public object? PlainReadLog() => JsonSerializer.Deserialize(_log, PlainContext.Default.PlainLog);

    [Benchmark]
    [BenchmarkCategory("read log")]
    public ServiceLog ReadLog() => ServiceLogJson.Read(_log).Value;

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("write data sheet")]
    public int PlainWriteSheet() => Count(PlainSheetTo);

    [Benchmark]
    [BenchmarkCategory("write data sheet")]
    public int WriteSheet() => Count(output => EngineSpecificationJson.Write(ClubRecord.Specification, output));

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("read data sheet")]
    public object? PlainReadSheet() => JsonSerializer.Deserialize(_sheet, PlainContext.Default.PlainSpecification);

    [Benchmark]
    [BenchmarkCategory("read data sheet")]
    public EngineSpecification ReadSheet() => EngineSpecificationJson.Read(_sheet).Value;

    private void PlainLogTo(IBufferWriter<byte> output)
    {
        using Utf8JsonWriter writer = new(output, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        JsonSerializer.Serialize(writer, _plainLog, PlainContext.Default.PlainLog);
    }

    private void PlainSheetTo(IBufferWriter<byte> output)
    {
        using Utf8JsonWriter writer = new(output, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        JsonSerializer.Serialize(writer, _plainSheet, PlainContext.Default.PlainSpecification);
    }

    private int Count(Action<IBufferWriter<byte>> write)
    {
        _buffer.ResetWrittenCount();
        write(_buffer);
        return _buffer.WrittenCount;
    }

    private byte[] Written(Action<IBufferWriter<byte>> write)
    {
        Count(write);
        return _buffer.WrittenSpan.ToArray();
    }

    // A comparison of two different documents would say nothing.
    private static void Same(byte[] ours, byte[] plain)
    {
        if (!ours.AsSpan().SequenceEqual(plain))
        {
            throw new InvalidOperationException($"The documents differ: {ours.Length} and {plain.Length} bytes.\n{System.Text.Encoding.UTF8.GetString(plain)[..600]}");
        }
    }
}
