using System.Text;

namespace RowingClub;

/// <summary>Writes a file so that it is the old one or the new one whatever happens meanwhile.</summary>
internal static class LogFile
{
    /// <summary>Puts new content in the place of old; refuses when somebody else changed the file since it was read.</summary>
    internal static void Replace(string path, byte[]? before, string text)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        string written = Path.Combine(folder, $".{Path.GetFileName(path)}.{Guid.NewGuid():N}.new");
        try
        {
            using (FileStream file = new(written, FileMode.CreateNew, FileAccess.Write))
            {
                file.Write(Encoding.UTF8.GetBytes(text));
                file.Write("\n"u8);
                // Onto the disk before the name points to it.
                file.Flush(flushToDisk: true);
            }

            byte[]? now = File.Exists(path) ? File.ReadAllBytes(path) : null;
            if (now is null != before is null || (now is not null && !now.AsSpan().SequenceEqual(before)))
            {
                throw new UserFault(ExitCode.BadData, $"{path} was changed by somebody else meanwhile. Nothing was added; try again.");
            }

            // A rename within one folder replaces the old file in one step.
            File.Move(written, path, overwrite: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UserFault(ExitCode.NoSuchFile, $"{path}: {fault.Message} Nothing was added.");
        }
        finally
        {
            File.Delete(written);
        }
    }
}
