using MarineService.Core;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>The dipstick with its marks: where the oil should stand by the account, how sure that is, what was read last, and how much may be poured next.</summary>
/// <remarks>The engine's own manual says how and when the stick is read.</remarks>
public static class DipstickDrawing
{
    /// <summary>Draws the level after an event of an oil change, in metric units.</summary>
    /// <param name="change">The account up to that event.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    public static Drawing Of(OilChange change) => Of(change, DisplayUnits.Metric);

    /// <summary>Draws the level after an event of an oil change.</summary>
    /// <param name="change">The account up to that event.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture; what is not known is said in it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(OilChange change, DisplayUnits units) =>
        new DipstickScene(Guard.NotNull(change), change.Findings, Guard.Defined(units)).Draw();

    /// <summary>Draws the level at the end of an oil change that was cast up, with what the sums say.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture; what is not known is said in it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="balance"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(FluidBalance balance, DisplayUnits units) =>
        new DipstickScene(Guard.NotNull(balance).Account, balance.Findings, Guard.Defined(units)).Draw();
}
