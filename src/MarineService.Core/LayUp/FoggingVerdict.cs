namespace MarineService.Core.LayUp;

/// <summary>Whether an engine may be fogged.</summary>
public enum FoggingVerdict
{
    /// <summary>Not known: something is missing. The default value; do not pour.</summary>
    NotKnown = 0,

    /// <summary>The dose leaves room above the piston.</summary>
    Dose = 1,

    /// <summary>Refused: the dose would fill too much of the clearance volume.</summary>
    TooMuch = 2,

    /// <summary>Refused: a diesel can lock on the oil, or start on it. Ask the maker.</summary>
    RefusedForDiesel = 3,
}
