using System.Reflection;
using Mono.Cecil;
using Mono.Cecil.Cil;

namespace MarineService.Core.Tests.Documentation;

/// <summary>The exceptions that a member throws by its own code: in its body, in its guards, and in the helpers of its own type.</summary>
/// <remarks>Calls of other public members are not followed: what they refuse, the caller has checked.</remarks>
internal sealed class ThrownExceptions(string assemblyPath) : IDisposable
{
    private const string GuardType = "MarineService.Core.Internal.Guard";

    private readonly ModuleDefinition _module = ModuleDefinition.ReadModule(assemblyPath);

    public void Dispose() => _module.Dispose();

    internal IReadOnlyCollection<string> Of(MethodBase method)
    {
        SortedSet<string> found = new(StringComparer.Ordinal);
        Collect((MethodDefinition)_module.LookupToken(method.MetadataToken), found, []);
        return found;
    }

    private static void Collect(MethodDefinition method, SortedSet<string> found, HashSet<MethodDefinition> seen)
    {
        if (!method.HasBody || !seen.Add(method))
        {
            return;
        }

        foreach (Instruction instruction in method.Body.Instructions)
        {
            if (instruction.Operand is not MethodReference called)
            {
                continue;
            }

            if (instruction.OpCode == OpCodes.Newobj && IsThrown(instruction) && called.DeclaringType.Name.EndsWith("Exception", StringComparison.Ordinal))
            {
                found.Add(called.DeclaringType.FullName);
            }
            else if (Follows(method, called) && called.Resolve() is MethodDefinition next)
            {
                Collect(next, found, seen);
            }
        }
    }

    private static bool IsThrown(Instruction made) => made.Next?.OpCode == OpCodes.Throw;

    private static bool Follows(MethodDefinition from, MethodReference called) =>
        called.DeclaringType.FullName == GuardType
        || (called.DeclaringType.GetElementType().FullName == from.DeclaringType.FullName && called.Resolve() is { IsPublic: false });
}
