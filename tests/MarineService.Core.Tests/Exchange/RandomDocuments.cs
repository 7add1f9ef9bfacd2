using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Parts;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Data sheets, boats and logs with any mix of members, made from a seed. They need not make sense; they must survive.</summary>
internal sealed class RandomDocuments(int seed)
{
    private static readonly string[] Words =
    [
        "x", " with spaces ", "a \"quoted\" word", "back\\slash", "line\nbreak", "tab\tbed", "é ß ø", "日本語", "😀", "</script>", "0", "null", "\u0001", "a\u2028b", "a/b~c", new('w', 300),
    ];

    private readonly Random _random = new(seed);

    internal EngineSpecification EngineSheet()
    {
        EngineSpecification sheet = EngineSpecification
            .Of(Engine.Of(Text(), Any<Fuel>(), Any<CoolingKind>(), Any<HandOfRotation>(), Any<RawWaterPumpDrive>(), Maybe(Text)))
            .WithMeter(Meter())
            .With([.. Some(3, i => EngineVariant.Of($"{Text()}{i}", Power.FromKilowatts(0.5 + (4000 * _random.NextDouble())), RotationalSpeed.FromRevolutionsPerMinute(100 + (14_000 * _random.NextDouble()))))])
            .With(Tasks(hoursAllowed: true))
            .With([.. Some(2, Cover)]);
        return Yes() ? sheet : sheet.WithPartsSheet(Parts(sheet.Tasks));
    }

    internal BoatSpecification BoatSheet()
    {
        BoatSpecification boat = BoatSpecification.Of(Boat.Of(Text(), Any<KeptWhere>(), Any<WaterKind>(), Yes() ? null : Yes())).With(Tasks(hoursAllowed: false));
        return Some(3, _ => EngineSheet()).Select((sheet, i) => (sheet, i)).Aggregate(boat, (more, engine) => more.WithEngine($"engine {engine.i}", engine.sheet));
    }

    internal ServiceLog Log()
    {
        List<LogEntry> entries = [];
        foreach (ServiceFact fact in Some(25, _ => Fact()))
        {
            LogEntry entry = LogEntry.Of(fact).WithId($"{entries.Count}-{Text()}");
            entry = Yes() ? entry : entry.For(Text());
            entry = Yes() ? entry : entry.DoneBy(Text());
            entry = Yes() ? entry : entry.WithChecker(Text());
            entry = Yes() ? entry : entry.WithNote(Text());
            entry = entry.WithEvidence([.. Some(3, _ => Evidence.Of(Any<EvidenceKind>(), Text(), Yes() ? null : new string("0123456789abcdefABCDEF"[_random.Next(22)], 64)))]);
            entries.Add(Yes() ? entry : entry.AsReconstructed());
            if (_random.Next(5) == 0)
            {
                // Each entry is corrected once at most; the correction is an entry like any other.
                string corrected = entries[^1].Id!;
                entries.Add((Yes() ? LogEntry.Of(Fact()).Correcting(corrected) : LogEntry.Withdrawing(corrected, Date())).WithId($"after {corrected}"));
            }
        }

        return ServiceLog.Of(entries);
    }

    private ServiceFact Fact() => _random.Next(18) switch
    {
        0 => MeterReading.Of(Date(), Hours(), Any<ReadingSource>()),
        1 => Completion.Of(Text(), Date(), MaybeHours()),
        2 => Completion.Passed(Text(), Date(), MaybeHours()),
        3 => Completion.Failed(Text(), Date(), MaybeHours()),
        4 => Completion.Partial(Text(), Date(), MaybeHours(), Fraction(), Yes() ? null : Fraction()),
        5 => MeterChange.Of(Date(), MaybeHours(), MaybeHours() ?? default, MaybeHours() ?? default, null, Yes() ? null : Meter()),
        6 => MeterChange.Of(new(2199, 12, 31), Hours(), deadSince: Date()),
        7 => EnteredService.New(Date(), MaybeHours()),
        8 => EnteredService.AfterRebuild(Date(), Hours(), MaybeHours()),
        9 => _random.Next(3) switch
        {
            0 => OpeningDuePoint.Of(Date(), Text(), Date(), null),
            1 => OpeningDuePoint.Of(Date(), Text(), null, Hours()),
            _ => OpeningDuePoint.Of(Date(), Text(), Date(), Hours()),
        },
        10 => GridOrigin.Of(Date(), Text()),
        11 => ServiceEvent.Of(Text(), Date(), MaybeHours()),
        12 => DutyChange.Of(Date(), [.. Some(3, i => $"{i}{Text()}")], MaybeHours()),
        13 => TopUp.Of(Text(), Date(), Amount(), MaybeHours()),
        14 => Yes() ? LaidUp.On(Date(), MaybeHours()) : Commissioned.On(Date(), MaybeHours()),
        15 => BucketTest.Of(Date(), RotationalSpeed.FromRevolutionsPerMinute(_random.Next(50, 15_001)), [.. Some(2, i => Catch(i)), Catch(2)], MaybeHours()),
        16 => AnodeInspection.Of(Date(), Text(), Any<AnodeMetal>(), _random.NextDouble(), _random.Next(601), MaybeHours()),
        _ => PlannedLayUp.Between(Date(), new(2199, 12, 31)),
    };

