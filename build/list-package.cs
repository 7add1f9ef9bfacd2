// Lists the files of a package, without the parts that every package has.
// Usage: dotnet run build/list-package.cs -- FILE.nupkg
#:property RunAnalyzers=false
#:property EnforceCodeStyleInBuild=false
#:property RestorePackagesWithLockFile=false
#:property RestoreLockedMode=false
#:property SignAssembly=false
using System.IO.Compression;

using ZipArchive package = ZipFile.OpenRead(args[0]);
foreach (ZipArchiveEntry entry in package.Entries)
{
    if (entry.FullName is not ("_rels/.rels" or "[Content_Types].xml") && !entry.FullName.StartsWith("package/services/", StringComparison.Ordinal))
    {
        Console.WriteLine(entry.FullName);
    }
}
