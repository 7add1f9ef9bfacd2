namespace MarineService.Core.Oils;

/// <summary>Whether a category that an oil claims may stand in for one that an engine asks for.</summary>
public enum Coverage
{
    /// <summary>No published statement was found either way; nothing is inferred from the letters. The default value.</summary>
    NoneStated = 0,

    /// <summary>The same category, or a path of stated coverage.</summary>
    Covered = 1,

    /// <summary>It is stated, or in the nature of the mark, that it does not.</summary>
    Excluded = 2,
}
