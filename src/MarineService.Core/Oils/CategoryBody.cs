namespace MarineService.Core.Oils;

/// <summary>Who publishes a service category.</summary>
public enum CategoryBody
{
    /// <summary>American Petroleum Institute, categories S (petrol). The default value.</summary>
    ApiS = 0,

    /// <summary>American Petroleum Institute, categories C and F (diesel).</summary>
    ApiC = 1,

    /// <summary>ILSAC, petrol, with resource-conserving grades.</summary>
    Ilsac = 2,

    /// <summary>National Marine Manufacturers Association: marks of its own for marine engines.</summary>
    Nmma = 3,

    /// <summary>ACEA, light and heavy duty; the year of the issue matters as well as the letters.</summary>
    Acea = 4,
}
