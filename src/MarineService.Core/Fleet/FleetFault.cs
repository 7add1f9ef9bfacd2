namespace MarineService.Core.Fleet;

/// <summary>Why one record of a fleet could not be judged: where, what was there, and what was expected.</summary>
public sealed record FleetFault
{
    internal FleetFault(string place, string value, string expected) => (Place, Value, Expected) = (place, value, expected);

    /// <summary>The place in the record as a JSON Pointer (RFC 6901); empty for the whole record.</summary>
    public string Place { get; }

    /// <summary>What was there, shortened when long.</summary>
    public string Value { get; }

    /// <summary>What was expected instead.</summary>
    public string Expected { get; }

    /// <summary>Place, value and expectation in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{(Place.Length == 0 ? "record" : Place)}: {Value}; expected {Expected}";
}
