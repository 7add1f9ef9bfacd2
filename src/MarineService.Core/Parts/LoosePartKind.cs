namespace MarineService.Core.Parts;

/// <summary>What kind of loose part was taken off.</summary>
public enum LoosePartKind
{
    /// <summary>Something else. The default value.</summary>
    Other = 0,

    /// <summary>A screw or bolt.</summary>
    Screw = 1,

    /// <summary>A nut.</summary>
    Nut = 2,

    /// <summary>A washer.</summary>
    Washer = 3,

    /// <summary>A clip.</summary>
    Clip = 4,

    /// <summary>A pin or key.</summary>
    Pin = 5,
}
