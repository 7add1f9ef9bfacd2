namespace MarineService.Core.Oils;

/// <summary>Whether measured data show that an oil meets the limits of a grade.</summary>
public enum GradeResult
{
    /// <summary>A measurement that the grade asks for is missing, and none of the others refuses it. The default value.</summary>
    NotKnown = 0,

    /// <summary>Every limit of the grade was measured and is met.</summary>
    Met = 1,

    /// <summary>At least one measured value is outside the limits of the grade.</summary>
    NotMet = 2,
}
