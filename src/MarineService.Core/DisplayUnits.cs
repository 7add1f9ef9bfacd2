namespace MarineService.Core;

/// <summary>Which units an explanation is written in. Never changes a decision, only its words.</summary>
public enum DisplayUnits
{
    /// <summary>Metric units: litres, millimetres, degrees Celsius. The default value.</summary>
    Metric = 0,

    /// <summary>Units customary in the United States: quarts, inches, degrees Fahrenheit.</summary>
    UsCustomary = 1,
}
