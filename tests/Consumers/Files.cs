using System;
using System.IO;
using MarineService.Core;
using MarineService.Core.Exchange;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using NodaTime;

/// <summary>Reads the readme's two documents and the tests' golden ones, writes them again, and says what is due.</summary>
internal static class Files
{
    internal static void Run(string folder)
    {
        EngineSpecification specification = EngineSpecificationJson.Read(File.ReadAllBytes(Path.Combine(folder, "S.json"))).Value;
        ServiceLog log = ServiceLogJson.Read(File.ReadAllBytes(Path.Combine(folder, "L.json"))).Value;
        DueList due = log.DueList(specification, new LocalDate(2026, 11, 25));
        Console.WriteLine(DueListJson.ToText(due));
        foreach (TaskDue task in due.MostUrgentFirst)
        {
            Console.WriteLine(task.Explain(DisplayUnits.UsCustomary));
        }

        string[] golden = Directory.GetFiles(Path.Combine(folder, "golden"), "*.json");
        Array.Sort(golden, StringComparer.Ordinal);
        foreach (string path in golden)
        {
            Console.WriteLine("# " + Path.GetFileName(path));
            byte[] utf8 = File.ReadAllBytes(path);
            Print(EngineSpecificationJson.Read(utf8), EngineSpecificationJson.ToText);
            Print(BoatSpecificationJson.Read(utf8), BoatSpecificationJson.ToText);
            Print(ServiceLogJson.Read(utf8), ServiceLogJson.ToText);

            // The same with a bite out of its middle: faults, never an exception, and the same ones on every build.
            Print(ServiceLogJson.Read(utf8.AsSpan(0, utf8.Length / 2)), ServiceLogJson.ToText);
        }

        foreach (string schema in new[] { DocumentSchemas.EngineSpecification, DocumentSchemas.BoatSpecification, DocumentSchemas.ServiceLog, DocumentSchemas.DueList })
        {
            Console.WriteLine(schema.Length);
        }

        // Which build of the library this is goes beside the answers, not among them.
        Console.Error.WriteLine(((System.Runtime.Versioning.TargetFrameworkAttribute)Attribute.GetCustomAttribute(
            typeof(EngineHours).Assembly, typeof(System.Runtime.Versioning.TargetFrameworkAttribute))!).FrameworkName);
    }

    private static void Print<T>(ReadResult<T> read, Func<T, string> toText)
        where T : class
    {
        foreach (ReadFault fault in read.Faults)
        {
            Console.WriteLine(fault);
        }

        if (read.IsRead)
        {
            Console.WriteLine(toText(read.Value));
        }
    }
}
