using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Jobs;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;
using UnitsNet;

namespace MarineService.Reports.Tests.Sheets;

/// <summary>Job cards to print: the club's, and one in which every word is the caller's.</summary>
internal static class Cards
{
    internal static readonly LocalDate Spring = new(2027, 4, 20);

    internal static JobConditions Weather { get; } = JobConditions.NotStated.WithWeather(Temperature.FromDegreesCelsius(-4), Temperature.FromDegreesCelsius(24));

    /// <summary>All that the club's book of procedures can do to a launch in spring, and what it cannot.</summary>
    internal static JobCard Of(string boat, JobConditions? conditions = null)
    {
        BoatSpecification specification = Club.Boat(boat);
        string[] wanted = ["engine-oil", "fuel-filter", "impeller-inspect", "impeller-replace", "belt-inspect", "strainer", "coolant", "anodes"];
        return JobCard.PrepareFor(
            specification,
            Club.Log(boat),
            Spring,
            specification.Engines[0].Specification.Tasks.Select(task => task.Id).Where(wanted.Contains),
            conditions ?? Weather).Value;
    }

    /// <summary>A boat, a log and a card in which every word that people can choose is this one.</summary>
    internal static (BoatSpecification Boat, ServiceLog Log, JobCard Card) Worded(string word)
    {
        EngineSpecification engine = EngineSpecification.Of(Engine.Of(word, Fuel.Diesel, CoolingKind.FreshWater, pumpDrive: RawWaterPumpDrive.Gear, serialNumber: word))
            .With(ServiceTask.Replace(word, ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12)).WithTitle(word))
            .WithPartsSheet(PartsSheet.Of(PartsCatalogue.Of(ServicePart.Measured(word, word, word)))
                .With(TaskKit.Of(word, KitItem.Of(word, 2m)))
                .With(PartOffers.Of(word, PackOffer.Of(word, 1m, 3m)))
                .With(FilterBase.Of(word, FilterNeed.Of(FilterKind.EngineOil, FilterOrientation.GasketUp)))
                .With(TaskLooseParts.Of(word, LooseItem.Of(LoosePart.Of(word, LoosePartKind.Screw, word, 1), 6))));
        BoatSpecification boat = BoatSpecification.Of(Boat.Of(word)).WithEngine(word, engine);
        ServiceLog log = ServiceLog.Of(
        [
            Entry(Completion.Of(word, new LocalDate(2026, 4, 1), EngineHours.FromHours(412m)), word).WithId(word),
            Entry(Completion.Of(word, new LocalDate(2026, 4, 2)), word).Correcting(word),
            Entry(ServiceEvent.Of(word, new LocalDate(2026, 5, 1)), word),
            Entry(DutyChange.Of(new LocalDate(2026, 5, 2), [word]), word),
            Entry(TopUp.Of(word, new LocalDate(2026, 5, 3), MeasuredVolume.Of(Volume.FromLiters(0.5)), null), word),
        ]);
        ProcedureStep step = ProcedureStep.Of(word, word).Because(word).With(Tool.Of(word, word)).Using(word)
            .With(Caution.Of(SignalWord.Danger, word, Citation.Published(word, word, word)))
            .With(HoldPoint.Written(word, word));
        ProcedureBook book = ProcedureBook.Empty.With(TaskProcedure.Of(word, Procedure.Of(word, word, [step]), word));
        return (boat, log, JobCard.PrepareFor(boat, log, Spring, [word], book: book, engine: word).Value);
    }

    private static LogEntry Entry(ServiceFact fact, string word) => LogEntry.Of(fact).For(word).DoneBy(word).WithChecker(word).WithNote(word)
        .WithEvidence(Evidence.Of(EvidenceKind.Receipt, word));
}
