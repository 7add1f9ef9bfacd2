using System.Globalization;
using System.Reflection;
using System.Runtime.Loader;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace MarineService.Core.Tests.Documentation;

/// <summary>Compiles a C# block as a program of its own against the library under test, runs it, and compares what it prints.</summary>
/// <remarks>
/// A block says what it prints in a text block that follows, or in comments behind or directly below the statement that prints.
/// The usings of a new console project are there, no others: a reader can paste the block and run it.
/// </remarks>
internal static class CSharpExample
{
    private const string ConsoleProjectUsings = """
        global using System;
        global using System.Collections.Generic;
        global using System.IO;
        global using System.Linq;
        global using System.Net.Http;
        global using System.Threading;
        global using System.Threading.Tasks;
        """;

    private static readonly CSharpParseOptions Options = new(LanguageVersion.Latest);

    private static readonly MetadataReference[] References =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => Path.GetExtension(path) == ".dll").Select(path => MetadataReference.CreateFromFile(path)),
    ];

    /// <summary>What is wrong with each C# block of a document that is to be run; nothing when all is well.</summary>
    internal static IEnumerable<string> Faults(IReadOnlyList<MarkdownExample> document, string moreUsings = "")
    {
        string earlierCode = "";
        string earlierOutput = "";
        foreach (MarkdownExample block in document.Where(block => block.Language == "csharp" && block.NotRun is null))
        {
            string code = block.Continues ? Joined(earlierCode, block.Code) : block.Code;
            string expected = (block.Continues ? earlierOutput : "") + Expected(block);
            (earlierCode, earlierOutput) = (code, expected);
            if (Fault(code, expected, moreUsings) is string fault)
            {
                yield return $"{block.Place}: {fault}";
            }
        }
    }

    /// <summary>What a block says that it prints, each line ended.</summary>
    internal static string Expected(MarkdownExample block)
    {
        IEnumerable<string> lines = block.TextAfter?.Split('\n') ?? Comments(block.Code);
        return string.Concat(lines.Select(line => line.TrimEnd() + "\n"));
    }

    private static string? Fault(string code, string expected, string moreUsings)
    {
        CSharpCompilation compilation = CSharpCompilation.Create(
            "Example" + Guid.NewGuid().ToString("N"),
            [CSharpSyntaxTree.ParseText(ConsoleProjectUsings + moreUsings, Options), CSharpSyntaxTree.ParseText(code, Options)],
            References,
            new CSharpCompilationOptions(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable));
        using MemoryStream image = new();
        string[] errors =
        [
            .. compilation.Emit(image).Diagnostics
                .Where(diagnostic => diagnostic.Severity >= DiagnosticSeverity.Warning).Select(diagnostic => diagnostic.ToString()),
        ];
        if (errors.Length > 0)
        {
            return "does not compile cleanly: " + string.Join("; ", errors);
        }

        image.Position = 0;
        string printed = Run(image);
        return printed == expected ? null : $"prints\n{printed}but says\n{expected}";
    }

    private static string Run(Stream image)
    {
        AssemblyLoadContext context = new("example", isCollectible: true);
        TextWriter before = Console.Out;
        CultureInfo culture = CultureInfo.CurrentCulture;
        using StringWriter printed = new(CultureInfo.InvariantCulture) { NewLine = "\n" };
        Console.SetOut(printed);
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        try
        {
            MethodInfo main = context.LoadFromStream(image).EntryPoint!;
            main.Invoke(null, main.GetParameters().Length == 0 ? null : [Array.Empty<string>()]);
        }
        catch (TargetInvocationException wrapped)
        {
            printed.WriteLine("threw " + wrapped.InnerException);
        }
        finally
        {
            Console.SetOut(before);
            CultureInfo.CurrentCulture = culture;
            context.Unload();
        }

        return string.Concat(printed.ToString().ReplaceLineEndings("\n").Split('\n').SkipLast(1).Select(line => line.TrimEnd() + "\n"));
    }

    /// <summary>The comments behind and directly below each statement that prints, without their slashes.</summary>
    private static IEnumerable<string> Comments(string code)
    {
        SyntaxNode root = CSharpSyntaxTree.ParseText(code, Options).GetRoot();
        foreach (GlobalStatementSyntax statement in root.ChildNodes().OfType<GlobalStatementSyntax>())
        {
            if (!statement.DescendantNodes().OfType<InvocationExpressionSyntax>()
                .Any(call => call.Expression.ToString().StartsWith("Console.Write", StringComparison.Ordinal)))
            {
                continue;
            }

            SyntaxToken last = statement.GetLastToken();
            foreach (SyntaxTrivia trivia in last.TrailingTrivia.Where(trivia => trivia.IsKind(SyntaxKind.SingleLineCommentTrivia)))
            {
                yield return Said(trivia);
            }

            bool lineHasComment = true;
            foreach (SyntaxTrivia trivia in last.GetNextToken(includeZeroWidth: true).LeadingTrivia)
            {
                if (trivia.IsKind(SyntaxKind.SingleLineCommentTrivia))
                {
                    yield return Said(trivia);
                    lineHasComment = true;
                }
                else if (trivia.IsKind(SyntaxKind.EndOfLineTrivia) && lineHasComment && LineOf(trivia) > LineOf(last))
                {
                    lineHasComment = false;
                }
                else if (trivia.IsKind(SyntaxKind.EndOfLineTrivia))
                {
                    // A blank line: what follows speaks of the next statement.
                    break;
                }
            }
        }
    }

    private static string Said(SyntaxTrivia comment) => comment.ToString().Substring(2).TrimStart(' ');

    private static int LineOf(SyntaxTrivia trivia) => trivia.GetLocation().GetLineSpan().StartLinePosition.Line;

    private static int LineOf(SyntaxToken token) => token.GetLocation().GetLineSpan().EndLinePosition.Line;

    /// <summary>Usings of the later block move to the top, where C# wants them.</summary>
    private static string Joined(string earlier, string later)
    {
        ILookup<bool, string> lines = later.Split('\n').ToLookup(line =>
            line.StartsWith("using ", StringComparison.Ordinal) && line.EndsWith(';') && !line.Contains('=', StringComparison.Ordinal)
            && !line.Contains('(', StringComparison.Ordinal));
        IEnumerable<string> usings = lines[true].Where(line => !earlier.Contains(line, StringComparison.Ordinal));
        return string.Join('\n', [.. usings, earlier, .. lines[false]]);
    }
}
