namespace MarineService.Core;

/// <summary>A sense of turning. It means nothing without the place it is seen from.</summary>
public enum Sense
{
    /// <summary>As the hands of a clock. The default value.</summary>
    Clockwise = 0,

    /// <summary>Against the hands of a clock.</summary>
    CounterClockwise = 1,
}
