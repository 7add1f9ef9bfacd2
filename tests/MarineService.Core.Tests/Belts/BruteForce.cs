using MarineService.Core.Belts;

namespace MarineService.Core.Tests.Belts;

/// <summary>Every order and face of a drive, none left out, for comparison with the search.</summary>
internal static class BruteForce
{
    internal static IEnumerable<BeltRouting> Routings(BeltDrive drive, bool free, bool subsets)
    {
        Pulley[] others = [.. drive.Pulleys.Skip(1)];
        foreach (Pulley[] order in Orders(others, subsets))
        {
            int choices = free ? 1 << order.Length : 1;
            for (int choice = 0; choice < choices; choice++)
            {
                yield return drive.Route(
                    [
                        RoutingStop.On(drive.Crank.Name, drive.Crank.IntendedFace),
                        .. order.Select((pulley, i) => RoutingStop.On(
                            pulley.Name, free ? (BeltFace)((choice >> i) & 1) : pulley.IntendedFace)),
                    ]);
            }
        }
    }

    private static IEnumerable<Pulley[]> Orders(Pulley[] rest, bool subsets)
    {
        foreach (Pulley[] order in Grow([], rest, subsets))
        {
            if (order.Length > 0)
            {
                yield return order;
            }
        }
    }

    private static IEnumerable<Pulley[]> Grow(Pulley[] order, Pulley[] rest, bool subsets)
    {
        if (subsets || rest.Length == 0)
        {
            yield return order;
        }

        foreach (Pulley next in rest)
        {
            foreach (Pulley[] longer in Grow([.. order, next], [.. rest.Where(pulley => pulley != next)], subsets))
            {
                yield return longer;
            }
        }
    }
}
