using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace MarineService.Core.Tests.Architecture;

/// <summary>The house rules on the shape of types. Each rule names every member that breaks it.</summary>
internal static class StyleRules
{
    /// <summary>1 L and 1000 mL are not equal as quantities, and each holds a reference: a field keeps a double in one known unit.</summary>
    internal static IEnumerable<string> NoFieldHoldsAQuantity(IEnumerable<Type> types) =>
        from type in types
        from field in type.GetFields(Library.Declared)
        where !typeof(Delegate).IsAssignableFrom(field.FieldType)
        let quantity = Contained(field.FieldType).FirstOrDefault(part => part.Assembly == typeof(UnitsNet.Volume).Assembly)
        where quantity is not null
        select $"{Library.Describe(field)} holds a {Library.Name(quantity)} of UnitsNet; keep a double with the unit in its name";

    /// <summary>A setter or init skips the constructor's checks.</summary>
    internal static IEnumerable<string> NoPublicSetters(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible && !IsLabelRecord(type)
        from property in type.GetProperties(Library.Declared)
        where property.SetMethod is { IsPrivate: false, IsAssembly: false, IsFamilyAndAssembly: false }
        select $"{Library.Describe(property)} can be set from outside; make it get-only and give a WithX method";

    internal static IEnumerable<string> NoPublicFields(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible && !type.IsEnum
        from field in type.GetFields(Library.Declared)
        where (field.IsPublic || field.IsFamily || field.IsFamilyOrAssembly) && !field.IsLiteral
        select $"{Library.Describe(field)} is a public field; make it a property";

    /// <summary>Sealed, static, or abstract with constructors that nobody outside can call.</summary>
    internal static IEnumerable<string> EverythingIsSealed(IEnumerable<Type> types) =>
        from type in types
        where type.IsClass && !type.IsSealed && !(type.IsAbstract && type.GetConstructors(Library.Declared).All(IsClosed))
        select $"{Library.Describe(type)} is not sealed";

    internal static IEnumerable<string> NoPublicInterfaces(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible && type.IsInterface
        select $"{Library.Describe(type)} is an interface that no user has to implement";

    /// <summary>A positional record takes anything; only two or three labels, any mix of which is valid, may be one.</summary>
    internal static IEnumerable<string> NoPositionalRecords(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible && Library.IsPositionalRecord(type) && !IsLabelRecord(type)
        select $"{Library.Describe(type)} is a positional record; give it a private constructor and a checked factory";

    /// <summary>A record's generated equality compares lists by reference.</summary>
    internal static IEnumerable<string> NoRecordComparesAListByReference(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible && Library.IsRecord(type) && HasGeneratedEquals(type)
        from field in type.GetFields(Library.Declared)
        where !field.IsStatic && field.FieldType != typeof(string) && typeof(IEnumerable).IsAssignableFrom(field.FieldType)
        select $"{Library.Describe(field)} is a list in a record that leaves Equals to the compiler";

    /// <summary>A struct is read-only, small, and one number.</summary>
    /// <remarks>But for StopGeometry, which a caller's span is filled with: as a class it could not be written without allocating.</remarks>
    internal static IEnumerable<string> StructsAreSmallReadOnlyScalars(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible && type.IsValueType && !type.IsEnum && type.Name != "StopGeometry"
        let fields = type.GetFields(Library.Declared).Where(field => !field.IsStatic).ToArray()
        from fault in new[]
        {
            type.IsDefined(typeof(IsReadOnlyAttribute), inherit: false) || IsReadOnlyByName(type) ? null : "is not a readonly struct",
            fields.All(field => field.IsPrivate) ? null : "has a field that is not private",
            SizeOf(type) <= 16 ? null : $"takes {SizeOf(type)} bytes, more than 16",
        }
        where fault is not null
        select $"{Library.Describe(type)} {fault}";

    /// <summary>What a caller gets cannot be changed behind the library's back.</summary>
    internal static IEnumerable<string> NoMutableCollectionsComeOut(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible
        from member in Library.PublicMethods(type).OfType<MethodInfo>().Select(method => (Member: (MemberInfo)method, Type: method.ReturnType))
            .Concat(Library.PublicProperties(type).Select(property => (Member: (MemberInfo)property, Type: property.PropertyType)))
        where IsMutableCollection(member.Type)
        select $"{Library.Describe(member.Member)} gives out a {Library.Name(member.Type)}; give a read-only list";

    /// <summary>No ambient state: a static field is written once, when its type is made ready.</summary>
    internal static IEnumerable<string> NoStaticState(IEnumerable<Type> types) =>
        from type in types
        from field in type.GetFields(Library.Declared)
        where field.IsStatic && !field.IsLiteral && !field.IsInitOnly && !field.Name.Contains('<', StringComparison.Ordinal)
        select $"{Library.Describe(field)} is static and can change";

    /// <summary>Calculation kernels are not for callers.</summary>
    internal static IEnumerable<string> KernelsAreInternalAndStatic(IEnumerable<Type> types) =>
        from type in types
        where type.Name.EndsWith("Math", StringComparison.Ordinal) && (type.IsVisible || !(type.IsAbstract && type.IsSealed))
        select $"{Library.Describe(type)} is a kernel and must be an internal static class";

    /// <summary>Zero is what a default gives: it must mean something.</summary>
    internal static IEnumerable<string> EnumsDefineZero(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible && type.IsEnum
            && !Enum.GetValuesAsUnderlyingType(type).Cast<object>().Any(value => Convert.ToInt64(value, null) == 0)
        select $"{Library.Describe(type)} has no member for its default value 0";

    /// <summary>Dates and times are NodaTime's, numbers are double or decimal.</summary>
    internal static IEnumerable<string> NoForeignTimesOrFloats(IEnumerable<Type> types) =>
        from type in types
        where type.IsVisible
        from member in Library.PublicMethods(type).SelectMany(method => SignatureOf(method).Select(part => (Member: (MemberInfo)method, Type: part)))
            .Concat(Library.PublicProperties(type).Select(property => (Member: (MemberInfo)property, Type: property.PropertyType)))
        let foreign = Contained(member.Type).FirstOrDefault(part =>
            part == typeof(DateTime) || part == typeof(DateTimeOffset) || part == typeof(TimeSpan) || part == typeof(float))
        where foreign is not null
        select $"{Library.Describe(member.Member)} speaks of {Library.Name(foreign)}";

    /// <summary>Two or three strings, nothing else.</summary>
    internal static bool IsLabelRecord(Type type) =>
        Library.IsPositionalRecord(type)
        && type.GetMethod("Deconstruct", Library.Declared)!.GetParameters() is { Length: <= 3 } parts
        && parts.All(part => part.ParameterType.GetElementType() == typeof(string));

    /// <summary>The type itself and what it is made of: element, underlying and argument types, all the way down.</summary>
    internal static IEnumerable<Type> Contained(Type type)
    {
        yield return type;
        Type[] parts = type.HasElementType ? [type.GetElementType()!] : type.IsGenericType ? type.GetGenericArguments() : [];
        foreach (Type inner in parts.SelectMany(Contained))
        {
            yield return inner;
        }
    }

    private static IEnumerable<Type> SignatureOf(MethodBase method) =>
        method.GetParameters().Select(parameter => parameter.ParameterType)
            .Append(method is MethodInfo { ReturnType: Type result } ? result : typeof(void));

    private static bool IsClosed(ConstructorInfo constructor) =>
        constructor.IsPrivate || constructor.IsAssembly || constructor.IsFamilyAndAssembly || IsCopyConstructor(constructor)
        || !constructor.DeclaringType!.IsVisible;

    // An abstract record's copy constructor is protected; with no other way in, nobody outside can derive.
    private static bool IsCopyConstructor(ConstructorInfo constructor) =>
        constructor.GetParameters() is [ParameterInfo only] && only.ParameterType == constructor.DeclaringType;

    private static bool HasGeneratedEquals(Type type) =>
        type.GetMethod("Equals", Library.Declared, [type]) is MethodInfo equals && Library.HasGeneratedMark(equals);

    // In a netstandard2.0 assembly the attribute is an internal type of that assembly.
    private static bool IsReadOnlyByName(Type type) =>
        type.CustomAttributes.Any(attribute => attribute.AttributeType.FullName == typeof(IsReadOnlyAttribute).FullName);

    private static int SizeOf(Type type) =>
        (int)typeof(Unsafe).GetMethod(nameof(Unsafe.SizeOf))!.MakeGenericMethod(type).Invoke(null, null)!;

    private static bool IsMutableCollection(Type type) =>
        (type.IsArray && type != typeof(byte[]))
        || (type.IsGenericType && type.GetGenericTypeDefinition() is Type generic
            && (generic == typeof(List<>) || generic == typeof(IList<>) || generic == typeof(ICollection<>) || generic == typeof(Dictionary<,>)
                || generic == typeof(IDictionary<,>) || generic == typeof(HashSet<>) || generic == typeof(ISet<>)));
}
