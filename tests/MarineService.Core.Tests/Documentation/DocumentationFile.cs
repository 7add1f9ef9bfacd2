using System.Reflection;
using System.Xml.Linq;

namespace MarineService.Core.Tests.Documentation;

/// <summary>The XML documentation that ships beside the library.</summary>
internal sealed class DocumentationFile
{
    private readonly Dictionary<string, XElement> _members;

    internal DocumentationFile(XDocument document) =>
        _members = document.Root!.Element("members")!.Elements("member").ToDictionary(member => member.Attribute("name")!.Value, StringComparer.Ordinal);

    internal static DocumentationFile Beside(Assembly library) =>
        new(XDocument.Load(Path.ChangeExtension(library.Location, ".xml")));

    internal XElement? this[MemberInfo member] => _members.GetValueOrDefault(IdOf(member));

    /// <summary>The text of an element with its references written out, or an empty text.</summary>
    internal static string Text(XElement? element) => element is null ? "" : string.Concat(element.Nodes().Select(Text)).Trim();

    /// <summary>The name under which the compiler files a member.</summary>
    internal static string IdOf(MemberInfo member) => member switch
    {
        Type type => "T:" + TypeId(type),
        FieldInfo field => $"F:{TypeId(field.DeclaringType!)}.{field.Name}",
        PropertyInfo property => $"P:{TypeId(property.DeclaringType!)}.{property.Name}{ParametersId(property.GetIndexParameters())}",
        ConstructorInfo constructor => $"M:{TypeId(constructor.DeclaringType!)}.#{(constructor.IsStatic ? "cctor" : "ctor")}{ParametersId(constructor.GetParameters())}",
        MethodInfo method => $"M:{TypeId(method.DeclaringType!)}.{method.Name.Replace('.', '#')}{Arity(method)}{ParametersId(method.GetParameters())}{ResultId(method)}",
        _ => throw new ArgumentException($"No documentation is kept for {member}.", nameof(member)),
    };

    private static string Text(XNode node) => node switch
    {
        XText text => text.Value,
        XElement { Name.LocalName: "paramref" or "typeparamref" or "see" or "seealso" } reference =>
            reference.Attribute("name")?.Value ?? reference.Attribute("langword")?.Value ?? reference.Attribute("cref")?.Value ?? reference.Value,
        XElement element => Text(element),
        _ => "",
    };

    private static string Arity(MethodInfo method) => method.IsGenericMethodDefinition ? "``" + method.GetGenericArguments().Length : "";

    private static string ResultId(MethodInfo method) =>
        method.Name is "op_Implicit" or "op_Explicit" ? "~" + ReferenceId(method.ReturnType) : "";

    private static string ParametersId(ParameterInfo[] parameters) =>
        parameters.Length == 0 ? "" : $"({string.Join(",", parameters.Select(parameter => ReferenceId(parameter.ParameterType)))})";

    /// <summary>A type where it is declared: arity with a backtick, nested types after a dot.</summary>
    private static string TypeId(Type type) =>
        (type.IsGenericType && !type.IsGenericTypeDefinition ? type.GetGenericTypeDefinition() : type).FullName!.Replace('+', '.');

    /// <summary>A type where it is used: arguments in braces, own type parameters by position.</summary>
    private static string ReferenceId(Type type)
    {
        if (type.IsByRef)
        {
            return ReferenceId(type.GetElementType()!) + "@";
        }

        if (type.IsArray)
        {
            return ReferenceId(type.GetElementType()!) + "[]";
        }

        if (type.IsGenericParameter)
        {
            return (type.DeclaringMethod is null ? "`" : "``") + type.GenericParameterPosition;
        }

        return type.IsGenericType
            ? $"{TypeId(type).Split('`')[0]}{{{string.Join(",", type.GetGenericArguments().Select(ReferenceId))}}}"
            : TypeId(type);
    }
}
