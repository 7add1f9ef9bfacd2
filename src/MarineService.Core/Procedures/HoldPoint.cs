using System.Globalization;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Procedures;

/// <summary>What must be proved before the next step may start, and by what.</summary>
/// <remarks>Two are equal when all parts are.</remarks>
public sealed record HoldPoint
{
    internal const double LeastOfMinutes = 1 / 60.0;
    internal const double MostOfMinutes = 1440;

    private readonly double _leastMinutes;

    private HoldPoint(string id, string text, double leastMinutes, bool countsToZero, bool isWritten) =>
        (Id, Text, _leastMinutes, CountsToZero, IsWritten) = (id, text, leastMinutes, countsToZero, isWritten);

    /// <summary>The name by which a proof refers to it, such as "kit-complete".</summary>
    public string Id { get; }

    /// <summary>What must be so.</summary>
    public string Text { get; }

    /// <summary>The least time that it takes, or null when time does not prove it.</summary>
    public Duration? LeastTime => _leastMinutes > 0 ? Duration.FromMinutes(_leastMinutes) : null;

    /// <summary>Whether a count of what is missing must be nought.</summary>
    public bool CountsToZero { get; }

    /// <summary>Whether something must be written down: a reading, a place, an amount.</summary>
    public bool IsWritten { get; }

    internal double LeastMinutes => _leastMinutes;

    /// <summary>A hold point that somebody confirms with his own eyes or nose.</summary>
    /// <param name="id">Its name; not blank.</param>
    /// <param name="text">What must be so; not blank.</param>
    /// <returns>The hold point.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An argument is blank.</exception>
    public static HoldPoint Confirmed(string id, string text) => new(Guard.NotBlank(id), Guard.NotBlank(text), 0, false, false);

    /// <summary>A hold point that also takes its time.</summary>
    /// <param name="id">Its name; not blank.</param>
    /// <param name="text">What must be so; not blank.</param>
    /// <param name="least">The least time, above 0 to 1,440 minutes.</param>
    /// <returns>The hold point.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An argument is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="least"/> is outside its range.</exception>
    public static HoldPoint Lasting(string id, string text, Duration least) =>
        LastingMinutes(Guard.NotBlank(id), Guard.NotBlank(text), Guard.InRange(Canonical.Seconds(least) / 60, LeastOfMinutes, MostOfMinutes, "min", nameof(least)));

    internal static HoldPoint LastingMinutes(string id, string text, double least) => new(id, text, least, false, false);

    /// <summary>A hold point whose count of missing things must be nought: vanes, tools, plugs.</summary>
    /// <param name="id">Its name; not blank.</param>
    /// <param name="text">What is counted; not blank.</param>
    /// <returns>The hold point.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An argument is blank.</exception>
    public static HoldPoint Counted(string id, string text) => new(Guard.NotBlank(id), Guard.NotBlank(text), 0, true, false);

    /// <summary>A hold point that is proved by what is written down.</summary>
    /// <param name="id">Its name; not blank.</param>
    /// <param name="text">What is written; not blank.</param>
    /// <returns>The hold point.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An argument is blank.</exception>
    public static HoldPoint Written(string id, string text) => new(Guard.NotBlank(id), Guard.NotBlank(text), 0, false, true);

    /// <summary>What must be so, and how it is proved.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => _leastMinutes > 0
        ? string.Format(CultureInfo.InvariantCulture, "{0} (at least {1:0.##} min)", Text, _leastMinutes)
        : CountsToZero ? $"{Text} (must be 0)"
        : IsWritten ? $"{Text} (write it down)"
        : Text;
}
