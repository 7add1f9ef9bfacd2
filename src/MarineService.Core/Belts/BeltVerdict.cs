namespace MarineService.Core.Belts;

/// <summary>What the geometry says of a routing, worst first; the headline of a <see cref="BeltCheck"/>.</summary>
/// <remarks>Says nothing of whether it is the engine's own routing: findings do.</remarks>
public enum BeltVerdict
{
    /// <summary>The belt closes, touches every stop, and neither crosses itself nor runs through a pulley. The default value.</summary>
    Closes = 0,

    /// <summary>It may close or may not: a test lies nearer to its limit than the centres are known.</summary>
    AtLimit = 1,

    /// <summary>The belt goes round the wrong number of times for its faces.</summary>
    TurningNumber = 2,

    /// <summary>Two spans cross each other.</summary>
    SpansCross = 3,

    /// <summary>A span would run through a pulley.</summary>
    SpanThroughPulley = 4,

    /// <summary>The belt does not touch a pulley of the list.</summary>
    NoContact = 5,

    /// <summary>Two pulleys in a row leave no room for a span.</summary>
    NoTangent = 6,

    /// <summary>Two pulleys touch: no room for a belt.</summary>
    Touching = 7,

    /// <summary>Two pulleys overlap.</summary>
    Overlap = 8,

    /// <summary>A pulley lies inside another.</summary>
    Contained = 9,
}
