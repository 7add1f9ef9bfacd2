namespace MarineService.Core.Engines;

/// <summary>What a forecast of engine hours stands on.</summary>
public enum ForecastBasis
{
    /// <summary>The readings themselves: the date lies before the last one. The default value.</summary>
    Readings = 0,

    /// <summary>No season is covered by readings yet: the mean rate from the first reading to the last, summer and winter alike.</summary>
    MeanRate = 1,

    /// <summary>One season is covered: its shape is known, how seasons differ is not.</summary>
    OneSeason = 2,

    /// <summary>Two or more seasons are covered: their mean, and the range of repeating each.</summary>
    PastSeasons = 3,
}
