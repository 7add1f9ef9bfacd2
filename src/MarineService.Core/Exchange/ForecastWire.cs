using System.Text.Json;
using MarineService.Core.Engines;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <summary>Due forecasts in documents.</summary>
internal static class ForecastWire
{
    private static readonly MemberNames Members = new("expected", "earliest", "latest", "governs", "byCalendar", "byHours", "coverageFraction", "missing", "readAgain");
    private static readonly MemberNames HoursMembers = new("expected", "earliest", "latest", "basis", "restsOnPlan", "seasons");
    private static readonly MemberNames SeasonMembers = new("year", "date");
    private static readonly MemberNames ReadingMembers = new("by", "task", "scope", "rangeDays", "rangeDaysAfter", "reason");

    internal static void Write(Utf8JsonWriter writer, JsonEncodedText name, DueForecast forecast)
    {
        JsonEncodedText[] names = Members.Encoded;
        writer.WriteStartObject(name);
        writer.Date(names[0], forecast.Expected);
        writer.Date(names[1], forecast.Earliest);
        writer.Date(names[2], forecast.Latest);
        writer.Word(names[3], forecast.Governs);
        writer.Date(names[4], forecast.Calendar);
        if (forecast.Hours.IsKnown)
        {
            Write(writer, names[5], forecast.Hours.Value);
        }

        if (forecast.CoverageFraction is double coverage)
        {
            writer.Real(names[6], Math.Round(coverage, 4));
        }

        writer.Texts(names[7], forecast.Missing);
        Write(writer, names[8], forecast.ReadAgain());
        writer.WriteEndObject();
    }

    /// <summary>The reading that would sharpen most; left out when none would.</summary>
    internal static void Write(Utf8JsonWriter writer, JsonEncodedText name, Answer<ReadingAdvice> advice)
    {
        if (!advice.IsKnown)
        {
            return;
        }

        JsonEncodedText[] names = ReadingMembers.Encoded;
        writer.WriteStartObject(name);
        writer.Date(names[0], advice.Value.Date);
        writer.Text(names[1], advice.Value.Task.TaskId);
        writer.Text(names[2], advice.Value.Task.Scope);
        writer.Number(names[3], advice.Value.RangeDays);
        writer.Number(names[4], advice.Value.RangeDaysAfter);
        writer.Text(names[5], advice.Value.Reason);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, JsonEncodedText name, DateForecast hours)
    {
        JsonEncodedText[] names = HoursMembers.Encoded;
        writer.WriteStartObject(name);
        writer.Date(names[0], hours.Expected);
        writer.Date(names[1], hours.Earliest);
        writer.Date(names[2], hours.Latest);
        writer.Word(names[3], hours.Basis);
        writer.WriteBoolean(names[4], hours.RestsOnPlan);
        writer.WriteStartArray(names[5]);
        foreach (SeasonDate season in hours.BySeason)
        {
            writer.WriteStartObject();
            writer.WriteNumber(SeasonMembers.Encoded[0], season.Year);
            writer.Date(SeasonMembers.Encoded[1], season.Date);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }
}
