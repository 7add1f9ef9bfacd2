using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Belts;

namespace MarineService.Core.Tests.Belts;

/// <summary>The search keeps everything that a check of complete routings lets through, and nothing else.</summary>
public sealed class RoutingSearchLawsTest
{
    [Law(MaxTest = 150)]
    public Property Found_IsExactlyWhatBruteForceLetsThrough() => Compare(maxPulleys: 5, free: true, subsets: false);

    [Law(MaxTest = 150)]
    public Property FoundWithMissedPulleys_IsExactlyWhatBruteForceLetsThrough() => Compare(maxPulleys: 5, free: true, subsets: true);

    [Law(MaxTest = 60)]
    public Property FoundWithFacesAsMade_IsExactlyWhatBruteForceLetsThrough() => Compare(maxPulleys: 6, free: false, subsets: true);

    [Law(MaxTest = 2000)]
    public Property EveryFoundRouting_Closes() =>
        Prop.ForAll(RandomDrives.Seeds, seed =>
        {
            Random random = new(seed);
            BeltDrive drive = RandomDrives.Any(random, 3 + random.Next(5));
            RoutingSearchOptions options = RoutingSearchOptions.Default.WithFaces((FaceChoice)random.Next(2));
            RoutingCandidate[] some = [.. drive.FindRoutings(options).Candidates.Take(20)];
            return some.All(candidate => candidate.Routing.Check() is { Verdict: BeltVerdict.Closes } check
                    && Math.Abs(check.Geometry.Value.EffectiveLength.Millimeters - candidate.EffectiveLength.Millimeters) < 1e-8
                    && Math.Abs(check.Geometry.Value.Stops.Min(stop => stop.WrapDegrees) - candidate.SmallestWrapDegrees) < 1e-9)
                .Label($"seed {seed}");
        });

    private static Property Compare(int maxPulleys, bool free, bool subsets) =>
        Prop.ForAll(RandomDrives.Seeds, seed =>
        {
            Random random = new(seed);
            BeltDrive drive = RandomDrives.Any(random, 3 + random.Next(maxPulleys - 2));
            RoutingSearchOptions options = RoutingSearchOptions.Default.WithFaces(free ? FaceChoice.Either : FaceChoice.AsRimsAreMade);
            HashSet<string> found = [.. drive.FindRoutings(subsets ? options.WithMissedPulleys() : options).Candidates.Select(c => c.Routing.ToString())];
            HashSet<string> complete =
            [
                .. BruteForce.Routings(drive, free, subsets)
                    .Where(routing => routing.Check().Verdict == BeltVerdict.Closes)
                    .Select(routing => routing.ToString()),
            ];
            return found.SetEquals(complete).Label($"seed {seed}: {found.Count} found, {complete.Count} complete");
        });
}
