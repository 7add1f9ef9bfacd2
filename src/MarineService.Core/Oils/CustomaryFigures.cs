namespace MarineService.Core.Oils;

/// <summary>Which customary lowest-ambient figures take part in a selection; published customs disagree by 10 K and more.</summary>
public enum CustomaryFigures
{
    /// <summary>A general chart's figures. The default value; the warmest published ones are shown beside them.</summary>
    Chart = 0,

    /// <summary>The warmest figure that was seen published for each grade, if it is warmer than the chart's.</summary>
    WarmestPublished = 1,
}
