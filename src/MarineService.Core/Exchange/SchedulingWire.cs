using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <summary>Tasks and intervals in documents.</summary>
internal static class SchedulingWire
{
    private static readonly MemberNames IntervalMembers = new("hours", "months");

    private static readonly MemberNames TaskMembers = new(
        "id",
        "title",
        "action",
        "interval",
        "occasion",
        "firstService",
        "tolerancePercent",
        "makerTolerancePercent",
        "anchorPolicy",
        "layUpRule",
        "partialExchange",
        "includes",
        "ifFailed",
        "dueAfter",
        "severeDuty",
        "source");

    private static readonly JsonEncodedText ProRata = JsonEncodedText.Encode("pro-rata");

    /// <summary>The list as it stands, with null where an item was refused, so that places stay right.</summary>
    internal static List<ServiceTask?> ReadTasks(ref JsonCursor json, bool hoursAllowed)
    {
        List<ServiceTask?> tasks = [];
        if (json.BeginArray("a list of tasks"))
        {
            while (json.NextItem())
            {
                tasks.Add(ReadTask(ref json, hoursAllowed));
            }
        }

        return tasks;
    }

    /// <summary>Notes what is wrong between tasks: ids used twice, references that lead nowhere.</summary>
    internal static void CheckPlan(ref JsonCursor json, string pointer, List<ServiceTask?> tasks)
    {
        if (tasks.Contains(null))
        {
            // What a refused task would have been called is not known, so references cannot be judged.
            return;
        }

        foreach (ListFault fault in TaskPlan.Check([.. tasks.Select(task => task!)]))
        {
            json.NoteMeaning(FormattableString.Invariant($"{pointer}/{fault.Index}/{fault.Member}"), $"'{fault.Value}'", fault.Expected);
        }
    }

    internal static void Write(Utf8JsonWriter writer, IReadOnlyList<ServiceTask> tasks)
    {
        writer.WriteStartArray();
        for (int i = 0; i < tasks.Count; i++)
        {
            Write(writer, tasks[i]);
        }

        writer.WriteEndArray();
    }

    private static ServiceTask? ReadTask(ref JsonCursor json, bool hoursAllowed)
    {
        if (!json.BeginObject("a task"))
        {
            return null;
        }

        ServiceTask.Parts parts = default;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(TaskMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: parts.Id = json.NotBlank(); break;
                case 1: parts.Title = json.NotBlank(); break;
                case 2: parts.Action = json.Word<TaskAction>(); break;
                case 3: parts.Interval = ReadInterval(ref json, hoursAllowed); break;
                case 4: parts.Occasion = ReadOccasion(ref json); break;
                case 5: parts.FirstService = ReadInterval(ref json, hoursAllowed); break;
                case 6: parts.Tolerance = json.Number(0m, 50m); break;
                case 7: parts.MakerTolerance = json.Number(0m, 50m); break;
                case 8: parts.Policy = json.Word<AnchorPolicy>(); break;
                case 9: parts.LayUpRule = json.Word<LayUpRule>(); break;
                case 10: parts.Partial = ReadPartial(ref json); break;
                case 11: parts.Includes = json.Names(); break;
                case 12: parts.IfFailed = json.NotBlank(); break;
                case 13: parts.DueAfter = json.Names(); break;
                case 14: parts.SevereDuty = ReadSevereDuty(ref json); break;
                default: parts.Source = CitationWire.Read(ref json); break;
            }

            json.EndMember();
        }

