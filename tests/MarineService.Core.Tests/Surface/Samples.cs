using MarineService.Core.Belts;
using MarineService.Core.Exchange;
using MarineService.Core.Internal;
using MarineService.Core.Oils;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Surface;

/// <summary>Ordinary values of the types that are not ours: what a sensible caller would pass.</summary>
/// <remarks>Add a line when a public method takes a type of another library that is not here yet, or needs words of its own.</remarks>
internal static partial class Samples
{
    internal static IEnumerable<object> Start { get; } =
    [
        true,
        1, 2, 12,
        1L,
        1.0, 0.5, 100.0,
        1m, 100m,
        "crank", "alternator", "tensioner", "10W-30", "15W-40", "engine-oil",
        new LocalDate(2026, 4, 1), new LocalDate(2026, 10, 12),
        new YearMonth(2026, 4),
        Instant.FromUtc(2026, 10, 12, 8, 0),
        new AnnualDate(4, 1), new AnnualDate(11, 1),
        Period.FromMonths(12),
        Volume.FromLiters(5), Volume.FromLiters(0.5),
        Length.FromMillimeters(100), Length.FromMillimeters(500),
        Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(90), Temperature.FromDegreesCelsius(-20),
        TemperatureDelta.FromKelvins(5),
        KinematicViscosity.FromCentistokes(100), KinematicViscosity.FromCentistokes(11),
        DynamicViscosity.FromMillipascalSeconds(20),
        Density.FromKilogramsPerCubicMeter(870),
        Force.FromNewtons(400),
        Torque.FromNewtonMeters(40),
        Pressure.FromKilopascals(300),
        Power.FromKilowatts(40),
        Speed.FromMetersPerSecond(10),
        RotationalSpeed.FromRevolutionsPerMinute(2000),
        Frequency.FromHertz(30),
        VolumeFlow.FromLitersPerMinute(30),
        Angle.FromDegrees(30),
        Mass.FromKilograms(2),
        Area.FromSquareMillimeters(50),
        UnitsNet.Duration.FromMinutes(10),
        System.Globalization.CultureInfo.InvariantCulture,
        new byte[] { 1, 2, 3 },
        new ReadOnlyMemory<byte>([1, 2, 3]),
        new FindingRule("TEST-001", Severity.Act, "Gap too wide", "gap is {gap}", Citation.CommonPractice, "close it")
            .On("pulley 'crank'", Figure.Of("gap", 2.5, FigureUnit.Millimeter)),
        new ExplanationBuilder("Due now.").Add("by hours", "512.0 h").Build(Citation.CommonPractice),
        new MemoryStream([1, 2, 3]), new MemoryStream(),
        new System.Buffers.ArrayBufferWriter<byte>(),
        .. OfTheClub(),
        .. OfEngines(),
        .. OfOils(),
        .. OfFluids(),
        .. OfVisits(),
        .. OfFleet(),
        .. OfBelts(),
        .. OfParts(),
        .. OfCooling(),
        .. OfLayUp(),
        .. OfProcedures(),
        .. OfJobs(),
        .. OfExerciseBooks(),
    ];

    /// <summary>Words for arguments that take only certain ones, by type and parameter; null when any word will do.</summary>
    internal static IReadOnlyList<object>? WordsFor(System.Reflection.ParameterInfo parameter) =>
        Words.TryGetValue($"{parameter.Member.DeclaringType!.Name}.{parameter.Name}", out object[]? words)
        && parameter.ParameterType.IsInstanceOfType(words[0]) ? words : null;

