using MarineService.Core.Internal;

namespace MarineService.Core.Engines;

/// <summary>The counter of an engine's running time: what drives it, and where its dial starts again at zero.</summary>
public sealed class HourMeter
{
    private HourMeter(EngineHours? modulus, MeterDrive drive) => (Modulus, Drive) = (modulus, drive);

    /// <summary>A meter of which nothing is known: no rollover is ever assumed.</summary>
    public static HourMeter Plain { get; } = new(null, MeterDrive.NotStated);

    /// <summary>The first number of hours that the dial cannot show (10,000 for four digits), or null when it is not known.</summary>
    public EngineHours? Modulus { get; }

    /// <summary>What makes it count.</summary>
    public MeterDrive Drive { get; }

    /// <summary>A meter.</summary>
    /// <param name="modulus">The first number of hours that the dial cannot show, from 100 h; or null when it is not known.</param>
    /// <param name="drive">What makes it count.</param>
    /// <returns>The meter.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="modulus"/> is under 100 h or <paramref name="drive"/> is not defined.</exception>
    public static HourMeter Of(EngineHours? modulus, MeterDrive drive = MeterDrive.NotStated)
    {
        if (modulus is EngineHours m)
        {
            Guard.InRange(m.ToHours(), 100m, 1_000_000m, "h", nameof(modulus));
        }

        return new(modulus, Guard.Defined(drive));
    }
}
