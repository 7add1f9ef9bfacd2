using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using MarineService.Core.Tests.Architecture;
using UnitsNet;

namespace MarineService.Core.Tests.Documentation;

/// <summary>What the documentation of every public member must say. Each fault names the member and what is missing.</summary>
internal sealed partial class DocumentationRules(DocumentationFile file, ThrownExceptions thrown)
{
    internal IEnumerable<string> Faults(Type type)
    {
        foreach (string fault in Described(type).Concat(TypeParameters(type, type.GetGenericArguments())))
        {
            yield return fault;
        }

        if (type is { IsValueType: true, IsEnum: false } && !Whole(type).Contains("default value", StringComparison.OrdinalIgnoreCase))
        {
            yield return $"{Library.Describe(type)}: says nothing of its default value";
        }

        foreach (FieldInfo member in type.IsEnum ? type.GetFields(BindingFlags.Public | BindingFlags.Static) : [])
        {
            foreach (string fault in Described(member))
            {
                yield return fault;
            }
        }

        foreach (string fault in Library.PublicProperties(type).SelectMany(OfProperty))
        {
            yield return fault;
        }

        foreach (string fault in Library.PublicMethods(type).SelectMany(OfMethod))
        {
            yield return fault;
        }
    }

    /// <summary>A formula says where it comes from: the method of a kernel, or the kernel as a whole.</summary>
    internal IEnumerable<string> KernelsWithoutASource(IEnumerable<Type> types) =>
        from type in types
        where type.Name.EndsWith("Math", StringComparison.Ordinal) && !SaysItsSource(Whole(type))
        from method in type.GetMethods(Library.Declared)
        where !method.IsPrivate && !Library.HasGeneratedMark(method) && !method.Name.Contains('<', StringComparison.Ordinal)
            && !SaysItsSource(Whole(method))
        select $"{Library.Describe(method)}: names no source, and does not say that there is none";

    internal static bool SaysItsSource(string text) => SourcePattern().IsMatch(text);

    /// <summary>A number is documented when the text holds a number, a unit or a bound in words.</summary>
    internal static bool SaysUnitOrRange(string text) => RangePattern().IsMatch(text);

    private IEnumerable<string> OfProperty(PropertyInfo property)
    {
        foreach (string fault in Described(property))
        {
            yield return fault;
        }

        if (IsPlainNumber(property.PropertyType) && !UnitNames.EndsWithUnit(property.Name) && !SaysUnitOrRange(Summary(property))
            && !CountsSomething(Summary(property)) && !HasFigureUnitBeside(property))
        {
            yield return $"{Library.Describe(property)}: says neither unit nor range of its number";
        }

        foreach (string fault in Parameters(property, property.GetIndexParameters())
            .Concat(Exceptions(property, property.GetMethod!)))
        {
            yield return fault;
        }
    }

    private IEnumerable<string> OfMethod(MethodBase method)
    {
        if (Inherits(method))
        {
            yield break;
        }

        foreach (string fault in Described(method)
            .Concat(method is MethodInfo { IsGenericMethodDefinition: true } ? TypeParameters(method, method.GetGenericArguments()) : [])
            .Concat(Parameters(method, method.GetParameters()))
            .Concat(Exceptions(method, method)))
        {
            yield return fault;
        }

        if (method is not MethodInfo { ReturnType: Type result } || result == typeof(void))
        {
            yield break;
        }

        string returns = DocumentationFile.Text(file[method]?.Element("returns"));
        if (returns.Length == 0)
        {
            yield return $"{Library.Describe(method)}: returns is missing";
        }
        else if (IsPlainNumber(result) && method.Name is not ("CompareTo" or "GetHashCode") && !UnitNames.EndsWithUnit(method.Name)
            && !SaysUnitOrRange(returns + Summary(method)) && !CountsSomething(returns))
        {
            yield return $"{Library.Describe(method)}: says neither unit nor range of what it returns";
        }
    }

    private IEnumerable<string> Parameters(MemberInfo member, ParameterInfo[] parameters)
    {
        foreach (ParameterInfo parameter in parameters)
        {
            string text = DocumentationFile.Text(file[member]?.Elements("param").FirstOrDefault(param => param.Attribute("name")?.Value == parameter.Name));
            if (text.Length == 0)
            {
                yield return $"{Library.Describe(member)}: parameter '{parameter.Name}' is not described";
            }
            else if (IsNumber(parameter.ParameterType) && !IsOperator(member) && !SaysUnitOrRange(text))
            {
                yield return $"{Library.Describe(member)}: parameter '{parameter.Name}' has neither unit nor range: \"{text}\"";
            }
        }
    }

    private IEnumerable<string> Exceptions(MemberInfo member, MethodBase code)
    {
        XElement[] documented = [.. file[member]?.Elements("exception") ?? []];
        foreach (XElement empty in documented.Where(exception => DocumentationFile.Text(exception).Length == 0))
        {
            yield return $"{Library.Describe(member)}: exception {empty.Attribute("cref")?.Value} has no cause";
        }

        string[] names = [.. documented.Select(exception => exception.Attribute("cref")!.Value.Substring(2))];
        foreach (string name in thrown.Of(code).Where(name => !names.Contains(name)))
        {
            yield return $"{Library.Describe(member)}: throws {name}, which is not documented";
        }
    }

    private IEnumerable<string> Described(MemberInfo member)
    {
        if (Summary(member).Length == 0)
        {
            yield return $"{Library.Describe(member)}: summary is missing";
        }
    }

    private IEnumerable<string> TypeParameters(MemberInfo member, Type[] arguments) =>
        from argument in arguments
        where DocumentationFile.Text(file[member]?.Elements("typeparam").FirstOrDefault(param => param.Attribute("name")?.Value == argument.Name)).Length == 0
        select $"{Library.Describe(member)}: type parameter '{argument.Name}' is not described";

    private string Summary(MemberInfo member) => DocumentationFile.Text(file[member]?.Element("summary"));

    private string Whole(MemberInfo member) => DocumentationFile.Text(file[member]);

    // What the framework asks for (an override, an interface member) may take over the framework's words.
    private bool Inherits(MethodBase method) => file[method]?.Element("inheritdoc") is not null && method.IsVirtual;

    private static bool IsOperator(MemberInfo member) => member.Name.StartsWith("op_", StringComparison.Ordinal);

    private static bool IsPlainNumber(Type type) =>
        (Nullable.GetUnderlyingType(type) ?? type) is Type number
        && (number == typeof(double) || number == typeof(decimal) || number == typeof(int) || number == typeof(long));

    private static bool IsNumber(Type type) =>
        IsPlainNumber(type) || typeof(IQuantity).IsAssignableFrom(Nullable.GetUnderlyingType(type) ?? type);

    private static bool HasFigureUnitBeside(PropertyInfo property) =>
        property.DeclaringType!.GetProperties().Any(other => other.PropertyType == typeof(FigureUnit));

    private static bool CountsSomething(string text) => CountPattern().IsMatch(text);

    [GeneratedRegex(
        @"[0-9]|\b(finite|above zero|zero|or more|at least|at most|not negative|positive|whole|any number|fraction|ratio|share|hours|days|months|years|mm|rad|degrees|litres|kelvins|caller's currency)\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex RangePattern();

    [GeneratedRegex(@"\b(how many|number of|count of|index|place|position|version|year)\b", RegexOptions.IgnoreCase)]
    private static partial Regex CountPattern();

    [GeneratedRegex(
        @"\bsources?\b|common practice|project choice|from memory|derived|worked out|geometry|by definition",
        RegexOptions.IgnoreCase)]
    private static partial Regex SourcePattern();
}
