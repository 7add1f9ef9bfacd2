using MarineService.Core.Internal;

namespace MarineService.Core.Procedures;

/// <summary>Which circumstances are known to hold, which are known not to, and which nobody has said.</summary>
public sealed class Circumstances
{
    private readonly uint _known;
    private readonly uint _holding;

    private Circumstances(uint known, uint holding) => (_known, _holding) = (known, holding);

    /// <summary>Nothing is known.</summary>
    public static Circumstances Unknown { get; } = new(0, 0);

    /// <summary>Whether a circumstance holds.</summary>
    /// <param name="circumstance">Which one.</param>
    /// <returns>Null when nobody has said.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circumstance"/> is not defined.</exception>
    public bool? this[Circumstance circumstance]
    {
        get
        {
            uint bit = 1u << (int)Guard.Defined(circumstance);
            return (_known & bit) == 0 ? null : (_holding & bit) != 0;
        }
    }

    /// <summary>A copy in which one more is known.</summary>
    /// <param name="circumstance">Which one.</param>
    /// <param name="holds">Whether it holds.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circumstance"/> is not defined.</exception>
    public Circumstances With(Circumstance circumstance, bool holds)
    {
        uint bit = 1u << (int)Guard.Defined(circumstance);
        return new(_known | bit, holds ? _holding | bit : _holding & ~bit);
    }

    /// <summary>What either knows; refuses two that contradict each other.</summary>
    internal Circumstances Join(Circumstances other, string argument)
    {
        uint both = _known & other._known;
        foreach (Circumstance one in EnumNames<Circumstance>.All)
        {
            uint bit = 1u << (int)one;
            if ((both & bit) != 0 && ((_holding ^ other._holding) & bit) != 0)
            {
                throw new ArgumentException($"'{one}' is said to hold and not to hold.", argument);
            }
        }

        return new(_known | other._known, _holding | other._holding);
    }

    /// <summary>What is known, in the order of the list of circumstances.</summary>
    /// <returns>Invariant text, such as "Petrol, not BeltBeforePump".</returns>
    public override string ToString() =>
        string.Join(", ", EnumNames<Circumstance>.All.Where(one => this[one] is not null).Select(one => this[one] == true ? $"{one}" : $"not {one}"));
}
