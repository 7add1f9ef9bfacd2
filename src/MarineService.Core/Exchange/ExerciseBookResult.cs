using MarineService.Core.Internal;
using MarineService.Core.Records;

namespace MarineService.Core.Exchange;

/// <summary>What came of reading an exercise book: entries from the good lines, and the bad lines as they stand. No line is lost.</summary>
public sealed class ExerciseBookResult
{
    private readonly byte[] _header;
    private ServiceLog? _log;

    internal ExerciseBookResult(byte[] header, IReadOnlyList<LogEntry> entries, IReadOnlyList<ExerciseBookLine> badLines, IReadOnlyList<ExerciseBookFault> faults) =>
        (_header, Entries, BadLines, Faults) = (header, entries, badLines, faults);

    /// <summary>Whether everything was read.</summary>
    public bool IsComplete => Faults.Count == 0;

    /// <summary>The entries of the good lines in the order of the file, without ids: one for each line, or one for each task that it names.</summary>
    public IReadOnlyList<LogEntry> Entries { get; }

    /// <summary>A log of the entries alone, numbered from 1.</summary>
    public ServiceLog Log => _log ??= ServiceLog.Of(Entries);

    /// <summary>The lines that could not be read, in the order of the file.</summary>
    public IReadOnlyList<ExerciseBookLine> BadLines { get; }

    /// <summary>Everything that is wrong, in the order of the file: the file, the header, each bad line.</summary>
    public IReadOnlyList<ExerciseBookFault> Faults { get; }

    /// <summary>Writes the bad lines under the file's header: a file to be put right and read again.</summary>
    /// <param name="stream">Where to write; left open. Lines end in CRLF, everything else is as it stood.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public void WriteBadLines(Stream stream)
    {
        Guard.NotNull(stream);
        foreach (byte[] line in BadLines.Select(line => line.Utf8.ToArray()).Prepend(_header))
        {
            stream.Write(line, 0, line.Length);
            stream.WriteByte((byte)'\r');
            stream.WriteByte((byte)'\n');
        }
    }
}
