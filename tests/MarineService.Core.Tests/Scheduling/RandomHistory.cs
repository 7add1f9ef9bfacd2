using MarineService.Core.Engines;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

namespace MarineService.Core.Tests.Scheduling;

/// <summary>Six years of an engine's life, made from a seed: every policy, both limbs, gaps, new meters, winters, events.</summary>
internal sealed class RandomHistory
{
    private static readonly string[] Ids = ["oil", "charged", "snapped", "inspect", "replace", "survey", "minor", "major"];

    private readonly Random _random;

    internal RandomHistory(int seed)
    {
        _random = new(seed);
        Facts.Add(GridOrigin.Of(new(2018, 1, 31), "survey"));
        if (_random.Next(2) == 0)
        {
            Facts.Add(EnteredService.New(new(2018, 1, 31), EngineHours.Zero));
        }

        LocalDate date = new(2018, 2, 1);
        long dial = 0;
        bool laidUp = false;
        while (date < new LocalDate(2024, 1, 1))
        {
            int days = _random.Next(1, 50);
            date = date.PlusDays(days);
            dial += laidUp ? 0 : _random.Next(0, Math.Min(days, 12) * 3000);
            EngineHours shown = EngineHours.FromHours(dial / 1000m);
            EngineHours? read = _random.Next(4) == 0 ? null : shown;
            switch (_random.Next(12))
            {
                case 0: Facts.Add(MeterReading.Of(date, shown)); break;
                case 1: Facts.Add(ServiceEvent.Of("overheat", date, read)); break;
                case 2: Facts.Add(DutyChange.Of(date, _random.Next(2) == 0 ? [] : ["salt"], shown)); break;
                case 3: Facts.Add(_random.Next(2) == 0 ? Completion.Failed("inspect", date, read) : Completion.Passed("inspect", date, read)); break;
                case 4: Facts.Add(Completion.Partial(_random.Next(2) == 0 ? "oil" : "charged", date, read, 0.6m)); break;
                case 5:
                    Facts.Add(laidUp ? Commissioned.On(date, shown) : LaidUp.On(date, shown));
                    laidUp = !laidUp;
                    break;
                case 6:
                    Facts.Add(MeterChange.Of(date, shown, EngineHours.Zero));
                    dial = 0;
                    break;
                default: Facts.Add(Completion.Of(Ids[_random.Next(Ids.Length)], date, read)); break;
            }
        }

        Last = date;
        LastDial = dial;
    }

    internal static EngineSpecification Specification { get; } = EngineSpecification.Named("Corrie 60P").With(
        ServiceTask.Replace("oil", Both(100, 12)).WithPartialExchange(PartialExchange.ProRata).WithSevereDuty("salt", 0.5m).WithFirstService(Both(20, 12)),
        ServiceTask.Replace("charged", Both(50, 6)).WithAnchorPolicy(AnchorPolicy.ChargeLateExcess),
        ServiceTask.Replace("snapped", Both(80, 7)).WithAnchorPolicy(AnchorPolicy.SnapWithinWindow),
        ServiceTask.Inspect("inspect", Both(100, 12)).IfFailedDo("replace").DueAfterEvents("overheat"),
        ServiceTask.Replace("replace", Both(300, 24)).Including("inspect"),
        ServiceTask.Inspect("survey", ServiceInterval.OfMonths(6)).WithAnchorPolicy(AnchorPolicy.FixedGrid),
        ServiceTask.Clean("minor", ServiceInterval.OfHours(EngineHours.FromHours(25m))),
        ServiceTask.Replace("major", ServiceInterval.OfMonths(18)).Including("minor", "charged"));

    internal List<ServiceFact> Facts { get; } = [];

    internal LocalDate Last { get; }

    internal long LastDial { get; }

    internal static DueList List(IEnumerable<ServiceFact> facts, LocalDate today) => ServiceLog.Of(facts.Select(LogEntry.Of)).DueList(Specification, today);

    internal static string[] Lines(DueList list) =>
        [.. list.Tasks.Select(task => task.Explain(DisplayUnits.Metric).ToString()), .. list.Findings.Select(finding => finding.ToString()!).Order(StringComparer.Ordinal)];

    internal IEnumerable<ServiceFact> Shuffled()
    {
        ServiceFact[] all = [.. Facts];
        _random.Shuffle(all);
        return all;
    }

    internal ServiceFact OneOf(IReadOnlyList<ServiceFact> facts) => facts[_random.Next(facts.Count)];

    internal static ServiceInterval Both(decimal hours, int months) => ServiceInterval.FirstOf(EngineHours.FromHours(hours), months);
}
