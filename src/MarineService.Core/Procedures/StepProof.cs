using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Procedures;

/// <summary>What somebody says about a hold point: that it passed or failed, how long it took, what was missing, what he wrote.</summary>
public sealed class StepProof
{
    private StepProof(string holdPoint, bool passed) => (HoldPoint, HasPassed) = (holdPoint, passed);

    private StepProof(StepProof other)
        : this(other.HoldPoint, other.HasPassed) =>
        (Minutes, Missing, Note) = (other.Minutes, other.Missing, other.Note);

    /// <summary>The hold point's id.</summary>
    public string HoldPoint { get; }

    /// <summary>Whether it passed.</summary>
    public bool HasPassed { get; }

    /// <summary>How long it took, or null when nobody said.</summary>
    public Duration? Time => Minutes is double minutes ? Duration.FromMinutes(minutes) : null;

    /// <summary>How many things are missing, or null when nobody counted.</summary>
    public int? Missing { get; private set; }

    /// <summary>What was written down, or null.</summary>
    public string? Note { get; private set; }

    internal double? Minutes { get; private set; }

    /// <summary>It is so.</summary>
    /// <param name="holdPoint">The hold point's id; not blank.</param>
    /// <returns>The proof.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="holdPoint"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="holdPoint"/> is blank.</exception>
    public static StepProof Passed(string holdPoint) => new(Guard.NotBlank(holdPoint), true);

    /// <summary>It is not so.</summary>
    /// <param name="holdPoint">The hold point's id; not blank.</param>
    /// <returns>The failed proof.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="holdPoint"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="holdPoint"/> is blank.</exception>
    public static StepProof Failed(string holdPoint) => new(Guard.NotBlank(holdPoint), false);

    /// <summary>A copy with the time that it took.</summary>
    /// <param name="time">From 0 to 1,440 minutes.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is outside its range.</exception>
    public StepProof WithTime(Duration time) =>
        new(this) { Minutes = Guard.InRange(Canonical.Seconds(time) / 60, 0, 1440, "min", nameof(time)) };

    /// <summary>A copy with the count of what is missing.</summary>
    /// <param name="missing">From -10,000 to 10,000; below 0 when there is more than there should be.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="missing"/> is outside its range.</exception>
    public StepProof WithMissing(int missing) => new(this) { Missing = Guard.InRange(missing, -10_000, 10_000, "things") };

    /// <summary>A copy with what was written down.</summary>
    /// <param name="note">Not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="note"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="note"/> is blank.</exception>
    public StepProof WithNote(string note) => new(this) { Note = Guard.NotBlank(note) };

    /// <summary>Whether it proves a hold point.</summary>
    /// <param name="point">The hold point.</param>
    /// <returns>False for another hold point, for a failed proof, and when time, count or note that it asks for is not there or not enough.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    public bool Proves(HoldPoint point) =>
        Guard.NotNull(point).Id == HoldPoint && HasPassed
        && (point.LeastMinutes <= 0 || Minutes >= point.LeastMinutes)
        && (!point.CountsToZero || Missing == 0)
        && (!point.IsWritten || Note is not null);

    /// <summary>The hold point and whether it passed.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{HoldPoint}: {(HasPassed ? "passed" : "failed")}";
}
