using System.Collections.Concurrent;
using ArchUnitNET.Domain;
using ArchUnitNET.Domain.Extensions;
using ArchUnitNET.Loader;

namespace MarineService.Core.Tests.Architecture;

/// <summary>The arrows between the rooms of a compiled assembly: signatures, bodies, lambdas, attributes, generic arguments.</summary>
internal static class Imports
{
    // Taking an assembly apart costs seconds, and many tests ask for the same one.
    private static readonly ConcurrentDictionary<(System.Reflection.Assembly, string), Lazy<IReadOnlyList<(string From, string To, string Types)>>> Known = new();

    /// <summary>Every arrow that leaves its room, as "from -> to: the two types".</summary>
    internal static IReadOnlyList<(string From, string To, string Types)> Of(System.Reflection.Assembly assembly, string root) =>
        Known.GetOrAdd((assembly, root), key => new(() => Found(key.Item1, key.Item2))).Value;

    private static IReadOnlyList<(string From, string To, string Types)> Found(System.Reflection.Assembly assembly, string root)
    {
        ArchUnitNET.Domain.Architecture architecture = new ArchLoader().LoadAssemblies(assembly).Build();
        return
        [
            .. from type in architecture.Types
               where IsInside(type, root)
               from target in type.GetTypeDependencies(architecture)
               where IsInside(target, root)
               let @from = ImportTable.RoomOf(type.Namespace.FullName, root)
               let to = ImportTable.RoomOf(target.Namespace.FullName, root)
               where @from != to
               orderby @from, to, type.FullName, target.FullName
               select (@from, to, $"{type.FullName} uses {target.FullName}"),
        ];
    }

    private static bool IsInside(IType type, string root) =>
        type.Namespace.FullName == root || type.Namespace.FullName.StartsWith(root + ".", StringComparison.Ordinal);
}
