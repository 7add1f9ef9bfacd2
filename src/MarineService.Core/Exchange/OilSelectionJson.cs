using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Oils;

namespace MarineService.Core.Exchange;

/// <summary>Writes which oils fit as a JSON document, for programs that read it; it is never read back.</summary>
/// <remarks>
/// Amounts are metric in every document; words in reasons and findings follow the units asked for. What is not known is left out, and
/// <c>missing</c> says what would settle it. The schema is <c>oil-selection.schema.json</c>.
/// </remarks>
public static class OilSelectionJson
{
    private static readonly DocumentHead Head = new("marine-service/oil-selection");

    private static readonly MemberNames Members = new(
        "revision", "start", "hottest", "laidUp", "advice", "best", "warmOilTo", "grades", "fitted", "nights", "findings");

    private static readonly MemberNames GradeMembers = new(
        "grade", "suitability", "permitted", "preference", "floor", "coldMargin", "hotMargin", "missing", "reason", "decidedBy", "limits");

    private static readonly MemberNames LimitMembers = new("kind", "temperature", "margin", "takesPart", "source");

    private static readonly MemberNames FittedMembers = new("oil", "suitability", "verdict", "categories");

    private static readonly MemberNames CategoryMembers = new("claimed", "required", "coverage", "reason", "path", "cautions");

    private static readonly MemberNames NightsMembers = new("given", "withStart", "coldestDate", "coldest", "grades", "fitted", "fittedStopsBeingAccepted");

    private static readonly MemberNames SeasonMembers = new("grade", "accepted", "marginal", "refused", "firstNotAccepted", "firstRefused");

    /// <summary>Writes a document about one coldest start.</summary>
    /// <param name="selection">The selection.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <param name="units">Which units the sentences are written in.</param>
    /// <exception cref="ArgumentNullException"><paramref name="selection"/> or <paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static void Write(OilSelection selection, IBufferWriter<byte> output, DisplayUnits units) =>
        Write(Guard.NotNull(selection), null, Guard.NotNull(output), Guard.Defined(units));

    /// <summary>Writes a document about a list of nights.</summary>
    /// <param name="season">The season.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <param name="units">Which units the sentences are written in.</param>
    /// <exception cref="ArgumentNullException"><paramref name="season"/> or <paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static void Write(OilSeason season, IBufferWriter<byte> output, DisplayUnits units) =>
        Write(Guard.NotNull(season).Selection, season, Guard.NotNull(output), Guard.Defined(units));

    /// <summary>The document about one coldest start as text.</summary>
    /// <param name="selection">The selection.</param>
    /// <param name="units">Which units the sentences are written in.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="selection"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static string ToText(OilSelection selection, DisplayUnits units)
    {
        Guard.NotNull(selection);
        Guard.Defined(units);
        return Document.ToText(output => Write(selection, output, units));
    }

    /// <summary>The document about a list of nights as text.</summary>
    /// <param name="season">The season.</param>
    /// <param name="units">Which units the sentences are written in.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="season"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static string ToText(OilSeason season, DisplayUnits units)
    {
        Guard.NotNull(season);
        Guard.Defined(units);
        return Document.ToText(output => Write(season, output, units));
    }

