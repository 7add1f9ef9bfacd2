using System.Diagnostics;
using System.Text;

namespace RowingClub;

/// <summary>Changes a file so that it is the old one or the new one whatever happens meanwhile, and never loses what somebody else wrote.</summary>
internal static class LogFile
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    /// <summary>The steps of a change, for tests that stop it at each of them.</summary>
    internal enum Step
    {
        Read,
        HalfWritten,
        Written,
        Flushed,
        Compared,
        Renamed,
    }

    /// <summary>Puts new content in the place of the old; refuses when an editor changed the file meanwhile.</summary>
    /// <param name="path">The file; it is made when there is none.</param>
    /// <param name="change">From the old content, null when there is no file, to the new.</param>
    /// <param name="reached">Told of each step.</param>
    internal static void Change(string path, Func<byte[]?, string> change, Action<Step>? reached = null)
    {
        // A link stays a link: the file that it leads to is changed.
        string target = (File.Exists(path) ? File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName : null) ?? Path.GetFullPath(path);
        string hidden = Path.Combine(Path.GetDirectoryName(target)!, "." + Path.GetFileName(target));
        string written = hidden + ".new";
        try
        {
            // Other runs of this program wait here; one that was killed has let go, and what it left is written over.
            using FileStream turn = Lock(hidden + ".lock", path);
            byte[]? before = ReadIfThere(target);
            reached?.Invoke(Step.Read);
            byte[] after = Encoding.UTF8.GetBytes(change(before) + "\n");
            try
            {
                Write(written, after, before is null ? null : target, reached);
                if (!Same(before, ReadIfThere(target)))
                {
                    throw new UserFault(ExitCode.BadData, $"{path} was changed by another program meanwhile. Nothing was added; try again.");
                }

                reached?.Invoke(Step.Compared);

                // A rename within one folder replaces the old file in one step.
                File.Move(written, target, overwrite: before is not null);
                reached?.Invoke(Step.Renamed);
            }
            finally
            {
                File.Delete(written);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UserFault(ExitCode.NoSuchFile, $"{path}: {fault.Message} Nothing was added.");
        }
    }

    private static FileStream Lock(string file, string path)
    {
        Stopwatch waited = Stopwatch.StartNew();
        while (true)
        {
            try
            {
                return new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException fault) when (fault is not (DirectoryNotFoundException or PathTooLongException))
            {
                if (waited.Elapsed > Patience)
                {
                    throw new UserFault(ExitCode.BadData, $"{path} is being changed by another program. Nothing was added; try again.");
                }

                Thread.Sleep(20);
            }
        }
    }

    private static void Write(string file, byte[] content, string? like, Action<Step>? reached)
    {
        using FileStream stream = new(file, FileMode.Create, FileAccess.Write);
        if (like is not null && !OperatingSystem.IsWindows())
        {
            // Who may read the log stays as it was.
            File.SetUnixFileMode(file, File.GetUnixFileMode(like));
        }

        stream.Write(content, 0, content.Length / 2);
        stream.Flush();
        reached?.Invoke(Step.HalfWritten);
        stream.Write(content, content.Length / 2, content.Length - (content.Length / 2));
        reached?.Invoke(Step.Written);

        // Onto the disk before the name points to it.
        stream.Flush(flushToDisk: true);
        reached?.Invoke(Step.Flushed);
    }

    private static byte[]? ReadIfThere(string file) => File.Exists(file) ? File.ReadAllBytes(file) : null;

    private static bool Same(byte[]? one, byte[]? other) => one is null ? other is null : other is not null && one.AsSpan().SequenceEqual(other);
}