    private static readonly Dictionary<string, object[]> Words = new(StringComparer.Ordinal)
    {
        ["AlignmentLimit.offsetRatio"] = [0.006],
        ["BeltCheckLimits.fraction"] = [0.02],
        ["BeltDrive.stops"] = [new[] { "crank", "alternator" }, new[] { RoutingStop.On("crank", BeltFace.Ribs), RoutingStop.On("alternator", BeltFace.Ribs) }],
        ["BoatSpecification.tasks"] = [new[] { ServiceTask.Inspect("battery", ServiceInterval.OfMonths(3)) }],
        ["CategoryClaim.issueYear"] = [2016],
        ["CategoryClaim.text"] = ["CK-4", "E9-16"],
        ["BatteryReading.cells"] = [6],
        ["Cylinders.compressionRatio"] = [9.4],
        ["Dipstick.oilTemperature"] = [Temperature.FromDegreesCelsius(80)],
        ["DipstickReading.pitch"] = [Angle.FromDegrees(1)],
        ["DipstickReading.roll"] = [Angle.FromDegrees(1)],
        ["DrainPath.suction"] = [Pressure.FromKilopascals(60)],
        ["Evidence.sha256"] = ["e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"],
        ["GearOilGrade.designation"] = ["75W-90", "90"],
        ["GlycolMixture.freezingPoint"] = [Temperature.FromDegreesCelsius(-20)],
        ["GlycolMixture.massFraction"] = [0.4],
        ["FreezeDecision.from"] = [new LocalDate(2026, 10, 12)],
        ["FreezeDecision.to"] = [new LocalDate(2027, 4, 1)],
        ["FreezeDecision.low"] = [Temperature.FromDegreesCelsius(-20)],
        ["LabelledOil.claims"] = [new[] { "CK-4" }],
        ["LabelledOil.designation"] = ["15W-40"],
        ["MeasuringVessel.graduation"] = [Volume.FromLiters(0.1)],
        ["MeasuringVessel.relativeUncertaintyFraction"] = [0.02],
        ["OilChange.overfillRiskFraction"] = [0.1],
        ["OilChangeLimits.overfillRiskFraction"] = [0.05],
        ["OilChangeLimits.doubtfulServiceFillFraction"] = [0.9],
        ["OilChangeLimits.expansionUncertaintyFraction"] = [0.05],
        ["OilChangeLimits.noiseCoverageRatio"] = [2.0],
        ["OilChangeLimits.consumptionTrendRatio"] = [2.0],
        ["OilChangeLimits.volumeUncertaintyFraction"] = [0.015],
        ["OilChangeLimits.fine"] = [Volume.FromLiters(0.2)],
        ["OilSelection.designations"] = [new[] { "10W-30", "15W-40" }],
        ["AnodeCheck.monthsToWear"] = [3],
        ["AnodeCheck.unwornLimitFraction"] = [0.05],
        ["AnodeCheck.wornFraction"] = [0.3],
        ["AnodeCheck.wornLimitFraction"] = [0.5],
        ["AnodeInspection.wornFraction"] = [0.3],
        ["BucketCatch.time"] = [UnitsNet.Duration.FromSeconds(10)],
        ["BucketTest.catches"] = [new[] { MarineService.Core.Cooling.BucketCatch.Of("crank", MeasuredVolume.Of(Volume.FromLiters(5)), UnitsNet.Duration.FromSeconds(10)) }],
        ["ComplianceStatement.engine"] = ["main"],
        ["CsvTable.separator"] = [',', ';', '\t'],
        ["DischargeLimit.limit"] = [Temperature.FromDegreesCelsius(54)],
        ["DischargeLimit.intake"] = [Temperature.FromDegreesCelsius(15)],
        ["ExhaustCheck.outlet"] = ["crank"],
        ["FlushCheck.idleFuelRate"] = [VolumeFlow.FromLitersPerHour(2)],
        ["Impeller.vanes"] = [6],
        ["ImpellerInspection.newVanes"] = [6],
        ["ImpellerInspection.vanes"] = [new[] { MarineService.Core.Cooling.VaneRecord.Cracked(2) }],
        ["JobCard.engine"] = ["main"],
        ["JobCard.tasks"] = [new[] { "engine-oil" }],
        ["Procedure.first"] = ["read-dial"],
        ["Procedure.then"] = ["record"],
        ["TaskProcedure.provedBy"] = [new[] { "read-dial" }],
        ["ProcedurePage.provedBy"] = [new[] { "read-dial" }],
        ["RawWaterCircuit.kinds"] = [new[] { MarineService.Core.Cooling.CircuitPlaceKind.RawWaterPump }],
        ["RawWaterCircuit.places"] = [new[] { MarineService.Core.Cooling.CircuitPlace.Of(MarineService.Core.Cooling.CircuitPlaceKind.RawWaterPump) }],
        ["RawWaterPump.displacement"] = [Volume.FromLiters(0.02)],
        ["StartWatch.after"] = [UnitsNet.Duration.FromSeconds(5)],
        ["StartWatch.elapsed"] = [UnitsNet.Duration.FromSeconds(30)],
        ["StartWatch.outlet"] = ["crank"],
        ["StartWatch.pressureWithin"] = [UnitsNet.Duration.FromSeconds(10)],
        ["StartWatch.waterWithin"] = [UnitsNet.Duration.FromSeconds(30)],
        ["ExerciseBookResult.stream"] = [new MemoryStream()],
        ["FittedCover.coverHole"] = [Length.FromMillimeters(12)],
        ["BoltPattern.anglesDegrees"] = [new[] { 0.0, 110.0, 240.0 }],
        ["FilterThread.above"] = [3],
        ["FilterThread.below"] = [4],
        ["FilterThread.threadsPerInch"] = [16],
        ["FilterThread.diameterMm"] = [20.0],
        ["FilterThread.pitchMm"] = [1.5],
        ["FilterThread.designation"] = ["3/4-16"],
        ["FilterSpecification.inner"] = [Length.FromMillimeters(50)],
        ["FilterSpecification.section"] = [Length.FromMillimeters(6)],
        ["FilterSpecification.efficiencyFraction"] = [0.95],
        ["FilterSpecification.at"] = [Length.FromMillimeters(0.02)],
        ["FilterNeed.efficiencyFraction"] = [0.95],
        ["FilterNeed.at"] = [Length.FromMillimeters(0.02)],
        ["CureQuarter.year"] = [2017],
        ["CureQuarter.quarter"] = [2],
        ["CureQuarter.code"] = ["2Q17"],
        ["KitList.kits"] = [new[] { MarineService.Core.Parts.TaskKit.Of("engine-oil", MarineService.Core.Parts.KitItem.Of("LV-1")) }],
        ["KitList.sparesAboard"] = [new[] { MarineService.Core.Parts.KitItem.Of("LV-1") }],
        ["KitList.shelf"] = [new[] { MarineService.Core.Parts.KitItem.Of("LV-1") }],
        ["PartsCatalogue.number"] = ["LV-1"],
        ["ServicePart.reserveFraction"] = [0.1m],
        ["ServicePart.companions"] = [new[] { MarineService.Core.Parts.KitItem.Of("LV-9") }],
        ["MetricThread.diameter"] = [Length.FromMillimeters(10)],
        ["MetricThread.pitch"] = [Length.FromMillimeters(1)],
        ["NutFactor.ratio"] = [0.15],
        ["NutFactor.headMeanDiameter"] = [Length.FromMillimeters(10.3)],
        ["NutFactor.thread"] = [MarineService.Core.Parts.MetricThread.M8],
        ["ScrewClearance.coverHole"] = [Length.FromMillimeters(5.5)],
        ["ScrewClearance.screw"] = [Length.FromMillimeters(5)],
        ["PropertyClass.proofStress"] = [Pressure.FromMegapascals(600)],
        ["PermittedOils.anyOf"] = [new[] { "CK-4", "CI-4" }],
        ["PermittedOils.categories"] = [new[] { "CJ-4" }],
        ["PermittedOils.designations"] = [new[] { "10W-30", "15W-40" }],
        ["PeriodSinceChange.litersPer100Hours"] = [new[] { 0.2, 0.3 }],
        ["Pulley.leanAcrossRatio"] = [0.01],
        ["Pulley.leanUpRatio"] = [0.01],
        ["RawWaterSide.kinds"] = [new[] { MarineService.Core.LayUp.LowPointKind.Hose }],
        ["RefractometerReading.freezingPoint"] = [Temperature.FromDegreesCelsius(-23)],
        ["SaeGrade.designation"] = ["15W-40", "30"],
        ["VisitPlan.year"] = [2026],
        ["ServiceCategory.name"] = ["CK-4", "FC-W"],
        ["SumpShape.aft"] = [Length.FromMillimeters(10)],
        ["SumpShape.drainAft"] = [Length.FromMillimeters(10)],
        ["SumpShape.drainStarboard"] = [Length.FromMillimeters(10)],
        ["SumpShape.pitch"] = [Angle.FromDegrees(1)],
        ["SumpShape.roll"] = [Angle.FromDegrees(1)],
        ["SumpShape.starboard"] = [Length.FromMillimeters(10)],
        ["TensionerCheck.flangeHeight"] = [Length.FromMillimeters(3)],
        ["TensionerCheck.stretchFraction"] = [0.002],
    };

