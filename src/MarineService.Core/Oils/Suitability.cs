namespace MarineService.Core.Oils;

/// <summary>The verdict on a grade or an oil for the conditions that were given.</summary>
public enum Suitability
{
    /// <summary>Outside a limit that must not be crossed. The default value: nothing is accepted unseen.</summary>
    Refused = 0,

    /// <summary>Inside the laboratory's limit but inside the margin as well, or with a limit that is not known.</summary>
    Marginal = 1,

    /// <summary>Inside every known limit with the margin to spare.</summary>
    Accepted = 2,
}
