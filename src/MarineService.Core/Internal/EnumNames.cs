namespace MarineService.Core.Internal;

/// <summary>The names of an enum, looked up once; reflection-free after that on both targets.</summary>
/// <remarks>Loops and arrays, no queries: what is generic over an enum is compiled for each of them, and that is what a first call waits for.</remarks>
internal static class EnumNames<TEnum>
    where TEnum : struct, Enum
{
#if NETSTANDARD2_0
    private static readonly TEnum[] Values = (TEnum[])Enum.GetValues(typeof(TEnum));
#else
    private static readonly TEnum[] Values = Enum.GetValues<TEnum>();
#endif

    /// <summary>The names, in the order of <see cref="All"/>.</summary>
#if NETSTANDARD2_0
    internal static readonly string[] Names = Enum.GetNames(typeof(TEnum));
#else
    internal static readonly string[] Names = Enum.GetNames<TEnum>();
#endif

    internal static IReadOnlyList<TEnum> All => Values;

    internal static string List => string.Join(", ", Names);

    /// <summary>The value at a place in <see cref="All"/>.</summary>
    internal static TEnum At(int place) => Values[place];

    internal static bool IsDefined(TEnum value) => PlaceOf(value) >= 0;

    /// <summary>The place of a value in <see cref="All"/>, or -1.</summary>
    internal static int PlaceOf(TEnum value)
    {
        for (int i = 0; i < Values.Length; i++)
        {
            if (EqualityComparer<TEnum>.Default.Equals(Values[i], value))
            {
                return i;
            }
        }

        return -1;
    }
}
