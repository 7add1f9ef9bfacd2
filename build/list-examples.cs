// Writes every C# block of the readme, the guides and the rooms' readmes as a class of its own, a program that runs them all,
// and each named JSON block as a file. A block marked "not run" is left out; one marked "continues" goes on where the last ended.
// Usage: dotnet run build/list-examples.cs -- FOLDER
#:property RunAnalyzers=false
#:property EnforceCodeStyleInBuild=false
#:property RestorePackagesWithLockFile=false
#:property RestoreLockedMode=false
#:property SignAssembly=false
using System.Text;

string target = args[0];
string[] libraries = ["MarineService.Core", "MarineService.Reports"];
string[] rooms = [.. libraries.SelectMany(library => Directory.EnumerateDirectories("src/" + library)).Where(folder => File.Exists(folder + "/README.md")).Select(folder => folder.Replace('\\', '/')).Order(StringComparer.Ordinal)];
string[] documents = ["README.md", .. Directory.EnumerateFiles("docs", "*.md").Order(StringComparer.Ordinal), .. libraries.Select(library => $"src/{library}/README.md").Where(File.Exists), .. rooms.Select(room => room + "/README.md")];

// A room's readme is read beside its sources: the library's own namespaces need no saying there.
string[] roomUsings =
[
    "using MarineService.Core;", "using NodaTime;", "using UnitsNet;", "using Duration = UnitsNet.Duration;",
    "using MarineService.Reports;", .. rooms.Select(room => room.Substring("src/".Length).Replace('/', '.')).Where(room => !room.EndsWith(".Internal", StringComparison.Ordinal)).Select(room => $"using {room};"),
];

StringBuilder calls = new();
int count = 0;
foreach (string document in documents.Select(document => document.Replace('\\', '/')))
{
    string[] lines = File.ReadAllLines(document);
    string earlier = "";
    for (int i = 0; i < lines.Length; i++)
    {
        if (!lines[i].StartsWith("```", StringComparison.Ordinal))
        {
            continue;
        }

        string[] info = lines[i].Substring(3).Split(' ', 2);
        string comment = i > 0 ? lines[i - 1] : "";
        int first = i + 1;
        int end = Array.IndexOf(lines, "```", first);
        string code = string.Join('\n', lines[first..end]) + "\n";
        i = end;
        if (info is ["json", { Length: > 0 } name])
        {
            File.WriteAllText(Path.Combine(target, Path.GetFileName(name)), code);
        }
        else if (info[0] is "csharp" or "cs" && !comment.StartsWith("<!-- not run:", StringComparison.Ordinal))
        {
            code = comment == "<!-- continues -->" ? earlier + code : code;
            earlier = code;
            count++;
            ILookup<bool, string> isUsing = code.Split('\n').ToLookup(line => line.StartsWith("using ", StringComparison.Ordinal) && line.EndsWith(';') && !line.Contains('(') && !line.Contains('='));
            IEnumerable<string> usings = isUsing[true].Concat(document.StartsWith("src/", StringComparison.Ordinal) ? roomUsings : []).Distinct();
            File.WriteAllText(Path.Combine(target, $"Example{count}.g.cs"), $$"""
                // {{document}}:{{first}}
                {{string.Join('\n', usings)}}
                internal static class Example{{count}}
                {
                    internal static void Run()
                    {
                {{string.Join('\n', isUsing[false])}}
                    }
                }
                """);
            calls.AppendLine($"Console.WriteLine(\"# {document}:{first}\");\nExample{count}.Run();");
        }
    }
}

// The same letters everywhere: .NET Framework and Mono would write in the console's own encoding.
File.WriteAllText(Path.Combine(target, "Program.g.cs"), "Console.OutputEncoding = new System.Text.UTF8Encoding(false);\n" + calls + "Files.Run(args[0]);\n");
Console.WriteLine($"{count} examples of {documents.Length} documents");
