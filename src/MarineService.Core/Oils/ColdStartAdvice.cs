namespace MarineService.Core.Oils;

/// <summary>What to do about the coldest start.</summary>
public enum ColdStartAdvice
{
    /// <summary>Ask the engine's maker: no cold limit is known that would answer. The default value.</summary>
    AskTheMaker = 0,

    /// <summary>A permitted grade is accepted.</summary>
    StartWithAcceptedGrade = 1,

    /// <summary>No permitted grade is accepted: warm the oil to the floor first.</summary>
    WarmTheOilFirst = 2,

    /// <summary>Below the pumping test temperature of every permitted grade: do not start.</summary>
    DoNotStart = 3,

    /// <summary>The engine is laid up: no start is expected and no oil need be changed for frost.</summary>
    NoStartWhileLaidUp = 4,
}
