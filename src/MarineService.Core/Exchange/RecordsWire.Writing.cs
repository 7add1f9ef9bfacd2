using System.Text.Json;
using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <content>Writing entries.</content>
internal static partial class RecordsWire
{
    internal static void Write(Utf8JsonWriter writer, ServiceLog log)
    {
        writer.WriteStartArray(LogMembers.Encoded[2]);
        for (int i = 0; i < log.Entries.Count; i++)
        {
            Write(writer, log.Entries[i]);
        }

        writer.WriteEndArray();
    }

    internal static void WriteEvidence(Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<Evidence> evidence)
    {
        if (evidence.Count > 0)
        {
            writer.WriteStartArray(name);
            for (int i = 0; i < evidence.Count; i++)
            {
                writer.WriteStartObject();
                writer.Word(EvidenceMembers.Encoded[0], evidence[i].Kind);
                writer.Text(EvidenceMembers.Encoded[1], evidence[i].Reference);
                writer.Text(EvidenceMembers.Encoded[2], evidence[i].Sha256);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }
    }

    internal static void Write(Utf8JsonWriter writer, LogEntry entry)
    {
        JsonEncodedText[] names = EntryMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], entry.Id);
        writer.Word(names[1], KindOf(entry.Fact));
        writer.Text(names[2], entry.Scope == LogEntry.MainEngine ? null : entry.Scope);
        writer.Date(names[3], entry.Date);
        writer.Hours(names[DialMember], entry.Fact?.Dial);
        WriteFact(writer, names, entry.Fact);
        writer.Text(names[23], entry.By);
        writer.Text(names[24], entry.CheckedBy);
        WriteEvidence(writer, names[25], entry.Evidence);
        writer.Text(names[26], entry.Note);
        writer.Text(names[CorrectsMember], entry.Corrects);
        if (entry.IsReconstructed)
        {
            writer.WriteBoolean(names[ReconstructedMember], true);
        }

        writer.WriteEndObject();
    }

    private static EntryKind KindOf(ServiceFact? fact) => fact switch
    {
        MeterReading => EntryKind.Reading,
        MeterChange => EntryKind.MeterChange,
        EnteredService => EntryKind.EnteredService,
        OpeningDuePoint => EntryKind.OpeningDuePoint,
        GridOrigin => EntryKind.GridOrigin,
        ServiceEvent => EntryKind.Event,
        DutyChange => EntryKind.Duty,
        TopUp => EntryKind.TopUp,
        OilChangeRecord => EntryKind.OilChange,
        ImpellerInspection => EntryKind.ImpellerInspection,
        WinterWork => EntryKind.WinterWork,
        BucketTest => EntryKind.BucketTest,
        AnodeInspection => EntryKind.AnodeInspection,
        LaidUp => EntryKind.LaidUp,
        Commissioned => EntryKind.Commissioned,
        PlannedLayUp => EntryKind.PlannedLayUp,
        PlannedUse => EntryKind.PlannedUse,
        null => EntryKind.Withdrawal,
        _ => EntryKind.Completion,
    };

    private static void WriteFact(Utf8JsonWriter writer, JsonEncodedText[] names, ServiceFact? fact)
    {
        switch (fact)
        {
            case MeterReading reading:
                writer.WordUnlessDefault(names[SourceMember], reading.Source);
                break;
            case Completion completion:
                writer.Text(names[TaskMember], completion.TaskId);
                writer.WordUnlessDefault(names[ResultMember], completion.Outcome);
                writer.Number(names[FractionMember], completion.ExchangedFraction);
                writer.Number(names[FractionUncertaintyMember], completion.FractionUncertainty);
                break;
            case OpeningDuePoint opening:
                writer.Text(names[TaskMember], opening.TaskId);
                writer.Date(names[DueDateMember], opening.DueDate);
                writer.Hours(names[DueHoursMember], opening.DueHours);
                break;
            case GridOrigin grid:
                writer.Text(names[TaskMember], grid.TaskId);
                break;
            case ServiceEvent happening:
                writer.Text(names[EventMember], happening.Kind);
                break;
            case DutyChange duty:
                WriteConditions(writer, names[ConditionsMember], duty.Conditions);
                break;
            case TopUp topUp:
                writer.Text(names[FluidMember], topUp.Fluid);
                WriteAmount(writer, names[AmountMember], topUp.Amount);
                break;
            case OilChangeRecord record:
                writer.Text(names[TaskMember], record.TaskId);
                writer.WritePropertyName(names[AccountMember]);
                FluidsWire.Write(writer, record.Events);
                break;
            case ImpellerInspection inspection:
                writer.WritePropertyName(names[ImpellerMember]);
                CoolingWire.Write(writer, inspection);
                break;
            case BucketTest test:
                writer.WritePropertyName(names[BucketMember]);
                CoolingWire.Write(writer, test);
                break;
            case AnodeInspection anode:
                writer.WritePropertyName(names[AnodeMember]);
                CoolingWire.Write(writer, anode);
                break;
            case WinterWork work:
                LayUpWire.Write(writer, names[WorksMember], work.Works);
                break;
            case PlannedLayUp plan:
                writer.Date(names[UntilMember], plan.To);
                break;
            case PlannedUse plan:
                writer.Date(names[UntilMember], plan.To);
                writer.Hours(names[PlannedHoursMember], plan.Hours);
                break;
            case MeterChange change:
                WriteChange(writer, names, change);
                break;
            case EnteredService { Rebuilt: true } entered:
                writer.Hours(names[EngineZeroMember], entered.EngineZero);
                break;
        }
    }

    private static void WriteConditions(Utf8JsonWriter writer, JsonEncodedText name, IReadOnlyList<string> conditions)
    {
        // An empty list says "normal duty from here on", so it is written too.
        writer.WriteStartArray(name);
        for (int i = 0; i < conditions.Count; i++)
        {
            writer.WriteStringValue(conditions[i]);
        }

        writer.WriteEndArray();
    }

    internal static void WriteAmount(Utf8JsonWriter writer, JsonEncodedText name, MeasuredVolume amount)
    {
        writer.WritePropertyName(name);
        WriteAmount(writer, amount);
    }

    internal static void WriteAmount(Utf8JsonWriter writer, MeasuredVolume amount)
    {
        writer.WriteStartObject();
        writer.Quantity(AmountMembers.Encoded[0], amount.Liters, WireUnits.Volume);
        writer.Quantity(AmountMembers.Encoded[1], amount.Celsius, WireUnits.Temperature);
        writer.Quantity(AmountMembers.Encoded[2], amount.SigmaLiters, WireUnits.Volume);
        writer.WriteEndObject();
    }

    private static void WriteChange(Utf8JsonWriter writer, JsonEncodedText[] names, MeterChange change)
    {
        writer.Hours(names[OldFinalMember], change.OldFinal);
        writer.Hours(names[NewInitialMember], change.NewInitial > EngineHours.Zero ? change.NewInitial : null);
        writer.Hours(names[UnmeteredMember], change.Unmetered > EngineHours.Zero ? change.Unmetered : null);
        writer.Date(names[DeadSinceMember], change.DeadSince);
        if (change.NewMeter is not null)
        {
            writer.WritePropertyName(names[NewMeterMember]);
            EnginesWire.Write(writer, change.NewMeter);
        }
    }
}
