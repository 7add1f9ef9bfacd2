using System.Text;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Exchange;

/// <summary>What a document says never throws; every fault is reported at once, with its place.</summary>
public sealed class ReadingTest
{
    public static TheoryData<string> Golden => [.. GoldenDocuments.Names, .. GoldenDocuments.Club];

    [Fact]
    public void DataSheet_WithTenPlantedFaults_ReportsTen()
    {
        const string Sheet = """
            {
              "format": "marine-service/engine-specification",
              "version": 2,
              "engine": { "designation": " ", "fuel": "steam" },
              "meter": { "modulus": 99 },
              "tasks": [
                { "id": "engine-oil", "action": "replace", "interval": { "hours": 100.0001, "months": -5 } },
                { "id": "impeller", "action": "Replace", "interval": { "months": 12 } },
                { "id": "belt", "action": "inspect", "interval": { "hours": 100 }, "occasion": "each-use" },
                { "id": "coolant", "action": "replace", "interval": { "months": 36 }, "colour": "green" },
                { "action": "clean", "interval": { "months": 1 } }
              ]
            }
            """;
        Assert.Equal(
            [
                "/version: 2; expected 1",
                "/engine/designation: ' '; expected text that is not blank",
                "/engine/fuel: 'steam'; expected one of petrol, diesel",
                "/meter/modulus: 99; expected hours from 100 to 1000000 with at most three decimals",
                "/tasks/0/interval/hours: 100.0001; expected hours from 0.001 to 100000 with at most three decimals",
                "/tasks/0/interval/months: -5; expected a whole number from 1 to 1200",
                "/tasks/1/action: 'Replace'; expected one of replace, inspect, adjust, clean",
                "/tasks/2: interval and occasion; expected either interval or occasion",
                "/tasks/3/colour: 'green'; expected no such member, but one of id, title, action, interval, occasion, firstService, tolerancePercent, "
                    + "makerTolerancePercent, anchorPolicy, layUpRule, partialExchange, includes, ifFailed, dueAfter, severeDuty, source",
                "/tasks/4/id: missing; expected this member",
            ],
            EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(Sheet)).Faults.Select(fault => fault.ToString()));
    }

    [Fact]
    public void Log_WithFaultsOfMeaning_NamesBothEnds()
    {
        const string Log = """
            { "format": "marine-service/service-log", "version": 1, "entries": [
              { "id": "a", "kind": "reading", "date": "2026-04-01", "dial": 1 },
              { "id": "a", "kind": "reading", "date": "2026-04-02", "dial": 2 },
              { "id": "b", "kind": "reading", "date": "2026-04-03", "dial": 3, "corrects": "c" },
              { "id": "d", "kind": "reading", "date": "2026-04-03", "dial": 3, "corrects": "a" },
              { "id": "e", "kind": "reading", "date": "2026-04-03", "dial": 3, "corrects": "a" } ] }
            """;
        Assert.Equal(
            [
                "/entries/1/id: 'a'; expected an id that no other entry has",
                "/entries/2/corrects: 'c'; expected the id of an entry in this log",
                "/entries/4/corrects: 'a'; expected an entry that no other corrects; correct the correction instead",
            ],
            ServiceLogJson.Read(Encoding.UTF8.GetBytes(Log)).Faults.Select(fault => fault.ToString()));
    }

    [Fact]
    public void DataSheet_WithReferencesThatLeadNowhere_NamesThem()
    {
        const string Sheet = """
            { "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "x" }, "tasks": [
              { "id": "a", "action": "replace", "interval": { "months": 1 }, "includes": [ "b", "c" ] },
              { "id": "b", "action": "inspect", "interval": { "months": 1 }, "includes": [ "a" ], "ifFailed": "d" },
              { "id": "b", "action": "inspect", "interval": { "months": 1 } } ] }
            """;
        Assert.Equal(
            ["/tasks/2/id", "/tasks/0/includes/0", "/tasks/0/includes/1", "/tasks/1/includes/0", "/tasks/1/ifFailed"],
            EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(Sheet)).Faults.Select(fault => fault.Place));
    }

    [Theory]
    [MemberData(nameof(Golden))]
    public void Document_CutAnywhere_IsReported_NeverThrown(string name)
    {
        byte[] utf8 = GoldenDocuments.Read(name);
        DocumentKind kind = DocumentKind.Of(utf8);
        for (int length = 0; length < utf8.AsSpan().TrimEnd("\n"u8).Length; length += 1 + (utf8.Length / 200))
        {
            Assert.NotEmpty(kind.Faults(utf8[..length]));
        }
    }

    [Theory]
    [InlineData("[]", "", "an array")]
    [InlineData("null", "", "null")]
    [InlineData("{}", "/format", "missing")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":1,\"entries\":[],\"entries\":[]}", "/entries", "an array")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":\"1\",\"entries\":[]}", "/version", "'1'")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":1e400,\"entries\":[]}", "/version", "1e400")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":1,\"entries\":[{\"kind\":0,\"date\":\"2026-04-01\"}]}", "/entries/0/kind", "0")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":1,\"entries\":[{\"kind\":\"grid-origin\",\"date\":\"2026-04-01\",\"task\":\"\\ud800\"}]}", "/entries/0/task", "'text that is not valid Unicode'")]
    [InlineData("{\"\\ud800\":1}", "/text that is not valid Unicode", "1")]
    [InlineData("{\"format\":\"\\ud800aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\",\"version\":1,\"entries\":[]}", "/format", "'text that is not valid Unicode'")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":1,\"entries\":[{\"kind\":\"\\ud800\",\"date\":\"2026-04-01\"}]}", "/entries/0/kind", "'text that is not valid Unicode'")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":1,\"entries\":[{\"kind\":\"top-up\",\"date\":\"2026-04-01\",\"fluid\":\"oil\",\"amount\":{\"volume\":{\"value\":1,\"unit\":\"\\ud800\"}}}]}", "/entries/0/amount/volume/unit", "'text that is not valid Unicode'")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":1,\"a/b~c\":1,\"entries\":[]}", "/a~1b~0c", "1")]
    [InlineData("{\"format\":\"marine-service/service-log\",\"version\":1,\"entries\":[{\"kind\":\"reading\",\"date\":\"2026-04-01\",\"dial\":NaN}]}", "/entries/0/dial", "line 1, byte 108")]
    public void Log_ThatIsWrong_SaysWhereAndWhat(string text, string place, string value)
    {
        ReadFault fault = ServiceLogJson.Read(Encoding.UTF8.GetBytes(text)).Faults[0];
        Assert.Equal((place, value), (fault.Place, fault.Value));
    }

    [Fact]
    public void Document_WithByteOrderMark_EscapedNamesAndDates_IsRead()
    {
        const string Log = "\uFEFF{\"for\\u006dat\":\"marine-service/service-log\",\"version\":1.0,\"entries\":[{\"kind\":\"reading\",\"date\":\"2026\\u002d04-01\",\"dial\":-0}]}";
        Assert.Equal(new NodaTime.LocalDate(2026, 4, 1), ServiceLogJson.Read(Encoding.UTF8.GetBytes(Log)).Value.Entries[0].Date);
    }

    [Fact]
    public void Limits_Stop_LongDeepAndFaultyDocuments()
    {
        byte[] faulty = Encoding.UTF8.GetBytes($"{{\"format\":\"marine-service/service-log\",\"version\":1,\"entries\":[{string.Join(",", Enumerable.Repeat("1", 50))}]}}");
        Assert.Equal(10, ServiceLogJson.Read(faulty, ReadLimits.Of(32, 10_000, 10)).Faults.Count);
        Assert.Equal("at most 100 bytes", Assert.Single(ServiceLogJson.Read(faulty, ReadLimits.Of(32, 100, 10)).Faults).Expected);
        Assert.Equal("at most 100 bytes", Assert.Single(ServiceLogJson.ReadFrom(new MemoryStream(faulty), ReadLimits.Of(32, 100, 10)).Faults).Expected);
        byte[] deep = Encoding.UTF8.GetBytes(new string('[', 100) + new string(']', 100));
        Assert.Contains("nested at most 32 deep", ServiceLogJson.Read(deep).Faults[^1].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Result_WithFaults_HasNoValue_AndSaysTheFirst()
    {
        InvalidOperationException refusal = Assert.Throws<InvalidOperationException>(() => ServiceLogJson.Read("{}"u8).Value);
        Assert.Contains("/format: missing", refusal.Message, StringComparison.Ordinal);
    }
}
