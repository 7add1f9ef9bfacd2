namespace MarineService.Core.Exchange;

/// <summary>What came of reading a document: the value, or every fault with its place. Never half of it.</summary>
/// <typeparam name="T">What the document holds.</typeparam>
public sealed class ReadResult<T>
    where T : class
{
    private readonly T? _value;

    internal ReadResult(T? value, IReadOnlyList<ReadFault> faults) => (_value, Faults) = (faults.Count == 0 ? value : null, faults);

    /// <summary>Whether the document was read without a fault.</summary>
    public bool IsRead => _value is not null;

    /// <summary>What the document holds.</summary>
    /// <exception cref="InvalidOperationException">The document has faults; the message names the first.</exception>
    public T Value => _value ?? throw new InvalidOperationException($"The document was not read. {Faults[0]}");

    /// <summary>Every fault in the order of the document; empty when it was read.</summary>
    public IReadOnlyList<ReadFault> Faults { get; }
}
