using System.Text.Json.Serialization;

namespace MarineService.Core.Benchmarks.Exchange;

// The baseline: the same documents as plain objects, the way anybody would write them for System.Text.Json with a generated context.
// They check nothing: no ids that refer to each other, no units, no ranges, no members that belong together.
internal enum PlainKind
{
    [JsonStringEnumMemberName("reading")]
    Reading,
    [JsonStringEnumMemberName("completion")]
    Completion,
    [JsonStringEnumMemberName("event")]
    Event,
    [JsonStringEnumMemberName("duty")]
    Duty,
    [JsonStringEnumMemberName("entered-service")]
    EnteredService,
}

internal enum PlainProofKind
{
    [JsonStringEnumMemberName("dial-photo")]
    DialPhoto,
    [JsonStringEnumMemberName("receipt")]
    Receipt,
}

internal enum PlainResult
{
    [JsonStringEnumMemberName("passed")]
    Passed,
    [JsonStringEnumMemberName("failed")]
    Failed,
}

internal enum PlainSource
{
    [JsonStringEnumMemberName("dial")]
    Dial,
    [JsonStringEnumMemberName("log")]
    Log,
}

internal sealed class PlainProof
{
    public PlainProofKind Kind { get; set; }

    public string? Reference { get; set; }

    public string? Sha256 { get; set; }
}

internal sealed class PlainEntry
{
    public string? Id { get; set; }

    public PlainKind Kind { get; set; }

    public string? Engine { get; set; }

    public DateOnly Date { get; set; }

    public decimal? Dial { get; set; }

    public PlainSource? Source { get; set; }

    public string? Task { get; set; }

    public PlainResult? Result { get; set; }

    public decimal? ExchangedFraction { get; set; }

    public decimal? FractionUncertainty { get; set; }

    public DateOnly? DueDate { get; set; }

    public decimal? DueHours { get; set; }

    public string? Event { get; set; }

    public List<string>? Conditions { get; set; }

    public string? By { get; set; }

    public string? CheckedBy { get; set; }

    public List<PlainProof>? Evidence { get; set; }

    public string? Note { get; set; }

    public string? Corrects { get; set; }

    public bool? Reconstructed { get; set; }
}

internal sealed class PlainLog
{
    public string? Format { get; set; }

    public int Version { get; set; }

    public List<PlainEntry>? Entries { get; set; }
}

internal sealed class PlainInterval
{
    public decimal? Hours { get; set; }

    public int? Months { get; set; }
}

internal sealed class PlainTask
{
    public string? Id { get; set; }

    public string? Title { get; set; }

    public string? Action { get; set; }

    public string? Occasion { get; set; }

    public PlainInterval? Interval { get; set; }

    public PlainInterval? FirstService { get; set; }

    public decimal? TolerancePercent { get; set; }

    public string? AnchorPolicy { get; set; }

    public string? LayUpRule { get; set; }

    public string? PartialExchange { get; set; }

    public List<string>? Includes { get; set; }

    public string? IfFailed { get; set; }

    public List<string>? DueAfter { get; set; }

    public Dictionary<string, decimal>? SevereDuty { get; set; }
}

internal sealed class PlainEngine
{
    public string? Designation { get; set; }
}

internal sealed class PlainMeter
{
    public decimal? Modulus { get; set; }

    public string? DrivenBy { get; set; }
}

internal sealed class PlainSpecification
{
    public string? Format { get; set; }

    public int Version { get; set; }

    public PlainEngine? Engine { get; set; }

    public PlainMeter? Meter { get; set; }

    public List<PlainTask>? Tasks { get; set; }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    UseStringEnumConverter = true,
    WriteIndented = true,
    NewLine = "\n")]
[JsonSerializable(typeof(PlainLog))]
[JsonSerializable(typeof(PlainSpecification))]
internal sealed partial class PlainContext : JsonSerializerContext;
