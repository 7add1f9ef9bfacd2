using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <summary>Writes a visit plan as a JSON document, for programs that read it; it is never read back.</summary>
/// <remarks>Money is in the caller's currency, which the document does not name. The schema is <c>visit-plan.schema.json</c>.</remarks>
public static class VisitPlanJson
{
    private static readonly DocumentHead Head = new("marine-service/visit-plan");

    private static readonly MemberNames Members = new(
        "method", "cost", "lowerBound", "gapFraction", "earlyCost", "lateCost", "separateCost", "bestSingleVisit", "seasons", "visits");

    private static readonly MemberNames SingleMembers = new("date", "cost");

    private static readonly MemberNames SeasonMembers = new("year", "cost", "earlyCost");

    private static readonly MemberNames VisitMembers = new("date", "cost", "setUpCost", "accessCost", "earlyCost", "lateCost", "items");

    private static readonly MemberNames ItemMembers = new("task", "due", "daysEarly", "daysLate", "cost", "nextBestDate", "nextBestExtraCost", "dueAtOnce", "reason");

    /// <summary>Writes a document.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> or <paramref name="output"/> is null.</exception>
    public static void Write(VisitPlan plan, IBufferWriter<byte> output)
    {
        Guard.NotNull(plan);
        Guard.NotNull(output);
        JsonEncodedText[] names = Members.Encoded;
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        writer.Word(names[0], plan.Method);
        writer.Number(names[1], plan.Cost);
        writer.Number(names[2], plan.LowerBound);
        if (plan.GapFraction is double gap)
        {
            writer.Real(names[3], Math.Round(gap, 6));
        }

        writer.Number(names[4], plan.EarlyCost);
        writer.Number(names[5], plan.LateCost);
        writer.Number(names[6], plan.SeparateCost);
        if (plan.BestSingleVisit is Visit single)
        {
            writer.WriteStartObject(names[7]);
            writer.Date(SingleMembers.Encoded[0], single.Date);
            writer.Number(SingleMembers.Encoded[1], single.Cost);
            writer.WriteEndObject();
        }

        writer.WriteStartArray(names[8]);
        foreach (int year in plan.Seasons)
        {
            writer.WriteStartObject();
            writer.WriteNumber(SeasonMembers.Encoded[0], year);
            writer.Number(SeasonMembers.Encoded[1], plan.CostOfSeason(year));
            writer.Number(SeasonMembers.Encoded[2], plan.EarlyCostOfSeason(year));
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteStartArray(names[9]);
        foreach (Visit visit in plan.Visits)
        {
            Write(writer, visit);
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public static string ToText(VisitPlan plan)
    {
        Guard.NotNull(plan);
        return Document.ToText(output => Write(plan, output));
    }

    private static void Write(Utf8JsonWriter writer, Visit visit)
    {
        JsonEncodedText[] names = VisitMembers.Encoded;
        writer.WriteStartObject();
        writer.Date(names[0], visit.Date);
        writer.Number(names[1], visit.Cost);
        writer.Number(names[2], visit.SetUpCost);
        writer.Number(names[3], visit.AccessCost);
        writer.Number(names[4], visit.EarlyCost);
        writer.Number(names[5], visit.LateCost);
        writer.WriteStartArray(names[6]);
        foreach (VisitItem item in visit.Items)
        {
            writer.WriteStartObject();
            writer.Text(ItemMembers.Encoded[0], item.Task.Id);
            writer.Date(ItemMembers.Encoded[1], item.Task.Due);
            writer.WriteNumber(ItemMembers.Encoded[2], item.DaysEarly);
            writer.WriteNumber(ItemMembers.Encoded[3], item.DaysLate);
            writer.Number(ItemMembers.Encoded[4], item.Cost);
            writer.Date(ItemMembers.Encoded[5], item.NextBestDate);
            writer.Number(ItemMembers.Encoded[6], item.NextBestExtraCost);
            writer.WriteBoolean(ItemMembers.Encoded[7], item.IsDueAtOnce);
            writer.Text(ItemMembers.Encoded[8], item.Reason);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }
}
