using System.Text;
using BenchmarkDotNet.Attributes;
using MarineService.Core.Exchange;
using MarineService.Core.Jobs;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Benchmarks.Jobs;

/// <summary>A card for the large visit against reading the documents that it is made from.</summary>
[MemoryDiagnoser]
public class JobCardBenchmarks
{
    private static readonly LocalDate Day = new(2027, 4, 20);

    private static readonly string[] Tasks = ["engine-oil", "impeller-replace", "belt-inspect", "fuel-filter", "strainer"];

    private BoatSpecification _boat = null!;
    private byte[] _boatText = null!;
    private byte[] _logText = null!;

    [GlobalSetup]
    public void Build()
    {
        EngineSpecification engine = ClubRecord.Specification.With([.. Tasks.Select(task => ServiceTask.Replace(task, ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12)))]);
        _boat = BoatSpecification.Of(MarineService.Core.Engines.Boat.Of("Curlew", hasSeacock: true)).WithEngine("main", engine);
        _boatText = Encoding.UTF8.GetBytes(BoatSpecificationJson.ToText(_boat));
        _logText = Encoding.UTF8.GetBytes(ServiceLogJson.ToText(ClubRecord.Log));
    }

    [Benchmark(Baseline = true)]
    public (BoatSpecification Boat, ServiceLog Log) ReadTheDocuments() => (BoatSpecificationJson.Read(_boatText).Value, ServiceLogJson.Read(_logText).Value);

    [Benchmark]
    public DueList DueListAlone() => ClubRecord.Log.DueList(_boat.Engines[0].Specification, Day);

    [Benchmark]
    public JobCard PrepareTheCard() => JobCard.PrepareFor(_boat, ClubRecord.Log, Day, Tasks).Value;
}
