namespace MarineService.Core.Cooling;

/// <summary>One line of the check list after a start: what must come, by when, and when it came.</summary>
public sealed class StartItem
{
    internal StartItem(string name, double limitSeconds, double? cameAfterSeconds) =>
        (Name, LimitSeconds, CameAfterSeconds) = (name, limitSeconds, cameAfterSeconds);

    /// <summary>What must come.</summary>
    public string Name { get; }

    /// <summary>By when, after the engine fired [s].</summary>
    public double LimitSeconds { get; }

    /// <summary>When it came; null when it has not come yet [s].</summary>
    public double? CameAfterSeconds { get; }

    /// <summary>Name, limit and what happened.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"{Name} by {LimitSeconds:0.#} s: ")
        + (CameAfterSeconds is double came ? FormattableString.Invariant($"after {came:0.#} s") : "not yet");
}
