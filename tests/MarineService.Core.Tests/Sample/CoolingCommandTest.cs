using System.Diagnostics;
using System.Text;
using System.Text.Json;
using MarineService.Core.Tests.Documentation;

namespace MarineService.Core.Tests.Sample;

/// <summary>The cooling command as the shell sees it: the club's failed impeller, and where its missing piece is.</summary>
public sealed class CoolingCommandTest
{
    [Fact]
    public void Cooling_OfTheClub_JudgesTheFailedImpeller_AndSaysWhereToLook()
    {
        (string output, string errors, int exit) = Run("cooling");
        Assert.Equal(1, exit);
        Assert.Empty(errors);
        Assert.Contains("Curlew, Corrie 60P: impeller of 2026-10-04. Replace it, and search", output, StringComparison.Ordinal);
        Assert.Contains("0.25 outstanding", output, StringComparison.Ordinal);
        Assert.True(output.IndexOf("2. steering cooler", StringComparison.Ordinal) < output.IndexOf("4. heat exchanger", StringComparison.Ordinal));
        Assert.Contains("port outlet and starboard outlet", output, StringComparison.Ordinal);
        Assert.Contains("Dipper, Corrie 24P: no impeller inspection in the log.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Cooling_Json_IsTheLibrarysDocument()
    {
        (string output, _, int exit) = Run("cooling Curlew --json");
        Assert.Equal(1, exit);
        using JsonDocument document = JsonDocument.Parse(output);
        Assert.Equal("replace-and-search", document.RootElement.GetProperty("verdict").GetString());
        Assert.Equal(0.25, document.RootElement.GetProperty("account").GetProperty("outstanding").GetDouble(), 9);
        Assert.Equal(11, document.RootElement.GetProperty("search").GetArrayLength());
        Assert.Equal(65, Run("cooling Tern --json").Exit);
    }

    [Fact]
    public void Cooling_InUsUnits_DecidesTheSame()
    {
        (string output, _, int exit) = Run("cooling Curlew --units us");
        Assert.Equal(1, exit);
        Assert.Contains("US gal/min", output, StringComparison.Ordinal);
        Assert.Contains("130 °F", output, StringComparison.Ordinal);
        Assert.Equal(64, Run("cooling Curlw").Exit);
    }

    private static (string Output, string Errors, int Exit) Run(string arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo("dotnet", $"exec \"{ConsoleExample.SampleProgram}\" {arguments}")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        })!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (output, errors.GetAwaiter().GetResult(), process.ExitCode);
    }
}
