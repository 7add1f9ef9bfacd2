using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;

namespace MarineService.Core.Exchange;

/// <content>Writing.</content>
internal static partial class ProceduresWire
{
    internal static void Write(Utf8JsonWriter writer, ProcedurePage page)
    {
        JsonEncodedText[] names = PageMembers.Encoded;
        Procedure procedure = page.Procedure;
        writer.Text(names[2], procedure.Id);
        writer.Text(names[3], procedure.Title);
        writer.Part(names[4], procedure.Source == Citation.GivenByCaller ? null : procedure.Source, CitationWire.Write);
        WriteItems(writer, names[5], page.Tasks, WriteTask);
        WriteItems(writer, names[6], [.. EnumNames<Circumstance>.All.Where(one => procedure.Circumstances[one] is not null)], (to, one) =>
        {
            to.WriteStartObject();
            to.Word(KnownMembers.Encoded[0], one);
            to.WriteBoolean(KnownMembers.Encoded[1], procedure.Circumstances[one] == true);
            to.WriteEndObject();
        });
        WriteItems(writer, names[7], procedure.Steps, WriteStep);
    }

    internal static void WriteHoldPoint(Utf8JsonWriter writer, HoldPoint point)
    {
        JsonEncodedText[] names = HoldMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], point.Id);
        writer.Text(names[1], point.Text);
        writer.Quantity(names[2], point.LeastMinutes > 0 ? point.LeastMinutes : null, WireUnits.Time);
        if (point.CountsToZero)
        {
            writer.WriteBoolean(names[3], true);
        }

        if (point.IsWritten)
        {
            writer.WriteBoolean(names[4], true);
        }

        writer.WriteEndObject();
    }

    private static void WriteTask(Utf8JsonWriter writer, TaskProcedure task)
    {
        writer.WriteStartObject();
        writer.Text(TaskMembers.Encoded[0], task.TaskId);
        writer.Texts(TaskMembers.Encoded[1], task.ProvedBy);
        writer.WriteEndObject();
    }

    private static void WriteStep(Utf8JsonWriter writer, ProcedureStep step)
    {
        JsonEncodedText[] names = StepMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], step.Id);
        writer.Text(names[1], step.Text);
        writer.Text(names[2], step.Why);
        writer.Texts(names[3], step.Predecessors);
        if (step.Condition is Circumstance condition)
        {
            writer.Word(names[step.ConditionHolds ? 4 : 5], condition);
        }

        if (step.Acts.Count > 0)
        {
            writer.WriteStartArray(names[6]);
            foreach (StepAct act in step.Acts)
            {
                writer.WriteStringValue(WireEnum<StepAct>.Word(act));
            }

            writer.WriteEndArray();
        }

        WriteItems(writer, names[7], step.Tools, WriteTool);
        writer.Texts(names[8], step.Consumables);
        WriteItems(writer, names[9], step.Cautions, WriteCaution);
        WriteItems(writer, names[10], step.HoldPoints, WriteHoldPoint);
        writer.Quantity(names[11], step.Minutes > 0 ? step.Minutes : null, WireUnits.Time);
        if (step.Expires)
        {
            writer.WriteBoolean(names[12], true);
        }

        writer.Text(names[13], step.Work == StepWork.Inspect ? step.Item : null);
        writer.Text(names[14], step.Work == StepWork.Replace ? step.Item : null);
        writer.Text(names[15], step.Opens);
        writer.Text(names[16], step.Closes);
        if (step.Decides is Circumstance decides)
        {
            writer.Word(names[17], decides);
        }

        writer.Texts(names[18], step.Includes);
        writer.WriteEndObject();
    }

    private static void WriteTool(Utf8JsonWriter writer, Tool tool)
    {
        writer.WriteStartObject();
        writer.Text(ToolMembers.Encoded[0], tool.Name);
        writer.Text(ToolMembers.Encoded[1], tool.Size);
        writer.WriteEndObject();
    }

    private static void WriteCaution(Utf8JsonWriter writer, Caution caution)
    {
        writer.WriteStartObject();
        writer.Word(CautionMembers.Encoded[0], caution.Word);
        writer.Text(CautionMembers.Encoded[1], caution.Text);
        writer.Part(CautionMembers.Encoded[2], caution.Citation, CitationWire.Write);
        writer.WriteEndObject();
    }

    /// <summary>A list, left out when nothing is in it.</summary>
    private static void WriteItems<T>(Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<T> items, Action<Utf8JsonWriter, T> write)
    {
        if (items.Count > 0)
        {
            writer.WriteStartArray(name);
            foreach (T item in items)
            {
                write(writer, item);
            }

            writer.WriteEndArray();
        }
    }
}
