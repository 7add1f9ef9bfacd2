using System.Buffers;
using System.Text.Json;
using MarineService.Core.Fleet;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>Reads and writes the summary of a fleet, or of a part of one, as a JSON document.</summary>
/// <remarks>
/// Equal summaries give equal bytes. What a document says never throws: every fault is reported at once, with its place. The schema is
/// <c>fleet-summary.schema.json</c>.
/// </remarks>
public static class FleetSummaryJson
{
    private static readonly DocumentHead Head = new("marine-service/fleet-summary");

    private static readonly MemberNames Members = new("format", "version", "engines", "refused", "tasks", "dueDates", "parts");

    // In the order of the statuses.
    private static readonly MemberNames StatusMembers = new("not-due", "each-use", "due-soon", "due", "overdue");

    private static readonly MemberNames DueMembers = new("date", "tasks");

    private static readonly MemberNames PartMembers = new("depot", "week", "part", "quantity");

    /// <summary>Reads a document.</summary>
    /// <param name="utf8">The document in UTF-8.</param>
    /// <param name="limits">How much is read before it is refused; null for the default limits.</param>
    /// <returns>The summary, or every fault.</returns>
    public static ReadResult<FleetSummary> Read(ReadOnlySpan<byte> utf8, ReadLimits? limits = null) => Document.Read<FleetSummary>(utf8, limits, ReadSummary);

    /// <summary>Writes a document.</summary>
    /// <param name="summary">What to write.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static void Write(FleetSummary summary, IBufferWriter<byte> output)
    {
        Guard.NotNull(summary);
        using Utf8JsonWriter writer = Document.Writer(output);
        JsonEncodedText[] names = Members.Encoded;
        writer.WriteStartObject();
        Head.Write(writer);
        writer.WriteNumber(names[2], summary.Engines);
        writer.WriteNumber(names[3], summary.Refused);
        writer.WriteStartObject(names[4]);
        for (int status = 0; status < StatusMembers.Encoded.Length; status++)
        {
            writer.WriteNumber(StatusMembers.Encoded[status], summary.TasksThatAre((DueStatus)status));
        }

        writer.WriteEndObject();
        writer.WriteStartArray(names[5]);
        foreach (DueCount due in summary.DueDates)
        {
            writer.WriteStartObject();
            writer.Date(DueMembers.Encoded[0], due.Date);
            writer.WriteNumber(DueMembers.Encoded[1], due.Tasks);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteStartArray(names[6]);
        foreach (PartDemand demand in summary.Parts)
        {
            writer.WriteStartObject();
            writer.Text(PartMembers.Encoded[0], demand.Depot);
            writer.Date(PartMembers.Encoded[1], demand.Week);
            writer.Text(PartMembers.Encoded[2], demand.Part);
            writer.WriteNumber(PartMembers.Encoded[3], demand.Quantity);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="summary">What to write.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="summary"/> is null.</exception>
    public static string ToText(FleetSummary summary)
    {
        Guard.NotNull(summary);
        return Document.ToText(output => Write(summary, output));
    }

    private static FleetSummary? ReadSummary(ref JsonCursor json)
    {
        if (!json.BeginObject("the summary of a fleet"))
        {
            return null;
        }

        (long engines, long refused) = (0, 0);
        long[] tasks = new long[StatusMembers.Names.Length];
        List<KeyValuePair<int, long>> dueDates = [];
        List<PartDemand> parts = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(Members, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0 or 1: Head.Read(ref json, member); break;
                case 2: engines = json.Count(0) ?? 0; break;
                case 3: refused = json.Count(0) ?? 0; break;
                case 4: ReadTasks(ref json, tasks); break;
                case 5: ReadDueDates(ref json, dueDates); break;
                default: ReadParts(ref json, parts); break;
            }

            json.EndMember();
        }

        json.Require(Members, seen, 0, 1, 2, 3, 4, 5, 6);
        if (refused > engines)
        {
            json.NoteMeaning("/refused", FormattableString.Invariant($"{refused}"), FormattableString.Invariant($"no more than there are engines, {engines}"));
        }

        return new(engines, refused, tasks, [.. dueDates], [.. parts]);
    }

    private static void ReadTasks(ref JsonCursor json, long[] tasks)
    {
        if (!json.BeginObject("how many tasks have each status"))
        {
            return;
        }

        ulong seen = 0;
        int last = -1;
        int status;
        while ((status = json.NextMember(StatusMembers, ref seen, ref last)) >= 0)
        {
            tasks[status] = json.Count(0) ?? 0;
            json.EndMember();
        }

        json.Require(StatusMembers, seen, 0, 1, 2, 3, 4);
    }

    private static void ReadDueDates(ref JsonCursor json, List<KeyValuePair<int, long>> dueDates)
    {
        if (!json.BeginArray("how many tasks have which due date"))
        {
            return;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a date and how many tasks have it"))
            {
                continue;
            }

            LocalDate? date = null;
            long? tasks = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(DueMembers, ref seen, ref last)) >= 0)
            {
                if (member == 0)
                {
                    date = json.Date();
                }
                else
                {
                    tasks = json.Count(1);
                }

                json.EndMember();
            }

            json.Require(DueMembers, seen, 0, 1);
            if (date is not null && tasks is not null)
            {
                dueDates.Add(new(CalendarDay.Of(date.Value), tasks.Value));
            }
        }
    }

    private static void ReadParts(ref JsonCursor json, List<PartDemand> parts)
    {
        if (!json.BeginArray("what the tasks will use up"))
        {
            return;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a part and how much of it"))
            {
                continue;
            }

            (string? depot, LocalDate? week, string? part, decimal? quantity) = (null, null, null, null);
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(PartMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: depot = json.NotBlank(); break;
                    case 1: week = json.Date(); break;
                    case 2: part = json.NotBlank(); break;
                    default: quantity = json.Number(0.001m, 1_000_000_000_000m); break;
                }

                json.EndMember();
            }

            json.Require(PartMembers, seen, 2, 3);
            if (part is not null && quantity is not null)
            {
                parts.Add(new(depot, week is LocalDate monday ? CalendarDay.Of(monday) : null, part, quantity.Value));
            }
        }
    }
}
