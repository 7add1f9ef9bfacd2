using MarineService.Core.Exchange;
using MarineService.Core.Fluids;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Specifications;
using MarineService.Core.Tests.Procedures;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Jobs;

/// <summary>The club's safety boat in spring, and a visit at which everything is done and proved.</summary>
internal static class Curlew
{
    internal static LocalDate Day { get; } = new(2027, 4, 20);

    internal static BoatSpecification Boat { get; } = BoatSpecificationJson.Read(Bytes("curlew.boat.json")).Value;

    internal static ServiceLog Log { get; } = ServiceLogJson.Read(Bytes("curlew.log.json")).Value;

    internal static JobConditions Spring { get; } =
        JobConditions.NotStated.WithWeather(Temperature.FromDegreesCelsius(2), Temperature.FromDegreesCelsius(26));

    /// <summary>What is due on the day.</summary>
    internal static JobCard Due { get; } = JobCard.Prepare(Boat, Log, Day, Spring).Value;

    /// <summary>The large visit: oil, impeller, belt, fuel filter, strainer.</summary>
    internal static JobCard Card { get; } = JobCard.PrepareFor(
        Boat, Log, Day, ["engine-oil", "impeller-inspect", "impeller-replace", "belt-inspect", "fuel-filter", "strainer"], Spring).Value;

    /// <summary>Fits a balance worked by hand: service fill 6.0 L, six tenths of the range before, nine tenths after.</summary>
    internal static OilChange Account()
    {
        Sump sump = Card.Engine.Specification.Sump!;
        double range = sump.Dipstick.RangeVolume.Liters;
        double drained = sump.ServiceFill.Liters - (0.4 * range);
        return OilChange.Begin(sump, DipstickReading.OfRange(0.6).SettledFor(NodaTime.Duration.FromHours(12)))
            .Looked(OilAppearance.Usual)
            .Drained(At15(drained, 0.05))
            .FilterChanged(oldEmptiedIntoMeasure: true)
            .Poured(At15(drained - 0.5, 0.05))
            .Ran()
            .Poured(At15(0.5 + (0.3 * range), 0.02))
            .Settled(DipstickReading.OfRange(0.9).SettledFor(NodaTime.Duration.FromMinutes(15)));
    }

    internal static WorkRecord Work(JobCard card, string? without = null)
    {
        WorkRecord work = WorkRecord.Begin(card.Procedure, Day);
        foreach (ProcedureStep step in card.Steps)
        {
            if (step.IsNeeded(work.Circumstances) != false)
            {
                work = work.Do(step.Id, [.. Orders.ProofsOf(step).Where(proof => proof.HoldPoint != without)]);
            }
        }

        return work;
    }

    internal static JobMeasurements AllOf(JobCard card, string? without = null)
    {
        JobMeasurements all = JobMeasurements.Of(Work(card, without)).DoneBy("M. Kerr").WithChecker("J. Tait")
            .WithEvidence(Evidence.Of(EvidenceKind.DialPhoto, "photos/2027-04-20-dial.jpg"), Evidence.Of(EvidenceKind.Receipt, "chandler 2027/44"));
        all = without == "dial meter" ? all : all.WithDial(EngineHours.FromHours(104.2m));
        all = without == "oil account" || !card.ChangesOil ? all : all.With(Account());
        all = without == "belt as it lies" || !card.Belt.IsKnown ? all : all.With(card.Belt.Value);
        LooseItem[] off = card.Kit.ComesOff.IsKnown && without != "every count" ? [.. card.Kit.ComesOff.Value] : [];
        LooseParts back = off.Where(item => $"count {item.Part}" != without)
            .Aggregate(LooseParts.Empty, (tally, item) => tally.PutBack(item.Part, item.Count, without == $"washers {item.Part}" ? 0 : item.Count * item.Part.CaptiveWashers));
        all = off.Length == 0 ? all : all.With(back);
        return card.Tasks.Where(task => task.NeedsVerdict && $"verdict {task.TaskId}" != without).Aggregate(all, (one, task) => one.Inspected(task.TaskId, passed: true));
    }

    /// <summary>What the tasks take off whose proving steps are done.</summary>
    internal static IReadOnlyList<LooseItem> OffBy(JobCard card, WorkRecord work)
    {
        string[] done = [.. card.Tasks.Where(task => task.How is TaskProcedure how && how.ProvedBy.All(id => work.FirstDone(id) is not null)).Select(task => task.TaskId)];
        return
        [
            .. card.Engine.Specification.PartsSheet!.ComesOff.Where(task => done.Contains(task.TaskId)).SelectMany(task => task.Items)
                .GroupBy(item => item.Part).Select(same => LooseItem.Of(same.Key, same.Max(item => item.Count))),
        ];
    }

    internal static LooseParts Back(IEnumerable<LooseItem> items) =>
        items.Aggregate(LooseParts.Empty, (tally, item) => tally.PutBack(item.Part, item.Count, item.Count * item.Part.CaptiveWashers));

    internal static TallyLine[] Lines(IEnumerable<LooseItem> items) =>
        [.. items.Select(item => TallyLine.Of(item.Part.Name, item.Part.Place, item.Count, item.Count * item.Part.CaptiveWashers))];

    private static byte[] Bytes(string name)
    {
        using Stream stream = typeof(Curlew).Assembly.GetManifestResourceStream($"Club/{name}")!;
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    private static MeasuredVolume At15(double liters, double sigma) =>
        MeasuredVolume.Of(Volume.FromLiters(liters), Temperature.FromDegreesCelsius(15), Volume.FromLiters(sigma));
}
