using System.CommandLine;
using RowingClub;
using RowingClub.Commands;

Page page = new(Console.Out, Console.IsOutputRedirected);
RootCommand root = new("Example: RowingClub due Curlew\n\nWhat the launches of the Loch Vennery Rowing Club need next, and why. Without a command: the story of one day.");
root.Subcommands.Add(DueCommand.Create(page));
root.Subcommands.Add(VisitsCommand.Create(page));
root.Subcommands.Add(CardCommand.Create(page));
root.Subcommands.Add(SheetCommand.Create(page));
root.Subcommands.Add(OilCommand.Create(page));
root.Subcommands.Add(BeltCommand.Create(page));
root.Subcommands.Add(BalanceCommand.Create(page));
root.Subcommands.Add(CoolingCommand.Create(page));
root.Subcommands.Add(LayUpCommand.Create(page));
root.Subcommands.Add(RecordCommand.Create(page));
root.Subcommands.Add(NewCommand.Create(page));
root.SetAction(_ =>
{
    Story.Tell(page);
    return ExitCode.Fine;
});

ParseResult parsed = root.Parse(args);
if (parsed.Errors.Count > 0)
{
    foreach (System.CommandLine.Parsing.ParseError error in parsed.Errors)
    {
        Console.Error.WriteLine(error.Message);
    }

    if (Spelling.NearestTo(parsed.UnmatchedTokens, parsed.CommandResult.Command) is string meant)
    {
        Console.Error.WriteLine($"Did you mean '{meant}'?");
    }

    Console.Error.WriteLine("RowingClub --help shows what can be asked.");
    return ExitCode.WrongUsage;
}

try
{
    return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (UserFault fault)
{
    Console.Error.WriteLine(fault.Message);
    return fault.ExitCode;
}
#pragma warning disable CA1031 // The last resort: whatever it is, it is our fault, and the shell must know.
catch (Exception fault)
#pragma warning restore CA1031
{
    Console.Error.WriteLine($"This is our fault, please report it: {fault}");
    return ExitCode.OurFault;
}
