using System.Buffers;
using System.Text.Json;
using MarineService.Core.Internal;
using MarineService.Core.LayUp;

namespace MarineService.Core.Exchange;

/// <summary>Writes a winter plan as a JSON document, for programs that read it; it is never read back.</summary>
/// <remarks>
/// Amounts are metric in every document; words in steps and findings follow the units asked for. What is not known is left out, and
/// <c>missing</c> says what would settle it. The schema is <c>lay-up-plan.schema.json</c>.
/// </remarks>
public static class LayUpPlanJson
{
    private static readonly DocumentHead Head = new("marine-service/lay-up-plan");

    private static readonly MemberNames Members = new(
        "engine", "verdict", "low", "from", "to", "steps", "openings", "tags", "antifreeze", "fogging", "fuel", "battery", "missing", "findings");

    private static readonly MemberNames StepMembers = new("topic", "text", "caution", "source", "figures");
    private static readonly MemberNames CautionMembers = new("word", "text", "source");
    private static readonly MemberNames AntifreezeMembers = new("name", "wantedFraction", "wantedFreezingPoint", "fillFraction", "product", "water", "runThrough");
    private static readonly MemberNames FoggingMembers = new("verdict", "each", "total", "clearanceFraction");
    private static readonly MemberNames FuelMembers = new("fillFraction", "treated", "add", "stabilizer");
    private static readonly MemberNames BatteryMembers = new("freezingPoint", "leastDensity");

    /// <summary>Writes the document.</summary>
    /// <param name="plan">The winter plan.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <param name="units">Which units the sentences are written in.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> or <paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static void Write(LayUpPlan plan, IBufferWriter<byte> output, DisplayUnits units)
    {
        Guard.NotNull(plan);
        Guard.NotNull(output);
        Guard.Defined(units);
        JsonEncodedText[] names = Members.Encoded;
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        writer.Text(names[0], plan.Engine.Designation);
        writer.Word(names[1], plan.Freeze.Verdict);
        writer.Quantity(names[2], plan.Freeze.LowCelsius, WireUnits.Temperature);
        writer.Date(names[3], plan.Freeze.From);
        writer.Date(names[4], plan.Freeze.To);
        writer.WriteStartArray(names[5]);
        foreach (LayUpStep step in plan.Steps)
        {
            Write(writer, step, units);
        }

        writer.WriteEndArray();
        if (plan.Openings.IsKnown)
        {
            writer.WriteNumber(names[6], plan.Openings.Value);
        }

        writer.Texts(names[7], plan.Tags);
        Write(writer, names, plan);
        writer.Texts(names[12], plan.Missing);
        DueListJson.WriteFindings(writer, names[13], plan.Findings, units);
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="plan">The winter plan.</param>
    /// <param name="units">Which units the sentences are written in.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static string ToText(LayUpPlan plan, DisplayUnits units)
    {
        Guard.NotNull(plan);
        Guard.Defined(units);
        return Document.ToText(output => Write(plan, output, units));
    }

    private static void Write(Utf8JsonWriter writer, LayUpStep step, DisplayUnits units)
    {
        writer.WriteStartObject();
        writer.Word(StepMembers.Encoded[0], step.Topic);
        writer.Text(StepMembers.Encoded[1], step.Text(units));
        if (step.Caution is Caution caution)
        {
            writer.WriteStartObject(StepMembers.Encoded[2]);
            writer.Word(CautionMembers.Encoded[0], caution.Word);
            writer.Text(CautionMembers.Encoded[1], caution.Text);
            writer.WritePropertyName(CautionMembers.Encoded[2]);
            CitationWire.Write(writer, caution.Citation);
            writer.WriteEndObject();
        }

        writer.WritePropertyName(StepMembers.Encoded[3]);
        CitationWire.Write(writer, step.Citation);
        DueListJson.WriteFigures(writer, StepMembers.Encoded[4], step.Figures);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, JsonEncodedText[] names, LayUpPlan plan)
    {
        if (plan.Fill is AntifreezeFill fill)
        {
            JsonEncodedText[] members = AntifreezeMembers.Encoded;
            writer.WriteStartObject(names[8]);
            writer.Text(members[0], fill.Antifreeze.Name);
            Fraction(writer, members[1], fill.Wanted.IsKnown ? fill.Wanted.Value.VolumeFraction : null);
            writer.Quantity(members[2], fill.Wanted.IsKnown ? fill.Wanted.Value.FreezingPoint.Value.DegreesCelsius : null, WireUnits.Temperature);
            Fraction(writer, members[3], fill.Strength.IsKnown ? fill.Strength.Value.VolumeFraction : null);
            writer.Quantity(members[4], fill.Fill.IsKnown ? fill.Fill.Value.ProductLiters : null, WireUnits.Volume);
            writer.Quantity(members[5], fill.Fill.IsKnown ? fill.Fill.Value.WaterLiters : null, WireUnits.Volume);
            writer.Quantity(members[6], fill.ThroughLiters, WireUnits.Volume);
            writer.WriteEndObject();
        }

        FoggingDose fogging = plan.Fogging;
        writer.WriteStartObject(names[9]);
        writer.Word(FoggingMembers.Encoded[0], fogging.Verdict);
        writer.Quantity(FoggingMembers.Encoded[1], fogging.Each.IsKnown ? fogging.Each.Value.Liters : null, WireUnits.Volume);
        writer.Quantity(FoggingMembers.Encoded[2], fogging.Total.IsKnown ? fogging.Total.Value.Liters : null, WireUnits.Volume);
        Fraction(writer, FoggingMembers.Encoded[3], fogging.ClearanceFraction.IsKnown ? fogging.ClearanceFraction.Value : null);
        writer.WriteEndObject();
        if (plan.Fuel is FuelLayUp fuel)
        {
            writer.WriteStartObject(names[10]);
            Fraction(writer, FuelMembers.Encoded[0], fuel.FillFraction);
            writer.Quantity(FuelMembers.Encoded[1], fuel.AfterLiters, WireUnits.Volume);
            writer.Quantity(FuelMembers.Encoded[2], fuel.InsideLiters is null ? null : fuel.AddLiters, WireUnits.Volume);
            writer.Quantity(FuelMembers.Encoded[3], fuel.DoseMilliliters / 1000, WireUnits.Volume);
            writer.WriteEndObject();
        }

        if (plan.Battery is BatteryCheck battery)
        {
            writer.WriteStartObject(names[11]);
            writer.Quantity(BatteryMembers.Encoded[0], battery.FreezingCelsius, WireUnits.Temperature);
            Fraction(writer, BatteryMembers.Encoded[1], battery.LeastDensityRatio.IsKnown ? battery.LeastDensityRatio.Value : null);
            writer.WriteEndObject();
        }
    }

    private static void Fraction(Utf8JsonWriter writer, JsonEncodedText name, double? value)
    {
        if (value is double fraction)
        {
            writer.Real(name, fraction);
        }
    }
}
