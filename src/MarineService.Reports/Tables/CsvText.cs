using System.Globalization;
using System.Text;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Tables;

/// <summary>Cells and lines of comma-separated values (RFC 4180).</summary>
internal static class CsvText
{
    /// <summary>
    /// A text that no spreadsheet takes for a formula: with an apostrophe in front where it needs one, and where it begins with one, so that
    /// who takes one apostrophe off the front of a text has what was written.
    /// </summary>
    internal static string Guarded(string text)
    {
        string plain = PlainText.Of(text);
        return plain.Length > 0 && (plain[0] == '\'' || IsFormula(plain)) ? "'" + plain : plain;
    }

    /// <summary>One line; every cell as it is, in quotes where it needs them.</summary>
    internal static void Append(StringBuilder text, IReadOnlyList<string> cells, char separator)
    {
        for (int i = 0; i < cells.Count; i++)
        {
            if (i > 0)
            {
                text.Append(separator);
            }

            // A single empty cell would be a blank line, and white space at an end is lost by some readers.
            string cell = cells[i];
            bool needsQuotes = cell.Any(c => c is '"' or ',' or ';' or '\t' or '\r' or '\n') || (cell.Length == 0 && cells.Count == 1)
                || (cell.Length > 0 && (char.IsWhiteSpace(cell[0]) || char.IsWhiteSpace(cell[cell.Length - 1])));
            if (needsQuotes)
            {
                text.Append('"');
                foreach (char c in cell)
                {
                    text.Append(c == '"' ? "\"\"" : c.ToString());
                }

                text.Append('"');
            }
            else
            {
                text.Append(cell);
            }
        }

        text.Append("\r\n");
    }

    // What makes a spreadsheet take a cell for a formula, with the full-width forms that some take as well. OWASP, CSV injection.
    private static bool IsFormulaMark(char c) =>
        c is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20';

    // White space, and what is not seen at all, may be dropped on the way into a sheet.
    private static bool IsFormula(string text)
    {
        foreach (char c in text)
        {
            if (IsFormulaMark(c))
            {
                return true;
            }

            if (!char.IsWhiteSpace(c) && !char.IsControl(c) && CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.Format)
            {
                return false;
            }
        }

        return false;
    }
}
