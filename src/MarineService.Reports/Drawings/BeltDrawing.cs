using MarineService.Core;
using MarineService.Core.Belts;
using MarineService.Core.Internal;

namespace MarineService.Reports.Drawings;

/// <summary>
/// The belt drive as one sees it from the pulley end: pulleys to scale, the belt with its ribbed face told apart by a comb, the sense in which
/// each pulley turns, the tensioner and which way it is released, and what is wrong, numbered at its place.
/// </summary>
/// <remarks>
/// The engine's own diagram outranks it. Engine off, key out, and nobody near the start while hands are near the belt.
/// In the picture each pulley is a circle with <c>data-pulley</c>, each span a line with <c>data-from</c> and <c>data-to</c>; the group
/// <c>drive</c> carries <c>data-units-per-mm</c>, <c>data-origin-x</c> and <c>data-origin-y</c>, where the drawing's x grows to the right and y upwards.
/// </remarks>
public static class BeltDrawing
{
    /// <summary>Draws a belt that was examined, in metric units.</summary>
    /// <param name="examination">The examination.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="examination"/> is null.</exception>
    public static Drawing Of(BeltExamination examination) => Of(examination, DisplayUnits.Metric);

    /// <summary>Draws a belt that was examined, with where it should lie when it lies otherwise.</summary>
    /// <param name="examination">The examination.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="examination"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(BeltExamination examination, DisplayUnits units)
    {
        Guard.NotNull(examination);
        RoutingComparison? differs = examination.Comparison is { IsKnown: true, Value.IsSame: false } compared ? compared.Value : null;
        return new BeltScene(
            examination.Check, examination.Findings, examination.Explain(Guard.Defined(units)).Answer, differs, units).Draw();
    }

    /// <summary>Draws a belt that was checked.</summary>
    /// <param name="check">The check.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="check"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(BeltCheck check, DisplayUnits units) => new BeltScene(
        Guard.NotNull(check), check.Findings, check.Explain(Guard.Defined(units)).Answer, null, units).Draw();

    /// <summary>Draws a belt, once it is checked.</summary>
    /// <param name="routing">The way in which it lies.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="routing"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(BeltRouting routing, DisplayUnits units) => Of(Guard.NotNull(routing).Check(), units);
}
