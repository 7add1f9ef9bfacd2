using System.Buffers;
using System.Text.Json;
using MarineService.Core.Fluids;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>Writes the balance of an oil change as a JSON document, for programs that read it; it is never read back.</summary>
/// <remarks>
/// Amounts are metric in every document; words in findings follow the units asked for. What is not known is left out, and
/// <c>missing</c> says what would settle it. The schema is <c>fluid-balance.schema.json</c>.
/// </remarks>
public static class FluidBalanceJson
{
    private static readonly DocumentHead Head = new("marine-service/fluid-balance");

    private static readonly MemberNames Members = new(
        "severity", "events", "drain", "fill", "consumption", "rate", "exchanged", "oldOilFraction", "findings", "meanings", "missing");

    private static readonly MemberNames EventMembers = new("told", "refused", "level", "nextPour", "findings");

    private static readonly MemberNames LevelMembers = new(
        "inEngine", "inEngineUncertainty", "inFilter", "roomToFull", "roomUncertainty", "range", "aboveFullChance");

    private static readonly MemberNames PourMembers = new("atMost", "decidedBy", "risk", "atTarget", "cause");

    private static readonly MemberNames CheckMembers = new("measured", "predicted", "difference", "standardUncertainty", "band", "insideNoise");

    private static readonly MemberNames RateMembers = new("litersPer100Hours", "standardUncertainty", "gramsPerKilowattHour", "timesUsual");

    private static readonly MemberNames ExchangedMembers = new("fraction", "standardUncertainty", "insideNoise", "proRata");

    private static readonly MemberNames MeaningMembers = new("code", "likelyCauses", "lookNext");

