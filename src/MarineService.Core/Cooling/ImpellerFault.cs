namespace MarineService.Core.Cooling;

/// <summary>What was seen on an impeller beside its single vanes.</summary>
public enum ImpellerFault
{
    /// <summary>The tips are worn flat. The default value.</summary>
    TipsWornFlat = 0,

    /// <summary>The rubber has come off the hub, or the hub turns in it.</summary>
    HubLoose = 1,

    /// <summary>Key slot or splines are worn.</summary>
    HubDriveWorn = 2,

    /// <summary>The rubber is hard.</summary>
    Hard = 3,

    /// <summary>The rubber is sticky.</summary>
    Sticky = 4,

    /// <summary>The rubber is swollen, as by oil.</summary>
    Swollen = 5,

    /// <summary>The rubber is glazed or melted, as by running dry.</summary>
    Melted = 6,
}
