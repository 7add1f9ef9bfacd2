namespace MarineService.Core.Oils;

/// <summary>What kind of limit a temperature is.</summary>
public enum TemperatureLimitKind
{
    /// <summary>SAE J300 cranking test temperature plus the margin: the floor of acceptance. The default value.</summary>
    CrankingWithMargin = 0,

    /// <summary>SAE J300 cranking test temperature: below it an unheated start is refused.</summary>
    Cranking = 1,

    /// <summary>SAE J300 pumping test temperature: below it oil flow is not assured.</summary>
    Pumping = 2,

    /// <summary>A customary chart's lowest ambient.</summary>
    CustomaryChart = 3,

    /// <summary>The warmest lowest ambient that was seen published for the grade.</summary>
    WarmestPublished = 4,

    /// <summary>The customary lowest ambient of a grade without W, for which the standard sets no cold limit.</summary>
    WithoutWinterGrade = 5,

    /// <summary>The engine maker's own lowest ambient for the grade.</summary>
    MakersColdest = 6,

    /// <summary>The engine maker's own highest ambient for the grade: the only limit on the hot side.</summary>
    MakersHottest = 7,
}
