using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;

namespace MarineService.Core.Exchange;

/// <summary>Writes a job card as a JSON document, for programs that show it; it is never read back.</summary>
/// <remarks>
/// Amounts are metric. What is not known is left out, and <c>missing</c> says what would settle it. A report of the visit names the
/// card, its steps and its hold points. The schema is <c>job-card.schema.json</c>.
/// </remarks>
public static class JobCardJson
{
    private static readonly DocumentHead Head = new("marine-service/job-card");

    private static readonly MemberNames Members = new(
        "card", "boat", "engine", "date", "tasks", "steps", "tools", "consumables", "oil", "belt", "missing", "kit", "purchases", "price", "comesOff", "filters");

    private static readonly MemberNames TaskMembers = new("id", "title", "status", "onCard", "coveredBy");

    private static readonly MemberNames StepMembers = new(
        "id", "text", "why", "after", "onlyIf", "unless", "tools", "consumables", "cautions", "holdPoints", "time", "includes");

    private static readonly MemberNames CautionMembers = new("word", "text", "source");
    private static readonly MemberNames OilMembers = new("grade", "toHave", "firstPour", "pouredLastTime");

    /// <summary>Writes a document.</summary>
    /// <param name="card">What to write.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(JobCard card, IBufferWriter<byte> output)
    {
        Guard.NotNull(card);
        JsonEncodedText[] names = Members.Encoded;
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        writer.Text(names[0], card.Id);
        writer.Text(names[1], card.Boat.Boat.Name);
        writer.Text(names[2], card.Engine.Id);
        writer.Date(names[3], card.Day);
        writer.WriteStartArray(names[4]);
        foreach (JobTask task in card.Tasks)
        {
            Write(writer, task);
        }

        writer.WriteEndArray();
        writer.WriteStartArray(names[5]);
        foreach (ProcedureStep step in card.Steps)
        {
            Write(writer, step);
        }

        writer.WriteEndArray();
        Texts(writer, names[6], card.Tools.Select(tool => tool.ToString()));
        Texts(writer, names[7], card.Consumables);
        if (card.Oil is JobOil oil)
        {
            Write(writer, oil);
        }

        if (card.MovesBelt && card.Belt.IsKnown)
        {
            BeltsWire.Write(writer, names[9], card.Belt.Value);
        }

        Texts(writer, names[10], card.Missing);
        JobKitWire.WriteKit(writer, names[11], card.Kit);
        JobKitWire.WritePurchases(writer, names[12], names[13], card.Kit);
        JobKitWire.WriteComesOff(writer, names[14], card.Kit);
        JobKitWire.WriteFilters(writer, names[15], card.Kit);
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="card">What to write.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="card"/> is null.</exception>
    public static string ToText(JobCard card)
    {
        Guard.NotNull(card);
        return Document.ToText(output => Write(card, output));
    }

    private static void Write(Utf8JsonWriter writer, JobTask task)
    {
        JsonEncodedText[] names = TaskMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], task.TaskId);
        writer.Text(names[1], task.Due.Task.Title);
        writer.Word(names[2], task.Due.Status);
        writer.WriteBoolean(names[3], task.How is not null);
        writer.Text(names[4], task.CoveredBy);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, ProcedureStep step)
    {
        JsonEncodedText[] names = StepMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], step.Id);
        writer.Text(names[1], step.Text);
        writer.Text(names[2], step.Why);
        Texts(writer, names[3], step.Predecessors);
        if (step.Condition is Circumstance condition)
        {
            writer.Word(names[step.ConditionHolds ? 4 : 5], condition);
        }

        writer.Texts(names[6], [.. step.Tools.Select(tool => tool.ToString())]);
        writer.Texts(names[7], step.Consumables);
        if (step.Cautions.Count > 0)
        {
            writer.WriteStartArray(names[8]);
            foreach (Caution caution in step.Cautions)
            {
                writer.WriteStartObject();
                writer.Word(CautionMembers.Encoded[0], caution.Word);
                writer.Text(CautionMembers.Encoded[1], caution.Text);
                writer.Text(CautionMembers.Encoded[2], caution.Citation.ToString());
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        if (step.HoldPoints.Count > 0)
        {
            writer.WriteStartArray(names[9]);
            foreach (HoldPoint point in step.HoldPoints)
            {
                ProceduresWire.WriteHoldPoint(writer, point);
            }

            writer.WriteEndArray();
        }

        writer.Quantity(names[10], step.Minutes > 0 ? step.Minutes : null, WireUnits.Time);
        writer.Texts(names[11], step.Includes);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, JobOil oil)
    {
        JsonEncodedText[] names = OilMembers.Encoded;
        writer.WriteStartObject(Members.Encoded[8]);
        writer.Text(names[0], oil.Choice is { IsKnown: true, Value.Best: { IsKnown: true } best } ? best.Value.Designation : null);
        writer.Quantity(names[1], oil.ToHave.IsKnown ? Canonical.Liters(oil.ToHave.Value) : null, WireUnits.Volume);
        writer.Quantity(names[2], oil.FirstPour.IsKnown ? Canonical.Liters(oil.FirstPour.Value) : null, WireUnits.Volume);
        writer.Quantity(names[3], oil.PouredLastTime.IsKnown ? Canonical.Liters(oil.PouredLastTime.Value) : null, WireUnits.Volume);
        writer.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter writer, JsonEncodedText name, IEnumerable<string> texts)
    {
        writer.WriteStartArray(name);
        foreach (string text in texts)
        {
            writer.WriteStringValue(text);
        }

        writer.WriteEndArray();
    }
}
