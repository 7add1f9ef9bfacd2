using System.Text.Json;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;

namespace MarineService.Core.Exchange;

/// <content>Writing.</content>
internal static partial class JobsWire
{
    internal static void Write(Utf8JsonWriter writer, VisitReport report)
    {
        JsonEncodedText[] names = ReportMembers.Encoded;
        writer.Text(names[2], report.CardId);
        writer.Date(names[3], report.Day);
        writer.WriteStartArray(names[4]);
        foreach (VisitEvent one in report.Events)
        {
            Write(writer, one);
        }

        writer.WriteEndArray();
        writer.Hours(names[5], report.Dial);
        if (report.Oil.Count > 0)
        {
            writer.WritePropertyName(names[6]);
            FluidsWire.Write(writer, report.Oil);
        }

        writer.Texts(names[7], report.Belt);
        if (report.Verdicts.Count > 0)
        {
            writer.WriteStartArray(names[8]);
            foreach (KeyValuePair<string, bool> verdict in report.Verdicts.OrderBy(one => one.Key, StringComparer.Ordinal))
            {
                writer.WriteStartObject();
                writer.Text(VerdictMembers.Encoded[0], verdict.Key);
                writer.WriteBoolean(VerdictMembers.Encoded[1], verdict.Value);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        writer.Text(names[9], report.By);
        writer.Text(names[10], report.CheckedBy);
        RecordsWire.WriteEvidence(writer, names[11], report.Evidence);
        writer.Part(names[12], report.Start, CoolingWire.Write);
        writer.Part(names[13], report.Impeller, CoolingWire.Write);
        writer.Part(names[14], report.Bucket, CoolingWire.Write);
        TallyWire.Write(writer, names[15], report.Tally);
    }

    private static void Write(Utf8JsonWriter writer, VisitEvent one)
    {
        JsonEncodedText[] names = EventMembers.Encoded;
        writer.WriteStartObject();
        switch (one.Kind)
        {
            case WorkEventKind.Step:
                writer.Text(names[0], one.Text);
                if (one.Proofs.Count > 0)
                {
                    writer.WriteStartArray(names[1]);
                    foreach (StepProof proof in one.Proofs)
                    {
                        Write(writer, proof);
                    }

                    writer.WriteEndArray();
                }

                break;
            case WorkEventKind.Found:
                writer.Word(names[2], one.Circumstance!.Value);
                writer.WriteBoolean(names[3], one.Holds);
                break;
            case WorkEventKind.PutDown:
                writer.Text(names[4], one.Text);
                break;
            default:
                writer.Date(names[5], one.Day);
                break;
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, StepProof proof)
    {
        JsonEncodedText[] names = ProofMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], proof.HoldPoint);
        writer.WriteBoolean(names[1], proof.HasPassed);
        writer.Quantity(names[2], proof.Minutes, WireUnits.Time);
        if (proof.Missing is int missing)
        {
            writer.WriteNumber(names[3], missing);
        }

        writer.Text(names[4], proof.Note);
        writer.WriteEndObject();
    }
}
