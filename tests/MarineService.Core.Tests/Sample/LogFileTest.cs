using RowingClub;

namespace MarineService.Core.Tests.Sample;

/// <summary>Adding to a log: whatever stops the program, and whenever, the file is the old one or the new one.</summary>
public sealed class LogFileTest : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("log-file-").FullName;

    private string Log => Path.Combine(_folder, "L.json");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>What lies on the disk at a step is what a kill at that step leaves: the old content before the rename, the new one after it.</summary>
    [Fact]
    public void Change_AtEveryStep_HasTheOldFileOrTheNewOne()
    {
        File.WriteAllText(Log, "old");
        List<LogFile.Step> steps = [];
        LogFile.Change(Log, _ => "new", step =>
        {
            steps.Add(step);
            Assert.Equal(step < LogFile.Step.Renamed ? "old" : "new\n", File.ReadAllText(Log));
        });
        Assert.Equal(Enum.GetValues<LogFile.Step>(), steps);
    }

    [Theory]
    [InlineData((int)LogFile.Step.Read)]
    [InlineData((int)LogFile.Step.HalfWritten)]
    [InlineData((int)LogFile.Step.Written)]
    [InlineData((int)LogFile.Step.Flushed)]
    [InlineData((int)LogFile.Step.Compared)]
    public void Change_ThatFailsAtAStep_LeavesTheOldFileAlone(int failing)
    {
        File.WriteAllText(Log, "old");
        UserFault fault = Assert.Throws<UserFault>(() => LogFile.Change(Log, _ => "new", step =>
        {
            if (step == (LogFile.Step)failing)
            {
                throw new IOException("The disk is full.");
            }
        }));
        Assert.Contains("Nothing was added", fault.Message, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(Log));
        Assert.Equal([Log], Directory.GetFiles(_folder));
    }

    [Fact]
    public void Change_AfterAKill_WritesOverWhatWasLeft()
    {
        File.WriteAllText(Log, "old");
        File.WriteAllText(Path.Combine(_folder, ".L.json.new"), "half of something longer than the new content");
        File.WriteAllText(Path.Combine(_folder, ".L.json.lock"), "");
        LogFile.Change(Log, _ => "new");
        Assert.Equal("new\n", File.ReadAllText(Log));
        Assert.Equal([Log], Directory.GetFiles(_folder));
    }

    [Theory]
    [InlineData("an editor's", "an editor's")]
    [InlineData(null, null)]
    public void Change_OfAFileThatAnEditorChangedMeanwhile_IsRefused(string? edited, string? left)
    {
        File.WriteAllText(Log, "old");
        UserFault fault = Assert.Throws<UserFault>(() => LogFile.Change(Log, _ => "new", step =>
        {
            if (step == LogFile.Step.Written)
            {
                Edit(edited);
            }
        }));
        Assert.Equal(ExitCode.BadData, fault.ExitCode);
        Assert.Equal(left, File.Exists(Log) ? File.ReadAllText(Log) : null);
    }

    [Fact]
    public void Change_OfANewFileThatIsThereMeanwhile_IsRefused()
    {
        Assert.Throws<UserFault>(() => LogFile.Change(Log, _ => "new", step =>
        {
            if (step == LogFile.Step.Compared)
            {
                Edit("an editor's");
            }
        }));
        Assert.Equal("an editor's", File.ReadAllText(Log));
    }

    /// <summary>Several at once take turns: nobody's line is lost.</summary>
    [Fact]
    public void Changes_AtOnce_AllCount()
    {
        Parallel.ForEach(
            Enumerable.Range(0, 12),
            new ParallelOptions { MaxDegreeOfParallelism = 12 },
            i => LogFile.Change(Log, before => (before is null ? "" : System.Text.Encoding.UTF8.GetString(before)) + i));
        Assert.Equal(Enumerable.Range(0, 12).Select(i => $"{i}").Order(StringComparer.Ordinal), File.ReadAllLines(Log).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Change_KeepsALink_AndWhoMayReadTheFile()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Modes are Unix's.");
            return;
        }

        File.WriteAllText(Log, "old");
        File.SetUnixFileMode(Log, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        string link = Path.Combine(_folder, "link.json");
        File.CreateSymbolicLink(link, Log);
        LogFile.Change(link, _ => "new");
        Assert.Equal(Log, File.ResolveLinkTarget(link, returnFinalTarget: true)!.FullName);
        Assert.Equal("new\n", File.ReadAllText(Log));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Log));
    }

    [Fact]
    public void Change_InAFolderThatIsNotThere_IsRefused() =>
        Assert.Equal(ExitCode.NoSuchFile, Assert.Throws<UserFault>(() => LogFile.Change(Path.Combine(_folder, "none", "L.json"), _ => "new")).ExitCode);

    private void Edit(string? content)
    {
        if (content is null)
        {
            File.Delete(Log);
        }
        else
        {
            File.WriteAllText(Log, content);
        }
    }
}
