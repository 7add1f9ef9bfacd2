using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <content>What is asked of a routing: is it possible, is it right, and how to get from one to another.</content>
public sealed partial class BeltRouting
{
    /// <summary>Checks the belt as it lies: every geometric test, faces, senses, sizes, wraps, and the length against the tensioner.</summary>
    /// <param name="limits">The figures to compare with; null for this project's.</param>
    /// <returns>The verdict with every finding.</returns>
    public BeltCheck Check(BeltCheckLimits? limits = null) => new RoutingFindings(this, limits ?? BeltCheckLimits.Default).Check();

    /// <summary>Compares the belt as it lies with how it should lie.</summary>
    /// <param name="right">The routing to compare with, on the same pulleys.</param>
    /// <returns>What differs, in a mechanic's words, and what to do.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="right"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="right"/> lies on a pulley that this routing's drive does not have.</exception>
    public RoutingComparison CompareWith(BeltRouting right) => new(this, Guard.NotNull(right), EditsTo(right));

    /// <summary>The smallest set of edits that turns this routing into another, anchored at the crank.</summary>
    /// <param name="right">The routing to arrive at, on the same pulleys.</param>
    /// <returns>The edits in the order to do them; empty when the routings are equal.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="right"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="right"/> lies on a pulley that this routing's drive does not have.</exception>
    public IReadOnlyList<RoutingEdit> EditsTo(BeltRouting right)
    {
        foreach (RoutingStop stop in Guard.NotNull(right).Stops)
        {
            if (Drive.IndexOf(stop.PulleyName) < 0)
            {
                throw new ArgumentException($"The drive has no pulley '{stop.PulleyName}'.", nameof(right));
            }
        }

        return new RoutingEditSearch(Drive, Stops, right.Stops).Find();
    }

    /// <summary>Looks at the tensioner's arm with a belt of some length.</summary>
    /// <param name="effectiveLength">Effective length of the belt; above 0 and up to 20,000 mm.</param>
    /// <param name="limits">The figures to compare with; null for this project's.</param>
    /// <returns>Where the arm stands, or not known when the drive has no tensioner.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effectiveLength"/> is outside its range.</exception>
    public Answer<TensionerCheck> CheckTensioner(UnitsNet.Length effectiveLength, BeltCheckLimits? limits = null)
    {
        double mm = Guard.Positive(Canonical.Millimeters(effectiveLength), "mm", nameof(effectiveLength));
        Guard.InRange(mm, 0, RibbedBelt.LongestMm, "mm", nameof(effectiveLength));
        return Drive.Tensioner is Tensioner tensioner
            ? Answer.Known(new TensionerCheck(this, tensioner, mm, 0, limits ?? BeltCheckLimits.Default))
            : Answer.NotKnown<TensionerCheck>("The drive's tensioner: pivot, stops and spring.");
    }
}
