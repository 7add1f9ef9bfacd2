using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Cooling;
using MarineService.Core.Exchange;
using MarineService.Core.Specifications;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>What to do with the impeller that was looked at last, where its missing pieces are, and how much water the engine needs.</summary>
internal static class CoolingCommand
{
    private const double UsualRiseKelvins = 15;

    internal static Command Create(Page page)
    {
        LaunchOptions options = new();
        Command command = new(
            "cooling",
            "Example: cooling Curlew\n\nWhat to do with the impeller that was looked at last and where to look for what is missing; raw water needed, outlets that must show it, outlet limit. Exits 1 when something must be done.");
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
                    ImpellerAssessment? judged = Latest(launch, engine)?.Judge();
                    mustAct |= judged?.Findings.Any(finding => finding.Severity >= Severity.Act) ?? false;
                    if (!json)
                    {
                        Show(page, launch, engine, judged, units);
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

    /// <summary>The last inspection of an engine's impeller up to today that no later fact makes old news.</summary>
    private static ImpellerInspection? Latest(Launch launch, FittedEngine engine) => launch.Log.Standing()
        .Where(entry => entry.Scope == engine.Id && entry.Fact is ImpellerInspection && entry.Date <= launch.Today)
        .OrderBy(entry => entry.Date)
        .LastOrDefault()?.Fact as ImpellerInspection;

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

        Water(page, launch, engine, water, units);
        page.Line();
    }

    private static void Water(Page page, Launch launch, FittedEngine engine, RawWaterSystem? water, DisplayUnits units)
    {
        TemperatureDelta rise = TemperatureDelta.FromKelvins(UsualRiseKelvins);
        foreach (EngineVariant variant in engine.Specification.Variants)
        {
            Answer<HeatToWater> heat = HeatToWater.Of(variant.RatedPower, engine.Specification.Engine.Fuel);
            page.Line($"  {variant} at {variant.RatedSpeed.RevolutionsPerMinute:0} rpm: " + (heat.IsKnown
                ? heat.Value.FlowFor(rise, launch.Boat.Boat.Water).Explain(units).Answer : heat.ToString()));
            Answer<VolumeFlow>? gives = water?.Pump?.FlowAt(variant.RatedSpeed);
            if (gives is { IsKnown: true })
            {
                page.Line($"    a new pump gives {Figure.Of("flow", gives.Value.LitersPerMinute, FigureUnit.LiterPerMinute).ToString(units)} there");
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
}
