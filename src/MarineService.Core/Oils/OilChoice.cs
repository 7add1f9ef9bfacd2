using MarineService.Core.Internal;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>A question under construction: the permitted oils, the margins and the weather. Never changes; each With gives a new one.</summary>
/// <remarks>
/// <para>
/// Policy, a project choice: a grade is accepted from its floor, which is the warmest of the SAE J300 cranking test temperature plus a
/// margin (5 K unless changed), the customary figure, and the engine maker's own limit. Between the cranking temperature and the floor it
/// is marginal; below the cranking temperature or the maker's limit it is refused; below the pumping temperature oil flow is not assured.
/// A grade without W has no cold limit in the standard and is refused below its customary figure.
/// </para>
/// <para>The hot side is limited by the maker's figure only. The library advises; the engine's manual decides.</para>
/// </remarks>
public sealed class OilChoice
{
    private readonly OilConditions _conditions;
    private readonly IReadOnlyList<(LocalDate From, LocalDate Until)> _layUps;

    internal OilChoice(PermittedOils permitted)
        : this(permitted, OilConditions.Default, null, [], null)
    {
    }

    private OilChoice(PermittedOils permitted, OilConditions conditions, LabelledOil? fitted, IReadOnlyList<(LocalDate From, LocalDate Until)> layUps, LocalDate? asOf) =>
        (Permitted, _conditions, Fitted, _layUps, AsOf) = (permitted, conditions, fitted, layUps, asOf);

    /// <summary>What the engine's maker permits.</summary>
    public PermittedOils Permitted { get; }

    /// <summary>The oil in the sump, or null when it was not given.</summary>
    public LabelledOil? Fitted { get; }

    /// <summary>The date for which category claims are judged, or null when that is left out.</summary>
    public LocalDate? AsOf { get; }

    /// <summary>Changes the margin above the cranking test temperature; 5 K when not changed, a project choice.</summary>
    /// <param name="margin">From 0 to 40 K.</param>
    /// <returns>The question with the margin.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="margin"/> is outside its range.</exception>
    public OilChoice WithMargin(TemperatureDelta margin) =>
        With(new(OilGuard.Allowance(margin), _conditions.ColdSoakKelvins, _conditions.ShadeKelvins, _conditions.HottestShadeCelsius, _conditions.Figures));

    /// <summary>Allows for a sump that is colder than the forecast air: an open berth, a clear night. None when not given.</summary>
    /// <param name="colderThanForecast">From 0 to 40 K.</param>
    /// <returns>The question with the allowance.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="colderThanForecast"/> is outside its range.</exception>
    public OilChoice WithColdSoak(TemperatureDelta colderThanForecast) =>
        With(new(_conditions.MarginKelvins, OilGuard.Allowance(colderThanForecast), _conditions.ShadeKelvins, _conditions.HottestShadeCelsius, _conditions.Figures));

    /// <summary>Says the hottest ambient, and how much hotter the engine's place is than a reading in the shade.</summary>
    /// <param name="hottest">The hottest ambient expected, from -60 to 60 °C.</param>
    /// <param name="hotterThanShade">From 0 to 40 K; none when null.</param>
    /// <returns>The question with the hottest ambient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public OilChoice WithHottestAmbient(Temperature hottest, TemperatureDelta? hotterThanShade = null) =>
        With(new(
            _conditions.MarginKelvins, _conditions.ColdSoakKelvins,
            hotterThanShade is TemperatureDelta shade ? OilGuard.Allowance(shade, nameof(hotterThanShade)) : 0,
            OilGuard.AmbientCelsius(hottest), _conditions.Figures));

    /// <summary>Chooses which customary figures take part; a general chart's when not chosen.</summary>
    /// <param name="figures">The figures.</param>
    /// <returns>The question with the figures.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="figures"/> is not a defined value.</exception>
    public OilChoice WithCustomaryFigures(CustomaryFigures figures) =>
        With(new(_conditions.MarginKelvins, _conditions.ColdSoakKelvins, _conditions.ShadeKelvins, _conditions.HottestShadeCelsius, Guard.Defined(figures)));

    /// <summary>Says which oil is in the sump.</summary>
    /// <param name="oil">The oil by its label.</param>
    /// <returns>The question with the fitted oil.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="oil"/> is null.</exception>
    public OilChoice WithFitted(LabelledOil oil) => new(Permitted, _conditions, Guard.NotNull(oil), _layUps, AsOf);

    /// <summary>Says for which date category claims are judged: one that does not exist yet, or any more, is cautioned about.</summary>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <returns>The question with the date.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public OilChoice WithClaimsAsOf(LocalDate date) => new(Permitted, _conditions, Fitted, _layUps, Guard.Date(date));

    /// <summary>Says when the engine is laid up: nights in between ask nothing of the oil.</summary>
    /// <param name="from">The first day of the lay-up.</param>
    /// <param name="until">The last day of the lay-up, not before <paramref name="from"/>.</param>
    /// <returns>The question with the lay-up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A date is outside 1900 to 2199, or <paramref name="until"/> is before <paramref name="from"/>.</exception>
    public OilChoice LaidUpBetween(LocalDate from, LocalDate until)
    {
        Guard.Date(from);
        Guard.Date(until);
        return until >= from
            ? new(Permitted, _conditions, Fitted, [.. _layUps, (from, until)], AsOf)
            : throw new ArgumentOutOfRangeException(nameof(until), until, "Must not be before the first day of the lay-up.");
    }