    private ServiceTask[] Tasks(bool hoursAllowed)
    {
        List<ServiceTask> tasks = [];
        int count = _random.Next(6);
        for (int i = 0; i < count; i++)
        {
            tasks.Add(Task(i, hoursAllowed));
        }

        return [.. tasks];
    }

    private ServiceTask Task(int index, bool hoursAllowed)
    {
        string id = $"task {index}";
        ServiceTask task = _random.Next(8) switch
        {
            0 => ServiceTask.EachUse(id, Any<TaskAction>()),
            1 => ServiceTask.AtLayUp(id, Any<TaskAction>()),
            2 => ServiceTask.AtCommissioning(id, Any<TaskAction>()),
            3 => ServiceTask.Inspect(id, Interval(hoursAllowed)),
            4 => ServiceTask.Adjust(id, Interval(hoursAllowed)),
            5 => ServiceTask.Clean(id, Interval(hoursAllowed)),
            6 => ServiceTask.Replace(id, ServiceInterval.OfMonths(_random.Next(1, 1201))).WithAnchorPolicy(AnchorPolicy.FixedGrid),
            _ => ServiceTask.Replace(id, Interval(hoursAllowed)),
        };
        if (task.Interval is not null)
        {
            task = Yes() ? task : task.WithFirstService(Interval(hoursAllowed));
            task = Yes() || task.AnchorPolicy == AnchorPolicy.FixedGrid ? task : task.WithAnchorPolicy(Yes() ? AnchorPolicy.ChargeLateExcess : AnchorPolicy.SnapWithinWindow);
        }

        // The same percentages turn up often, so that the default and the maker's are met.
        task = Yes() ? task : task.WithMakerTolerance(5 * _random.Next(4));
        task = Yes() ? task : task.WithTolerance(5 * _random.Next(4));
        task = Yes() ? task : task.WithTitle(Text());
        task = Yes() ? task : task.WithLayUpRule(Any<LayUpRule>());
        task = Yes() ? task : task.WithPartialExchange(Yes() ? PartialExchange.ProRata : PartialExchange.AllOrNothing(0.01m + (0.99m * Fraction())));
        task = index == 0 || Yes() ? task : task.Including(index == 1 ? ["task 0"] : ["task 0", $"task {index - 1}"]);
        task = task.Action != TaskAction.Inspect || Yes() ? task : task.IfFailedDo("task 0");
        task = Yes() ? task : task.DueAfterEvents([.. Some(3, i => $"{i}{Text()}")]);
        task = Yes() ? task : task.WithSevereDuty(Text(), 0.01m + (0.99m * Fraction())).WithSevereDuty("towing", 0.5m);
        return Yes() ? task : task.WithSource(Source());
    }

    private Citation Source() => _random.Next(8) switch
    {
        0 => Citation.Published(Text(), Maybe(Text), Maybe(Text)),
        1 => Citation.Secondary(Text(), Maybe(Text), Maybe(Text)),
        2 => Citation.Derived(Text()),
        3 => Citation.CommonPractice,
        4 => Citation.PracticeDescribedIn(Text()),
        5 => Citation.ProjectChoice,
        6 => Citation.FromMemory,
        _ => Citation.GivenByCaller,
    };

    private ServiceInterval Interval(bool hoursAllowed)
    {
        EngineHours hours = EngineHours.FromThousandths(_random.Next(1, 100_000_001));
        int months = _random.Next(1, 1201);
        return !hoursAllowed ? ServiceInterval.OfMonths(months)
            : _random.Next(3) switch
            {
                0 => ServiceInterval.OfHours(hours),
                1 => ServiceInterval.OfMonths(months),
                _ => ServiceInterval.FirstOf(hours, months),
            };
    }

    private HourMeter Meter() => HourMeter.Of(Yes() ? null : EngineHours.FromThousandths(_random.Next(100_000, 1_000_000_001)), Any<MeterDrive>());

    private BucketCatch Catch(int index) => BucketCatch.Of($"{Text()}{index}", MeasuredVolume.Of(Volume.FromLiters(0.1 + _random.NextDouble())), UnitsNet.Duration.FromSeconds(1 + (500 * _random.NextDouble())));

