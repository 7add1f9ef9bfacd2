using System.Globalization;
using MarineService.Core;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Reports.Tables;

/// <summary>The cells of one line, column after column: texts guarded, numbers and dates as they are, nothing where nothing is known.</summary>
internal sealed class CsvRow
{
    private readonly List<string> _cells = [];

    internal IReadOnlyList<string> Cells => _cells;

    internal CsvRow Text(string? text) => Add(text is null ? "" : CsvText.Guarded(text));

    internal CsvRow Number(decimal? number) => Add(number?.ToString("0.############", CultureInfo.InvariantCulture) ?? "");

    internal CsvRow Hours(EngineHours? hours) => Add(hours?.ToHours().ToString("0.0##", CultureInfo.InvariantCulture) ?? "");

    internal CsvRow Date(LocalDate? date) => Add(date is LocalDate known ? LocalDatePattern.Iso.Format(known) : "");

    internal CsvRow YesOrNo(bool value) => Add(value ? "yes" : "no");

    private CsvRow Add(string cell)
    {
        _cells.Add(cell);
        return this;
    }
}