    // What only words of the trade, or a test temperature of a standard, make.
    private static IEnumerable<object> OfOils()
    {
        OilSelection selection = OilSelection.Among(PermittedOils.Of("10W-30", "15W-40").Requiring("CI-4"))
            .ForColdestStart(Temperature.FromDegreesCelsius(-17));
        return
        [
            CategoryClaim.Parse("CK-4"), CategoryClaim.Parse("E7"), CategoryClaim.Parse("E9").Category,
            LabelledOil.Of("15W-40", "CK-4"), selection, selection.Judge(LabelledOil.Of("15W-40", "CK-4")),
            FuelDilution.Of(KinematicViscosity.FromCentistokes(160), KinematicViscosity.FromCentistokes(137), KinematicViscosity.FromCentistokes(3)).Value,
            ViscosityIndex.Of(KinematicViscosity.FromCentistokes(110), KinematicViscosity.FromCentistokes(14.5)).Value,
            CategoryCoverage.Of(CategoryClaim.Parse("CK-4"), CategoryClaim.Parse("CI-4")),
        ];
    }

    // What only a calculation makes: a due list, a record and what they hold.
    private static IEnumerable<object> OfTheClub()
    {
        ServiceTask inspect = ServiceTask.Inspect("crank", ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12));
        EngineSpecification specification = EngineSpecification.Named("Corrie 60P").With(
            inspect, ServiceTask.Replace("engine-oil", ServiceInterval.FirstOf(EngineHours.FromHours(100m), 12)));
        ServiceLog log = ServiceLog.Empty
            .With(Completion.Of("engine-oil", new LocalDate(2025, 4, 1), EngineHours.FromHours(300m)))
            .With(LogEntry.Of(Completion.Of("engine-oil", new LocalDate(2026, 4, 1), EngineHours.FromHours(412m))).WithId("crank"));
        ComplianceReport report = log.Compliance(specification, new LocalDate(2026, 4, 1));
        DueList due = log.DueList(specification, new LocalDate(2026, 4, 1));
        return
        [
            inspect, specification, log, report, report.Items[0], report.Items[0].Occurrence, due, due.Tasks[0], due.Tasks[1],
            due.Tasks[1].Due, due.Tasks[1].LastDoneAt!,
            EngineSpecificationJson.Read([1]).Faults[0],
            Evidence.Of(EvidenceKind.Receipt, "chandler 2026/118"),
            ServiceTask.Inspect("battery", ServiceInterval.OfMonths(3)),
            specification.With(EngineVariant.Of("crank", Power.FromKilowatts(180), RotationalSpeed.FromRevolutionsPerMinute(4400))),
        ];
    }
}