    // Angles of whole degrees, so that they are read back to the last bit.
    private FittedCover Cover(int index)
    {
        Joint joint = Joint.Of($"{Text()}{index}", Any<JointSeat>(), Any<ThreadMaterial>(), Yes() ? null : MetricThread.M6, Yes() ? null : Yes() ? PropertyClass.Class88 : PropertyClass.Given(Text(), Pressure.FromMegapascals(_random.Next(50, 2001))));
        FittedCover cover = FittedCover.Of(Yes() ? joint : joint.WithMakersTorque(Torque.FromNewtonMeters(_random.Next(1, 2001))));
        return Yes() ? cover : cover.WithPattern(
            BoltPattern.Of(Length.FromMillimeters(_random.Next(50, 2001)), _random.Next(-90, 0), _random.Next(20, 90), _random.Next(110, 200)),
            Yes() ? null : Length.FromMillimeters(6.1 + (90 * _random.NextDouble())),
            Any<CoverLocation>(),
            Yes() ? null : _random.Next(1, 4));
    }

    private PartsSheet Parts(IReadOnlyList<ServiceTask> tasks)
    {
        ServicePart[] plain = [.. Some(4, i => _random.Next(4) switch
        {
            0 => ServicePart.Measured($"{i}{Text()}", Text(), Text(), Fraction()),
            1 => ServicePart.Tool($"{i}{Text()}", Text()),
            2 => ServicePart.Tool($"{i}{Text()}", Text()).BoughtWhenMissing(),
            _ => ServicePart.Of($"{i}{Text()}", Text()).WithReserve(_random.Next(11)),
        })];
        ServicePart[] all = [.. plain, .. Some(2, i => ServicePart.Of($"with {i}{Text()}", Text()).With(Items(plain)))];
        PartsSheet sheet = PartsSheet.Of(PartsCatalogue.Of(all)).WithSparesAboard(Items(all))
            .With([.. tasks.Where(_ => Yes()).Select(task => TaskKit.Of(task.Id, Items(all)))])
            .With([.. tasks.Where(_ => Yes()).Select(task => TaskLooseParts.Of(task.Id, [.. Some(3, i => LooseItem.Of(LoosePart.Of($"{i}", (LoosePartKind)i, "lid", i), _random.Next(1, 10_001)))]))])
            .With([.. all.Where(_ => Yes()).Select(part => PartOffers.Of(part.Number, PackOffer.Of(Text(), _random.Next(1, 100_000) / 1000m, _random.Next(1_000_000) / 10_000m), PackOffer.Of($"other {Text()}", 1m, 0m)))]);
        return sheet.With([.. all.Where(_ => Yes()).Select(part => Base(part.Number))]);
    }

    private FilterBase Base(string part)
    {
        FilterBase one = FilterBase.Of(part, FilterNeed.Of(Any<FilterKind>(), Any<FilterOrientation>()).WithThread(FilterThread.Metric(20, 1.5)).WithRoom(Length.FromMillimeters(1 + (400 * _random.NextDouble()))));
        return Yes() ? one : one.With(FilterSpecification.Named(part).WithAntiDrainBack(Yes()).WithBypass(Pressure.FromKilopascals(1 + (900 * _random.NextDouble()))));
    }

    private KitItem[] Items(ServicePart[] parts) =>
    [
        .. parts.Where(_ => Yes()).Select(part => KitItem.Of(part.Number, part.Unit is null ? _random.Next(1, 100) : _random.Next(1, 100_000) / 1000m))
            .Select(item => Yes() ? item : item.OnceFor(Text())),
    ];

    private MeasuredVolume Amount() => MeasuredVolume.Of(
        Volume.FromLiters(100 * _random.NextDouble()),
        Yes() ? null : Temperature.FromDegreesCelsius((150 * _random.NextDouble()) - 50),
        Yes() ? null : Volume.FromLiters(_random.NextDouble()));

    // All 28 digits that a decimal keeps.
    private decimal Fraction() => Math.Max(0.000001m, new decimal(_random.Next(), _random.Next(), _random.Next(0x20000000), false, 28));

    private LocalDate Date() => new LocalDate(1900, 1, 1).PlusDays(_random.Next(109_572));

    private EngineHours Hours() => EngineHours.FromThousandths(_random.Next(1_000_000_001));

    private EngineHours? MaybeHours() => Yes() ? null : Hours();

    private string Text() => Words[_random.Next(Words.Length)];

    private string? Maybe(Func<string> text) => Yes() ? null : text();

    private bool Yes() => _random.Next(2) == 0;

    private TEnum Any<TEnum>()
        where TEnum : struct, Enum
    {
        TEnum[] all = Enum.GetValues<TEnum>();
        return all[_random.Next(all.Length)];
    }

    private IEnumerable<T> Some<T>(int most, Func<int, T> make)
    {
        int count = _random.Next(most + 1);
        for (int i = 0; i < count; i++)
        {
            yield return make(i);
        }
    }
}
