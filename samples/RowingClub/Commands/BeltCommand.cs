using System.CommandLine;
using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Core.Exchange;
using MarineService.Core.Specifications;
using UnitsNet;

namespace RowingClub.Commands;

/// <summary>Is the belt on right, what was done if not, what to do; or which routings the pulleys allow.</summary>
internal static class BeltCommand
{
    internal const double UsualCrankSpeed = 3000;

    internal static Command Create(Page page)
    {
        LaunchOptions options = new();
        Command command = new(
            "belt",
            "Example: belt Curlew --lies \"crank, tensioner(back), raw-water pump, alternator\"\n\nWhether the belt lies as the engine's routing says; if not, what was done and the steps that put it right. Which way the tensioner is released, what take-up is left, and the least tension. Exits 1 when something must be done.");
        Option<string?> lies = new("--lies")
        {
            Description = "How the belt lies: names in the direction of its travel, separated by commas, each with (ribs) or (back) where the face is not the one that the rim is made for. Default: the engine's own routing.",
            HelpName = "ROUTING",
        };
        Option<bool> find = new("--find") { Description = "List the routings that the pulleys allow, the likeliest first." };
        Option<bool> anyFace = new("--any-face") { Description = "With --find: also routings with the wrong face on a pulley." };
        Option<bool> missing = new("--missing") { Description = "With --find: also routings that leave pulleys out." };
        Option<double> speed = new("--speed") { Description = "Speed of the crank at which the loads are taken, in turns a minute.", DefaultValueFactory = _ => UsualCrankSpeed, HelpName = "RPM" };
        Option<bool> why = new("--why") { Description = "Show each pulley's wrap, sense, speed and pull, and the sources." };
        options.AddTo(command);
        foreach (Option option in new Option[] { lies, find, anyFace, missing, speed, why })
        {
            command.Options.Add(option);
        }

        command.SetAction(parsed =>
        {
            if (parsed.GetValue(lies) is not null && parsed.GetValue(find))
            {
                throw new UserFault(ExitCode.WrongUsage, "Give either --lies or --find.");
            }

            if (!parsed.GetValue(find) && (parsed.GetValue(anyFace) || parsed.GetValue(missing)))
            {
                throw new UserFault(ExitCode.WrongUsage, "--any-face and --missing go with --find.");
            }

            Question question = new(
                parsed.GetValue(lies), Searched(parsed.GetValue(find), parsed.GetValue(anyFace), parsed.GetValue(missing)), CrankSpeed(parsed.GetValue(speed)), options.Units(parsed), options.Json(parsed), parsed.GetValue(why));
            bool mustAct = false;
            foreach (Launch launch in options.Launches(parsed, needsLog: false))
            {
                foreach (FittedEngine engine in launch.Boat.Engines)
                {
                    mustAct |= Answer(page, launch, engine.Specification, question);
                }
            }

            return mustAct ? ExitCode.SomethingMustBeDone : ExitCode.Fine;
        });
        return command;
    }

    /// <summary>Shows an examination the way a person reads it: the answer, the steps, what was found, the tensioner.</summary>
    internal static void Show(Page page, BeltExamination seen, DisplayUnits units, bool why)
    {
        page.Line($"  Lies:       {seen.AsItLies}");
        if (seen.Comparison is { IsKnown: true, Value.IsSame: false } compared)
        {
            page.Line($"  Should:     {compared.Value.Right}");
            for (int i = 0; i < compared.Value.Edits.Count; i++)
            {
                page.Line($"  Step {i + 1}:     {compared.Value.Edits[i]}");
            }
        }

        foreach (Finding finding in seen.Findings)
        {
            page.Finding(finding, units);
        }

        ShowTensioner(page, seen, units);
        if (why)
        {
            page.Explain(seen.Check.Explain(units));
            if (seen.Tension.IsKnown)
            {
                page.Explain(seen.Tension.Value.Explain(units));
            }

            if (seen.Alignment.IsKnown)
            {
                page.Explain(seen.Alignment.Value.Explain(units));
            }
        }
    }

