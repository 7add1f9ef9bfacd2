using System.Text.Json;
using MarineService.Core.Parts;
using MarineService.Core.Specifications;

namespace MarineService.Core.Exchange;

/// <content>Writing covers.</content>
internal static partial class CoversWire
{
    internal static void Write(Utf8JsonWriter writer, FittedCover cover)
    {
        JsonEncodedText[] names = CoverMembers.Encoded;
        Joint joint = cover.Joint;
        writer.WriteStartObject();
        writer.Text(names[0], cover.Name);
        writer.WordUnlessDefault(names[1], joint.Seat);
        writer.WordUnlessDefault(names[2], joint.ThreadedInto);
        if (joint.Thread is MetricThread thread)
        {
            writer.WriteStartObject(names[3]);
            writer.Quantity(ThreadMembers.Encoded[0], thread.DiameterMm, WireUnits.Length);
            writer.Quantity(ThreadMembers.Encoded[1], thread.PitchMm, WireUnits.Length);
            writer.WriteEndObject();
        }

        if (joint.PropertyClass is PropertyClass strength)
        {
            bool isListed = PropertyClass.All.Contains(strength);
            writer.WriteStartObject(names[4]);
            writer.Text(ClassMembers.Encoded[0], strength.Name);
            writer.Quantity(ClassMembers.Encoded[1], isListed ? null : strength.ProofMegapascals(MetricThread.M8), WireUnits.Stress);
            writer.WriteEndObject();
        }

        writer.Quantity(names[5], joint.MakersNewtonMeters, WireUnits.Torque);
        if (cover.Pattern is BoltPattern pattern)
        {
            writer.WritePropertyName(names[6]);
            Write(writer, cover, pattern);
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, FittedCover cover, BoltPattern pattern)
    {
        JsonEncodedText[] names = PatternMembers.Encoded;
        writer.WriteStartObject();
        writer.Quantity(names[0], pattern.RadiusMm, WireUnits.Length);
        writer.WriteStartArray(names[1]);
        for (int i = 0; i < pattern.HoleCount; i++)
        {
            writer.Real(Math.Round(pattern.AnglesRad[i] / BoltPattern.Degree, DegreeDigits));
        }

        writer.WriteEndArray();
        writer.Quantity(names[2], cover.HoleMm, WireUnits.Length);
        writer.WordUnlessDefault(names[3], cover.Location);
        if (cover.FirstHoleOn is int first)
        {
            writer.WriteNumber(names[4], first);
        }

        writer.WriteEndObject();
    }
}
