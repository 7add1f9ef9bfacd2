namespace MarineService.Core;

/// <summary>How grave a hazard to people is, in the signal words of ANSI Z535.6 and ISO 3864-2. Not the severity of a finding.</summary>
public enum SignalWord
{
    /// <summary>No hazard to people, but to boat, engine or water. The default value.</summary>
    Notice = 0,

    /// <summary>May injure lightly or moderately if it is not avoided.</summary>
    Caution = 1,

    /// <summary>May kill or injure gravely if it is not avoided.</summary>
    Warning = 2,

    /// <summary>Will kill or injure gravely if it is not avoided.</summary>
    Danger = 3,
}
