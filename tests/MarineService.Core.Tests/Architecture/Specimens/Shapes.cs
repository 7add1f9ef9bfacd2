#pragma warning disable // Specimens are bad on purpose: the tests show that each fault is found.
using System.Collections.ObjectModel;
using UnitsNet;

namespace MarineService.Core.Tests.Architecture.Specimens.Shapes;

public sealed class HoldsQuantity
{
    public Volume? Sump { get; }
}

public sealed class HoldsQuantities
{
    private readonly List<Answer<Length>> _lengths = [];
}

public sealed class HasInit
{
    public int Teeth { get; init; }
}

public sealed class HasField
{
    public readonly int Teeth;
}

public class IsOpen;

public abstract class IsOpenAbstract;

public interface ISpecimen;

public sealed record Positional(string Name, int Teeth);

public readonly record struct PositionalStruct(double Mm);

public sealed record RecordWithList
{
    public IReadOnlyList<string> Names { get; } = [];
}

public struct BigStruct
{
    private double _a, _b, _c;
}

public sealed class GivesArray
{
    public int[] Teeth() => [];
}

public sealed class HasState
{
    private static int Count;
}

public static class PublicMath;

public enum NoZero
{
    One = 1,
}

public sealed class SpeaksOfDateTime
{
    public void At(IReadOnlyList<DateTime> when)
    {
    }
}

public sealed class Good
{
    private static readonly int Limit = 3;
    private readonly double _liters;

    private Good(double liters) => _liters = liters;

    public Volume Volume => Volume.FromLiters(_liters);

    public IReadOnlyList<string> Names { get; } = new ReadOnlyCollection<string>([]);

    public static Func<double, Volume> Maker { get; } = liters => Volume.FromLiters(liters * Limit);

    public static Good Of(Volume volume) => new(volume.Liters);
}

public readonly record struct GoodScalar
{
    private readonly long _thousandths;
}

public abstract class GoodBase
{
    private protected GoodBase()
    {
    }
}

public sealed record GoodLabels(string Label, string Text);
