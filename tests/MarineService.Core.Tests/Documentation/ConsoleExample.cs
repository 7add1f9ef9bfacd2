using System.Diagnostics;
using System.Globalization;
using System.Reflection;

namespace MarineService.Core.Tests.Documentation;

/// <summary>Runs the commands of console blocks with the sample program and compares what they print.</summary>
/// <remarks>
/// A line that starts with "$ " is a command, the lines below it are its output (standard output, then standard error); a line
/// that is "..." stands for any number of lines. "$ echo $?" shows the exit code. A block of JSON or CSV with a file name behind its
/// language is written to the folder in which the commands of its document run; so is a block of text, for a command that ends in
/// "&lt; file": it is told those lines.
/// </remarks>
internal static class ConsoleExample
{
    private const string SampleCommand = "dotnet run --project samples/RowingClub";

    /// <summary>The sample as a stranger built it, on the packed package; null when the tests run the one that was built with them.</summary>
    internal static string? StrangersProgram { get; } = Environment.GetEnvironmentVariable("STRANGERS_SAMPLE") is { Length: > 0 } path ? path : null;

    /// <summary>The built sample program, or null in the project that does not build it.</summary>
    internal static string? SampleProgram { get; } = StrangersProgram ?? typeof(ConsoleExample).Assembly
        .GetCustomAttributes<AssemblyMetadataAttribute>().FirstOrDefault(a => a.Key == "SampleProgram")?.Value;

    internal static IEnumerable<string> Faults(IReadOnlyList<MarkdownExample> document) => Faults(document, RunSample);

    internal static IEnumerable<string> Faults(
        IReadOnlyList<MarkdownExample> document, Func<string, string, (string Printed, int ExitCode)> runSample)
    {
        MarkdownExample[] blocks = [.. document.Where(block => block.Language == "console" && block.NotRun is null)];
        if (blocks.Length == 0)
        {
            yield break;
        }

        DirectoryInfo folder = Directory.CreateTempSubdirectory("documents-");
        foreach (MarkdownExample named in document.Where(block => block.Language is "json" or "csv" or "text" && block.FileName.Length > 0))
        {
            File.WriteAllText(Path.Combine(folder.FullName, Path.GetFileName(named.FileName)), named.Code);
        }

        foreach (string fault in blocks.SelectMany(block => Faults(block, folder.FullName, runSample)))
        {
            yield return fault;
        }

        folder.Delete(recursive: true);
    }

    internal static bool Matches(IReadOnlyList<string> expected, IReadOnlyList<string> printed) =>
        expected.Count == 0 ? printed.Count == 0
        : expected[0] == "..." ? Enumerable.Range(0, printed.Count + 1).Any(skipped => Matches(Rest(expected, 1), Rest(printed, skipped)))
        : printed.Count > 0 && expected[0] == printed[0] && Matches(Rest(expected, 1), Rest(printed, 1));

    private static IEnumerable<string> Faults(
        MarkdownExample block, string folder, Func<string, string, (string Printed, int ExitCode)> runSample)
    {
        int exitCode = 0;
        foreach ((string command, List<string> expected) in Commands(block))
        {
            string printed;
            if (command == "echo $?")
            {
                printed = exitCode.ToString(CultureInfo.InvariantCulture);
            }
            else if (command == SampleCommand || command.StartsWith(SampleCommand + " -- ", StringComparison.Ordinal))
            {
                string arguments = command.Substring(SampleCommand.Length).Trim();
                (printed, exitCode) = runSample(folder, arguments.StartsWith("-- ", StringComparison.Ordinal) ? arguments.Substring(3) : "");
            }
            else
            {
                yield return $"{block.Place}: '{command}' is no command of the sample; mark the block with <!-- not run: reason -->";
                yield break;
            }

            string[] lines = [.. printed.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line.TrimEnd())];
            lines = lines is [""] ? [] : lines;
            if (!Matches(expected, lines))
            {
                yield return $"{block.Place}: '{command}' prints\n{string.Join('\n', lines)}\nbut the document says\n{string.Join('\n', expected)}";
            }
        }
    }

    private static List<(string Command, List<string> Expected)> Commands(MarkdownExample block)
    {
        List<(string Command, List<string> Expected)> commands = [];
        foreach (string line in block.Code.Split('\n').Select(line => line.TrimEnd()))
        {
            if (line.StartsWith("$ ", StringComparison.Ordinal))
            {
                commands.Add((line.Substring(2).Trim(), []));
            }
            else if (commands.Count == 0)
            {
                commands.Add((line, []));
            }
            else
            {
                commands[^1].Expected.Add(line);
            }
        }

        while (commands.Count > 0 && commands[^1].Expected is [.., ""])
        {
            commands[^1].Expected.RemoveAt(commands[^1].Expected.Count - 1);
        }

        return commands;
    }

    private static (string Printed, int ExitCode) RunSample(string folder, string arguments)
    {
        string[] told = arguments.Split(" < ", 2);
        ProcessStartInfo start = new("dotnet", $"exec \"{SampleProgram}\" {told[0]}")
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        start.Environment["NO_COLOR"] = "1";
        using Process process = Process.Start(start)!;
        process.StandardInput.Write(told.Length > 1 ? File.ReadAllText(Path.Combine(folder, told[1])) : "");
        process.StandardInput.Close();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (output + errors.GetAwaiter().GetResult(), process.ExitCode);
    }

    private static List<string> Rest(IReadOnlyList<string> lines, int skipped) => [.. lines.Skip(skipped)];
}
