using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using MarineService.Core.Oils;
using NodaTime;
using NodaTime.Text;
using UnitsNet;

namespace RowingClub;

/// <summary>A forecast, or what past winters were like: a CSV file of dates and minimum temperatures.</summary>
internal static class NightsFile
{
    private const string DateColumn = "date";
    private const string CelsiusColumn = "minimum_celsius";
    private const string FahrenheitColumn = "minimum_fahrenheit";

    /// <summary>Every night in the file; all faults at once, with their lines.</summary>
    internal static IReadOnlyList<NightMinimum> Read(string name, byte[] utf8)
    {
        using StreamReader text = new(new MemoryStream(utf8));
        using CsvReader csv = new(text, new CsvConfiguration(CultureInfo.InvariantCulture) { TrimOptions = TrimOptions.Trim, BadDataFound = null });
        string[] header = csv.Read() && csv.ReadHeader() ? csv.HeaderRecord! : [];
        bool isCelsius = header.Contains(CelsiusColumn);
        if (!header.Contains(DateColumn) || (!isCelsius && !header.Contains(FahrenheitColumn)))
        {
            throw new UserFault(ExitCode.BadData, $"{name}: the first line must name the columns {DateColumn} and {CelsiusColumn} (or {FahrenheitColumn}), such as \"{DateColumn},{CelsiusColumn}\".");
        }

        List<NightMinimum> nights = [];
        List<string> faults = [];
        HashSet<LocalDate> seen = [];
        while (csv.Read())
        {
            string line = FormattableString.Invariant($"{name}, line {csv.Parser.RawRow}");
            _ = csv.TryGetField(DateColumn, out string? date);
            _ = csv.TryGetField(isCelsius ? CelsiusColumn : FahrenheitColumn, out string? minimum);
            ParseResult<LocalDate> day = LocalDatePattern.Iso.Parse(date ?? "");
            if (!day.Success || day.Value.Year is < 1900 or > 2199)
            {
                faults.Add($"{line}: '{date}' is no date from 1900-01-01 to 2199-12-31, such as 2026-11-25.");
            }
            else if (!seen.Add(day.Value))
            {
                faults.Add($"{line}: {date} is there already.");
            }
            else if (Inputs.AirTemperature(minimum ?? "", isFahrenheit: !isCelsius) is not Temperature temperature)
            {
                faults.Add($"{line}: '{minimum}' is no air temperature from -60 to 60 °C (-76 to 140 °F).");
            }
            else
            {
                nights.Add(NightMinimum.Of(day.Value, temperature));
            }
        }

        return faults.Count == 0 ? nights : throw new UserFault(ExitCode.BadData, faults);
    }
}
