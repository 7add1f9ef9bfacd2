using System.Globalization;
using MarineService.Core.Internal;

namespace MarineService.Core;

/// <summary>Running time of an engine, zero or more, kept to a thousandth of an hour.</summary>
/// <remarks>
/// <para>The default value is <see cref="Zero"/>, 0 h. Ten tenths are exactly one hour: nothing is ever stored as a binary fraction.</para>
/// <para>At most 1,000,000 h, which is over a century of running without a pause.</para>
/// </remarks>
public readonly record struct EngineHours : IComparable<EngineHours>, IFormattable
{
    /// <summary>The largest number of hours that is accepted.</summary>
    internal const long MaxThousandths = 1_000_000_000;

    private readonly long _thousandths;

    private EngineHours(long thousandths) => _thousandths = thousandths;

    /// <summary>No running time.</summary>
    public static EngineHours Zero => default;

    internal long Thousandths => _thousandths;

    /// <summary>Running time from a number of hours, rounded to the nearest thousandth of an hour.</summary>
    /// <param name="hours">From 0 to 1,000,000 h.</param>
    /// <returns>The running time.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="hours"/> is negative or above 1,000,000 h.</exception>
    /// <example><code>EngineHours.FromHours(412.5m); // 412.5 h</code></example>
    public static EngineHours FromHours(decimal hours) =>
        new((long)decimal.Round(Guard.InRange(hours, 0m, 1_000_000m, "h") * 1000m));

    internal static EngineHours FromThousandths(long thousandths) => new(thousandths);

    /// <summary>The running time in hours, exact.</summary>
    /// <returns>From 0 to 1,000,000 h.</returns>
    public decimal ToHours() => _thousandths / 1000m;

    /// <summary>The sum of two running times.</summary>
    /// <param name="other">The running time to add.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="OverflowException">The sum is above 1,000,000 h.</exception>
    public EngineHours Plus(EngineHours other)
    {
        long sum = _thousandths + other._thousandths;
        return sum <= MaxThousandths ? new(sum) : throw new OverflowException("The sum is above 1,000,000 h.");
    }

    /// <summary>The difference of two running times.</summary>
    /// <param name="other">The running time to take away; at most this one.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="other"/> is more than this running time.</exception>
    public EngineHours Minus(EngineHours other) =>
        other._thousandths <= _thousandths
            ? new(_thousandths - other._thousandths)
            : throw new ArgumentOutOfRangeException(nameof(other), other, FormattableString.Invariant($"Must be at most {this}."));

    /// <summary>Compares two running times.</summary>
    /// <param name="other">The other running time.</param>
    /// <returns>Below zero when this one is shorter, zero when equal, above zero when longer.</returns>
    public int CompareTo(EngineHours other) => _thousandths.CompareTo(other._thousandths);

    /// <summary>Whether the left running time is shorter.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when shorter.</returns>
    public static bool operator <(EngineHours left, EngineHours right) => left._thousandths < right._thousandths;

    /// <summary>Whether the left running time is shorter or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when shorter or equal.</returns>
    public static bool operator <=(EngineHours left, EngineHours right) => left._thousandths <= right._thousandths;

    /// <summary>Whether the left running time is longer.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when longer.</returns>
    public static bool operator >(EngineHours left, EngineHours right) => left._thousandths > right._thousandths;

    /// <summary>Whether the left running time is longer or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>True when longer or equal.</returns>
    public static bool operator >=(EngineHours left, EngineHours right) => left._thousandths >= right._thousandths;

    /// <summary>The hours with their unit, at least one decimal, invariant: "412.0 h".</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The hours with their unit.</summary>
    /// <param name="format">A numeric format string, or null for one to three decimals.</param>
    /// <param name="formatProvider">A culture, or null for the invariant one.</param>
    /// <returns>The text, the unit always written.</returns>
    public string ToString(string? format, IFormatProvider? formatProvider) =>
        ToHours().ToString(format ?? "0.0##", formatProvider ?? CultureInfo.InvariantCulture) + " h";
}
