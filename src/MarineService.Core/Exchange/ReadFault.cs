namespace MarineService.Core.Exchange;

/// <summary>One thing that is wrong with a document: where, what was there, and what was expected.</summary>
public sealed record ReadFault
{
    internal ReadFault(string place, string value, string expected, bool isMeaning = false) =>
        (Place, Value, Expected, IsMeaning) = (place, value, expected, isMeaning);

    /// <summary>The place as a JSON Pointer (RFC 6901), such as "/tasks/3/interval/months"; empty for the whole document.</summary>
    public string Place { get; }

    /// <summary>What was there, shortened when long.</summary>
    public string Value { get; }

    /// <summary>What was expected instead.</summary>
    public string Expected { get; }

    /// <summary>Whether the fault is one between members or entries, which the schema cannot say.</summary>
    internal bool IsMeaning { get; }

    /// <summary>Place, value and expectation in one line.</summary>
    /// <returns>Invariant text, such as "/tasks/3/interval/months: -5; expected a whole number from 1 to 1200".</returns>
    public override string ToString() => $"{(Place.Length == 0 ? "document" : Place)}: {Value}; expected {Expected}";
}
