using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Engines;
using MarineService.Core.Exchange;
using MarineService.Core.LayUp;
using MarineService.Core.Oils;
using MarineService.Core.Specifications;
using NodaTime;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>The winter plan of each launch: what to drain, fill, fog, treat and charge, with amounts.</summary>
internal static class LayUpCommand
{
    // What stands on the club's shelf.
    private const double ClubStrengthPercent = 95;
    private static readonly FuelStabilizer ClubStabilizer = FuelStabilizer.Of("stabilizer", dose: Volume.FromMilliliters(25), treats: Volume.FromLiters(10));

    internal static Command Create(Page page)
    {
        LaunchOptions options = new();
        Command command = new(
            "layup", "Example: layup Dipper --low -20C\n\nThe winter plan: what to drain, fill, fog, treat and charge, with amounts, and what is not known. Exits 1 when something must be put right.");
        Option<string?> low = new("--low")
        {
            Description = "The lowest air temperature to protect against: -20, -20C or -4F. Without a letter in the units of --units. Default for the club: the winter on its record, less a margin.",
            HelpName = "T",
        };
        Option<string?> nights = new("--nights")
        {
            Description = "The site's minima on record: a CSV file with the columns date and minimum_celsius or minimum_fahrenheit (- for standard input).",
            HelpName = "FILE",
        };
        Option<double?> strength = new("--strength") { Description = "Propylene glycol in the antifreeze as bought, percent by volume. Default for the club: 95. For files: none, drain only.", HelpName = "PERCENT" };
        Option<bool> readyMixed = new("--ready-mixed") { Description = "The antifreeze is sold to be used as it is." };
        Option<double?> battery = new("--battery") { Description = "Volts of a flooded 12 V lead battery after half a day without charge or load.", HelpName = "VOLTS" };
        options.AddTo(command);
        command.Options.Add(low);
        command.Options.Add(nights);
        command.Options.Add(strength);
        command.Options.Add(readyMixed);
        command.Options.Add(battery);
        command.SetAction(parsed =>
        {
            DisplayUnits units = options.Units(parsed);
            bool isClub = !options.AreFiles(parsed);
            Temperature? chosen = Inputs.AirTemperature("--low", parsed.GetValue(low), units);
            string? file = parsed.GetValue(nights);
            if (chosen is not null && file is not null)
            {
                throw new UserFault(ExitCode.WrongUsage, "Give either --low or --nights.");
            }

            if (parsed.GetValue(strength) is double percent && percent is not (> 0 and <= 100))
            {
                throw new UserFault(ExitCode.WrongUsage, "--strength: give a percentage above 0, at most 100.");
            }

            if (parsed.GetValue(battery) is double volts && volts is not (>= 6 and <= 24))
            {
                throw new UserFault(ExitCode.WrongUsage, "--battery: give 6 to 24 V.");
            }

            IReadOnlyList<Launch> launches = options.Launches(parsed);
            SiteMinimum[] records = chosen is not null ? []
                : Records(file is not null ? NightsFile.Read(file, Inputs.Read(file))
                    : isClub ? NightsFile.Read("nights.csv", Launch.Embedded("nights.csv"))
                    : throw new UserFault(ExitCode.WrongUsage, "For a boat of your own give --low or --nights."));
            double? glycol = parsed.GetValue(strength) ?? (isClub ? ClubStrengthPercent : null);
            Antifreeze? antifreeze = glycol is double share ? Antifreeze.Of("propylene glycol", AntifreezeBase.PropyleneGlycol, share / 100, parsed.GetValue(readyMixed)) : null;
            BatteryReading? reading = parsed.GetValue(battery) is double rest ? BatteryReading.OfVoltage(BatteryKind.FloodedLead, ElectricPotential.FromVolts(rest), restedHours: 12) : null;
            bool mustAct = false;
            foreach (Launch launch in launches)
            {
                foreach (FittedEngine engine in launch.Boat.Engines)
                {
                    LayUpPlan plan = Plan(launch, engine, Frost(launch, engine, chosen, records), antifreeze, reading, isClub ? ClubStabilizer : null);
                    mustAct |= plan.Worst >= Severity.Act;
                    if (options.Json(parsed))
                    {
                        Console.Out.Write(LayUpPlanJson.ToText(plan, units) + "\n");
                    }
                    else
                    {
                        Show(page, launch, plan, units);
                    }
                }
            }

            return mustAct ? ExitCode.SomethingMustBeDone : ExitCode.Fine;
        });
        return command;
    }

    private static LayUpPlan Plan(Launch launch, FittedEngine engine, FreezeDecision freeze, Antifreeze? antifreeze, BatteryReading? battery, FuelStabilizer? stabilizer)
    {
        LayUpPlan plan = engine.Specification.PlanLayUp(freeze).WithBoat(launch.Boat.Boat);
        plan = antifreeze is null ? plan : plan.WithAntifreeze(antifreeze);
        plan = battery is null ? plan : plan.WithBattery(battery);
        return engine.Specification.LayUp?.FuelTank is FuelTank tank && stabilizer is not null ? plan.WithFuel(FuelLayUp.Of(tank, null, stabilizer)) : plan;
    }

    internal static SiteMinimum[] Records(IReadOnlyList<NightMinimum> nights) => [.. nights.Select(night => SiteMinimum.Of(night.Date, night.Temperature))];

    /// <summary>Whether frost is to be expected in the lay-up that is planned or under way; without one, in the year from today.</summary>
    internal static FreezeDecision Frost(Launch launch, FittedEngine engine, Temperature? chosen, SiteMinimum[] records)
    {
        LayUpPeriod? ahead = launch.Log.History(engine.Specification, launch.Today, engine.Id).LayUps.FirstOrDefault(layUp => layUp.To is not LocalDate to || to > launch.Today);
        LocalDate from = ahead?.From ?? launch.Today;
        LocalDate to = ahead?.To ?? from.PlusYears(1);
        return chosen is not Temperature temperature ? FreezeDecision.ForSite(from, to, records)
            : ahead is null ? FreezeDecision.ForLow(temperature)
            : FreezeDecision.ForLow(temperature).Between(from, to);
    }

    private static void Show(Page page, Launch launch, LayUpPlan plan, DisplayUnits units)
    {
        page.Title($"{launch.Boat}, {plan.Engine}: {plan.Freeze.Explain(units).Answer}");
        if (plan.Freeze.From is LocalDate from && plan.Freeze.To is LocalDate to)
        {
            page.Line($"  Laid up from {from:uuuu'-'MM'-'dd} to {to:uuuu'-'MM'-'dd}.");
        }

        for (int i = 0; i < plan.Steps.Count; i++)
        {
            page.Line(FormattableString.Invariant($"  {i + 1,2}. {plan.Steps[i].Text(units)}"));
            if (plan.Steps[i].Caution is Caution caution)
            {
                page.Line($"      {caution}");
            }
        }

        page.Line($"  Tags: {string.Join(", ", plan.Tags)}. Drains and covers to count shut in spring: {(plan.Openings.IsKnown ? plan.Openings.ToString() : "not known")}.");
        foreach (Finding finding in plan.Findings)
        {
            page.Finding(finding, units);
        }

        foreach (string missing in plan.Missing)
        {
            page.Line($"  Not known: {missing}");
        }

        page.Line("  The engine's own manual comes first.");
        page.Line();
    }
}
