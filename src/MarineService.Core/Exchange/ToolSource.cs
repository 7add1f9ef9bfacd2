namespace MarineService.Core.Exchange;

/// <summary>Where a tool comes from that the shelf lacks, as documents say it.</summary>
internal enum ToolSource
{
    /// <summary>From the boat, the shed or a neighbour.</summary>
    Gathered = 0,

    /// <summary>From a shop.</summary>
    Bought = 1,
}
