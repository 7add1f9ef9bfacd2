using System.CommandLine;
using MarineService.Core;

namespace RowingClub.Commands;

/// <summary>What every command about a boat takes: one of the club's launches or files, a day, units, and words or JSON.</summary>
internal sealed class LaunchOptions
{
    private readonly Argument<string?> _name = new("launch")
    {
        Description = "One of the club's launches: Curlew, Dipper or Tern. Left out: all three.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> _specification = new("--spec")
    {
        Description = "A boat's or an engine's data sheet (JSON file; - for standard input).",
        HelpName = "FILE",
    };

    private readonly Option<string?> _log = new("--log") { Description = "What was read and done (JSON file; - for standard input).", HelpName = "FILE" };

    private readonly Option<string?> _today = new("--today")
    {
        Description = "The day to look from. Default: 2026-10-12 for the club, the machine's date for files.",
        HelpName = "DATE",
    };

    private readonly Option<string> _units = new("--units") { Description = "Units in words: metric or us.", DefaultValueFactory = _ => "metric", HelpName = "UNITS" };

    private readonly Option<bool> _json = new("--json") { Description = "The library's own JSON document on standard output." };

    internal LaunchOptions() => _units.AcceptOnlyFromAmong("metric", "us");

    internal void AddTo(Command command, bool hasDocument = true)
    {
        command.Arguments.Add(_name);
        command.Options.Add(_specification);
        command.Options.Add(_log);
        command.Options.Add(_today);
        command.Options.Add(_units);
        if (hasDocument)
        {
            command.Options.Add(_json);
        }
    }

    /// <summary>The launches that the user named; a command that looks at the boat alone needs no log.</summary>
    internal IReadOnlyList<Launch> Launches(ParseResult parsed, bool needsLog = true)
    {
        string? name = parsed.GetValue(_name);
        string? specification = parsed.GetValue(_specification);
        string? log = parsed.GetValue(_log);
        NodaTime.LocalDate? today = Inputs.Date(parsed.GetValue(_today));
        if (specification is null && log is null)
        {
            return name is null ? Launch.Club(today) : [Launch.OfClub(name, today)];
        }

        return (name, specification, log) switch
        {
            (not null, _, _) => throw new UserFault(ExitCode.WrongUsage, "Give either a launch of the club, or --spec and --log."),
            (_, not null, null) when !needsLog => [Launch.FromFiles(specification, null, today)],
            (_, null, _) or (_, _, null) => throw new UserFault(ExitCode.WrongUsage, "--spec and --log go together."),
            (_, "-", "-") => throw new UserFault(ExitCode.WrongUsage, "Only one of --spec and --log can come from standard input."),
            _ => [Launch.FromFiles(specification, log, today)],
        };
    }

    /// <summary>Whether the boat comes from files and not from the club.</summary>
    internal bool AreFiles(ParseResult parsed) => parsed.GetValue(_specification) is not null || parsed.GetValue(_log) is not null;

    internal DisplayUnits Units(ParseResult parsed) => parsed.GetValue(_units) == "us" ? DisplayUnits.UsCustomary : DisplayUnits.Metric;

    internal bool Json(ParseResult parsed) => parsed.GetValue(_json);
}
