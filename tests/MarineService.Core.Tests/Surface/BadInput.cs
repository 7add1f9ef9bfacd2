using System.Reflection;
using MarineService.Core.Tests.Architecture;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Tests.Surface;

/// <summary>Calls every public member with good arguments but one, and says where that one was not refused by its name.</summary>
internal static class BadInput
{
    private const double Absurd = 1e300;
    private static readonly NullabilityInfoContext Nullability = new();

    /// <summary>A value that no argument of this type may have, whatever it means.</summary>
    internal static IEnumerable<object?> NumbersFor(ParameterInfo parameter)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return type == typeof(double) ? [double.NaN, double.PositiveInfinity, double.NegativeInfinity, Absurd, -Absurd]
            : type == typeof(decimal) ? [decimal.MaxValue, decimal.MinValue]
            : type == typeof(int) ? [int.MaxValue, int.MinValue]
            : type == typeof(long) ? [long.MaxValue, long.MinValue]
            : typeof(IQuantity).IsAssignableFrom(type) ? Quantities(type)
            : [];
    }

    internal static IEnumerable<object?> DatesFor(ParameterInfo parameter)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return type == typeof(LocalDate)
            ? [default(LocalDate), new LocalDate(9998, 12, 31), new LocalDate(2026, 4, 1).WithCalendar(CalendarSystem.Julian)]
            : [];
    }

    internal static IEnumerable<object?> EnumsFor(ParameterInfo parameter)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return type.IsEnum && Library.IsOurs(type) ? [Enum.ToObject(type, 99)] : [];
    }

    internal static IEnumerable<object?> NullsFor(ParameterInfo parameter)
    {
        Type type = parameter.ParameterType;
        if (type.IsValueType)
        {
            return [];
        }

        NullabilityInfo info = Nullability.Create(parameter);
        List<object?> bad = [];
        if (info.WriteState == NullabilityState.NotNull)
        {
            bad.Add(null);
        }

        Type? element = type.IsArray ? type.GetElementType()
            : type.IsGenericType && type.GetGenericArguments() is [Type only] && typeof(System.Collections.IEnumerable).IsAssignableFrom(type) ? only
            : null;
        NullabilityState elementState = info.ElementType?.WriteState ?? info.GenericTypeArguments.FirstOrDefault()?.WriteState ?? NullabilityState.Unknown;
        if (element is { IsValueType: false } && elementState == NullabilityState.NotNull)
        {
            Array withHole = Array.CreateInstance(element, 1);
            if (type.IsInstanceOfType(withHole))
            {
                bad.Add(withHole);
            }
        }

        return bad;
    }

    /// <summary>What was not refused as it should be: member, argument, value, and what happened instead.</summary>
    internal static IEnumerable<string> NotRefused(ValuePool pool, IEnumerable<Type> types, Func<ParameterInfo, IEnumerable<object?>> bad)
    {
        foreach (MethodBase method in ValuePool.Callable(types))
        {
            foreach (ParameterInfo parameter in method.GetParameters())
            {
                foreach (object? value in bad(parameter))
                {
                    if (Outcome(pool, method, parameter, value) is string fault)
                    {
                        yield return $"{Library.Describe(method)}: {parameter.Name} = {Shown(value)} {fault}";
                    }
                }
            }
        }
    }

    private static string? Outcome(ValuePool pool, MethodBase method, ParameterInfo parameter, object? value)
    {
        string? fault = null;
        foreach ((object? target, object?[] good) in pool.Calls(method))
        {
            object?[] arguments = [.. good];
            arguments[parameter.Position] = value;
            Exception? thrown = ValuePool.Call(method, target, arguments, out object? result);
            if (thrown is ArgumentException refusal && refusal.ParamName == parameter.Name)
            {
                return null;
            }

            // A call that is wrong anyway proves nothing: another argument was refused first.
            bool proves = ValuePool.Call(method, target, good, out _) is null;
            if (proves)
            {
                return thrown is null ? $"was accepted and gave {Shown(result)}"
                    : thrown is ArgumentException other ? $"was refused under the name '{other.ParamName}'"
                    : $"threw {thrown.GetType().Name}: {thrown.Message}";
            }

            fault ??= $"could not be tried: good arguments were refused too ({thrown?.Message})";
        }

        return fault ?? "could not be tried: no value of some argument's type could be made; add one to Surface/Samples.cs";
    }

    private static IEnumerable<object?> Quantities(Type type)
    {
        IQuantity zero = (IQuantity)Activator.CreateInstance(type)!;
        if (type == typeof(Power) || type == typeof(BitRate) || type == typeof(Information))
        {
            // UnitsNet counts these in decimals, which cannot hold what is absurd elsewhere.
            yield return UnitsNet.Quantity.From(1e20, zero.QuantityInfo.BaseUnitInfo.Value);
            yield return UnitsNet.Quantity.From(-1e20, zero.QuantityInfo.BaseUnitInfo.Value);
            yield break;
        }

        yield return UnitsNet.Quantity.From(Absurd, zero.QuantityInfo.BaseUnitInfo.Value);
        if (type == typeof(Temperature))
        {
            yield return default(Temperature);
        }
        else
        {
            yield return UnitsNet.Quantity.From(-Absurd, zero.QuantityInfo.BaseUnitInfo.Value);
        }
    }

    private static string Shown(object? value) => value switch
    {
        null => "null",
        Array => "a list with a null item",
        IFormattable formattable => formattable.ToString(null, System.Globalization.CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };
}
