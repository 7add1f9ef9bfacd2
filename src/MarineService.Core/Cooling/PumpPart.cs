namespace MarineService.Core.Cooling;

/// <summary>A part of the pump that wears beside the impeller.</summary>
public enum PumpPart
{
    /// <summary>The cover: grooves that a finger nail feels. The default value.</summary>
    Cover = 0,

    /// <summary>The wear plate behind the impeller.</summary>
    WearPlate = 1,

    /// <summary>The cam that bends the vanes.</summary>
    Cam = 2,

    /// <summary>The shaft seal: water or oil at the weep hole.</summary>
    Seal = 3,

    /// <summary>Shaft or bearing: play.</summary>
    Shaft = 4,
}
