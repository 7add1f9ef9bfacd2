using System.Text;
using MarineService.Core.Exchange;
using MarineService.Core.Records;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Whatever a file holds: it is read or every fault is named, in time and memory that grow no faster than the file.</summary>
public sealed class HostileDocumentTest
{
    private const string LogHead = "{\"format\":\"marine-service/service-log\",\"version\":1,\"entries\":[";
    private const string SheetHead = "{\"format\":\"marine-service/engine-specification\",\"version\":1,\"engine\":{\"designation\":\"x\"},\"tasks\":[";

    [Fact]
    public void RandomBytes_AreNoDocument()
    {
        Random random = new(20261125);
        for (int i = 0; i < 2000; i++)
        {
            byte[] bytes = TextMutation.Bytes(random, random.Next(200));
            foreach (DocumentKind kind in DocumentKind.All)
            {
                AssertFaults(kind.Faults(bytes));
            }

            Assert.False(DocumentFormat.Of(bytes).IsKnown);
        }
    }

    /// <summary>More faults than are listed: the rest is read on, and still nothing is made of what is not whole.</summary>
    [Theory]
    [InlineData("{}")]
    [InlineData("{\"kind\":\"reading\"}")]
    [InlineData("{\"kind\":\"completion\",\"date\":\"2026-04-01\"}")]
    [InlineData("{\"kind\":\"withdrawal\",\"date\":\"2026-04-01\"}")]
    [InlineData("{\"kind\":\"duty\",\"date\":\"2026-04-01\",\"conditions\":[1]}")]
    [InlineData("{\"kind\":\"planned-lay-up\",\"date\":\"2026-04-01\",\"until\":\"2026-04-01\"}")]
    public void Log_WithMoreFaultsThanAreListed_ListsTheFirst(string entry)
    {
        byte[] utf8 = Encoding.UTF8.GetBytes(LogHead + string.Join(",", Enumerable.Repeat(entry, 1500)) + "]}");
        IReadOnlyList<ReadFault> faults = ServiceLogJson.Read(utf8).Faults;
        Assert.Equal(1000, faults.Count);
        AssertFaults(faults);
        Assert.Equal(3, ServiceLogJson.Read(utf8, ReadLimits.Of(32, utf8.Length, 3)).Faults.Count);
    }

    [Fact]
    public void Sheet_WithMoreFaultsThanAreListed_ListsTheFirst()
    {
        byte[] utf8 = Encoding.UTF8.GetBytes(SheetHead + string.Join(",", Enumerable.Repeat("{\"id\":\"a\",\"action\":\"replace\"}", 1500)) + "]}");
        Assert.Equal(1000, EngineSpecificationJson.Read(utf8).Faults.Count);
    }

