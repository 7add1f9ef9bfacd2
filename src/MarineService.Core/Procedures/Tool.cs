using MarineService.Core.Internal;

namespace MarineService.Core.Procedures;

/// <summary>A tool that a step needs, and its size where that matters.</summary>
public sealed record Tool
{
    private Tool(string name, string? size) => (Name, Size) = (name, size);

    /// <summary>What it is, such as "strap wrench".</summary>
    public string Name { get; }

    /// <summary>Its size, such as "10 mm"; null when it does not matter or is the engine maker's to say.</summary>
    public string? Size { get; }

    /// <summary>A tool.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="size">Its size; null when it does not matter, otherwise not blank.</param>
    /// <returns>The tool.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> or <paramref name="size"/> is blank.</exception>
    public static Tool Of(string name, string? size = null) => new(Guard.NotBlank(name), size is null ? null : Guard.NotBlank(size));

    /// <summary>Name and size.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Size is null ? Name : $"{Name}, {Size}";
}
