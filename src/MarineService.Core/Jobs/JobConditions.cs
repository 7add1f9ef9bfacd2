using MarineService.Core.Internal;
using MarineService.Core.Parts;
using MarineService.Core.Procedures;
using UnitsNet;

namespace MarineService.Core.Jobs;

/// <summary>What is known of the weather to come and of the boat beyond its data sheet.</summary>
public sealed class JobConditions
{
    private readonly double? _coldestCelsius;
    private readonly double? _hottestCelsius;

    private JobConditions(double? coldestCelsius, double? hottestCelsius, Circumstances circumstances, IReadOnlyList<KitItem>? shelf) =>
        (_coldestCelsius, _hottestCelsius, Circumstances, Shelf) = (coldestCelsius, hottestCelsius, circumstances, shelf);

    /// <summary>Nothing is known.</summary>
    public static JobConditions NotStated { get; } = new(null, null, Circumstances.Unknown, null);

    /// <summary>The lowest air temperature at a start until the next oil change, or null.</summary>
    public Temperature? Coldest => _coldestCelsius is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The highest air temperature until the next oil change, or null.</summary>
    public Temperature? Hottest => _hottestCelsius is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>What was said of the boat; what the data sheet says is added to it.</summary>
    public Circumstances Circumstances { get; }

    /// <summary>What the shelf and the boat's locker hold, spares aboard too; null when nobody said, empty when they hold nothing.</summary>
    public IReadOnlyList<KitItem>? Shelf { get; }

    /// <summary>A copy with the weather until the next oil change.</summary>
    /// <param name="coldest">The lowest air temperature at a start, from -60 to 60 °C.</param>
    /// <param name="hottest">The highest air temperature, from the lowest to 60 °C.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public JobConditions WithWeather(Temperature coldest, Temperature hottest)
    {
        double low = Guard.InRange(Canonical.Celsius(coldest), -60, 60, "°C", nameof(coldest));
        return new(low, Guard.InRange(Canonical.Celsius(hottest), low, 60, "°C", nameof(hottest)), Circumstances, Shelf);
    }

    /// <summary>A copy in which more is known of the boat.</summary>
    /// <param name="circumstance">Which circumstance.</param>
    /// <param name="holds">Whether it holds; outranks the data sheet.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circumstance"/> is not defined.</exception>
    public JobConditions With(Circumstance circumstance, bool holds) =>
        new(_coldestCelsius, _hottestCelsius, Circumstances.With(Guard.Defined(circumstance), holds), Shelf);

    /// <summary>A copy with what the shelf holds.</summary>
    /// <param name="stock">Parts and tools, spares aboard too; each part once; parts that the engine does not use are left alone.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stock"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, or a part is named twice.</exception>
    public JobConditions WithShelf(params KitItem[] stock)
    {
        IReadOnlyList<KitItem> all = Guard.Items(stock);
        Names.Distinct(all.Select(item => item.Part), nameof(stock));
        return new(_coldestCelsius, _hottestCelsius, Circumstances, all);
    }
}
