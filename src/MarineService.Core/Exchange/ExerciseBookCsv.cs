using System.Text;
using MarineService.Core.Internal;
using MarineService.Core.Records;

namespace MarineService.Core.Exchange;

/// <summary>Reads the exercise book that lies beside the engine, typed into a spreadsheet and saved as CSV (RFC 4180), as entries of a log.</summary>
/// <remarks>
/// <para>The first line names the columns, in any order and with any left out but the date: date, engine, hours, what, task, event, fluid,
/// oil added, by, checked by, note. Capitals, dashes and brackets do not matter, and common variants are known, such as "engine hours",
/// "oil added (L)", "oil added (US qt)", "by whom", "remarks". A column of another name is a fault unless the caller keeps it as a note.</para>
/// <para>A line says one thing. The column "what" says which: reading, done, passed, failed, event, top-up, laid-up, commissioned. Where it
/// is empty a task was done, an event happened, oil was added, or else the meter was read. A task's cell may name several tasks, separated
/// by commas, semicolons or line breaks; each becomes an entry. An amount of 0 says that nothing was added. Engine oil is added unless the
/// column "fluid" names another. An apostrophe before =, +, - or @ is taken off: tables that are guarded against formulas have one.</para>
/// <para>Cells are separated by commas or semicolons, whichever makes more of the header; the file is UTF-8 with or without a byte order mark.
/// Dates are those of ISO 8601 and decimals have a point unless the <see cref="ExerciseBookForm"/> says otherwise. What a file says never throws.</para>
/// </remarks>
public static class ExerciseBookCsv
{
    private static readonly byte[] Separators = [(byte)',', (byte)';'];

    /// <summary>Reads an exercise book.</summary>
    /// <param name="utf8">The file in UTF-8.</param>
    /// <param name="form">How the book is written; null for <see cref="ExerciseBookForm.Default"/>.</param>
    /// <param name="limits">How much is read; null for the default limits. Behind so many faults the rest comes back unread; the depth does not matter.</param>
    /// <returns>Entries from the good lines, the bad lines as they stand, and every fault.</returns>
    public static ExerciseBookResult Read(ReadOnlySpan<byte> utf8, ExerciseBookForm? form = null, ReadLimits? limits = null)
    {
        ReadLimits bounds = limits ?? ReadLimits.Default;
        return utf8.Length > bounds.MaxBytes
            ? Refused(FormattableString.Invariant($"{utf8.Length} bytes"), bounds)
            : Read(utf8.ToArray(), utf8.Length - Document.WithoutMark(utf8).Length, form ?? ExerciseBookForm.Default, bounds);
    }

    /// <summary>Reads an exercise book from a stream, to its end.</summary>
    /// <param name="stream">The file in UTF-8; left open.</param>
    /// <param name="form">How the book is written; null for <see cref="ExerciseBookForm.Default"/>.</param>
    /// <param name="limits">How much is read; null for the default limits. Behind so many faults the rest comes back unread; the depth does not matter.</param>
    /// <returns>Entries from the good lines, the bad lines as they stand, and every fault.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    public static ExerciseBookResult ReadFrom(Stream stream, ExerciseBookForm? form = null, ReadLimits? limits = null)
    {
        Guard.NotNull(stream);
        ReadLimits bounds = limits ?? ReadLimits.Default;
        using MemoryStream copy = new();
        return Document.TryCopy(stream, copy, bounds) ? Read(copy.GetBuffer().AsSpan(0, (int)copy.Length), form, bounds) : Refused("a longer stream", bounds);
    }

    private static ExerciseBookResult Read(byte[] utf8, int start, ExerciseBookForm form, ReadLimits bounds)
    {
        List<LogEntry> entries = [];
        List<ExerciseBookLine> badLines = [];
        List<ExerciseBookFault> faults = [];
        CsvReader csv = Separators
            .Select(separator => AtHeader(utf8, start, separator))
            .OrderByDescending(reader => ExerciseBookHeader.CountKnown(reader.Cells, form))
            .First();
        byte[] headerLine = Slice(utf8, csv.Start, csv.End);
        ExerciseBookHeader header = new(Math.Max(1, csv.Line), csv.Cells, form);
        faults.AddRange(header.Faults);
        if (csv.Expected is not null)
        {
            faults.Add(new(csv.Line, header.NameAt(csv.Cells.Count), Encoding.UTF8.GetString(headerLine), csv.Expected));
        }

        void AddBad(int end, params ExerciseBookFault[] wrong)
        {
            badLines.Add(new(csv.Line, Slice(utf8, csv.Start, end), Array.AsReadOnly(wrong)));
            faults.AddRange(wrong);
        }

        while (csv.Read())
        {
            if (IsBlank(csv))
            {
                continue;
            }

            if (faults.Count >= bounds.MaxFaults)
            {
                AddBad(utf8.Length, new ExerciseBookFault(csv.Line, "", "the rest of the file", FormattableString.Invariant($"at most {bounds.MaxFaults} faults before it; it was not read")));
                break;
            }

            if (csv.Expected is string expected)
            {
                AddBad(csv.End, new ExerciseBookFault(csv.Line, header.NameAt(csv.Cells.Count), Encoding.UTF8.GetString(utf8, csv.Start, csv.End - csv.Start), expected));
                continue;
            }

            ExerciseBookRow row = new(form, header, csv.Line, csv.Cells);
            entries.AddRange(row.Read());
            if (row.Faults.Count > 0)
            {
                AddBad(csv.End, [.. row.Faults]);
            }
        }

        return new(headerLine, entries.AsReadOnly(), badLines.AsReadOnly(), faults.AsReadOnly());
    }

    // At the first line that holds something.
    private static CsvReader AtHeader(byte[] utf8, int start, byte separator)
    {
        CsvReader csv = new(utf8, start, separator);
        while (csv.Read() && IsBlank(csv))
        {
        }

        return csv;
    }

    private static bool IsBlank(CsvReader csv) => csv.Expected is null && csv.Cells.All(string.IsNullOrWhiteSpace);

    private static byte[] Slice(byte[] utf8, int from, int to) => utf8.AsSpan(from, to - from).ToArray();

    private static ExerciseBookResult Refused(string value, ReadLimits bounds) =>
        new([], [], [], [new(0, "", value, FormattableString.Invariant($"at most {bounds.MaxBytes} bytes; nothing was read"))]);
}
