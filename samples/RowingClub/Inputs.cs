using NodaTime;
using NodaTime.Text;

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

    internal static LocalDate? Date(string? text) =>
        text is null ? null
        : LocalDatePattern.Iso.Parse(text) is { Success: true } date && date.Value.Year is >= 1900 and <= 2199 ? date.Value
        : throw new UserFault(ExitCode.WrongUsage, $"'{text}' is no date from 1900-01-01 to 2199-12-31, such as 2026-11-25.");
}
