using BenchmarkDotNet.Attributes;
using MarineService.Core.Engines;
using NodaTime;

namespace MarineService.Core.Benchmarks.Engines;

/// <summary>When hours are reached, from ten years with few or many readings, against a straight line through the first and the last of them.</summary>
[MemoryDiagnoser]
public class ForecastBenchmarks
{
    private MeterHistory _meter = null!;
    private MeterReading[] _readings = null!;
    private LocalDate _last;
    private EngineHours _target;

    [Params(30, 300, 3000)]
    public int Readings { get; set; }

    [GlobalSetup]
    public void Build()
    {
        LocalDate first = new(2016, 4, 1);
        int[] days = [.. Enumerable.Range(0, Readings).Select(i => (int)(3650L * i / Readings))];
        decimal hours = 0;
        List<MeterReading> readings = [];
        for (int i = 0; i < days.Length; i++)
        {
            LocalDate date = first.PlusDays(days[i]);
            hours += i == 0 ? 0 : (days[i] - days[i - 1]) * (date.Month is >= 5 and <= 9 ? 0.6m : 0.05m);
            readings.Add(MeterReading.Of(date, EngineHours.FromHours(hours)));
        }

        _readings = [.. readings];
        _last = readings[^1].Date;
        _meter = MeterHistory.Of(HourMeter.Plain, _readings, []);
        _target = EngineHours.FromHours(hours + 100m);
    }

    [Benchmark(Baseline = true)]
    public LocalDate StraightLine()
    {
        MeterReading first = _readings[0];
        MeterReading last = _readings[^1];
        decimal perDay = (last.Shown.ToHours() - first.Shown.ToHours()) / Period.DaysBetween(first.Date, last.Date);
        return last.Date.PlusDays((int)((_target.ToHours() - last.Shown.ToHours()) / perDay));
    }

    [Benchmark]
    public DateForecast SeasonsFromReadings() =>
        SeasonalUse.Of(MeterHistory.Of(HourMeter.Plain, _readings, []), [], [], _last).DateReaching(_target).Value;

    [Benchmark]
    public DateForecast SeasonsFromAHistory() => SeasonalUse.Of(_meter, [], [], _last).DateReaching(_target).Value;
}
