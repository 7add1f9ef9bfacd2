namespace MarineService.Core.Engines;

/// <summary>Where a meter reading comes from.</summary>
public enum ReadingSource
{
    /// <summary>Read off the dial. The default value.</summary>
    Dial = 0,

    /// <summary>Copied from a log or an invoice.</summary>
    Log = 1,

    /// <summary>Estimated by a person.</summary>
    Estimate = 2,
}
