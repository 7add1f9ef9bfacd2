using MarineService.Core.Engines;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Cooling;

/// <summary>What was seen of one sacrificial anode on a day: its metal and how much of it is gone. An event of the log.</summary>
/// <example><code>
/// AnodeInspection.Of(new LocalDate(2026, 10, 4), "heat exchanger pencil", AnodeMetal.Zinc, wornFraction: 0, monthsInWater: 7).Judge(WaterKind.Salt);
/// </code></example>
public sealed class AnodeInspection : ServiceFact
{
    internal const int MostMonths = 600;

    private AnodeInspection(LocalDate date, EngineHours? dial, string anode, AnodeMetal metal, double worn, int months)
        : base(date, dial) => (Anode, Metal, WornFraction, MonthsInWater) = (anode, metal, worn, months);

    /// <summary>Which anode it is.</summary>
    public string Anode { get; }

    /// <summary>What it is made of.</summary>
    public AnodeMetal Metal { get; }

    /// <summary>How much of it is gone.</summary>
    public double WornFraction { get; }

    /// <summary>How long it was in the water, in months.</summary>
    public int MonthsInWater { get; }

    /// <summary>What was seen.</summary>
    /// <param name="date">The date, from 1900 to 2199.</param>
    /// <param name="anode">Which anode it is; not blank.</param>
    /// <param name="metal">What it is made of.</param>
    /// <param name="wornFraction">How much of it is gone, from 0 to 1 (fraction).</param>
    /// <param name="monthsInWater">How long it was in the water, from 0 to 600 months.</param>
    /// <param name="dial">What the dial showed, or null when it was not read.</param>
    /// <returns>The inspection.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="anode"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="anode"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static AnodeInspection Of(
        LocalDate date, string anode, AnodeMetal metal, double wornFraction, int monthsInWater, EngineHours? dial = null) =>
        new(
            Guard.Date(date),
            dial,
            Guard.NotBlank(anode),
            Guard.Defined(metal),
            Guard.InRange(wornFraction, 0, 1, "(fraction)"),
            Guard.InRange(monthsInWater, 0, MostMonths, "months"));

    /// <summary>Judges it with the limits of <see cref="AnodeCheck"/>.</summary>
    /// <param name="water">The water that the boat is kept in.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="water"/> is not a defined value.</exception>
    public AnodeCheck Judge(WaterKind water) => AnodeCheck.Of(Metal, Guard.Defined(water), WornFraction, MonthsInWater, anode: Anode);

    /// <summary>Which anode, and how much of it is gone.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Anode}, {WornFraction * 100:0} % gone");

    internal override ServiceFact WithoutDial() => new AnodeInspection(Date, null, Anode, Metal, WornFraction, MonthsInWater);
}
