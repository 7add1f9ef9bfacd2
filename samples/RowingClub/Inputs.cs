using System.Globalization;
using MarineService.Core;
using NodaTime;
using NodaTime.Text;
using UnitsNet;

namespace RowingClub;

/// <summary>What comes from the machine: files, standard input, the date.</summary>
internal static class Inputs
{
    /// <summary>A file, or standard input for "-".</summary>
    internal static byte[] Read(string path)
    {
        try
        {
            if (path == "-")
            {
                using Stream input = Console.OpenStandardInput();
                using MemoryStream copy = new();
                input.CopyTo(copy);
                return copy.ToArray();
            }

            return File.ReadAllBytes(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UserFault(ExitCode.NoSuchFile, $"{path}: {fault.Message}");
        }
    }

    /// <summary>The machine's date.</summary>
    internal static LocalDate Today() => LocalDate.FromDateTime(DateTime.Today);

    /// <summary>An air temperature such as -6, -6C or 21F, or null when none is given.</summary>
    internal static Temperature? AirTemperature(string option, string? text, DisplayUnits units) =>
        text is null ? null
        : AirTemperature(text, units == DisplayUnits.UsCustomary)
            ?? throw new UserFault(ExitCode.WrongUsage, $"{option}: '{text}' is no air temperature from -60 to 60 °C (-76 to 140 °F), such as -6, -6C or 21F.");

    /// <summary>A temperature that the library takes for outdoor air, or null; a letter says the unit, else the second argument does.</summary>
    internal static Temperature? AirTemperature(string text, bool isFahrenheit)
    {
        string number = text.TrimEnd('C', 'c', 'F', 'f');
        bool hasLetter = number.Length == text.Length - 1;
        if (number.Length < text.Length - 1 || !decimal.TryParse(number, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value))
        {
            return null;
        }

        Temperature temperature = (hasLetter ? text[^1] is 'F' or 'f' : isFahrenheit)
            ? Temperature.FromDegreesFahrenheit((double)value)
            : Temperature.FromDegreesCelsius((double)value);
        return temperature.DegreesCelsius is >= -60 and <= 60 ? temperature : null;
    }

    internal static LocalDate? Date(string? text) =>
        text is null ? null
        : LocalDatePattern.Iso.Parse(text) is { Success: true } date && date.Value.Year is >= 1900 and <= 2199 ? date.Value
        : throw new UserFault(ExitCode.WrongUsage, $"'{text}' is no date from 1900-01-01 to 2199-12-31, such as 2026-11-25.");
}