    private static void Write(OilSelection selection, OilSeason? season, IBufferWriter<byte> output, DisplayUnits units)
    {
        JsonEncodedText[] names = Members.Encoded;
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        writer.Text(names[0], OilSelection.Revision);
        writer.Quantity(names[1], selection.StartCelsius, WireUnits.Temperature);
        writer.Quantity(names[2], selection.HottestCelsius, WireUnits.Temperature);
        writer.WriteBoolean(names[3], selection.IsLaidUp);
        writer.Word(names[4], selection.Advice);
        writer.Text(names[5], selection.Best.IsKnown ? selection.Best.Value.Designation : null);
        writer.Quantity(names[6], selection.WarmOilTo.IsKnown ? selection.WarmOilTo.Value.DegreesCelsius : null, WireUnits.Temperature);
        writer.WriteStartArray(names[7]);
        foreach (GradeVerdict verdict in selection.Ranked)
        {
            Write(writer, verdict, units);
        }

        writer.WriteEndArray();
        if (selection.Fitted is OilVerdict fitted)
        {
            writer.WritePropertyName(names[8]);
            Write(writer, fitted, units);
        }

        if (season is not null)
        {
            writer.WritePropertyName(names[9]);
            Write(writer, season);
        }

        DueListJson.WriteFindings(writer, names[10], selection.Findings, units);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, GradeVerdict verdict, DisplayUnits units)
    {
        JsonEncodedText[] names = GradeMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], verdict.Designation);
        writer.Word(names[1], verdict.Suitability);
        writer.WriteBoolean(names[2], verdict.IsPermitted);
        if (verdict.IsPermitted)
        {
            writer.WriteNumber(names[3], verdict.MakersPreference);
        }

        writer.Quantity(names[4], verdict.FloorCelsius, WireUnits.Temperature);
        writer.Quantity(names[5], verdict.MarginKelvins, WireUnits.TemperatureDifference);
        writer.Quantity(names[6], verdict.HotMargin.IsKnown ? verdict.HotMargin.Value.Kelvins : null, WireUnits.TemperatureDifference);
        writer.Texts(names[7], verdict.HotMargin.Missing);
        writer.Text(names[8], verdict.Reason(units));
        writer.WritePropertyName(names[9]);
        Write(writer, verdict.DecidedBy);
        writer.WriteStartArray(names[10]);
        foreach (TemperatureLimit limit in verdict.Limits)
        {
            Write(writer, limit);
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, TemperatureLimit limit)
    {
        JsonEncodedText[] names = LimitMembers.Encoded;
        writer.WriteStartObject();
        writer.Word(names[0], limit.Kind);
        writer.Quantity(names[1], limit.Celsius, WireUnits.Temperature);
        writer.Quantity(names[2], limit.MarginKelvins, WireUnits.TemperatureDifference);
        writer.WriteBoolean(names[3], limit.TakesPart);
        writer.WritePropertyName(names[4]);
        CitationWire.Write(writer, limit.Citation);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, OilVerdict fitted, DisplayUnits units)
    {
        writer.WriteStartObject();
        writer.WritePropertyName(FittedMembers.Encoded[0]);
        OilsWire.Write(writer, fitted.Oil);
        writer.Word(FittedMembers.Encoded[1], fitted.Suitability);
        writer.WritePropertyName(FittedMembers.Encoded[2]);
        Write(writer, fitted.Grade, units);
        writer.WriteStartArray(FittedMembers.Encoded[3]);
        foreach (CategoryCoverage category in fitted.Categories)
        {
            JsonEncodedText[] names = CategoryMembers.Encoded;
            writer.WriteStartObject();
            writer.Text(names[0], category.Claimed.ToString());
            writer.Text(names[1], category.Required.ToString());
            writer.Word(names[2], category.Coverage);
            writer.Text(names[3], category.Reason);
            writer.Texts(names[4], [.. category.Path.Select(step => step.Name)]);
            writer.Texts(names[5], category.Cautions);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, OilSeason season)
    {
        JsonEncodedText[] names = NightsMembers.Encoded;
        writer.WriteStartObject();
        writer.WriteNumber(names[0], season.Nights);
        writer.WriteNumber(names[1], season.NightsWithStart);
        writer.Date(names[2], season.Coldest.Date);
        writer.Quantity(names[3], season.Coldest.Celsius, WireUnits.Temperature);
        writer.WriteStartArray(names[4]);
        foreach (GradeSeason grade in season.Grades)
        {
            Write(writer, grade);
        }

        writer.WriteEndArray();
        if (season.FittedSeason is GradeSeason fitted)
        {
            writer.WritePropertyName(names[5]);
            Write(writer, fitted);
        }

        writer.Date(names[6], season.FittedStopsBeingAccepted.IsKnown ? season.FittedStopsBeingAccepted.Value : null);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, GradeSeason grade)
    {
        JsonEncodedText[] names = SeasonMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], grade.Grade.Designation);
        writer.WriteNumber(names[1], grade.NightsAccepted);
        writer.WriteNumber(names[2], grade.NightsMarginal);
        writer.WriteNumber(names[3], grade.NightsRefused);
        writer.Date(names[4], grade.FirstNotAccepted);
        writer.Date(names[5], grade.FirstRefused);
        writer.WriteEndObject();
    }
}
