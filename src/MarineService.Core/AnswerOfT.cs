namespace MarineService.Core;

/// <summary>An answer that is either known, or not known with what is missing.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public sealed class Answer<T>
{
    private readonly T _value;

    internal Answer(T value) => (IsKnown, _value, Missing) = (true, value, []);

    internal Answer(IReadOnlyList<string> missing) => (IsKnown, _value, Missing) = (false, default!, missing);

    /// <summary>True when the data could give the answer.</summary>
    public bool IsKnown { get; }

    /// <summary>The answer.</summary>
    /// <exception cref="InvalidOperationException">The answer is not known; the message names what is missing.</exception>
    public T Value => IsKnown ? _value : throw new InvalidOperationException($"Not known. {string.Join(" ", Missing)}");

    /// <summary>What would settle the question; empty when the answer is known.</summary>
    public IReadOnlyList<string> Missing { get; }

    /// <summary>The answer, or the fallback that the caller takes responsibility for.</summary>
    /// <param name="fallback">Returned when the answer is not known.</param>
    /// <returns>The answer or <paramref name="fallback"/>.</returns>
    public T OrElse(T fallback) => IsKnown ? _value : fallback;

    /// <summary>The answer as text, or "not known" with what is missing; invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() =>
        !IsKnown ? $"not known: {string.Join(" ", Missing)}"
        : _value is IFormattable formattable ? formattable.ToString(null, System.Globalization.CultureInfo.InvariantCulture)
        : _value?.ToString() ?? string.Empty;
}
