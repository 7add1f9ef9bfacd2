using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace MarineService.Core.Tests.Architecture;

/// <summary>The house rules on files: folder is namespace, one public type a file, named after it, short.</summary>
internal static class SourceRules
{
    private const int MostLines = 300;

    /// <summary>The faults of one source file; the path is relative to the library's folder, with slashes; the root is the library's namespace.</summary>
    internal static IEnumerable<string> Faults(string path, string text, string root = "MarineService.Core")
    {
        CompilationUnitSyntax unit = (CompilationUnitSyntax)CSharpSyntaxTree.ParseText(text).GetRoot();
        string folder = Path.GetDirectoryName(path)!.Replace('\\', '/').Replace('/', '.');
        string expected = folder.Length == 0 ? root : root + "." + folder;
        foreach (BaseNamespaceDeclarationSyntax space in unit.Members.OfType<BaseNamespaceDeclarationSyntax>())
        {
            if (space.Name.ToString() != expected)
            {
                yield return $"{path}: namespace is {space.Name}, the folder says {expected}";
            }

            MemberDeclarationSyntax[] shown = [.. space.Members.Where(member => member.Modifiers.Any(SyntaxKind.PublicKeyword))];
            if (shown.Length > 1)
            {
                yield return $"{path}: {shown.Length} public types in one file: {string.Join(", ", shown.Select(NameOf))}";
            }

            // BeltRouting.Validation.cs is a part of BeltRouting; AnswerOfT.cs holds Answer<T>.
            string stem = Path.GetFileName(path).Split('.')[0];
            if (shown.Length == 1 && NameOf(shown[0]) != stem)
            {
                yield return $"{path}: the public type is named {NameOf(shown[0])}";
            }
        }

        int lines = text.Count(letter => letter == '\n');
        if (lines > MostLines)
        {
            yield return $"{path}: {lines} lines, more than {MostLines}; split by topic";
        }
    }

    private static string NameOf(MemberDeclarationSyntax member) => member switch
    {
        TypeDeclarationSyntax { TypeParameterList.Parameters: { Count: > 0 } arguments } generic =>
            generic.Identifier.Text + "Of" + string.Concat(arguments.Select(argument => argument.Identifier.Text)),
        BaseTypeDeclarationSyntax type => type.Identifier.Text,
        DelegateDeclarationSyntax named => named.Identifier.Text,
        _ => member.ToString(),
    };
}
