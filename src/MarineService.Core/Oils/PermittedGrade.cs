using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>A grade that the engine's maker permits, with the maker's own temperature limits and preference.</summary>
/// <remarks>Two are equal when all parts are.</remarks>
public sealed record PermittedGrade
{
    internal const int LastPreference = 100;

    private PermittedGrade(SaeGrade grade, double? coldest, double? hottest, int? preference) =>
        (Grade, ColdestCelsius, HottestCelsius, MakersPreference) = (grade, coldest, hottest, preference);

    /// <summary>The grade.</summary>
    public SaeGrade Grade { get; }

    /// <summary>The maker's lowest ambient for the grade, or null when the maker names none.</summary>
    public Temperature? MakersColdest => ColdestCelsius is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The maker's highest ambient for the grade, or null when the maker names none.</summary>
    public Temperature? MakersHottest => HottestCelsius is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>1 for the maker's first choice; null when the place in the list tells it.</summary>
    public int? MakersPreference { get; }

    internal double? ColdestCelsius { get; }

    internal double? HottestCelsius { get; }

    /// <summary>A permitted grade.</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="makersColdest">The maker's lowest ambient for it, from -60 to 60 °C, or null.</param>
    /// <param name="makersHottest">The maker's highest ambient for it, from -60 to 60 °C, or null.</param>
    /// <param name="makersPreference">1 for the first choice, up to 100; equal numbers are equally good; null for the place in the list.</param>
    /// <returns>The permitted grade.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="grade"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the hottest is below the coldest.</exception>
    public static PermittedGrade Of(SaeGrade grade, Temperature? makersColdest = null, Temperature? makersHottest = null, int? makersPreference = null)
    {
        Guard.NotNull(grade);
        double? coldest = makersColdest is Temperature cold ? OilGuard.AmbientCelsius(cold, nameof(makersColdest)) : null;
        double? hottest = makersHottest is Temperature hot ? OilGuard.AmbientCelsius(hot, nameof(makersHottest)) : null;
        return hottest < coldest
            ? throw new ArgumentOutOfRangeException(nameof(makersHottest), hottest, FormattableString.Invariant($"Must be at least the maker's coldest, {coldest} °C."))
            : new(grade, coldest, hottest, makersPreference is int preference ? Guard.InRange(preference, 1, LastPreference, "(the maker's choice)", nameof(makersPreference)) : null);
    }

    /// <summary>The grade with the maker's limits, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => (ColdestCelsius, HottestCelsius) switch
    {
        (null, null) => Grade.Designation,
        (double cold, null) => FormattableString.Invariant($"{Grade.Designation} from {cold} °C"),
        (null, double hot) => FormattableString.Invariant($"{Grade.Designation} to {hot} °C"),
        (double cold, double hot) => FormattableString.Invariant($"{Grade.Designation} from {cold} to {hot} °C"),
    };
}
