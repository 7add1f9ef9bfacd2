using System.Reflection;
using MarineService.Core.Tests.Documentation;
using UnitsNet;

namespace MarineService.Core.Tests.Architecture;

/// <summary>The analyzer of banned calls is silent about a name that it does not find, so the list itself is tested.</summary>
public sealed class BannedSymbolsTest
{
    private static readonly string[] Banned =
    [
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "BannedSymbols*.txt").SelectMany(File.ReadAllLines)
            .Where(line => line.Length > 0 && !line.StartsWith("//", StringComparison.Ordinal)).Select(line => line.Split(';')[0]),
    ];

    [Fact]
    public void EveryQuantityInUse_IsBannedFromParsingAndEquality()
    {
        string[] missing = [.. QuantitiesInUse().SelectMany(Dangers).Select(DocumentationFile.IdOf).Except(Banned).Order(StringComparer.Ordinal)];
        Assert.True(missing.Length == 0, "Add to BannedSymbols.UnitsNet.txt:\n" + string.Join('\n', missing));
    }

    [Fact]
    public void EveryBannedName_Exists()
    {
        string[] unknown = [.. Banned.Where(id => !Exists(id))];
        Assert.True(unknown.Length == 0, string.Join('\n', unknown));
    }

    [Fact]
    public void NoLine_StandsTwice() => Assert.Equal(Banned.Distinct().Count(), Banned.Length);

    private static Type[] QuantitiesInUse() =>
    [
        .. (from type in Library.Types
            from member in type.GetMethods(Library.Declared).Cast<MethodBase>().Concat(type.GetConstructors(Library.Declared))
            from used in member.GetParameters().Select(parameter => parameter.ParameterType).Append((member as MethodInfo)?.ReturnType ?? typeof(void))
            from part in StyleRules.Contained(used)
            where typeof(IQuantity).IsAssignableFrom(part) && part.IsValueType
            select part).Distinct(),
    ];

    private static IEnumerable<MethodInfo> Dangers(Type quantity) =>
        quantity.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly).Where(method =>
            method.Name is "Parse" or "TryParse" or "ParseUnit" or "TryParseUnit" or "op_Equality" or "op_Inequality"
            || (method.Name == "Equals" && method.GetParameters() is [ParameterInfo only] && only.ParameterType == quantity));

    private static bool Exists(string id)
    {
        string path = id.Substring(2).Split('(')[0];
        string memberName = path.Substring(path.LastIndexOf('.') + 1).Replace('#', '.');
        string typeName = id[0] == 'T' ? path : path.Substring(0, path.LastIndexOf('.'));
        Assembly[] assemblies = [typeof(object).Assembly, typeof(Console).Assembly, typeof(UnitsNet.Volume).Assembly, typeof(NodaTime.LocalDate).Assembly,
            typeof(System.Diagnostics.Process).Assembly, typeof(System.Diagnostics.TraceSource).Assembly, typeof(System.Security.Cryptography.RandomNumberGenerator).Assembly,
            typeof(System.Text.Json.Utf8JsonWriter).Assembly];
        Type? type = assemblies.Select(assembly => assembly.GetType(typeName)).FirstOrDefault(found => found is not null);
        return type is not null
            && (id[0] == 'T' || type.GetMembers(Library.Declared).Where(member => member.Name == memberName).Any(member => DocumentationFile.IdOf(member) == id));
    }
}
