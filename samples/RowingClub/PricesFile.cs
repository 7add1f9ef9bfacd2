using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace RowingClub;

/// <summary>What tasks cost: a CSV file of tasks, the price of part and labour of one time, and what a day late is worth.</summary>
internal static class PricesFile
{
    private const string TaskColumn = "task";
    private const string PriceColumn = "price";
    private const string LateColumn = "late_per_day";

    /// <summary>Every price in the file by task; all faults at once, with their lines.</summary>
    internal static IReadOnlyDictionary<string, (decimal Price, decimal LatePerDay)> Read(string name, byte[] utf8)
    {
        using StreamReader text = new(new MemoryStream(utf8));
        using CsvReader csv = new(text, new CsvConfiguration(CultureInfo.InvariantCulture) { TrimOptions = TrimOptions.Trim, BadDataFound = null });
        string[] header = csv.Read() && csv.ReadHeader() ? csv.HeaderRecord! : [];
        if (!header.Contains(TaskColumn) || !header.Contains(PriceColumn) || !header.Contains(LateColumn))
        {
            throw new UserFault(ExitCode.BadData, $"{name}: the first line must name the columns \"{TaskColumn},{PriceColumn},{LateColumn}\".");
        }

        Dictionary<string, (decimal, decimal)> prices = new(StringComparer.Ordinal);
        List<string> faults = [];
        while (csv.Read())
        {
            string line = FormattableString.Invariant($"{name}, line {csv.Parser.RawRow}");
            _ = csv.TryGetField(TaskColumn, out string? task);
            decimal? price = Amount(csv, PriceColumn, 100_000m);
            decimal? late = Amount(csv, LateColumn, 1_000_000m);
            if (string.IsNullOrWhiteSpace(task))
            {
                faults.Add($"{line}: a task is missing.");
            }
            else if (price is null || late is null)
            {
                faults.Add($"{line}: {PriceColumn} must be an amount from 0 to 100000, {LateColumn} from 0 to 1000000, such as \"{task},48.50,0.5\".");
            }
            else if (!prices.TryAdd(task, (price.Value, late.Value)))
            {
                faults.Add($"{line}: {task} is there already.");
            }
        }

        return faults.Count == 0 ? prices : throw new UserFault(ExitCode.BadData, faults);
    }

    /// <summary>An amount of money from 0 to a limit, or null.</summary>
    internal static decimal? Amount(string? text, decimal most) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value) && value >= 0 && value <= most ? value : null;

    private static decimal? Amount(CsvReader csv, string column, decimal most) => csv.TryGetField(column, out string? text) ? Amount(text, most) : null;
}
