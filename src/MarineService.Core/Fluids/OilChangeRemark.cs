namespace MarineService.Core.Fluids;

/// <summary>What there is to say about one event, kept as bits so that an event costs one object; findings are built on demand.</summary>
[Flags]
internal enum OilChangeRemark
{
    None = 0,

    // These refuse the event: the account stays as it was.
    TemperatureOutside = 1 << 0,
    NotSettled = 1 << 1,
    WrongSeating = 1 << 2,
    WrongAttitude = 1 << 3,
    TiltNotCorrectable = 1 << 4,
    DrainTooLarge = 1 << 5,
    DrainAfterPour = 1 << 6,
    FilterTwice = 1 << 7,
    FilterAfterPour = 1 << 8,
    PrimedWithoutFilter = 1 << 9,
    PrimedTooMuch = 1 << 10,
    DrawnOffTooMuch = 1 << 11,
    PeriodTwice = 1 << 12,
    Refusals = (1 << 13) - 1,

    // These only remark on it.
    TemperatureAssumed = 1 << 13,
    FilterNotSaid = 1 << 14,
    AboveFullBefore = 1 << 15,
    BelowAddBefore = 1 << 16,
    MayPassFull = 1 << 17,
    RanBelowAdd = 1 << 18,
    Water = 1 << 19,
    Fuel = 1 << 20,
    Metal = 1 << 21,
}
