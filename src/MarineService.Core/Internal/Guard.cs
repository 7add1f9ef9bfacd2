using System.Runtime.CompilerServices;
using NodaTime;

namespace MarineService.Core.Internal;

/// <summary>Checks what comes in at the public surface; returns the value, or names the argument, the value and what was expected.</summary>
internal static class Guard
{
    // Outside these a date is a typing mistake or a default value, never a service date.
    internal static readonly LocalDate LatestDate = new(LatestYear, 12, 31);

    private const int EarliestYear = 1900;

    private const int LatestYear = 2199;

    internal static T NotNull<T>(T? value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where T : class =>
        value ?? throw new ArgumentNullException(name);

    internal static string NotBlank(string? value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (value is null)
        {
            throw new ArgumentNullException(name);
        }

        if (string.IsNullOrWhiteSpace(value))
        {
            throw new ArgumentException("Must hold at least one character that is not white space.", name);
        }

        return value;
    }

    internal static double Finite(double value, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, Invariant($"Must be a finite number [{unit}]."));

    internal static double Positive(double value, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        IsFinite(value) && value > 0
            ? value
            : throw new ArgumentOutOfRangeException(name, value, Invariant($"Must be a finite amount above 0 {unit}."));

    internal static double NotNegative(double value, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        IsFinite(value) && value >= 0
            ? value
            : throw new ArgumentOutOfRangeException(name, value, Invariant($"Must be a finite amount of 0 {unit} or more."));

    /// <summary>Both ends belong to the range.</summary>
    internal static double InRange(double value, double min, double max, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        IsFinite(value) && value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, Invariant($"Must lie from {min} to {max} {unit}."));

    /// <summary>Both ends belong to the range.</summary>
    internal static decimal InRange(decimal value, decimal min, decimal max, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, Invariant($"Must lie from {min} to {max} {unit}."));

    /// <summary>Both ends belong to the range.</summary>
    internal static int InRange(int value, int min, int max, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, Invariant($"Must be a whole number from {min} to {max} {unit}."));

    internal static TEnum Defined<TEnum>(TEnum value, [CallerArgumentExpression(nameof(value))] string? name = null)
        where TEnum : struct, Enum =>
        EnumNames<TEnum>.IsDefined(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, Invariant($"Must be one of {EnumNames<TEnum>.List}."));

    internal static LocalDate Date(LocalDate value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        IsServiceDate(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Must be a date of the ISO calendar from 1900-01-01 to 2199-12-31.");

    internal static bool IsServiceDate(LocalDate value) =>
        value.Calendar == CalendarSystem.Iso && value.Year is >= EarliestYear and <= LatestYear;

    /// <summary>A copy that the caller cannot change afterwards; refuses null and null items.</summary>
    internal static IReadOnlyList<T> Items<T>(IEnumerable<T>? items, [CallerArgumentExpression(nameof(items))] string? name = null)
        where T : class
    {
        if (items is null)
        {
            throw new ArgumentNullException(name);
        }

        T[] copy = [.. items];
        for (int i = 0; i < copy.Length; i++)
        {
            if (copy[i] is null)
            {
                throw new ArgumentException(Invariant($"Item {i} is null."), name);
            }
        }

        return Array.AsReadOnly(copy);
    }

    internal static bool IsFinite(double value) => !double.IsNaN(value) && !double.IsInfinity(value);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