    /// <summary>Judges every permitted grade for one coldest start.</summary>
    /// <param name="lowestAir">The lowest air temperature at a start, from -60 to 60 °C; of a cold-soaked boat the night's, not the water's.</param>
    /// <returns>The selection.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lowestAir"/> is outside its range.</exception>
    public OilSelection ForColdestStart(Temperature lowestAir) => Select(OilGuard.AmbientCelsius(lowestAir), isLaidUp: false);

    /// <summary>Judges every permitted grade for a range of temperatures: the lowest air at a start and the hottest ambient.</summary>
    /// <param name="lowestAir">From -60 to 60 °C.</param>
    /// <param name="hottest">From -60 to 60 °C, not below <paramref name="lowestAir"/>.</param>
    /// <returns>The selection.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the hottest is below the lowest.</exception>
    public OilSelection ForRange(Temperature lowestAir, Temperature hottest)
    {
        double lowest = OilGuard.AmbientCelsius(lowestAir);
        double highest = OilGuard.AmbientCelsius(hottest);
        return highest >= lowest
            ? With(new(_conditions.MarginKelvins, _conditions.ColdSoakKelvins, _conditions.ShadeKelvins, highest, _conditions.Figures)).Select(lowest, isLaidUp: false)
            : throw new ArgumentOutOfRangeException(nameof(hottest), highest, FormattableString.Invariant($"Must be at least the lowest, {lowest} °C."));
    }

    /// <summary>Judges a frost that a laid-up engine will not be started in: the verdicts are for a start, but none is expected.</summary>
    /// <param name="lowestAir">The lowest air temperature, from -60 to 60 °C.</param>
    /// <returns>The selection, with no change asked for.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lowestAir"/> is outside its range.</exception>
    public OilSelection WhileLaidUp(Temperature lowestAir) => Select(OilGuard.AmbientCelsius(lowestAir), isLaidUp: true);

    /// <summary>Judges every permitted grade over a list of nights, in any order; allocates nothing for each night.</summary>
    /// <param name="nights">At least one; a start is possible on each date that is not in a lay-up.</param>
    /// <returns>The season.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="nights"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="nights"/> is empty or holds null.</exception>
    public OilSeason ForNights(IReadOnlyList<NightMinimum> nights)
    {
        if (Guard.NotNull(nights).Count == 0)
        {
            throw new ArgumentException("Must hold at least one night.", nameof(nights));
        }

        GradeLimits[] limits = Limits();
        GradeTally[] tallies = new GradeTally[limits.Length + 1];
        GradeLimits? fitted = FittedLimits(limits);
        NightMinimum? coldest = null;
        NightMinimum? coldestStart = null;
        int starts = 0;
        for (int i = 0; i < nights.Count; i++)
        {
            NightMinimum night = nights[i] ?? throw new ArgumentException(FormattableString.Invariant($"Item {i} is null."), nameof(nights));
            coldest = coldest is null || night.Celsius < coldest.Celsius ? night : coldest;
            if (IsLaidUp(night.Date))
            {
                continue;
            }

            starts++;
            coldestStart = coldestStart is null || night.Celsius < coldestStart.Celsius ? night : coldestStart;
            double start = _conditions.StartCelsius(night.Celsius);
            for (int g = 0; g < limits.Length; g++)
            {
                tallies[g].Add(limits[g].At(start), night.Date);
            }

            if (fitted is not null)
            {
                tallies[limits.Length].Add(fitted.At(start), night.Date);
            }
        }

        OilSelection selection = coldestStart is null ? Select(coldest!.Celsius, isLaidUp: true) : Select(coldestStart.Celsius, isLaidUp: false);
        return new(
            selection, nights.Count, starts, coldestStart ?? coldest!,
            [.. limits.Select((grade, g) => new GradeSeason(grade.Grade, tallies[g]))],
            fitted is null ? null : new GradeSeason(fitted.Grade, tallies[limits.Length]));
    }

    private OilChoice With(OilConditions conditions) => new(Permitted, conditions, Fitted, _layUps, AsOf);

    private OilSelection Select(double lowestAirCelsius, bool isLaidUp)
    {
        GradeLimits[] limits = Limits();
        return new(this, _conditions, limits, _conditions.StartCelsius(lowestAirCelsius), isLaidUp);
    }

    private GradeLimits[] Limits() =>
        [.. Permitted.Grades.Select((grade, i) => new GradeLimits(grade, i, Permitted.PreferenceOf(i), isPermitted: true, _conditions))];

    private GradeLimits? FittedLimits(GradeLimits[] limits) => Fitted is null ? null : OilSelection.LimitsOf(Fitted.Grade, limits, _conditions);

    private bool IsLaidUp(LocalDate date)
    {
        for (int i = 0; i < _layUps.Count; i++)
        {
            if (date >= _layUps[i].From && date <= _layUps[i].Until)
            {
                return true;
            }
        }

        return false;
    }
}
