using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>What SAE J306 makes of a gear oil that was measured. It never chooses a marine gearbox's fluid: that is its maker's.</summary>
public sealed class GearOilClassification
{
    private readonly double _kv100;
    private readonly double? _coldCelsius;

    private GearOilClassification(double kv100, double? coldCelsius, GearOilRevision revision)
    {
        (_kv100, _coldCelsius, Revision) = (kv100, coldCelsius, revision);
        int winter = -1;
        for (int i = 0; i < J306Table.Winters.Count && winter < 0; i++)
        {
            J306Table.WinterRow row = J306Table.Winters[i];
            winter = coldCelsius <= row.Celsius && kv100 >= row.Kv100Min(revision) ? i : -1;
        }

        int hot = J306Table.Hots.ToList().FindIndex(row => row.Holds(kv100, revision));
        Label = GearOilGrade.At(winter, hot);
    }

    /// <summary>The revision that was applied.</summary>
    public GearOilRevision Revision { get; }

    /// <summary>The grade that the data allow on the label, the lowest winter grade that is met; null when no grade is met.</summary>
    public GearOilGrade? Label { get; }

    /// <summary>Classifies a gear oil.</summary>
    /// <param name="viscosityAt100C">Kinematic viscosity at 100 °C, from 0.2 to 1,000 mm²/s.</param>
    /// <param name="reaches150000MillipascalSecondsAt">
    /// The temperature at which ASTM D2983 reads 150,000 mPa·s, from -80 to 200 °C, or null when it was not measured.
    /// </param>
    /// <param name="revision">Which revision to apply.</param>
    /// <returns>The classification.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <example><code>GearOilClassification.Of(KinematicViscosity.FromCentistokes(14)).Label; // SAE 90 gear oil</code></example>
    public static GearOilClassification Of(
        KinematicViscosity viscosityAt100C,
        Temperature? reaches150000MillipascalSecondsAt = null,
        GearOilRevision revision = GearOilRevision.February2019) =>
        new(
            OilGuard.Kinematic(viscosityAt100C, OilTestReport.LeastKv100, OilTestReport.MostKv100),
            reaches150000MillipascalSecondsAt is Temperature t
                ? OilGuard.Round(Guard.InRange(Canonical.Celsius(t), -80, OilGuard.WarmestCelsius, "°C", nameof(reaches150000MillipascalSecondsAt)))
                : null,
            Guard.Defined(revision));

    /// <summary>The label, the figures behind it, and what it is not for.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        return new ExplanationBuilder(Label is null ? "Meets no SAE J306 grade." : $"May be labelled {Label}.")
            .Add("at 100 °C", FigureUnit.SquareMillimeterPerSecond.Write(_kv100, units))
            .Add("150,000 mPa·s", _coldCelsius is double cold ? $"reached at {FigureUnit.DegreeCelsius.Write(cold, units)}" : "not measured, so no winter grade")
            .Add("not for", "choosing a marine gearbox's fluid: that is its maker's, often automatic-transmission fluid or engine oil")
            .Build(J306Table.Citation(Revision));
    }
}