        json.Require(TaskMembers, seen, 0, 2);
        return CheckTask(ref json, seen, in parts) ? parts.Build() : null;
    }

    // What one member says about another; the schema says the same.
    private static bool CheckTask(ref JsonCursor json, ulong seen, in ServiceTask.Parts parts)
    {
        int before = json.FaultCount;
        bool Has(int member) => (seen & (1UL << member)) != 0;
        if (Has(3) == Has(4))
        {
            json.Note("", Has(3) ? "interval and occasion" : "neither interval nor occasion", "either interval or occasion");
        }

        foreach (int member in new[] { 5, 8 })
        {
            if (Has(4) && !Has(3) && Has(member))
            {
                json.Note($"/{TaskMembers.Names[member]}", "present", "no such member in a task with an occasion");
            }
        }

        if (parts.Policy == AnchorPolicy.FixedGrid && parts.Interval?.Hours is EngineHours hours)
        {
            json.Note("/interval/hours", hours.ToString(), "no hours limb: a fixed grid is one of dates");
        }

        if (parts.Includes is not null && parts.Id is not null && parts.Includes.Contains(parts.Id))
        {
            json.NoteMeaning("/includes", $"'{parts.Id}'", "other tasks than this one");
        }

        if (Has(12) && parts.Action is not null and not TaskAction.Inspect)
        {
            json.Note("/ifFailed", $"'{parts.IfFailed}'", "no such member in a task that is no inspection");
        }

        return json.FaultCount == before && parts.IsWhole;
    }

    private static TaskOccasion? ReadOccasion(ref JsonCursor json)
    {
        TaskOccasion? occasion = json.Word<TaskOccasion>();
        if (occasion == TaskOccasion.Interval)
        {
            json.Note("", "'interval'", "each-use, lay-up or commissioning; a task that comes round by hours or months has an interval");
            return null;
        }

        return occasion;
    }

    private static ServiceInterval? ReadInterval(ref JsonCursor json, bool hoursAllowed)
    {
        if (!json.BeginObject("an interval with hours, months or both"))
        {
            return null;
        }

        EngineHours? hours = null;
        int? months = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(IntervalMembers, ref seen, ref last)) >= 0)
        {
            if (member == 1)
            {
                months = json.WholeNumber(1, 1200);
            }
            else if (hoursAllowed)
            {
                hours = json.Hours(0.001m, 100_000m);
            }
            else
            {
                json.Refuse("no hours limb: a boat has no hour meter");
            }

            json.EndMember();
        }

        if (seen == 0)
        {
            json.Note("", "an empty object", "hours, months or both");
        }

        return (hours, months) switch
        {
            (EngineHours h, int m) => ServiceInterval.FirstOf(h, m),
            (EngineHours h, null) => ServiceInterval.OfHours(h),
            (null, int m) => ServiceInterval.OfMonths(m),
            _ => null,
        };
    }

    private static PartialExchange? ReadPartial(ref JsonCursor json)
    {
        if (json.IsText(ProRata))
        {
            return PartialExchange.ProRata;
        }

        if (json.IsNumber)
        {
            return json.Number(0.01m, 1m) is decimal threshold ? PartialExchange.AllOrNothing(threshold) : null;
        }

        json.Refuse("\"pro-rata\", or the fraction from 0.01 to 1 from which a change counts as full");
        return null;
    }

    private static List<KeyValuePair<string, decimal>> ReadSevereDuty(ref JsonCursor json)
    {
        List<KeyValuePair<string, decimal>> factors = [];
        if (json.BeginObject("conditions with their factors"))
        {
            HashSet<string> seen = new(StringComparer.Ordinal);
            while (json.NextFreeMember(seen) is string condition)
            {
                if (json.Number(0.01m, 1m) is decimal factor)
                {
                    factors.Add(new(condition, factor));
                }

                json.EndMember();
            }
        }

        return factors;
    }

    private static void Write(Utf8JsonWriter writer, ServiceTask task)
    {
        JsonEncodedText[] names = TaskMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], task.Id);
        writer.Text(names[1], task.Title == task.Id ? null : task.Title);
        writer.Word(names[2], task.Action);
        Write(writer, names[3], task.Interval);
        writer.WordUnlessDefault(names[4], task.Occasion);
        Write(writer, names[5], task.FirstService);
        // Left out, it is the maker's; without one of the maker's, the default.
        writer.Number(names[6], task.TolerancePercent == (task.MakerTolerancePercent ?? ServiceTask.DefaultTolerancePercent) ? null : task.TolerancePercent);
        writer.Number(names[7], task.MakerTolerancePercent);
        writer.WordUnlessDefault(names[8], task.AnchorPolicy);
        writer.WordUnlessDefault(names[9], task.LayUpRule);
        if (task.PartialExchange.ThresholdFraction is not decimal threshold)
        {
            writer.WriteString(names[10], ProRata);
        }
        else if (task.PartialExchange != PartialExchange.Default)
        {
            writer.WriteNumber(names[10], threshold);
        }

        writer.Texts(names[11], task.Includes);
        writer.Text(names[12], task.IfFailed);
        writer.Texts(names[13], task.DueAfter);
        if (task.SevereDuty.Count > 0)
        {
            writer.WriteStartObject(names[14]);
            foreach (KeyValuePair<string, decimal> factor in task.SevereDuty)
            {
                writer.WriteNumber(factor.Key, factor.Value);
            }

            writer.WriteEndObject();
        }

        if (task.Source != Citation.GivenByCaller)
        {
            writer.WritePropertyName(names[15]);
            CitationWire.Write(writer, task.Source);
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, JsonEncodedText name, ServiceInterval? interval)
    {
        if (interval is not null)
        {
            writer.WriteStartObject(name);
            writer.Hours(IntervalMembers.Encoded[0], interval.Hours);
            writer.Number(IntervalMembers.Encoded[1], interval.Months);
            writer.WriteEndObject();
        }
    }
}