    /// <summary>A chain that a recursive check would follow until the program's stack is used up.</summary>
    [Fact]
    public void LongChains_OfInclusionsAndCorrections_AreRead()
    {
        const int Length = 20_000;
        string Task(int i) => $"{{\"id\":\"t{i}\",\"action\":\"clean\",\"interval\":{{\"months\":1}}{(i == 0 ? "" : $",\"includes\":[\"t{i - 1}\"]")}}}";
        string tasks = string.Join(",", Enumerable.Range(0, Length).Select(Task));
        Assert.Equal(Length, EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(SheetHead + tasks + "]}")).Value.Tasks.Count);
        string ring = tasks.Replace("{\"id\":\"t0\",", $"{{\"id\":\"t0\",\"includes\":[\"t{Length - 1}\"],", StringComparison.Ordinal);
        Assert.Equal("/tasks/0/includes/0", EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(SheetHead + ring + "]}")).Faults[0].Place);

        string Entry(int i) => $"{{\"id\":\"e{i}\",\"kind\":\"reading\",\"date\":\"2026-04-01\",\"dial\":1{(i == 0 ? "" : $",\"corrects\":\"e{i - 1}\"")}}}";
        string entries = string.Join(",", Enumerable.Range(0, Length).Select(Entry));
        Assert.Single(ServiceLogJson.Read(Encoding.UTF8.GetBytes(LogHead + entries + "]}")).Value.Standing());
        string loop = entries.Replace("{\"id\":\"e0\",", $"{{\"id\":\"e0\",\"corrects\":\"e{Length - 1}\",", StringComparison.Ordinal);
        Assert.Equal("/entries/0/corrects", ServiceLogJson.Read(Encoding.UTF8.GetBytes(LogHead + loop + "]}")).Faults[0].Place);
    }

    [Fact]
    public void Plan_OfALongChain_CoversItToTheEnd()
    {
        Core.Scheduling.ServiceTask Task(int i) => Core.Scheduling.ServiceTask.Clean($"t{i}", Core.Scheduling.ServiceInterval.OfMonths(1));
        Core.Scheduling.ServiceTask[] tasks = [.. Enumerable.Range(0, 4000).Select(i => i == 0 ? Task(0) : Task(i).Including($"t{i - 1}"))];
        Core.Scheduling.TaskPlan plan = Core.Scheduling.TaskPlan.Of(tasks);
        Assert.True(plan.Covers(3999, 0));
        Assert.False(plan.Covers(0, 3999));
    }

    /// <summary>Numbers given by hand at the end do not make the free ones slow to find.</summary>
    [Fact]
    public void Entries_WithoutIds_GetTheNextFreeNumbers()
    {
        const int Count = 10_000;
        IEnumerable<string> entries = Enumerable.Range(0, Count).Select(_ => "{\"kind\":\"reading\",\"date\":\"2026-04-01\",\"dial\":1}")
            .Concat(Enumerable.Range(1, Count).Select(id => $"{{\"id\":\"{id}\",\"kind\":\"reading\",\"date\":\"2026-04-01\",\"dial\":1}}"));
        ServiceLog log = ServiceLogJson.Read(Encoding.UTF8.GetBytes(LogHead + string.Join(",", entries) + "]}")).Value;
        Assert.Equal([$"{Count + 1}", $"{Count + 2}"], log.Entries.Take(2).Select(entry => entry.Id));
        Assert.Equal("1", log.Entries[Count].Id);
    }

    /// <summary>Reading takes memory in proportion to the document: four times the items, at most four and a half times the bytes.</summary>
    [Theory]
    [InlineData(LogHead, "{\"id\":\"#\",\"kind\":\"completion\",\"date\":\"2026-04-01\",\"dial\":412.5,\"task\":\"oil\",\"evidence\":[{\"kind\":\"photo\",\"reference\":\"a\"}]}", "]}")]
    [InlineData(LogHead, "{\"kind\":\"nonsense\"}", "]}")]
    [InlineData(LogHead + "{\"kind\":\"duty\",\"date\":\"2026-04-01\",\"conditions\":[", "\"c#\"", "]}]}")]
    [InlineData(SheetHead, "{\"id\":\"#\",\"action\":\"clean\",\"interval\":{\"months\":1},\"includes\":[\"0\"]}", "]}")]
    [InlineData(SheetHead + "{\"id\":\"t\",\"action\":\"clean\",\"interval\":{\"months\":1},\"severeDuty\":{", "\"c#\":0.5", "}}]}")]
    [InlineData(SheetHead + "],\"variants\":[", "{\"designation\":\"v#\",\"ratedPower\":{\"value\":9,\"unit\":\"kW\"},\"ratedSpeed\":{\"value\":3000,\"unit\":\"/min\"}}", "]}")]
    [InlineData(SheetHead + "],\"permittedOils\":{\"grades\":[{\"grade\":\"30\"}],\"required\":[", "[\"CK-4\"]", "]}}")]
    [InlineData(SheetHead + "],\"parts\":{\"catalogue\":[{\"number\":\"x\",\"title\":\"x\"},", "{\"number\":\"n#\",\"title\":\"t\",\"companions\":[{\"part\":\"x\"}],\"packs\":[{\"name\":\"p\",\"amount\":1,\"price\":1}]}", "]}}")]
    [InlineData(SheetHead + "],\"parts\":{\"catalogue\":[],\"tasks\":[", "{\"task\":\"t#\",\"comesOff\":[{\"name\":\"n#\",\"place\":\"p\",\"count\":1}],\"takes\":[{\"part\":\"no\"}]}", "]}}")]
    [InlineData("{\"format\":\"marine-service/visit-report\",\"version\":1,\"card\":\"x\",\"date\":\"2026-04-01\",\"events\":[],\"tally\":[", "{\"name\":\"n#\",\"place\":\"p\",\"putBack\":1}", "]}")]
    [InlineData("{\"format\":\"marine-service/boat-specification\",\"version\":1,\"boat\":{\"name\":\"x\"},\"engines\":[", "{\"id\":\"e#\",\"specification\":{\"engine\":{\"designation\":\"x\"},\"tasks\":[]}}", "]}")]
    public void Reading_AllocatesInProportionToTheDocument(string head, string item, string tail)
    {
        long Allocated(int items)
        {
            byte[] utf8 = Encoding.UTF8.GetBytes(head + string.Join(",", Enumerable.Range(0, items).Select(i => item.Replace("#", $"{i}", StringComparison.Ordinal))) + tail);
            DocumentKind kind = DocumentKind.Of(utf8);
            long before = GC.GetAllocatedBytesForCurrentThread();
            _ = kind.Faults(utf8);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Allocated(10);
        long few = Allocated(2000);
        long many = Allocated(8000);
        Assert.True(many <= 4.5 * few, $"{few} bytes for 2000 items, {many} for 8000");
    }

    [Theory]
    [InlineData("\"dial\":1e400", "/entries/0/dial: 1e400; expected hours from 0 to 1000000 with at most three decimals")]
    [InlineData("\"dial\":100.00000000000000000000000000000001", "/entries/0/dial: 100.00000000000000000000000000000001; expected a number of at most 28 digits")]
    [InlineData("\"dial\":0.1234567890123456789012345678901", "/entries/0/dial: 0.1234567890123456789012345678901; expected hours from 0 to 1000000 with at most three decimals")]
    [InlineData("\"dial\":1e-40", "/entries/0/dial: 1e-40; expected a number of at most 28 digits")]
    [InlineData("\"exchangedFraction\":0.1234567890123456789012345678901", "/entries/0/exchangedFraction: 0.1234567890123456789012345678901; expected a number of at most 28 digits")]
    [InlineData("\"exchangedFraction\":0.5,\"fractionUncertainty\":1e-99999999999", "/entries/0/fractionUncertainty: 1e-99999999999; expected a number of at most 28 digits")]
    public void Number_WithMoreDigitsThanAreKept_IsAFault(string member, string fault) =>
        Assert.Equal(fault, Assert.Single(Read($"{{\"kind\":\"completion\",\"task\":\"oil\",\"date\":\"2026-04-01\",{member}}}").Faults).ToString());

    [Theory]
    [InlineData("1e400", "a number from -1000000000 to 1000000000")]
    [InlineData("1e-400", "a number of at most 17 digits")]
    [InlineData("0.1234567890123456789012345678901", "a number of at most 17 digits")]
    [InlineData("1.23456789012345678", "a number of at most 17 digits")]
    public void Amount_WithMoreDigitsThanAreKept_IsAFault(string value, string expected)
    {
        ReadFault fault = Assert.Single(Read(TopUpOf(value)).Faults);
        Assert.Equal(("/entries/0/amount/volume/value", expected), (fault.Place, fault.Expected));
    }

    [Theory]
    [InlineData("1.2345678901234567")]
    [InlineData("1.20000000000000000000000000000000000000000")]
    [InlineData("0.00000000000000000000000000000000000000e-9999")]
    [InlineData("12000000000000000000000000000000000000e-37")]
    public void Amount_WhoseDigitsAreKept_IsRead(string value) => Assert.Empty(Read(TopUpOf(value)).Faults);

    [Fact]
    public void Limits_HoldExactly()
    {
        byte[] utf8 = Encoding.UTF8.GetBytes(LogHead + "]}");
        Assert.True(ServiceLogJson.Read(utf8, ReadLimits.Of(32, utf8.Length, 1)).IsRead);
        Assert.False(ServiceLogJson.Read(utf8, ReadLimits.Of(32, utf8.Length - 1, 1)).IsRead);
        Assert.True(ServiceLogJson.ReadFrom(new MemoryStream(utf8), ReadLimits.Of(32, utf8.Length, 1)).IsRead);
        Assert.False(ServiceLogJson.ReadFrom(new MemoryStream(utf8), ReadLimits.Of(32, utf8.Length - 1, 1)).IsRead);
        Assert.Equal((32, 64 * 1024 * 1024, 1000), (ReadLimits.Default.MaxDepth, ReadLimits.Default.MaxBytes, ReadLimits.Default.MaxFaults));

        string Nested(int depth) => $"{{\"format\":\"marine-service/service-log\",\"version\":1,\"x\":{new string('[', depth - 1)}{new string(']', depth - 1)},\"entries\":[]}}";
        Assert.DoesNotContain("nested", LastExpectation(Nested(32), ReadLimits.Default), StringComparison.Ordinal);
        Assert.Contains("nested at most 32 deep", LastExpectation(Nested(33), ReadLimits.Default), StringComparison.Ordinal);
        Assert.DoesNotContain("nested", LastExpectation(Nested(64), ReadLimits.Of(64, 1000, 10)), StringComparison.Ordinal);
        Assert.Contains("nested at most 64 deep", LastExpectation(Nested(65), ReadLimits.Of(64, 1000, 10)), StringComparison.Ordinal);
    }

    /// <summary>A file of 64 MiB is read; one byte more is refused before anything is made of it.</summary>
    [Fact]
    public void Document_OfTheLargestSize_IsRead_AndOneByteMoreIsNot()
    {
        byte[] utf8 = new byte[ReadLimits.Default.MaxBytes + 1];
        utf8.AsSpan().Fill((byte)' ');
        Encoding.UTF8.GetBytes(LogHead + "]}").CopyTo(utf8, 0);
        Assert.True(ServiceLogJson.Read(utf8.AsSpan(0, utf8.Length - 1)).IsRead);
        Assert.Equal("document: 67108865 bytes; expected at most 67108864 bytes", Assert.Single(ServiceLogJson.Read(utf8).Faults).ToString());
        Assert.False(ServiceLogJson.ReadFrom(new MemoryStream(utf8)).IsRead);
    }

    [Fact]
    public void ShownText_IsNeverCutThroughACharacter()
    {
        string wide = "\"" + new string('x', 58) + "😀😀\"";
        string shown = Read($"{{\"kind\":{wide},\"date\":\"2026-04-01\"}}").Faults[0].Value;
        Assert.EndsWith("x…", shown, StringComparison.Ordinal);
    }

    internal static void AssertFaults(IReadOnlyList<ReadFault> faults)
    {
        Assert.NotEmpty(faults);
        Assert.All(faults, fault => Assert.True(fault.Place.Length == 0 || fault.Place[0] == '/', fault.Place));
    }

    private static string TopUpOf(string value) =>
        $"{{\"kind\":\"top-up\",\"date\":\"2026-04-01\",\"fluid\":\"oil\",\"amount\":{{\"volume\":{{\"value\":{value},\"unit\":\"L\"}}}}}}";

    private static string LastExpectation(string text, ReadLimits limits) => ServiceLogJson.Read(Encoding.UTF8.GetBytes(text), limits).Faults[^1].Expected;

    private static ReadResult<ServiceLog> Read(string entry) => ServiceLogJson.Read(Encoding.UTF8.GetBytes(LogHead + entry + "]}"));
}
