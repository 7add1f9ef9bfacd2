using System.Diagnostics;
using System.Reflection;
using BenchmarkDotNet.Attributes;

namespace MarineService.Core.Comparisons;

/// <summary>How long somebody waits for the first words of the sample's story, against a program that only says one word.</summary>
public class StartUp
{
    private string _folder = "";

    [GlobalSetup]
    public void MakeFolder() => _folder = Directory.CreateTempSubdirectory("start-").FullName;

    [GlobalCleanup]
    public void RemoveFolder() => Directory.Delete(_folder, recursive: true);

    [Benchmark(Baseline = true)]
    public int EmptyConsole() => FirstOutput("EmptyConsole");

    [Benchmark]
    public int RowingClub() => FirstOutput("RowingClub");

    // Who reads the first words waits no longer; the rest of the story is not told.
    private int FirstOutput(string program)
    {
        string path = typeof(StartUp).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(one => one.Key == program).Value!;
        using Process process = Process.Start(new ProcessStartInfo("dotnet", $"exec \"{path}\"") { RedirectStandardOutput = true, WorkingDirectory = _folder })!;
        int first = process.StandardOutput.Read();
        process.Kill();
        process.WaitForExit();
        return first;
    }
}
