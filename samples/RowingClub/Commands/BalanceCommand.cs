using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Exchange;
using MarineService.Core.Fluids;
using MarineService.Core.Records;
using MarineService.Core.Specifications;

namespace RowingClub.Commands;

/// <summary>Walks an oil change event by event: what is in the engine, how much more may be poured, and what does not add up.</summary>
internal static class BalanceCommand
{
    internal static Command Create(Page page)
    {
        LaunchOptions options = new();
        Command command = new(
            "balance", "Example: balance Curlew\n\nWalks the latest oil change of each launch: what is in the engine after every event, how sure, and how much more may be poured. Exits 1 when something must be done.");
        Option<string?> change = new("--change")
        {
            Description = "A log document with the oil change (JSON file; - for standard input). Default: the club's change of the day, or the latest in --log.",
            HelpName = "FILE",
        };
        Option<bool> ask = new("--ask") { Description = "Ask for one event after another at the terminal, with the next pour after each answer." };
        Option<string?> save = new("--save") { Description = "With --ask: a log file to which the change is added; it is made when there is none.", HelpName = "FILE" };
        options.AddTo(command);
        command.Options.Add(change);
        command.Options.Add(ask);
        command.Options.Add(save);
        command.SetAction(parsed =>
        {
            bool json = options.Json(parsed);
            IReadOnlyList<Launch> launches = options.Launches(parsed);
            string? file = parsed.GetValue(change);
            string? kept = parsed.GetValue(save);
            if ((parsed.GetValue(ask) && file is not null) || (kept is not null && !parsed.GetValue(ask)))
            {
                throw new UserFault(ExitCode.WrongUsage, "Give either --ask, with or without --save, or --change.");
            }

            bool mustAct = false;
            if (parsed.GetValue(ask))
            {
                return Ask(page, launches, options.Units(parsed), json, kept);
            }

            foreach (Launch launch in launches)
            {
                Launch told = file is not null ? With(launch, Launch.ReadLog(file, Inputs.Read(file)))
                    : options.AreFiles(parsed) ? launch
                    : WithChangeOfTheDay(launch);
                foreach (FittedEngine engine in launch.Boat.Engines)
                {
                    mustAct |= Show(page, told, engine, options.Units(parsed), json);
                }
            }

            return mustAct ? ExitCode.SomethingMustBeDone : ExitCode.Fine;
        });
        return command;
    }

    /// <summary>A club's launch with the oil change of the story's day, when it has one.</summary>
    internal static Launch WithChangeOfTheDay(Launch launch)
    {
        string file = $"{FileName.Of(launch.Boat.Boat.Name)}.change.json";
        return Launch.IsEmbedded(file) ? With(launch, Launch.ReadLog(file, Launch.Embedded(file))) : launch;
    }

    /// <summary>Every recorded oil change of an engine, cast up, oldest first.</summary>
    internal static Answer<IReadOnlyList<FluidBalance>> Balances(Launch launch, FittedEngine engine) =>
        launch.Log.OilBalances(engine.Specification, engine.Id);

    // Of the other log only what was told of oil changes counts; each gets a number of this log.
    private static Launch With(Launch launch, ServiceLog change) =>
        launch with
        {
            Log = ServiceLog.Of(
            [
                .. launch.Log.Entries,
                .. from entry in change.Standing() where entry.Fact is OilChangeRecord select LogEntry.Of(entry.Fact!).For(entry.Scope),
            ]),
        };

    private static bool Show(Page page, Launch launch, FittedEngine engine, DisplayUnits units, bool json)
    {
        Answer<IReadOnlyList<FluidBalance>> balances = Balances(launch, engine);
        FluidBalance? latest = balances is { IsKnown: true, Value.Count: > 0 } ? balances.Value[balances.Value.Count - 1] : null;
        if (json)
        {
            if (latest is not null)
            {
                Console.Out.Write(FluidBalanceJson.ToText(latest, units) + "\n");
            }
        }
        else if (latest is null)
        {
            page.Title($"{launch.Boat}, {engine.Specification}: {(balances.IsKnown ? "no oil change is recorded." : balances.ToString())}");
            page.Line();
        }
        else
        {
            page.Title($"{launch.Boat}, {engine.Specification}: {latest.Explain(units).Answer}");
            foreach (OilChange change in latest.Account.Events)
            {
                Event(page, change, units);
            }

            Verdict(page, latest, units);
        }

        return latest?.Severity >= Severity.Act;
    }

