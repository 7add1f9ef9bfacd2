using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <summary>Writes a due list as a JSON document, for programs that read it; it is never read back.</summary>
/// <remarks>Amounts are metric in every document; words in findings follow the units asked for.</remarks>
public static class DueListJson
{
    private static readonly DocumentHead Head = new("marine-service/due-list");

    private static readonly MemberNames Members = new("today", "anythingDue", "tasks", "findings", "readAgain");

    private static readonly MemberNames TaskMembers = new(
        "id",
        "scope",
        "title",
        "status",
        "basis",
        "governs",
        "dueDate",
        "dueHours",
        "safeHours",
        "dueOnDial",
        "daysLeft",
        "hoursLeft",
        "usedFraction",
        "lastDone",
        "planDate",
        "coveredBy",
        "missing",
        "rules",
        "forecast");

    private static readonly MemberNames FindingMembers = new("code", "severity", "subject", "message", "figures");

    private static readonly MemberNames FigureMembers = new("name", "value", "unit");

    /// <summary>Writes a document.</summary>
    /// <param name="list">The due list.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <param name="units">Which units the sentences of findings are written in.</param>
    /// <exception cref="ArgumentNullException"><paramref name="list"/> or <paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static void Write(DueList list, IBufferWriter<byte> output, DisplayUnits units = DisplayUnits.Metric)
    {
        Guard.NotNull(list);
        Guard.NotNull(output);
        Guard.Defined(units);
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        writer.Date(Members.Encoded[0], list.Today);
        writer.WriteBoolean(Members.Encoded[1], list.AnythingDue);
        writer.WriteStartArray(Members.Encoded[2]);
        foreach (TaskDue task in list.Tasks)
        {
            Write(writer, task);
        }

        writer.WriteEndArray();
        WriteFindings(writer, Members.Encoded[3], list.Findings, units);
        ForecastWire.Write(writer, Members.Encoded[4], list.ReadAgain());
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="list">The due list.</param>
    /// <param name="units">Which units the sentences of findings are written in.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="list"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static string ToText(DueList list, DisplayUnits units = DisplayUnits.Metric)
    {
        Guard.NotNull(list);
        Guard.Defined(units);
        return Document.ToText(output => Write(list, output, units));
    }

    /// <summary>Findings as documents write them.</summary>
    internal static void WriteFindings(Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<Finding> findings, DisplayUnits units)
    {
        JsonEncodedText[] names = FindingMembers.Encoded;
        writer.WriteStartArray(name);
        foreach (Finding finding in findings)
        {
            writer.WriteStartObject();
            writer.Text(names[0], finding.Code);
            writer.Word(names[1], finding.Severity);
            writer.Text(names[2], finding.Subject);
            writer.Text(names[3], finding.Message(units));
            WriteFigures(writer, names[4], finding.Figures);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    /// <summary>Figures as documents write them.</summary>
    internal static void WriteFigures(Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<Figure> figures)
    {
        writer.WriteStartArray(name);
        foreach (Figure figure in figures)
        {
            Write(writer, figure);
        }

        writer.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter writer, Figure figure)
    {
        writer.WriteStartObject();
        writer.Text(FigureMembers.Encoded[0], figure.Name);
        if (figure.Number is double number)
        {
            writer.Real(FigureMembers.Encoded[1], number);
            writer.Text(FigureMembers.Encoded[2], figure.Unit!.Symbol);
        }
        else
        {
            writer.Text(FigureMembers.Encoded[1], figure.ToString(DisplayUnits.Metric));
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, TaskDue task)
    {
        JsonEncodedText[] names = TaskMembers.Encoded;
        DuePoint due = task.Due;
        writer.WriteStartObject();
        writer.Text(names[0], task.TaskId);
        writer.Text(names[1], task.Scope);
        writer.Text(names[2], task.Task.Title);
        writer.Word(names[3], task.Status);
        writer.Word(names[4], task.Basis);
        writer.Word(names[5], task.Governs);
        writer.Date(names[6], due.Date);
        writer.Hours(names[7], due.Hours);
        writer.Hours(names[8], due.SafeHours == due.Hours ? null : due.SafeHours);
        writer.Hours(names[9], task.DueOnDial is { IsKnown: true } dial && dial.Value != due.Hours ? dial.Value : null);
        if (task.DaysLeft is int days)
        {
            writer.WriteNumber(names[10], days);
        }

        writer.Number(names[11], task.HoursLeft);
        writer.Real(names[12], Math.Round(task.UsedFraction, 4));
        writer.Date(names[13], task.LastDone);
        writer.Date(names[14], task.PlanDate);
        writer.Text(names[15], task.CoveredBy);
        writer.Texts(names[16], task.Missing);
        writer.Texts(names[17], [.. task.Rules().Select(rule => rule.Code)]);
        ForecastWire.Write(writer, names[18], task.Forecast);
        writer.WriteEndObject();
    }
}
