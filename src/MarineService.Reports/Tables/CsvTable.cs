using System.Text;
using MarineService.Core;
using MarineService.Core.Internal;
using MarineService.Core.Parts;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;

namespace MarineService.Reports.Tables;

/// <summary>A table for spreadsheets, as comma-separated values (RFC 4180): a header, then a line for each entry, task, part or finding.</summary>
/// <remarks>
/// <para>Lines end in CRLF; cells with separators, quotes or line breaks stand in quotes. Dates are those of ISO 8601, numbers have a point and
/// no unit: the header says it. The same values give the same bytes, in any culture.</para>
/// <para>Text that a spreadsheet could take for a formula has an apostrophe in front: where its first visible character, or a tab or line break
/// before that, is one of = + - @ or their full-width forms; and where it begins with an apostrophe. Who reads a table by program takes one
/// apostrophe off the front of each text that has one, and has the text as it was. Numbers and dates are never touched. The guard holds
/// where the table is opened with its own separator.</para>
/// <para>What text cannot hold (control characters, half a surrogate pair) is shown as the replacement character.</para>
/// </remarks>
public sealed class CsvTable
{
    private readonly IReadOnlyList<CsvRow> _rows;

    private CsvTable(string name, string[] columns, IEnumerable<CsvRow> rows) => (Name, Columns, _rows) = (name, Array.AsReadOnly(columns), [.. rows]);

    /// <summary>What the table holds, in small letters and dashes; fit for a file's name.</summary>
    public string Name { get; }

    /// <summary>The header: the columns' names in their order, with units.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>How many lines stand under the header.</summary>
    public int RowCount => _rows.Count;

    /// <summary>The log: every entry in the order of entry, corrected and withdrawn ones too, with which entry corrects it.</summary>
    /// <param name="log">The log.</param>
    /// <returns>The table "service-log". What <c>ExerciseBookCsv</c> reads is named as it is there.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="log"/> is null.</exception>
    public static CsvTable Of(ServiceLog log) => new("service-log", LogTable.Columns, LogTable.Rows(Guard.NotNull(log)));

    /// <summary>The due list: every task, the most urgent first, with both limbs, the forecast and why.</summary>
    /// <param name="due">The due list.</param>
    /// <returns>The table "due-list". A limb says whether it is known, not known or not used, so that an empty cell is never a guess.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="due"/> is null.</exception>
    public static CsvTable Of(DueList due) => new("due-list", DueTable.Columns, DueTable.Rows(Guard.NotNull(due)));

    /// <summary>The kit list: every part with what the tasks take, what the shelf gives and what is to be bought.</summary>
    /// <param name="kit">The kit list.</param>
    /// <returns>The table "kit-list".</returns>
    /// <exception cref="ArgumentNullException"><paramref name="kit"/> is null.</exception>
    public static CsvTable Of(KitList kit) => new("kit-list", KitTable.Columns, KitTable.Rows(Guard.NotNull(kit)));

    /// <summary>Findings, such as those of a due list, with what to do and where the rule comes from.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="units">Which units the messages are written in.</param>
    /// <returns>The table "findings", in the order given.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="findings"/> is null.</exception>
    /// <exception cref="ArgumentException">An item of <paramref name="findings"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static CsvTable Of(IEnumerable<Finding> findings, DisplayUnits units = DisplayUnits.Metric)
    {
        IReadOnlyList<Finding> all = Guard.Items(findings);
        Guard.Defined(units);
        return new("findings", FindingTable.Columns, FindingTable.Rows(all, units));
    }

    /// <summary>The table as text.</summary>
    /// <param name="separator">What stands between cells: a comma, or a semicolon or tab for spreadsheets that want one of these.</param>
    /// <returns>The header and the lines, each ending in CRLF.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="separator"/> is none of the three.</exception>
    public string ToCsv(char separator = ',')
    {
        if (separator is not (',' or ';' or '\t'))
        {
            throw new ArgumentOutOfRangeException(nameof(separator), separator, "Must be a comma, a semicolon or a tab.");
        }

        StringBuilder text = new();
        CsvText.Append(text, Columns, separator);
        foreach (CsvRow row in _rows)
        {
            CsvText.Append(text, row.Cells, separator);
        }

        return text.ToString();
    }

    /// <summary>Writes the table in UTF-8.</summary>
    /// <param name="stream">Where to write; left open.</param>
    /// <param name="separator">What stands between cells: a comma, a semicolon or a tab.</param>
    /// <param name="withMark">Whether a byte order mark comes first, without which some spreadsheets take UTF-8 for another encoding.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="separator"/> is none of the three.</exception>
    public void WriteTo(Stream stream, char separator = ',', bool withMark = false)
    {
        Guard.NotNull(stream);
        byte[] bytes = Encoding.UTF8.GetBytes((withMark ? "\uFEFF" : "") + ToCsv(separator));
        stream.Write(bytes, 0, bytes.Length);
    }

    /// <summary>What the table holds, and how much.</summary>
    /// <returns>Invariant text, such as "due-list, 12 rows".</returns>
    public override string ToString() => FormattableString.Invariant($"{Name}, {RowCount} rows");
}
