using MarineService.Core.Internal;

namespace MarineService.Core;

/// <summary>Makes <see cref="Answer{T}"/> values.</summary>
public static class Answer
{
    /// <summary>An answer that the data could give.</summary>
    /// <typeparam name="T">What was asked for.</typeparam>
    /// <param name="value">The answer; not null.</param>
    /// <returns>A known answer.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="value"/> is null.</exception>
    public static Answer<T> Known<T>(T value) =>
        value is null ? throw new ArgumentNullException(nameof(value)) : new Answer<T>(value);

    /// <summary>A question that the data cannot answer, with what would settle it.</summary>
    /// <typeparam name="T">What was asked for.</typeparam>
    /// <param name="missing">What would settle it, one sentence each; at least one, none blank.</param>
    /// <returns>An answer that is not known.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="missing"/> or one of its items is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="missing"/> is empty or holds a blank item.</exception>
    public static Answer<T> NotKnown<T>(params string[] missing)
    {
        Guard.NotNull(missing);
        if (missing.Length == 0)
        {
            throw new ArgumentException("Must say at least one thing that would settle the question.", nameof(missing));
        }

        foreach (string item in missing)
        {
            Guard.NotBlank(item, nameof(missing));
        }

        return new Answer<T>(Array.AsReadOnly((string[])missing.Clone()));
    }
}
