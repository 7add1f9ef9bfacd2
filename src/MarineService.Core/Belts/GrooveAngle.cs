namespace MarineService.Core.Belts;

/// <summary>The included angle of a pulley's grooves.</summary>
public enum GrooveAngle
{
    /// <summary>40 degrees, the usual one. The default value.</summary>
    Degrees40 = 0,

    /// <summary>37 degrees, listed beside it.</summary>
    Degrees37 = 1,
}