    /// <summary>Writes a document.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <param name="units">Which units the sentences of findings are written in.</param>
    /// <exception cref="ArgumentNullException"><paramref name="balance"/> or <paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static void Write(FluidBalance balance, IBufferWriter<byte> output, DisplayUnits units)
    {
        Guard.NotNull(balance);
        Guard.NotNull(output);
        Guard.Defined(units);
        JsonEncodedText[] names = Members.Encoded;
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        writer.Word(names[0], balance.Severity);
        writer.WriteStartArray(names[1]);
        IReadOnlyList<OilChangeEvent> told = balance.Account.Told;
        IReadOnlyList<OilChange> events = balance.Account.Events;
        for (int i = 0; i < events.Count; i++)
        {
            Write(writer, told[i], events[i], units);
        }

        writer.WriteEndArray();
        Write(writer, names[2], balance.Drain);
        Write(writer, names[3], balance.Fill);
        Write(writer, names[4], balance.Consumption);
        if (balance.ConsumptionRate.IsKnown)
        {
            writer.WritePropertyName(names[5]);
            Write(writer, balance.ConsumptionRate.Value);
        }

        WriteExchange(writer, balance);
        DueListJson.WriteFindings(writer, names[8], balance.Findings, units);
        writer.WriteStartArray(names[9]);
        foreach (Discrepancy discrepancy in balance.Discrepancies)
        {
            writer.WriteStartObject();
            writer.Text(MeaningMembers.Encoded[0], discrepancy.Finding.Code);
            writer.Texts(MeaningMembers.Encoded[1], discrepancy.LikelyCauses);
            writer.Texts(MeaningMembers.Encoded[2], discrepancy.LookNext);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.Texts(names[10], Missing(balance));
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="units">Which units the sentences of findings are written in.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="balance"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static string ToText(FluidBalance balance, DisplayUnits units)
    {
        Guard.NotNull(balance);
        Guard.Defined(units);
        return Document.ToText(output => Write(balance, output, units));
    }

    private static string[] Missing(FluidBalance balance) =>
    [
        .. balance.Drain.Missing
            .Concat(balance.Fill.Missing)
            .Concat(balance.Consumption.Missing)
            .Concat(balance.ConsumptionRate.Missing)
            .Concat(balance.ConsumptionRate.IsKnown ? balance.ConsumptionRate.Value.GramsPerKilowattHour.Missing : [])
            .Concat(balance.ConsumptionRate.IsKnown ? balance.ConsumptionRate.Value.TrendRatio.Missing : [])
            .Concat(balance.ExchangedFraction.Missing)
            .Distinct(),
    ];

    private static void Write(Utf8JsonWriter writer, OilChangeEvent told, OilChange change, DisplayUnits units)
    {
        writer.WriteStartObject();
        writer.WritePropertyName(EventMembers.Encoded[0]);
        FluidsWire.Write(writer, told);
        writer.WriteBoolean(EventMembers.Encoded[1], change.IsRefused);
        if (change.Estimate is { IsKnown: true, Value: OilEstimate estimate })
        {
            JsonEncodedText[] names = LevelMembers.Encoded;
            writer.WriteStartObject(EventMembers.Encoded[2]);
            Liters(writer, names[0], estimate.InEngine);
            Liters(writer, names[1], estimate.InEngineStandardUncertainty);
            Liters(writer, names[2], estimate.InFilter);
            Liters(writer, names[3], estimate.RoomToFull);
            Liters(writer, names[4], estimate.RoomStandardUncertainty);
            writer.Real(names[5], estimate.RangeFraction);
            writer.Real(names[6], estimate.AboveFullChanceFraction);
            writer.WriteEndObject();
        }

        if (change.NextSafePour() is { IsKnown: true, Value: SafePour pour })
        {
            JsonEncodedText[] names = PourMembers.Encoded;
            writer.WriteStartObject(EventMembers.Encoded[3]);
            Liters(writer, names[0], pour.Volume);
            writer.Word(names[1], pour.DecidedBy);
            writer.Real(names[2], pour.RiskFraction);
            writer.WriteBoolean(names[3], pour.IsAtTarget);
            if (pour.Cause is Finding cause)
            {
                writer.WriteString(names[4], cause.Code);
            }

            writer.WriteEndObject();
        }

        DueListJson.WriteFindings(writer, EventMembers.Encoded[4], change.Findings, units);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, JsonEncodedText name, Answer<BalanceCheck> sum)
    {
        if (sum.IsKnown)
        {
            JsonEncodedText[] names = CheckMembers.Encoded;
            writer.WriteStartObject(name);
            Liters(writer, names[0], sum.Value.Measured);
            Liters(writer, names[1], sum.Value.Predicted);
            Liters(writer, names[2], sum.Value.Difference);
            Liters(writer, names[3], sum.Value.StandardUncertainty);
            writer.Word(names[4], sum.Value.Band);
            writer.WriteBoolean(names[5], sum.Value.IsInsideNoise);
            writer.WriteEndObject();
        }
    }

    private static void Write(Utf8JsonWriter writer, OilConsumption rate)
    {
        JsonEncodedText[] names = RateMembers.Encoded;
        writer.WriteStartObject();
        writer.Real(names[0], rate.LitersPer100Hours);
        writer.Real(names[1], rate.StandardUncertaintyLitersPer100Hours);
        if (rate.GramsPerKilowattHour.IsKnown)
        {
            writer.Real(names[2], rate.GramsPerKilowattHour.Value);
        }

        if (rate.TrendRatio.IsKnown)
        {
            writer.Real(names[3], rate.TrendRatio.Value);
        }

        writer.WriteEndObject();
    }

    private static void WriteExchange(Utf8JsonWriter writer, FluidBalance balance)
    {
        if (!balance.ExchangedFraction.IsKnown)
        {
            return;
        }

        JsonEncodedText[] names = ExchangedMembers.Encoded;
        writer.WriteStartObject(Members.Encoded[6]);
        writer.Real(names[0], balance.ExchangedFraction.Value);
        writer.Real(names[1], balance.ExchangedUncertaintyFraction.Value);
        writer.WriteBoolean(names[2], balance.IsExchangeInsideNoise.Value);
        writer.WriteBoolean(names[3], balance.CountsProRata);
        writer.WriteEndObject();
        if (balance.OldOilFraction.IsKnown)
        {
            writer.Real(Members.Encoded[7], balance.OldOilFraction.Value);
        }
    }

    private static void Liters(Utf8JsonWriter writer, JsonEncodedText name, UnitsNet.Volume volume) =>
        writer.Quantity(name, Canonical.Liters(volume), WireUnits.Volume);
}
