using System.Text.Json;
using MarineService.Core.Fleet;

namespace MarineService.Core.Exchange;

/// <summary>Engines of a fleet and what came of them, as documents of one line.</summary>
internal static class FleetWire
{
    private static readonly DocumentHead EngineHead = new("marine-service/fleet-engine");

    private static readonly DocumentHead ResultHead = new("marine-service/fleet-result");

    private static readonly MemberNames EngineMembers = new("format", "version", "engine", "specification", "depot", "log");

    private static readonly MemberNames ResultMembers = new(
        "engine", "line", "depot", "today", "rules", "library", "fingerprint", "status", "tasks", "faults");

    private static readonly MemberNames TaskMembers = new("id", "status", "governs", "dueDate", "dueHours");

    private static readonly MemberNames FaultMembers = new("place", "value", "expected");

    /// <summary>Reads an engine; what was read of it stays in the parts when there are faults.</summary>
    internal static FleetEngineParts? ReadEngine(ref JsonCursor json, FleetEngineParts parts)
    {
        if (!json.BeginObject("an engine of a fleet"))
        {
            return null;
        }

        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(EngineMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0 or 1: EngineHead.Read(ref json, member); break;
                case 2: parts.Engine = json.NotBlank(); break;
                case 3: parts.Specification = json.NotBlank(); break;
                case 4: parts.Depot = json.NotBlank(); break;
                default: parts.Log = ServiceLogJson.ReadLog(ref json); break;
            }

            json.EndMember();
        }

        json.Require(EngineMembers, seen, 0, 1, 2, 3, 5);
        return parts;
    }

    internal static void Write(Utf8JsonWriter writer, FleetEngine engine)
    {
        writer.WriteStartObject();
        EngineHead.Write(writer);
        writer.Text(EngineMembers.Encoded[2], engine.Id);
        writer.Text(EngineMembers.Encoded[3], engine.Specification);
        writer.Text(EngineMembers.Encoded[4], engine.Depot);
        writer.WritePropertyName(EngineMembers.Encoded[5]);
        ServiceLogJson.WriteLog(writer, engine.Log);
        writer.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter writer, FleetResult result, long? line)
    {
        JsonEncodedText[] names = ResultMembers.Encoded;
        writer.WriteStartObject();
        ResultHead.Write(writer);
        writer.Text(names[0], result.EngineId);
        writer.Number(names[1], line);
        writer.Text(names[2], result.Depot);
        writer.Date(names[3], result.Today);
        writer.Text(names[4], result.Rules);
        writer.Text(names[5], FleetEvaluation.Library);
        writer.Text(names[6], result.Fingerprint);
        if (result.IsEvaluated)
        {
            writer.Word(names[7], result.MostUrgent);
            writer.WriteStartArray(names[8]);
            for (int i = 0; i < result.Tasks.Count; i++)
            {
                Write(writer, result.Tasks[i]);
            }

            writer.WriteEndArray();
        }
        else
        {
            writer.WriteStartArray(names[9]);
            for (int i = 0; i < result.Faults.Count; i++)
            {
                Write(writer, result.Faults[i]);
            }

            writer.WriteEndArray();
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, FleetTask task)
    {
        writer.WriteStartObject();
        writer.Text(TaskMembers.Encoded[0], task.TaskId);
        writer.Word(TaskMembers.Encoded[1], task.Status);
        writer.Word(TaskMembers.Encoded[2], task.Governs);
        writer.Date(TaskMembers.Encoded[3], task.DueDate);
        writer.Hours(TaskMembers.Encoded[4], task.DueHours);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, FleetFault fault)
    {
        writer.WriteStartObject();
        writer.Text(FaultMembers.Encoded[0], fault.Place);
        writer.Text(FaultMembers.Encoded[1], fault.Value);
        writer.Text(FaultMembers.Encoded[2], fault.Expected);
        writer.WriteEndObject();
    }
}
