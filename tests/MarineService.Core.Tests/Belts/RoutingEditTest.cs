using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Belts;

namespace MarineService.Core.Tests.Belts;

/// <summary>Edits lead from what lies there to what should, and no shorter way exists.</summary>
public sealed class RoutingEditTest
{
    [Law(MaxTest = 500)]
    public Property Edits_DoneInOrder_ArriveAtTheRightRouting() =>
        Prop.ForAll(RandomDrives.Seeds, seed =>
        {
            (BeltRouting from, BeltRouting to) = Pair(seed, 9);
            IReadOnlyList<RoutingEdit> edits = from.EditsTo(to);
            return (Done(from, edits) == string.Join(" ", to.Stops)).Label($"seed {seed}: {from} to {to} by {string.Join("; ", edits)}");
        });

    [Law(MaxTest = 200)]
    public Property Edits_AreAsFewAsBreadthFirstSearchFinds() =>
        Prop.ForAll(RandomDrives.Seeds, seed =>
        {
            (BeltRouting from, BeltRouting to) = Pair(seed, 5);
            int edits = from.EditsTo(to).Count;
            int fewest = BreadthFirst(from, to);
            return (edits == fewest).Label($"seed {seed}: {from} to {to}: {edits} edits, {fewest} are enough");
        });

    [Fact]
    public void Edits_ToItself_AreNone()
    {
        BeltRouting routing = Layouts.Routing("S07");
        Assert.Empty(routing.EditsTo(routing));
    }

    [Theory]
    [InlineData("CRK RWP ALT WP* PS IDL*", "lead the belt over 'TEN' after 'CRK', on the belt's back")]
    [InlineData("CRK TEN* ALT WP* PS IDL*", "lead the belt over 'RWP' after 'TEN', on the belt's ribs")]
    [InlineData("CRK TEN RWP ALT WP* PS IDL*", "turn the belt over at 'TEN', so that it runs on the belt's back")]
    [InlineData("CRK TEN* ALT RWP WP* PS IDL*", "let 'ALT' and 'RWP' change places")]
    [InlineData("CRK TEN* RWP WP* ALT PS IDL*", "let 'WP' and 'ALT' change places")]
    public void Edits_ForOneMistake_AreOneStepInPlainWords(string asFitted, string words)
    {
        BeltDrive drive = Layouts.Drive("S07");
        BeltRouting design = Layouts.Starred(drive, "CRK TEN* RWP ALT WP* PS IDL*");
        Assert.Equal(words, Assert.Single(Layouts.Starred(drive, asFitted).Check().EditsTo(design)).ToString());
    }

    [Fact]
    public void Edits_FromAnExtraPulley_TakeItOff()
    {
        BeltDrive drive = Layouts.Drive("S07");
        RoutingEdit edit = Assert.Single(Layouts.Starred(drive, "CRK TEN* RWP ALT").EditsTo(Layouts.Starred(drive, "CRK TEN* ALT")));
        Assert.Equal(RoutingEditKind.Remove, edit.Kind);
        Assert.Equal("take the belt off 'RWP'", edit.ToString());
        Assert.Null(edit.OtherName);
        Assert.Null(edit.Face);
    }

    [Fact]
    public void Edits_WithTheCrankOnItsBack_TurnTheBeltThere()
    {
        BeltDrive drive = Layouts.Drive("S07");
        RoutingEdit edit = Assert.Single(drive.Route("CRK(back)", "TEN", "ALT").EditsTo(drive.Route("CRK", "TEN", "ALT")));
        Assert.Equal(RoutingEditKind.TurnOver, edit.Kind);
        Assert.Equal("CRK", edit.PulleyName);
    }

    [Fact]
    public void Edits_ToAPulleyOfAnotherDrive_AreRefused() =>
        Assert.Throws<ArgumentException>("right", () => Layouts.Routing("S07").EditsTo(Layouts.Routing("G01")));

