namespace MarineService.Core.Records;

/// <summary>What is wrong with one entry in a list: where, what was there, what was expected.</summary>
internal sealed class LogFault(int index, string member, string value, string expected)
{
    internal int Index { get; } = index;

    internal string Member { get; } = member;

    internal string Value { get; } = value;

    internal string Expected { get; } = expected;

    public override string ToString() => FormattableString.Invariant($"Entry {Index}, {Member}: '{Value}'; expected {Expected}.");
}
