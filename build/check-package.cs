// Looks inside a package and its symbols: the files, what the package says of itself, and that a debugger finds the sources.
// Usage: dotnet run build/check-package.cs -- LIBRARY FILE.nupkg COMMIT RELEASE-NOTES-FILE REMOTE (from the repository's root; REMOTE may be empty)
#:property RunAnalyzers=false
#:property EnforceCodeStyleInBuild=false
#:property RestorePackagesWithLockFile=false
#:property RestoreLockedMode=false
#:property SignAssembly=false
using System.IO.Compression;
using System.Reflection.Metadata;
using System.Text;
using System.Xml.Linq;

(string library, string path, string commit, string notes, string remote) = (args[0], args[1], args[2], File.ReadAllText(args[3]).Trim(), args[4]);
bool isCore = library == "MarineService.Core";
// The front page of the repository is the readme of the first library; the others have their own.
string readme = isCore ? "README.md" : $"src/{library}/README.md";
string schemas = $"src/{library}/Exchange/Schemas";
string[] expectedDependencies = isCore
    ? [".NETStandard2.0: Microsoft.Bcl.AsyncInterfaces", ".NETStandard2.0: NodaTime", ".NETStandard2.0: System.Text.Json", ".NETStandard2.0: UnitsNet", "net10.0: NodaTime", "net10.0: UnitsNet"]
    : [".NETStandard2.0: MarineService.Core", ".NETStandard2.0: OxyPlot.Core", "net10.0: MarineService.Core", "net10.0: OxyPlot.Core"];
string[] targets = ["net10.0", "netstandard2.0"];
List<string> faults = [];

void Demand(bool holds, string fault)
{
    if (!holds)
    {
        faults.Add(fault);
    }
}

using ZipArchive package = ZipFile.OpenRead(path);
using ZipArchive symbols = ZipFile.OpenRead(Path.ChangeExtension(path, ".snupkg"));
DemandFiles("package", package,
[
    library + ".nuspec", "README.md", "icon.png",
    .. (Directory.Exists(schemas) ? Directory.EnumerateFiles(schemas) : []).Select(file => "schemas/" + Path.GetFileName(file)),
    .. targets.SelectMany(target => new[] { $"lib/{target}/{library}.dll", $"lib/{target}/{library}.xml" }),
]);
DemandFiles("symbols", symbols, [library + ".nuspec", .. targets.Select(target => $"lib/{target}/{library}.pdb")]);

Demand(Bytes(package, "README.md").SequenceEqual(File.ReadAllBytes(readme)), "the readme is another than the repository's");
Demand(Bytes(package, "icon.png").SequenceEqual(File.ReadAllBytes("assets/icon.png")), "the icon is another than the repository's");

XElement said = XDocument.Parse(Text(package, library + ".nuspec")).Root!.Elements().Single();
string Said(string name) => said.Elements().SingleOrDefault(element => element.Name.LocalName == name)?.Value ?? "";
XElement? licence = said.Elements().SingleOrDefault(element => element.Name.LocalName == "license");
XElement? repository = said.Elements().SingleOrDefault(element => element.Name.LocalName == "repository");
Demand(licence?.Attribute("type")?.Value == "expression" && licence.Value == "MIT", "the licence is not the SPDX expression MIT");
Demand(Said("readme") == "README.md" && Said("icon") == "icon.png", "no readme or no icon is named");
Demand(Said("tags").Length > 0 && Said("description").Length > 0 && Said("authors").Length > 0, "no tags, description or authors");
Demand(Said("releaseNotes").Trim().ReplaceLineEndings("\n") == notes.ReplaceLineEndings("\n"), $"the release notes are not this version's entry of the changelog:\n{Said("releaseNotes")}");
Demand(repository?.Attribute("type")?.Value == "git" && repository.Attribute("commit")?.Value == commit, $"the repository's commit is not {commit}");
string[] dependencies =
[
    .. said.Descendants().Where(element => element.Name.LocalName == "dependency")
        .Select(dependency => $"{dependency.Parent!.Attribute("targetFramework")?.Value}: {dependency.Attribute("id")?.Value}"),
];
Demand(
    dependencies.Order().SequenceEqual(expectedDependencies.Order()),
    "the dependencies are " + string.Join(", ", dependencies));

foreach (string target in targets)
{
    // A documentation file speaks of the library's own members, and of a good many of them.
    string[] members = [.. XDocument.Parse(Text(package, $"lib/{target}/{library}.xml")).Descendants("member").Select(member => member.Attribute("name")!.Value.Substring(2))];
    Demand(members.Length > (isCore ? 500 : 5) && members.All(member => member.StartsWith("MarineService.", StringComparison.Ordinal)), $"{target}: the documentation file has {members.Length} members, or some of others");

    using MetadataReaderProvider provider = MetadataReaderProvider.FromPortablePdbStream(new MemoryStream(Bytes(symbols, $"lib/{target}/{library}.pdb")));
    MetadataReader pdb = provider.GetMetadataReader();
    string[] sources = [.. pdb.Documents.Select(document => pdb.GetString(pdb.GetDocument(document).Name)).Where(source => source.EndsWith(".cs", StringComparison.Ordinal))];
    Demand(sources.All(source => source.StartsWith("/_", StringComparison.Ordinal)), $"{target}: a source is named by a path of this machine: {sources.FirstOrDefault(source => !source.StartsWith("/_", StringComparison.Ordinal))}");

    // Kind of custom debug information: Source Link, as the format of portable PDBs defines it.
    Guid sourceLink = new("CC110556-A091-4D38-9FEC-25AB9A351A6A");
    string link = string.Concat(pdb.CustomDebugInformation.Select(pdb.GetCustomDebugInformation).Where(info => pdb.GetGuid(info.Kind) == sourceLink)
        .Select(info => Encoding.UTF8.GetString(pdb.GetBlobBytes(info.Value))));
    Demand(!remote.StartsWith("https://", StringComparison.Ordinal) || link.Contains(commit, StringComparison.Ordinal), $"{target}: no SourceLink to the commit: {link}");
}

Console.WriteLine(remote.StartsWith("https://", StringComparison.Ordinal) ? "SourceLink leads to the commit" : "no public remote here: SourceLink was not looked at");
foreach (string fault in faults)
{
    Console.Error.WriteLine(fault);
}

return faults.Count == 0 ? 0 : 1;

void DemandFiles(string name, ZipArchive archive, string[] expected)
{
    // Every package has these by its format.
    string[] found =
    [
        .. archive.Entries.Select(entry => entry.FullName)
            .Where(file => file is not ("_rels/.rels" or "[Content_Types].xml") && !file.StartsWith("package/services/", StringComparison.Ordinal)),
    ];
    Demand(!expected.Except(found).Any(), $"the {name} lacks {string.Join(", ", expected.Except(found))}");
    Demand(!found.Except(expected).Any(), $"the {name} has a stray {string.Join(", ", found.Except(expected))}");
}

static byte[] Bytes(ZipArchive archive, string name)
{
    using Stream stream = archive.GetEntry(name)!.Open();
    using MemoryStream bytes = new();
    stream.CopyTo(bytes);
    return bytes.ToArray();
}

static string Text(ZipArchive archive, string name) => Encoding.UTF8.GetString(Bytes(archive, name)).TrimStart('\uFEFF');
