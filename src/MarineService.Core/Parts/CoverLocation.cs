namespace MarineService.Core.Parts;

/// <summary>What holds a cover in its place while the screws go in.</summary>
public enum CoverLocation
{
    /// <summary>A spigot, rim or O-ring groove keeps it on the middle of the bolt circle: it can only turn. The default value.</summary>
    Centered = 0,

    /// <summary>Nothing but the screws: it can be pushed aside as well as turned.</summary>
    Free = 1,
}
