#pragma warning disable // Specimens are bad on purpose: the tests show that each fault is found.

namespace MarineService.Core.Tests.Architecture.Specimens.Two
{
    public sealed class Thing
    {
        public static int Count() => 2;
    }

    public enum Kind
    {
        Plain = 0,
        Other = 1,
    }

    [AttributeUsage(AttributeTargets.All)]
    public sealed class MarkAttribute : Attribute;
}

namespace MarineService.Core.Tests.Architecture.Specimens.One
{
    public sealed class ByField
    {
        private readonly Two.Thing? _thing;
    }

    public sealed class ByLambda
    {
        public static Func<int> Make() => () => Two.Thing.Count();
    }

    public sealed class ByIterator
    {
        public static IEnumerable<int> All()
        {
            yield return Two.Thing.Count();
        }
    }

    public sealed class ByGenericArgument
    {
        public static object Make() => new List<Two.Thing>();
    }

    [Two.Mark]
    public sealed class ByAttribute;

    public sealed class ByStaticCall
    {
        public static int Get() => Two.Thing.Count();
    }

    public sealed class ByLocalFunction
    {
        public static int Get(int x)
        {
            return Inner() + Inner();

            int Inner() => x + Two.Thing.Count();
        }
    }

    public static class ByNestedType
    {
        private sealed class Inner
        {
            private Two.Thing? _thing;
        }
    }

    public sealed class ByEnumConstant
    {
        public static string Get() => Two.Kind.Other.ToString();
    }

    public sealed class Stranger
    {
        public static string Get() => "Two.Thing";
    }
}
