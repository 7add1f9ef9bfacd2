namespace MarineService.Core.Parts;

/// <summary>How a joint is tightened.</summary>
public enum TighteningWay
{
    /// <summary>By torque.</summary>
    ByTorque = 0,

    /// <summary>Until the parts touch, then no more; a soft joint is not held by clamp force.</summary>
    ToContactThenNoMore = 1,

    /// <summary>By a turn after contact.</summary>
    ByTurnAfterContact = 2,

    /// <summary>Not known: the maker's figure is needed.</summary>
    AskTheMaker = 3,
}
