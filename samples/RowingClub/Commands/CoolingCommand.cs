using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Cooling;
using MarineService.Core.Exchange;
using MarineService.Core.Parts;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>What to do with the impeller that was looked at last, where its missing pieces are, how much water the engine needs and gets, and how its covers go on.</summary>
internal static class CoolingCommand
{
    private const double UsualRiseKelvins = 15;

    // The id that the club's data sheets use.
    private const string ReplaceTask = "impeller-replace";

    internal static Command Create(Page page)
    {
        LaunchOptions options = new();
        Command command = new(
            "cooling",
            "Example: cooling Curlew\n\nWhat to do with the impeller that was looked at last and where to look for what is missing; raw water needed and measured, outlets that must show it, outlet limit, anodes, covers. Exits 1 when something must be done.");
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            DisplayUnits units = options.Units(parsed);
            bool json = options.Json(parsed);
            bool mustAct = false;
            bool wrote = false;
            foreach (Launch launch in options.Launches(parsed))
            {
                foreach (FittedEngine engine in launch.Boat.Engines)
                {
                    ImpellerAssessment? judged = Judged(launch, engine);
                    BucketCheck[] buckets = Buckets(launch, engine);
                    AnodeCheck[] anodes = Anodes(launch, engine);
                    IEnumerable<Finding> findings = [.. judged?.Findings ?? [], .. buckets.SelectMany(check => check.Findings), .. anodes.SelectMany(check => check.Findings)];
                    mustAct |= findings.Any(finding => finding.Severity >= Severity.Act);
                    if (!json)
                    {
                        Show(page, launch, engine, judged, units);
                        Water(page, launch, engine, buckets, units);
                        Anodes(page, anodes, units);
                        Covers(page, engine, units);
                        page.Line();
                    }
                    else if (judged is not null)
                    {
                        Console.Out.Write(ImpellerAssessmentJson.ToText(judged, engine.Specification.RawWater?.Circuit, units) + "\n");
                        wrote = true;
                    }
                }
            }

            return json && !wrote ? throw new UserFault(ExitCode.BadData, "No impeller inspection is in the log.")
                : mustAct ? ExitCode.SomethingMustBeDone : ExitCode.Fine;
        });
        return command;
    }

    /// <summary>The latest look at the impeller: a new one makes it old news, but not the pieces that were never found.</summary>
    internal static ImpellerAssessment? Judged(Launch launch, FittedEngine engine)
    {
        ImpellerAssessment? judged = Facts<ImpellerInspection>(launch, engine).LastOrDefault()?.Judge();
        bool isReplaced = Facts<Completion>(launch, engine).Any(done => done.TaskId == ReplaceTask && done.Outcome == CompletionOutcome.Done && done.Date >= judged?.Inspection.Date);
        return isReplaced && judged is { Account.IsShort: false } ? null : judged;
    }

    /// <summary>The latest bucket test against what the engine needs, one check for each rating that it may have.</summary>
    internal static BucketCheck[] Buckets(Launch launch, FittedEngine engine)
    {
        RawWaterSystem? water = engine.Specification.RawWater;
        return Facts<BucketTest>(launch, engine).LastOrDefault() is not BucketTest test ? []
            : [.. from variant in engine.Specification.Variants
                  let need = Need(launch, engine, variant)
                  where need.IsKnown
                  select test.Judge(need.Value, variant.RatedSpeed, water?.Pump, water?.Circuit)];
    }

    private static AnodeCheck[] Anodes(Launch launch, FittedEngine engine) =>
        [.. Facts<AnodeInspection>(launch, engine).GroupBy(seen => seen.Anode).Select(same => same.Last().Judge(launch.Boat.Boat.Water))];

    private static Answer<WaterNeed> Need(Launch launch, FittedEngine engine, EngineVariant variant)
    {
        Answer<HeatToWater> heat = HeatToWater.Of(variant.RatedPower, engine.Specification.Engine.Fuel);
        return heat.IsKnown
            ? MarineService.Core.Answer.Known(heat.Value.FlowFor(TemperatureDelta.FromKelvins(UsualRiseKelvins), launch.Boat.Boat.Water))
            : MarineService.Core.Answer.NotKnown<WaterNeed>([.. heat.Missing]);
    }

    /// <summary>What the log says of an engine up to today, oldest first.</summary>
    private static IEnumerable<TFact> Facts<TFact>(Launch launch, FittedEngine engine)
        where TFact : ServiceFact => launch.Log.Standing()
        .Where(entry => entry.Scope == engine.Id && entry.Date <= launch.Today)
        .OrderBy(entry => entry.Date)
        .Select(entry => entry.Fact)
        .OfType<TFact>();

    private static void Show(Page page, Launch launch, FittedEngine engine, ImpellerAssessment? judged, DisplayUnits units)
    {
        page.Title($"{launch.Boat}, {engine.Specification}: " + (judged is null
            ? "no impeller inspection in the log."
            : $"impeller of {judged.Inspection.Date:uuuu'-'MM'-'dd}. {judged.Explain(units).Answer}"));
        RawWaterSystem? water = engine.Specification.RawWater;
        if (judged is not null)
        {
            page.Line($"  Vane account: {judged.Account}.");
            foreach (Finding finding in judged.Findings)
            {
                page.Finding(finding, units);
            }

            if (water is null && judged.Account.IsShort)
            {
                page.Line("  Where to look: not known, the circuit is not stated.");
            }

            foreach (SearchPlace place in water is null ? [] : judged.WhereToSearch(water.Circuit))
            {
                page.Line($"  {place}");
            }
        }

    }

    private static void Water(Page page, Launch launch, FittedEngine engine, BucketCheck[] buckets, DisplayUnits units)
    {
        RawWaterSystem? water = engine.Specification.RawWater;
        foreach (EngineVariant variant in engine.Specification.Variants)
        {
            Answer<WaterNeed> need = Need(launch, engine, variant);
            page.Line($"  {variant} at {variant.RatedSpeed.RevolutionsPerMinute:0} rpm: " + (need.IsKnown ? need.Value.Explain(units).Answer : need.ToString()));
            Answer<VolumeFlow>? gives = water?.Pump?.FlowAt(variant.RatedSpeed);
            if (gives is { IsKnown: true })
            {
                page.Line($"    a new pump gives {Figure.Of("flow", gives.Value.LitersPerMinute, FigureUnit.LiterPerMinute).ToString(units)} there");
            }
        }

        if (engine.Specification.Variants.Count == 0)
        {
            page.Line("  Raw water needed: not known, the rated power is not stated.");
        }

        foreach (BucketCheck check in buckets)
        {
            page.Line($"  Bucket test of {check.Test.Date:uuuu'-'MM'-'dd}: {Figure.Of("flow", check.FlowAtRatedSpeed.LitersPerMinute, FigureUnit.LiterPerMinute).ToString(units)} "
                + $"at rated speed, {Figure.Of("need", check.Need.Flow.LitersPerMinute, FigureUnit.LiterPerMinute).ToString(units)} needed. {check.Explain(units).Answer}");
            foreach (Finding finding in check.Findings)
            {
                page.Finding(finding, units);
            }
        }

        if (water is not null && water.Circuit.Outlets.Count > 0)
        {
            page.Line($"  Water must keep coming from {string.Join(" and ", water.Circuit.Outlets)}, within 30 s of a start; oil pressure within 10 s.");
        }

        Answer<DischargeLimit> limit = water?.MakersLimit is DischargeLimit given ? MarineService.Core.Answer.Known(given) : DischargeLimit.For(engine.Specification.Engine.Cooling);
        if (limit.IsKnown)
        {
            page.Line($"  Raw water leaves the engine below {Figure.Of("limit", limit.Value.Limit.DegreesCelsius, FigureUnit.DegreeCelsius).ToString(units)} ({limit.Value.Name}).");
        }
    }
    private static void Anodes(Page page, AnodeCheck[] anodes, DisplayUnits units)
    {
        foreach (AnodeCheck anode in anodes)
        {
            page.Line($"  {anode}");
            foreach (Finding finding in anode.Findings)
            {
                page.Finding(finding, units);
            }
        }
    }

    private static void Covers(Page page, FittedEngine engine, DisplayUnits units)
    {
        foreach (FittedCover cover in engine.Specification.Covers)
        {
            page.Line($"  {cover.Joint.Tightening().Explain(units).Answer}");
            Answer<CoverFit> fit = cover.FitOfItself();
            page.Line($"    {(fit.IsKnown ? fit.Value.Explain(units).Answer : fit.ToString())}");
            if (cover.Pattern is BoltPattern pattern)
            {
                page.Line($"    Tighten crosswise, in two rounds at least: {string.Join(", ", pattern.CrosswiseOrder())}.");
            }

            foreach (Finding finding in fit.IsKnown ? fit.Value.Findings : [])
            {
                page.Finding(finding, units);
            }
        }
    }
}
