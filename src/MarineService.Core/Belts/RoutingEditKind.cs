namespace MarineService.Core.Belts;

/// <summary>What to do with the belt at a pulley.</summary>
public enum RoutingEditKind
{
    /// <summary>Lead the belt over a pulley that it misses. The default value.</summary>
    Insert = 0,

    /// <summary>Take the belt off a pulley.</summary>
    Remove = 1,

    /// <summary>Let two pulleys change places in the order.</summary>
    Swap = 2,

    /// <summary>Turn the belt over at a pulley, to its other face.</summary>
    TurnOver = 3,
}
