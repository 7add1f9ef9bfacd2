using MarineService.Core;
using MarineService.Core.Internal;
using MarineService.Core.Oils;

namespace MarineService.Reports.Charts;

/// <summary>
/// Viscosity of an oil against temperature, with what its grade promises: the temperatures down to which it is tested in the cold, the window at
/// 100 °C, and the nights ahead.
/// </summary>
/// <remarks>The line is that of ASTM D341 through the oil's two published viscosities. It says nothing of cranking in the cold, which is another test.</remarks>
public static class ViscosityChart
{
    /// <summary>Draws an oil against the starts that a selection is for.</summary>
    /// <param name="selection">The selection, with its coldest start.</param>
    /// <param name="oil">The oil; null for the fitted one, and without that for the best grade of the selection.</param>
    /// <param name="nights">The nights ahead, to be shown along the foot; null for none.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture; an oil whose viscosities are not known is shown by its grade's limits alone, and it says so.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="selection"/> is null.</exception>
    /// <exception cref="ArgumentException">A night is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(OilSelection selection, LabelledOil? oil = null, IEnumerable<NightMinimum>? nights = null, DisplayUnits units = DisplayUnits.Metric)
    {
        Guard.NotNull(selection);
        IReadOnlyList<NightMinimum> ahead = nights is null ? [] : Guard.Items(nights);
        OilVerdict? judged = oil is not null ? selection.Judge(oil) : selection.Fitted;
        return new ViscosityScene(selection, judged, ahead, Guard.Defined(units)).Draw();
    }

    /// <summary>Draws an oil over a season of nights.</summary>
    /// <param name="season">The season.</param>
    /// <param name="nights">The nights that the season was worked out for.</param>
    /// <param name="units">Which units to write.</param>
    /// <returns>The picture.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="season"/> or <paramref name="nights"/> is null.</exception>
    /// <exception cref="ArgumentException">A night is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static Drawing Of(OilSeason season, IEnumerable<NightMinimum> nights, DisplayUnits units) =>
        Of(Guard.NotNull(season).Selection, null, Guard.NotNull(nights), units);
}