    /// <summary>One event with what is known after it.</summary>
    internal static void Event(Page page, OilChange change, DisplayUnits units)
    {
        string told = change.Measured?.ToString(units) ?? change.Reading?.ToString() ?? change.Appearance?.ToString() ?? "";
        Answer<OilEstimate> estimate = change.Estimate;
        string room = estimate.IsKnown
            ? estimate.Value.Explain(units).Lines.First(line => line.Label == "room to full").Text + " of room to full"
            : "level not known";
        page.Line($"  {change.Step,-13} {told,-22} {room}. {(change.Step >= OilChangeStep.Drained ? Next(change, units) : "")}".TrimEnd());
        foreach (Finding finding in change.Findings)
        {
            page.Finding(finding, units);
        }
    }

    /// <summary>How much may be poured next, in words.</summary>
    internal static string Next(OilChange change, DisplayUnits units)
    {
        Answer<SafePour> next = change.NextSafePour();
        return next.IsKnown ? next.Value.Explain(units).Answer : next.ToString();
    }

    /// <summary>The sums, what they mean, and what to look at.</summary>
    internal static void Verdict(Page page, FluidBalance balance, DisplayUnits units)
    {
        page.Line("  The sums:");
        page.Explain(balance.Explain(units));
        foreach (Discrepancy discrepancy in balance.Discrepancies)
        {
            page.Finding(discrepancy.Finding, units);
            if (discrepancy.LikelyCauses.Count > 0)
            {
                page.Line($"            likely: {string.Join(" ", discrepancy.LikelyCauses)}");
                page.Line($"            look at: {string.Join(" ", discrepancy.LookNext)}");
            }
        }

        page.Line();
    }

    private static int Ask(Page page, IReadOnlyList<Launch> launches, DisplayUnits units, bool json, string? save)
    {
        if (launches.Count != 1 || launches[0].Boat.Engines.Count != 1)
        {
            throw new UserFault(ExitCode.WrongUsage, "Say which launch is asked about, such as: balance Curlew --ask. It must have one engine.");
        }

        Launch launch = launches[0];
        FittedEngine engine = launch.Boat.Engines[0];
        EngineSpecification sheet = engine.Specification;
        if (sheet.Sump is not Sump sump || sump.Validate().Any(finding => finding.Severity >= Severity.Act))
        {
            throw new UserFault(ExitCode.BadData, $"{launch.Boat}: the data sheet does not say what the oil system holds.");
        }

        // Questions go to people and never into the document.
        Page questions = json ? new Page(Console.Error, Console.IsErrorRedirected) : page;
        Answer<PeriodSinceChange> period = launch.Log.PeriodSinceOilChange(sheet, launch.Today, engine.Id);
        OilChange account = new OilChangeDialog(Console.In, questions, units).Ask(sump, period.IsKnown ? period.Value : null);
        FluidBalance balance = account.Balance();
        if (json)
        {
            Console.Out.Write(FluidBalanceJson.ToText(balance, units) + "\n");
        }
        else
        {
            page.Title($"{launch.Boat}, {sheet}: {balance.Explain(units).Answer}");
            Verdict(page, balance, units);
        }

        if (save is not null)
        {
            LogEntry entry = LogEntry.Of(OilChangeRecord.Of(sheet.OilTaskId, launch.Today, account.Told)).For(engine.Id);
            LogFile.Change(save, before => ServiceLogJson.ToText((before is null ? ServiceLog.Empty : Launch.ReadLog(save, before)).With(entry)));
            questions.Line($"{save}: the change was added.");
        }

        return balance.Severity >= Severity.Act ? ExitCode.SomethingMustBeDone : ExitCode.Fine;
    }
}
