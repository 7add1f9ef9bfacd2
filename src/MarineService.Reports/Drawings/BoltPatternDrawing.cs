using MarineService.Core;
using MarineService.Core.Internal;
using MarineService.Core.Parts;

namespace MarineService.Reports.Drawings;

/// <summary>
/// A cover on its bolt pattern, seen from outside: the holes of the block as rings, those of the cover as crosses within the play that the
/// screws allow, as it is held and as it fits.
/// </summary>
/// <remarks>How far a hole is off is drawn greater than it is, by the factor that stands below; the words have the true figures.</remarks>
public static class BoltPatternDrawing
{
    /// <summary>Draws the cover at each rotation that fits, in metric units.</summary>
    /// <param name="fit">The cover compared with the block.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fit"/> is null.</exception>
    public static Drawing Of(CoverFit fit) => Of(fit, DisplayUnits.Metric);

    /// <summary>Draws the cover at each rotation that fits, or at the best when none does.</summary>
    /// <param name="fit">The cover compared with the block.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(CoverFit fit, DisplayUnits units) => new BoltScene(Guard.NotNull(fit), null, Guard.Defined(units)).Draw();

    /// <summary>Draws the cover as it is held now, beside the rotation that it should have.</summary>
    /// <param name="held">The cover as it is held.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="held"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(HeldCover held, DisplayUnits units) => new BoltScene(Guard.NotNull(held).Fit, held, Guard.Defined(units)).Draw();
}
