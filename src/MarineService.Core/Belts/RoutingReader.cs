namespace MarineService.Core.Belts;

/// <summary>Turns names and faces, as a person writes them, into pulleys of a drive; finds every fault in one pass.</summary>
internal static class RoutingReader
{
    private const string Place = "/routing";

    private static readonly char[] Opening = ['('];
    private static readonly char[] Closing = [')'];

    /// <summary>Reads entries such as "crank", "tensioner(back)", "idler (ribs)" into stops, the crank first; null when there is a fault.</summary>
    internal static IReadOnlyList<DriveFault> Read(IReadOnlyList<Pulley> pulleys, IReadOnlyList<string> entries, out (int Pulley, BeltFace Face)[]? stops)
    {
        List<DriveFault> faults = [];
        List<(int Pulley, BeltFace Face)> read = [];
        for (int i = 0; i < entries.Count; i++)
        {
            if (!TrySplit(entries[i], out string name, out BeltFace? face))
            {
                faults.Add(new(
                    At(i),
                    $"'{entries[i].Trim()}'",
                    "a pulley's name, then (ribs) or (back) where needed",
                    $"Cannot read '{entries[i].Trim()}'; write a pulley's name, then (ribs) or (back) where needed."));
                continue;
            }

            int index = BeltDriveBuilder.Find(pulleys, name);
            if (index < 0)
            {
                string names = string.Join(", ", pulleys.Select(pulley => pulley.Name));
                faults.Add(new(At(i), $"'{name}'", $"one of {names}", $"No pulley '{name}'; the drive has {names}."));
            }
            else if (read.Exists(stop => stop.Pulley == index))
            {
                faults.Add(new(
                    At(i), $"'{name}'", "each pulley once", $"Pulley '{pulleys[index].Name}' is named twice; the belt comes to each pulley once."));
            }
            else
            {
                read.Add((index, face ?? pulleys[index].IntendedFace));
            }
        }

        AddFaultsOfTheWhole(faults, pulleys, read, entries.Count);
        stops = faults.Count == 0 ? FromCrank(read) : null;
        return faults;
    }

    /// <summary>Starts the cycle at the crank; the order round it stays.</summary>
    internal static (int Pulley, BeltFace Face)[] FromCrank(IReadOnlyList<(int Pulley, BeltFace Face)> stops)
    {
        int crank = 0;
        while (stops[crank].Pulley != 0)
        {
            crank++;
        }

        return [.. stops.Skip(crank), .. stops.Take(crank)];
    }

    private static void AddFaultsOfTheWhole(
        List<DriveFault> faults, IReadOnlyList<Pulley> pulleys, List<(int Pulley, BeltFace Face)> read, int entries)
    {
        if (entries < 2)
        {
            faults.Add(new(Place, "fewer than two names", "at least two pulleys", "A routing names at least two pulleys."));
        }
        else if (faults.Count == 0 && !read.Exists(stop => stop.Pulley == 0))
        {
            faults.Add(new(
                Place,
                $"no '{pulleys[0].Name}'",
                $"a routing that comes to '{pulleys[0].Name}', which drives the belt",
                $"The belt must come to '{pulleys[0].Name}', which drives it."));
        }
    }

    private static string At(int entry) => FormattableString.Invariant($"{Place}/{entry}");

    private static bool TrySplit(string entry, out string name, out BeltFace? face)
    {
        string text = entry.Trim();
        int bracket = text.IndexOfAny(Opening);
        name = (bracket < 0 ? text : text.Substring(0, bracket)).Trim();
        face = null;
        if (name.Length == 0)
        {
            return false;
        }

        if (bracket < 0)
        {
            return text.IndexOfAny(Closing) < 0;
        }

        if (text[text.Length - 1] != ')')
        {
            return false;
        }

        string word = text.Substring(bracket + 1, text.Length - bracket - 2).Trim();
        if (string.Equals(word, "back", StringComparison.OrdinalIgnoreCase))
        {
            face = BeltFace.Back;
        }
        else if (string.Equals(word, "ribs", StringComparison.OrdinalIgnoreCase) || string.Equals(word, "rib", StringComparison.OrdinalIgnoreCase))
        {
            face = BeltFace.Ribs;
        }

        return face is not null;
    }
}
