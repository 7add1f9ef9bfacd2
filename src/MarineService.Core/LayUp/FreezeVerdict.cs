namespace MarineService.Core.LayUp;

/// <summary>Whether water left in an engine may freeze.</summary>
public enum FreezeVerdict
{
    /// <summary>Not known; act as for <see cref="Protect"/>. The default value.</summary>
    NotKnown = 0,

    /// <summary>Frost is to be expected: no water may stay that is not drained or proved.</summary>
    Protect = 1,

    /// <summary>Records and margin leave no frost on these dates.</summary>
    NoFrostExpected = 2,
}
