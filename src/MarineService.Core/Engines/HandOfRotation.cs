namespace MarineService.Core.Engines;

/// <summary>Which way the crankshaft turns, seen from the flywheel end of the engine looking forward.</summary>
public enum HandOfRotation
{
    /// <summary>Not stated. The default value; nothing is assumed from it.</summary>
    NotStated = 0,

    /// <summary>Clockwise seen from the flywheel end.</summary>
    Right = 1,

    /// <summary>Counter-clockwise seen from the flywheel end.</summary>
    Left = 2,
}
