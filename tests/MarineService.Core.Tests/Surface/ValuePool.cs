using System.Collections;
using System.Reflection;
using MarineService.Core.Tests.Architecture;

namespace MarineService.Core.Tests.Surface;

/// <summary>
/// Values of every type that a set of public types takes: it starts from ordinary ones and calls whatever can be called with
/// what it has, until nothing new comes out. So a test reaches every public member without a list of them.
/// </summary>
internal sealed class ValuePool
{
    private const int KeptForEachType = 6;
    private const int Rounds = 12;
    private const int Tries = 24;

    private readonly Dictionary<Type, List<object>> _values = [];
    private readonly IReadOnlyList<Type> _types;

    internal ValuePool(IReadOnlyList<Type> types)
    {
        _types = types;
        foreach (object value in Samples.Start)
        {
            Add(value);
        }

        foreach (Type type in types.Where(type => type.IsEnum))
        {
            foreach (object value in Enum.GetValues(type))
            {
                Add(value);
            }
        }

        for (int round = 0; round < Rounds && Grow(); round++)
        {
        }
    }

    /// <summary>The members that could be called with good arguments and answered.</summary>
    internal HashSet<MethodBase> Answered { get; } = [];

    /// <summary>Methods and constructors that reflection can call at all.</summary>
    internal static IEnumerable<MethodBase> Callable(IEnumerable<Type> types) =>
        from type in types
        where !type.IsGenericTypeDefinition
        from method in Library.PublicMethods(type)
        where !method.IsGenericMethodDefinition
            && method.DeclaringType is { IsAbstract: false } or { IsSealed: true } or { IsAbstract: true }
            && method is not ConstructorInfo { DeclaringType.IsAbstract: true }
            && method.Name is not ("Equals" or "GetHashCode" or "op_Equality" or "op_Inequality")
            && method.GetParameters().All(parameter => !parameter.ParameterType.IsByRefLike && !parameter.ParameterType.IsByRef)
        select method;

    /// <summary>Sets of good arguments, the target first (null for a static member); none when a type cannot be made.</summary>
    internal IEnumerable<(object? Target, object?[] Arguments)> Calls(MethodBase method)
    {
        ParameterInfo[] parameters = method.GetParameters();
        bool hasTarget = method is not ConstructorInfo && !method.IsStatic;
        IEnumerable<IReadOnlyList<object?>> arguments = parameters.Select(parameter => Samples.WordsFor(parameter) ?? Of(parameter.ParameterType));
        IReadOnlyList<object?>[] choices = hasTarget ? [Of(method.DeclaringType!), .. arguments] : [.. arguments];
        int shift = choices.Length - parameters.Length;
        for (int i = 0; i < parameters.Length; i++)
        {
            if (parameters[i] is { HasDefaultValue: true, DefaultValue: null } && choices[shift + i].Count > 0)
            {
                // What a caller may leave out is left out in every second call.
                choices[shift + i] = [choices[shift + i][0], null, .. choices[shift + i].Skip(1)];
            }
        }

        if (choices.Any(choice => choice.Count == 0))
        {
            yield break;
        }

        int all = choices.Aggregate(1, (product, choice) => Math.Min(Tries, product * choice.Count));
        for (int i = 0; i < all; i++)
        {
            // First all firsts, then combinations in mixed radix, so that two arguments of one type differ early.
            int rest = i;
            object?[] picked = new object?[choices.Length];
            for (int j = choices.Length - 1; j >= 0; j--)
            {
                picked[j] = choices[j][rest % choices[j].Count];
                rest /= choices[j].Count;
            }

            yield return hasTarget ? (picked[0], picked[1..]) : (null, picked);
        }
    }

    /// <summary>Calls a member; what it threw, or null.</summary>
    internal static Exception? Call(MethodBase method, object? target, object?[] arguments, out object? result)
    {
        result = null;
        try
        {
            result = method is ConstructorInfo constructor ? constructor.Invoke(arguments) : method.Invoke(target, arguments);
            if (result is Task task)
            {
                task.GetAwaiter().GetResult();
            }

            return null;
        }
        catch (TargetInvocationException wrapped)
        {
            return wrapped.InnerException;
        }
#pragma warning disable CA1031 // Whatever a call throws is what the caller of this method wants to judge.
        catch (Exception thrown)
#pragma warning restore CA1031
        {
            return thrown;
        }
    }

    private List<object> Of(Type type)
    {
        Type wanted = Nullable.GetUnderlyingType(type) ?? type;
        if (_values.TryGetValue(wanted, out List<object>? known))
        {
            return known;
        }

        if (ElementOf(wanted) is Type element && Of(element) is { Count: > 0 } elements)
        {
            return [.. Lists(element, elements).Where(list => wanted.IsInstanceOfType(list))];
        }

        return [.. _values.Values.SelectMany(values => values).Where(wanted.IsInstanceOfType).Distinct().Take(KeptForEachType)];
    }

    private static IEnumerable<object> Lists(Type element, List<object> elements)
    {
        foreach (int count in new[] { 1, 2, 3 })
        {
            Array list = Array.CreateInstance(element, Math.Min(count, elements.Count));
            for (int i = 0; i < list.Length; i++)
            {
                list.SetValue(elements[i], i);
            }

            yield return list;
        }

        // The first element may be one that this member refuses for good reason.
        foreach (object other in elements.Skip(1))
        {
            Array single = Array.CreateInstance(element, 1);
            single.SetValue(other, 0);
            yield return single;
        }
    }

    private static Type? ElementOf(Type type) =>
        type.IsArray ? type.GetElementType()
        : type.IsGenericType && type.GetGenericArguments() is [Type only] && typeof(IEnumerable).IsAssignableFrom(type) ? only
        : null;

    private bool Grow()
    {
        bool grown = false;
        foreach (PropertyInfo property in _types.Where(type => !type.IsGenericTypeDefinition).SelectMany(Library.PublicProperties))
        {
            if (property.GetMethod is { IsPublic: true } getter && property.GetIndexParameters().Length == 0)
            {
                grown |= Try(getter);
            }
        }

        foreach (MethodBase method in Callable(_types))
        {
            grown |= Try(method);
        }

        return grown;
    }

    private bool Try(MethodBase method)
    {
        bool grown = false;
        foreach ((object? target, object?[] arguments) in Calls(method).ToArray())
        {
            if (Call(method, target, arguments, out object? result) is null)
            {
                grown |= Answered.Add(method);
                grown |= Add(result);
            }
        }

        return grown;
    }

    private bool Add(object? value)
    {
        switch (value)
        {
            case null:
                return false;
            case IEnumerable<object> list when value is not string:
                return list.Take(KeptForEachType).ToArray().Aggregate(false, (grown, item) => Add(item) | grown);
            default:
                break;
        }

        Type type = value.GetType();
        if (!_values.TryGetValue(type, out List<object>? values))
        {
            _values.Add(type, values = []);
        }

        // Values of other libraries stay the chosen ones: a computed 1e-9 L is no ordinary argument.
        bool ours = _types.Contains(type.IsGenericType ? type.GetGenericTypeDefinition() : type);
        bool full = values.Count >= KeptForEachType || (!ours && GrowingHasBegun);
        if (full || values.Contains(value))
        {
            return false;
        }

        values.Add(value);
        return true;
    }

    private bool GrowingHasBegun => Answered.Count > 0;
}
