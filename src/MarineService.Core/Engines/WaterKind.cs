namespace MarineService.Core.Engines;

/// <summary>The water that the boat lies in.</summary>
public enum WaterKind
{
    /// <summary>Not stated. The default value.</summary>
    NotStated = 0,

    /// <summary>Fresh water.</summary>
    Fresh = 1,

    /// <summary>Brackish water.</summary>
    Brackish = 2,

    /// <summary>Salt water.</summary>
    Salt = 3,
}
