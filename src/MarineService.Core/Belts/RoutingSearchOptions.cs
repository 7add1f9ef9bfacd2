using MarineService.Core.Internal;

namespace MarineService.Core.Belts;

/// <summary>Which routings to look for when nobody has the diagram.</summary>
public sealed class RoutingSearchOptions
{
    private RoutingSearchOptions(FaceChoice faces, bool allowsMissedPulleys) => (Faces, AllowsMissedPulleys) = (faces, allowsMissedPulleys);

    /// <summary>Every pulley on the face that its rim is made for, none left out. Nearly always right.</summary>
    public static RoutingSearchOptions Default { get; } = new(FaceChoice.AsRimsAreMade, false);

    /// <summary>Which faces may touch a pulley; the crank always keeps the face that its rim is made for.</summary>
    public FaceChoice Faces { get; }

    /// <summary>Whether pulleys may be left out: all subsets with the crank and at least one other.</summary>
    public bool AllowsMissedPulleys { get; }

    /// <summary>The same options with another choice of faces.</summary>
    /// <param name="faces">Which faces to try.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="faces"/> is not a defined value.</exception>
    public RoutingSearchOptions WithFaces(FaceChoice faces) => new(Guard.Defined(faces), AllowsMissedPulleys);

    /// <summary>The same options with pulleys that may be left out.</summary>
    /// <returns>New options.</returns>
    public RoutingSearchOptions WithMissedPulleys() => new(Faces, true);
}
