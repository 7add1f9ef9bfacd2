using System.Diagnostics;
using System.Text;
using MarineService.Core.Tests.Documentation;

namespace MarineService.Core.Tests.Sample;

/// <summary>The built sample program as a shell runs it.</summary>
internal static class SampleRun
{
    /// <summary>Runs a command to its end.</summary>
    /// <param name="folder">Where it runs.</param>
    /// <param name="arguments">As typed in a shell.</param>
    /// <param name="answers">Lines that it is told on standard input; null leaves that as it is.</param>
    internal static (string Output, string Errors, int Exit) In(string folder, string arguments, IReadOnlyList<string>? answers = null)
    {
        using Process process = Start(folder, arguments, isTold: answers is not null);
        Task<string> errors = process.StandardError.ReadToEndAsync();
        if (answers is not null)
        {
            process.StandardInput.Write(string.Concat(answers.Select(answer => answer + "\n")));
            process.StandardInput.Close();
        }

        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (output, errors.GetAwaiter().GetResult(), process.ExitCode);
    }

    /// <summary>Starts a command, for tests that stop it.</summary>
    internal static Process Start(string folder, string arguments, bool isTold = false) =>
        Process.Start(new ProcessStartInfo("dotnet", $"exec \"{ConsoleExample.SampleProgram}\" {arguments}")
        {
            WorkingDirectory = folder,
            RedirectStandardInput = isTold,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        })!;
}
