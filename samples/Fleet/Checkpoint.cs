using System.Globalization;
using System.Text;
using MarineService.Core.Exchange;
using MarineService.Core.Fleet;

namespace Fleet;

/// <summary>How far a run came: enough to go on after a kill as if nothing had happened.</summary>
internal sealed record Checkpoint(long InputBytes, long OutputBytes, long NextLine, FleetSummary Summary)
{
    internal static Checkpoint Start { get; } = new(0, 0, 1, FleetSummary.Empty);

    /// <summary>Reads what was remembered; the start when there is nothing.</summary>
    internal static Checkpoint Read(string path)
    {
        if (!File.Exists(path))
        {
            return Start;
        }

        string[] parts = File.ReadAllText(path).Split('\n', 2);
        long[] numbers = [.. parts[0].Split(' ').Select(number => long.Parse(number, CultureInfo.InvariantCulture))];
        return new(numbers[0], numbers[1], numbers[2], FleetSummaryJson.Read(Encoding.UTF8.GetBytes(parts[1])).Value);
    }

    /// <summary>Remembers in one step: the old checkpoint or the new one, never half of one.</summary>
    internal void Write(string path)
    {
        string written = path + ".new";
        using (FileStream file = new(written, FileMode.Create, FileAccess.Write))
        {
            file.Write(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{InputBytes} {OutputBytes} {NextLine}\n")));
            file.Write(Encoding.UTF8.GetBytes(FleetSummaryJson.ToText(Summary)));
            file.Flush(flushToDisk: true);
        }

        File.Move(written, path, overwrite: true);
    }
}
