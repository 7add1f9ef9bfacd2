namespace MarineService.Core.LayUp;

/// <summary>Whether a low point is safe from frost.</summary>
public enum LowPointVerdict
{
    /// <summary>Nothing was done at it: it is full of water. The default value.</summary>
    NotDone = 0,

    /// <summary>Drained through every drain, or antifreeze strong enough was found in it.</summary>
    Proved = 1,

    /// <summary>Something was done, but it proves nothing.</summary>
    NotProved = 2,

    /// <summary>What was found in it freezes too early.</summary>
    TooWeak = 3,
}
