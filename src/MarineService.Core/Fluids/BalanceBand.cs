namespace MarineService.Core.Fluids;

/// <summary>How far a difference is from nothing.</summary>
public enum BalanceBand
{
    /// <summary>Within what reading and measuring explain. The default value.</summary>
    Fine = 0,

    /// <summary>Worth a second look.</summary>
    Doubtful = 1,

    /// <summary>It does not add up.</summary>
    Beyond = 2,
}
