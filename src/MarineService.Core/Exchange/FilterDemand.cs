namespace MarineService.Core.Exchange;

/// <summary>What a filter base asks of an attribute.</summary>
internal enum FilterDemand
{
    /// <summary>To lie between two values.</summary>
    Range = 0,

    /// <summary>No less.</summary>
    Least = 1,

    /// <summary>No more.</summary>
    Most = 2,
}
