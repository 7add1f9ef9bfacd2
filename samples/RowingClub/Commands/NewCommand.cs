using System.CommandLine;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Specifications;

namespace RowingClub.Commands;

/// <summary>Starts the files of a boat of one's own.</summary>
internal static class NewCommand
{
    internal static Command Create(Page page)
    {
        Option<string> into = new("--into") { Description = "The folder to write into; it is made when there is none. Default: here.", HelpName = "FOLDER", DefaultValueFactory = _ => "." };
        Option<string?> today = new("--today") { Description = "The day of the answers. Default: the machine's date.", HelpName = "DATE" };
        Command command = new(
            "new",
            "Example: new --into my-boat\n\nAsks the few things that matter and writes a data sheet with comments and a log, for a boat of your own. Never writes over a file.");
        command.Options.Add(into);
        command.Options.Add(today);
        command.SetAction(parsed =>
        {
            string folder = parsed.GetValue(into)!;
            (BoatSpecification boat, ServiceLog log) = new NewBoatDialog(Console.In, page, Inputs.Date(parsed.GetValue(today)) ?? Inputs.Today()).Ask();
            string stem = Path.Combine(folder, FileName.Of(boat.Boat.Name));
            (string sheet, string record) = (stem + ".boat.json", stem + ".log.json");
            Write(folder, (sheet, CommentedSheet.Of(boat)), (record, ServiceLogJson.ToText(log) + "\n"));
            page.Line($"{sheet} and {record} are written.");
            page.Line($"Next: RowingClub due --spec {sheet} --log {record}");
            return ExitCode.Fine;
        });
        return command;
    }

    private static void Write(string folder, params (string Path, string Text)[] files)
    {
        if (files.FirstOrDefault(file => File.Exists(file.Path)).Path is string there)
        {
            throw new UserFault(ExitCode.WrongUsage, $"{there} is there already; nothing was written. Give another --into.");
        }

        try
        {
            Directory.CreateDirectory(folder);
            foreach ((string path, string text) in files)
            {
                using FileStream file = new(path, FileMode.CreateNew);
                file.Write(System.Text.Encoding.UTF8.GetBytes(text));
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UserFault(ExitCode.NoSuchFile, $"{folder}: {fault.Message}");
        }
    }
}
