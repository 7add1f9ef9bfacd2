using System.Reflection;
using System.Runtime.CompilerServices;

namespace MarineService.Core.Tests.Architecture;

/// <summary>The libraries under test as reflection sees them, without what the compiler and the polyfills added.</summary>
internal static class Library
{
    internal const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    internal static Assembly Core { get; } = typeof(EngineHours).Assembly;

    internal static IReadOnlyList<Assembly> All { get; } = [Core, typeof(Reports.Drawing).Assembly];

    /// <summary>Every type that somebody wrote, public or not, nested or not.</summary>
    internal static IReadOnlyList<Type> Types { get; } =
        [.. All.SelectMany(library => library.GetTypes()).Where(type => IsOurs(type) && !IsGenerated(type)).OrderBy(type => type.FullName, StringComparer.Ordinal)];

    internal static IReadOnlyList<Type> PublicTypes { get; } = [.. Types.Where(type => type.IsVisible)];

    internal static bool IsOurs(Type type) =>
        type.Namespace is string space && All.Any(library => space == Name(library) || space.StartsWith(Name(library) + ".", StringComparison.Ordinal));

    internal static string Name(Assembly library) => library.GetName().Name!;

    /// <summary>Made by the compiler or a generator; nested types inherit it.</summary>
    internal static bool IsGenerated(Type type) =>
        HasGeneratedMark(type)
        || type.Name.Contains('<', StringComparison.Ordinal)
        || (type.DeclaringType is Type outer && IsGenerated(outer));

    internal static bool HasGeneratedMark(MemberInfo member) =>
        member.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false)
        || member.IsDefined(typeof(System.CodeDom.Compiler.GeneratedCodeAttribute), inherit: false);

    /// <summary>Public constructors, methods and operators that somebody wrote; no accessors, nothing that a record brings along.</summary>
    internal static IEnumerable<MethodBase> PublicMethods(Type type)
    {
        if (type.IsEnum || typeof(Delegate).IsAssignableFrom(type))
        {
            return [];
        }

        IEnumerable<MethodBase> members = [.. type.GetConstructors(Declared), .. type.GetMethods(Declared)];
        return members.Where(method =>
            method.IsPublic
            && !HasGeneratedMark(method)
            && !(method is MethodInfo && method.IsSpecialName && !method.Name.StartsWith("op_", StringComparison.Ordinal))
            && !(method is ConstructorInfo && type.IsValueType && method.GetParameters().Length == 0));
    }

    /// <summary>Public methods and, for setters that must not exist and indexers, accessors too.</summary>
    internal static IEnumerable<PropertyInfo> PublicProperties(Type type) =>
        type.GetProperties(Declared).Where(property => property.GetAccessors(nonPublic: false).Length > 0 && !HasGeneratedMark(property));

    internal static bool IsRecord(Type type) =>
        type.GetMethod("<Clone>$", Declared) is not null
        || (type.IsValueType && type.GetMethod("PrintMembers", Declared) is MethodInfo print && HasGeneratedMark(print));

    internal static bool IsPositionalRecord(Type type) =>
        IsRecord(type) && type.GetMethod("Deconstruct", Declared) is MethodInfo deconstruct && HasGeneratedMark(deconstruct);

    internal static string Describe(MemberInfo member) => member switch
    {
        Type type => Name(type),
        ConstructorInfo constructor => $"{Name(constructor.DeclaringType!)}({Parameters(constructor)})",
        MethodInfo method => $"{Name(method.DeclaringType!)}.{method.Name}({Parameters(method)})",
        _ => $"{Name(member.DeclaringType!)}.{member.Name}",
    };

    internal static string Name(Type type)
    {
        if (type.IsArray)
        {
            return Name(type.GetElementType()!) + "[]";
        }

        if (Nullable.GetUnderlyingType(type) is Type underlying)
        {
            return Name(underlying) + "?";
        }

        string name = type.IsNested && !type.IsGenericParameter ? $"{Name(type.DeclaringType!)}.{type.Name}" : type.Name;
        return type.IsGenericType ? $"{name.Split('`')[0]}<{string.Join(", ", type.GetGenericArguments().Select(Name))}>" : name;
    }

    private static string Parameters(MethodBase method) =>
        string.Join(", ", method.GetParameters().Select(parameter => $"{Name(parameter.ParameterType)} {parameter.Name}"));
}
