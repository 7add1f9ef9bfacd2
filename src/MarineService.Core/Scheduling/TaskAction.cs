namespace MarineService.Core.Scheduling;

/// <summary>What is done to the item.</summary>
public enum TaskAction
{
    /// <summary>Fit a new or renewed part; includes looking at the same part. The default value.</summary>
    Replace = 0,

    /// <summary>Look, measure or test, and give a verdict; changes nothing.</summary>
    Inspect = 1,

    /// <summary>Restore a setting.</summary>
    Adjust = 2,

    /// <summary>Restore a surface.</summary>
    Clean = 3,
}
