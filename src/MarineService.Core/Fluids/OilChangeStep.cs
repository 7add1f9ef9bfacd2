namespace MarineService.Core.Fluids;

/// <summary>One kind of event in the account of an oil change.</summary>
public enum OilChangeStep
{
    /// <summary>The account was opened, with or without a dipstick reading. The default value.</summary>
    Begun = 0,

    /// <summary>The period since the last change was told.</summary>
    PeriodTold = 1,

    /// <summary>The oil was looked at.</summary>
    Looked = 2,

    /// <summary>Oil was drained.</summary>
    Drained = 3,

    /// <summary>The old filter came off and a new one went on, dry.</summary>
    FilterChanged = 4,

    /// <summary>The filter stayed on.</summary>
    FilterKept = 5,

    /// <summary>The new filter was filled by hand before it went on.</summary>
    FilterPrimed = 6,

    /// <summary>Oil was poured in.</summary>
    Poured = 7,

    /// <summary>The engine ran until the filter was full and the pressure normal.</summary>
    Ran = 8,

    /// <summary>The oil settled and the dipstick was read.</summary>
    Settled = 9,

    /// <summary>Oil was taken out again, because the level was too high.</summary>
    DrawnOff = 10,
}
