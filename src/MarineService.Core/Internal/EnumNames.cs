namespace MarineService.Core.Internal;

/// <summary>The names of an enum, looked up once; reflection-free after that on both targets.</summary>
internal static class EnumNames<TEnum>
    where TEnum : struct, Enum
{
#if NETSTANDARD2_0
    private static readonly TEnum[] Values = (TEnum[])Enum.GetValues(typeof(TEnum));
#else
    private static readonly TEnum[] Values = Enum.GetValues<TEnum>();
#endif

    internal static IReadOnlyList<TEnum> All => Values;

    internal static string List { get; } = string.Join(", ", Values.Select(value => value.ToString()));

    internal static bool IsDefined(TEnum value) => Array.IndexOf(Values, value) >= 0;
}