    /// <summary>Where the arm stands and which way it is released, by the engine's own routing when the belt lies otherwise.</summary>
    private static void ShowTensioner(Page page, BeltExamination seen, DisplayUnits units)
    {
        BeltExamination right = seen.Comparison is { IsKnown: true, Value.IsSame: false } compared
            ? BeltExamination.Of(compared.Value.Right, seen.CrankSpeed)
            : seen;
        if (!ReferenceEquals(right, seen))
        {
            page.Line("  With the belt on right:");
        }

        if (right.Check.Tensioner.IsKnown)
        {
            TensionerCheck arm = right.Check.Tensioner.Value;
            page.Line($"  Tensioner:  {arm.Explain(units).Answer}");
            page.Line("              The spring is strong: engine off and cold, key out, fingers clear of arm and belt, and let it back slowly.");
        }

        page.Line(right.Tension.IsKnown
            ? $"  Pull:       {right.Tension.Value.Explain(units).Answer}"
            : $"  Least pull: {right.Explain(units).Lines.First(line => line.Label == "least pull").Text}.");
    }

    private static bool Answer(Page page, Launch launch, EngineSpecification engine, Question question)
    {
        if (engine.BeltDrive is not BeltDrive drive)
        {
            string missing = $"{launch.Boat}, {engine}: not known: the pulleys of the belt drive.";
            return question.Json ? throw new UserFault(ExitCode.BadData, missing) : Said(page, missing);
        }

        return question.Search is RoutingSearchOptions options ? Found(page, launch, drive, options, question) : Seen(page, launch, drive, question);
    }

    private static bool Seen(Page page, Launch launch, BeltDrive drive, Question question)
    {
        Answer<BeltRouting> routing = question.Lies is string text ? drive.ReadRouting(text) : drive.EngineRouting;
        if (!routing.IsKnown)
        {
            throw new UserFault(question.Lies is null ? ExitCode.BadData : ExitCode.WrongUsage, routing.Missing.Prepend(question.Lies is null ? "Not known:" : "--lies cannot be read:"));
        }

        BeltExamination seen = BeltExamination.Of(routing.Value, question.CrankSpeed);
        if (question.Json)
        {
            Console.Out.Write(BeltExaminationJson.ToText(seen, question.Units) + "\n");
            return !seen.IsFine;
        }

        page.Title($"{launch.Boat}, belt {drive.Belt}: {seen.Explain(question.Units).Answer}");
        Show(page, seen, question.Units, question.Why);
        page.Line();
        return !seen.IsFine;
    }

    private static bool Found(Page page, Launch launch, BeltDrive drive, RoutingSearchOptions options, Question question)
    {
        RoutingSearchResult search;
        try
        {
            search = drive.FindRoutings(options);
        }
        catch (InvalidOperationException tooMany)
        {
            throw new UserFault(ExitCode.BadData, tooMany.Message);
        }

        if (question.Json)
        {
            Console.Out.Write(RoutingSearchJson.ToText(search) + "\n");
            return false;
        }

        page.Title($"{launch.Boat}, belt {drive.Belt}: {search.Explain(question.Units).Answer}");
        page.Line($"  {search.Considered} orders and faces, {search.Candidates.Count} possible:");
        foreach (RoutingCandidate candidate in search.Ranked)
        {
            page.Line($"  {(candidate.IsPlausible ? "fits    " : "possible")}  {candidate.Routing}");
            foreach (string line in Reasons(candidate, question.Units))
            {
                page.Line($"            {line}");
            }
        }

        page.Line();
        return false;
    }

    private static IEnumerable<string> Reasons(RoutingCandidate candidate, DisplayUnits units) =>
        candidate.Explain(units).Lines.Where(line => line.Label is not "least wrap" and not "rule").Select(line => $"{line.Label,-10} {line.Text}");

    private static bool Said(Page page, string text)
    {
        page.Line(text);
        return false;
    }

    private static RoutingSearchOptions? Searched(bool find, bool anyFace, bool missing)
    {
        if (!find)
        {
            return null;
        }

        RoutingSearchOptions options = RoutingSearchOptions.Default.WithFaces(anyFace ? FaceChoice.Either : FaceChoice.AsRimsAreMade);
        return missing ? options.WithMissedPulleys() : options;
    }

    private static RotationalSpeed CrankSpeed(double turns) => turns is > 0 and <= 20_000
        ? RotationalSpeed.FromRevolutionsPerMinute(turns)
        : throw new UserFault(ExitCode.WrongUsage, "--speed takes turns a minute above 0 and up to 20000.");

    private sealed record Question(string? Lies, RoutingSearchOptions? Search, RotationalSpeed CrankSpeed, DisplayUnits Units, bool Json, bool Why);
}
