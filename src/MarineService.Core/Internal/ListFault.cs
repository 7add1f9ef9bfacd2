namespace MarineService.Core.Internal;

/// <summary>What is wrong with one item of a list: where, what was there, what was expected.</summary>
internal sealed class ListFault(string item, int index, string member, string value, string expected)
{
    internal int Index { get; } = index;

    internal string Member { get; } = member;

    internal string Value { get; } = value;

    internal string Expected { get; } = expected;

    public override string ToString() => FormattableString.Invariant($"{item} {Index}, {Member}: '{Value}'; expected {Expected}.");
}