    [Fact]
    public void Edits_OfTheWorstScrambleOfTwelve_AreFoundInReasonableWork()
    {
        BeltDriveBuilder builder = BeltDrive.SeenFromPulleyEnd(Sense.Clockwise);
        for (int i = 0; i < 12; i++)
        {
            builder = builder.Grooved($"p{i}", 200 * i, 0, 60);
        }

        BeltDrive drive = builder.Build();
        BeltRouting to = drive.Route([.. Enumerable.Range(0, 12).Select(i => $"p{i}")]);
        BeltRouting from = drive.Route("p0", "p7", "p3", "p10", "p1", "p6", "p11", "p2", "p9", "p4", "p8", "p5");
        IReadOnlyList<RoutingEdit> edits = from.EditsTo(to);
        Assert.Equal(string.Join(" ", to.Stops), Done(from, edits));
        Assert.True(edits.Count <= 10);
    }

    private static (BeltRouting From, BeltRouting To) Pair(int seed, int maxPulleys)
    {
        Random random = new(seed);
        BeltDrive drive = RandomDrives.Any(random, 3 + random.Next(maxPulleys - 2));
        return (
            RandomDrives.Scrambled(random, drive, 2 + random.Next(drive.Pulleys.Count - 1)),
            RandomDrives.Scrambled(random, drive, 2 + random.Next(drive.Pulleys.Count - 1)));
    }

    /// <summary>Does the edits on a list of words, knowing nothing of how they were found.</summary>
    private static string Done(BeltRouting from, IReadOnlyList<RoutingEdit> edits)
    {
        List<(string Name, BeltFace Face)> belt = [.. from.Stops.Select(stop => (stop.PulleyName, stop.Face))];
        foreach (RoutingEdit edit in edits)
        {
            int at = belt.FindIndex(stop => stop.Name == edit.PulleyName);
            switch (edit.Kind)
            {
                case RoutingEditKind.Insert:
                    belt.Insert(belt.FindIndex(stop => stop.Name == edit.OtherName) + 1, (edit.PulleyName, edit.Face!.Value));
                    break;
                case RoutingEditKind.Remove:
                    belt.RemoveAt(at);
                    break;
                case RoutingEditKind.Swap:
                    int other = belt.FindIndex(stop => stop.Name == edit.OtherName);
                    (belt[at], belt[other]) = (belt[other], belt[at]);
                    break;
                default:
                    belt[at] = (edit.PulleyName, edit.Face!.Value);
                    break;
            }
        }

        return string.Join(" ", belt.Select(stop => stop.Face == BeltFace.Back ? $"{stop.Name}(back)" : stop.Name));
    }

    /// <summary>Every list that edits can reach, nearest first, until the right one comes up.</summary>
    private static int BreadthFirst(BeltRouting from, BeltRouting to)
    {
        string[] wanted = [.. to.Stops.Select(stop => stop.ToString())];
        string goal = string.Join(" ", wanted);
        Queue<(string Order, int Edits)> queue = new([(string.Join(" ", from.Stops), 0)]);
        HashSet<string> seen = [queue.Peek().Order];
        while (true)
        {
            (string order, int edits) = queue.Dequeue();
            if (order == goal)
            {
                return edits;
            }

            foreach (string next in Neighbours([.. order.Split(' ')], wanted).Where(seen.Add))
            {
                queue.Enqueue((next, edits + 1));
            }
        }
    }

    private static IEnumerable<string> Neighbours(List<string> belt, string[] wanted)
    {
        for (int i = 0; i < belt.Count; i++)
        {
            string turned = belt[i].EndsWith("(back)", StringComparison.Ordinal) ? belt[i][..^6] : belt[i] + "(back)";
            yield return Joined([.. belt.Take(i), turned, .. belt.Skip(i + 1)]);
            if (i == 0)
            {
                continue;
            }

            yield return Joined([.. belt.Take(i), .. belt.Skip(i + 1)]);
            for (int j = i + 1; j < belt.Count; j++)
            {
                List<string> swapped = [.. belt];
                (swapped[i], swapped[j]) = (swapped[j], swapped[i]);
                yield return Joined(swapped);
            }
        }

        foreach (string missing in wanted.Where(stop => !belt.Exists(b => Bare(b) == Bare(stop))))
        {
            for (int i = 1; i <= belt.Count; i++)
            {
                yield return Joined([.. belt.Take(i), missing, .. belt.Skip(i)]);
            }
        }
    }

    private static string Bare(string stop) => stop.Replace("(back)", "", StringComparison.Ordinal);

    private static string Joined(IEnumerable<string> stops) => string.Join(" ", stops);
}
