using System.Buffers;
using System.Text.Json;
using MarineService.Core.Belts;
using MarineService.Core.Internal;

namespace MarineService.Core.Exchange;

/// <summary>Writes what was seen on a belt as a JSON document, for programs that show or draw it; it is never read back.</summary>
/// <remarks>
/// Amounts are metric in every document; words in findings follow the units asked for. Each stop has what a drawing needs: centre, radius of
/// the pitch line, where the belt runs on and off, and the span behind it. What is not known is left out, and <c>missing</c> says what would
/// settle it. The schema is <c>belt-examination.schema.json</c>.
/// </remarks>
public static class BeltExaminationJson
{
    private static readonly DocumentHead Head = new("marine-service/belt-examination");

    private static readonly MemberNames Members = new(
        "routing", "verdict", "isFine", "engineRouting", "edits", "effectiveLength", "pitchLength", "lengthDifference", "turningNumber", "stops", "tensioner", "tension", "alignment", "findings");

    private static readonly MemberNames EditMembers = new("kind", "pulley", "other", "face", "words");

    private static readonly MemberNames StopMembers = new(
        "pulley", "face", "turns", "speedRatio", "wrap", "pitchRadius", "center", "entry", "exit", "exitSpan");

    private static readonly MemberNames TensionerMembers = new(
        "pulley", "arm", "takeUpLeft", "takeUpPerDegree", "shortestBelt", "longestBelt", "pull", "tightens", "release", "missing");

    private static readonly MemberNames TensionMembers = new("crankSpeed", "leastPull", "decidedBy", "givenPull", "beltSpeed", "holds", "pulleys", "missing");

    private static readonly MemberNames PulleyMembers = new("pulley", "arriving", "leaving", "slipMargin");

    private static readonly MemberNames AlignmentMembers = new("isFine", "limit", "runs", "missing");

    private static readonly MemberNames RunMembers = new("from", "to", "offset", "over", "leavingAngle", "entryAngle");

    /// <summary>Writes a document.</summary>
    /// <param name="examination">What was seen.</param>
    /// <param name="output">Where to write it, in UTF-8.</param>
    /// <param name="units">Which units the sentences are written in.</param>
    /// <exception cref="ArgumentNullException"><paramref name="examination"/> or <paramref name="output"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static void Write(BeltExamination examination, IBufferWriter<byte> output, DisplayUnits units)
    {
        Guard.NotNull(examination);
        Guard.NotNull(output);
        Guard.Defined(units);
        JsonEncodedText[] names = Members.Encoded;
        using Utf8JsonWriter writer = Document.Writer(output);
        writer.WriteStartObject();
        Head.Write(writer);
        BeltsWire.Write(writer, names[0], examination.AsItLies);
        writer.Word(names[1], examination.Check.Verdict);
        writer.WriteBoolean(names[2], examination.IsFine);
        if (examination.Comparison.IsKnown)
        {
            BeltsWire.Write(writer, names[3], examination.Comparison.Value.Right);
            WriteEdits(writer, examination.Comparison.Value.Edits);
        }

        if (examination.Check.Geometry.IsKnown)
        {
            RoutingGeometry geometry = examination.Check.Geometry.Value;
            writer.Quantity(names[5], geometry.EffectiveLengthMm, WireUnits.Length);
            writer.Quantity(names[6], geometry.PitchLengthMm, WireUnits.Length);
            writer.Quantity(
                names[7],
                examination.Comparison is { IsKnown: true, Value.LengthDifference: { IsKnown: true } longer } ? Canonical.Millimeters(longer.Value) : null,
                WireUnits.Length);
            writer.WriteNumber(names[8], geometry.TurningNumber);
            WriteStops(writer, examination.AsItLies, geometry);
        }

        if (examination.Check.Tensioner.IsKnown)
        {
            Write(writer, examination.Check.Tensioner.Value);
        }

        WriteTension(writer, examination);
        Write(writer, examination.Alignment);
        DueListJson.WriteFindings(writer, names[13], examination.Findings, units);
        writer.WriteEndObject();
    }

    /// <summary>The document as text.</summary>
    /// <param name="examination">What was seen.</param>
    /// <param name="units">Which units the sentences are written in.</param>
    /// <returns>The document, indented by two spaces, lines ending in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="examination"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public static string ToText(BeltExamination examination, DisplayUnits units)
    {
        Guard.NotNull(examination);
        Guard.Defined(units);
        return Document.ToText(output => Write(examination, output, units));
    }

    private static void WriteEdits(Utf8JsonWriter writer, IReadOnlyList<RoutingEdit> edits)
    {
        JsonEncodedText[] names = EditMembers.Encoded;
        writer.WriteStartArray(Members.Encoded[4]);
        foreach (RoutingEdit edit in edits)
        {
            writer.WriteStartObject();
            writer.Word(names[0], edit.Kind);
            writer.Text(names[1], edit.PulleyName);
            writer.Text(names[2], edit.OtherName);
            if (edit.Face is BeltFace face)
            {
                writer.Word(names[3], face);
            }

            writer.Text(names[4], edit.ToString());
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static void WriteStops(Utf8JsonWriter writer, BeltRouting routing, RoutingGeometry geometry)
    {
        JsonEncodedText[] names = StopMembers.Encoded;
        writer.WriteStartArray(Members.Encoded[9]);
        for (int i = 0; i < routing.Stops.Count; i++)
        {
            StopGeometry stop = geometry.Stops[i];
            writer.WriteStartObject();
            writer.Text(names[0], routing.Stops[i].PulleyName);
            writer.Word(names[1], routing.Stops[i].Face);
            BeltsWire.Write(writer, names[2], routing.TurningOf(i));
            writer.Real(names[3], routing.SpeedRatio(i));
            writer.Quantity(names[4], stop.WrapDegrees, WireUnits.Angle);
            writer.Quantity(names[5], stop.PitchRadiusMm, WireUnits.Length);
            BeltsWire.WritePoint(writer, names[6], stop.CenterXMm, stop.CenterYMm);
            BeltsWire.WritePoint(writer, names[7], stop.EntryXMm, stop.EntryYMm);
            BeltsWire.WritePoint(writer, names[8], stop.ExitXMm, stop.ExitYMm);
            writer.Quantity(names[9], stop.ExitSpanMm, WireUnits.Length);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter writer, TensionerCheck check)
    {
        JsonEncodedText[] names = TensionerMembers.Encoded;
        writer.WriteStartObject(Members.Encoded[10]);
        writer.Text(names[0], check.Tensioner.PulleyName);
        writer.Quantity(names[1], check.Arm.IsKnown ? check.Arm.Value.ArmDegrees : null, WireUnits.Angle);
        writer.Quantity(names[2], check.TakeUpLeft.IsKnown ? Canonical.Millimeters(check.TakeUpLeft.Value) : null, WireUnits.Length);
        writer.Quantity(names[3], check.Arm.IsKnown ? Math.Abs(check.Arm.Value.TakeUpMmPerDegree) : null, WireUnits.LengthPerAngle);
        writer.Quantity(names[4], check.Shortest.IsKnown ? Canonical.Millimeters(check.Shortest.Value) : null, WireUnits.Length);
        writer.Quantity(names[5], check.Longest.IsKnown ? Canonical.Millimeters(check.Longest.Value) : null, WireUnits.Length);
        writer.Quantity(names[6], check.BeltTension.IsKnown ? Canonical.Newtons(check.BeltTension.Value) : null, WireUnits.Force);
        if (check.Release.IsKnown)
        {
            BeltsWire.Write(writer, names[7], check.Tightens.Value);
            BeltsWire.Write(writer, names[8], check.Release.Value);
        }

        writer.Texts(names[9], [.. check.Arm.Missing.Concat(check.BeltTension.Missing).Concat(check.Release.Missing).Distinct()]);
        writer.WriteEndObject();
    }

    private static void WriteTension(Utf8JsonWriter writer, BeltExamination examination)
    {
        JsonEncodedText[] names = TensionMembers.Encoded;
        writer.WriteStartObject(Members.Encoded[11]);
        writer.Quantity(names[0], Canonical.RevolutionsPerMinute(examination.CrankSpeed), WireUnits.RotationalSpeed);
        writer.Quantity(names[1], examination.LeastPull.IsKnown ? Canonical.Newtons(examination.LeastPull.Value) : null, WireUnits.Force);
        writer.Text(names[2], examination.DecidingPulley.IsKnown ? examination.DecidingPulley.Value : null);
        if (examination.Tension.IsKnown)
        {
            TensionCheck check = examination.Tension.Value;
            writer.Quantity(names[3], Canonical.Newtons(check.GivenPull), WireUnits.Force);
            writer.Quantity(names[4], check.BeltSpeed.MetersPerSecond, WireUnits.Speed);
            writer.WriteBoolean(names[5], check.Holds);
            writer.WriteStartArray(names[6]);
            foreach (PulleyTension pulley in check.Pulleys)
            {
                writer.WriteStartObject();
                writer.Text(PulleyMembers.Encoded[0], pulley.PulleyName);
                writer.Quantity(PulleyMembers.Encoded[1], Canonical.Newtons(pulley.ArrivingPull), WireUnits.Force);
                writer.Quantity(PulleyMembers.Encoded[2], Canonical.Newtons(pulley.LeavingPull), WireUnits.Force);
                writer.Real(PulleyMembers.Encoded[3], pulley.SlipMarginRatio);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        writer.Texts(names[7], [.. examination.LeastPull.Missing.Concat(examination.Tension.Missing).Distinct()]);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, Answer<AlignmentCheck> alignment)
    {
        JsonEncodedText[] names = AlignmentMembers.Encoded;
        writer.WriteStartObject(Members.Encoded[12]);
        if (alignment.IsKnown)
        {
            writer.WriteBoolean(names[0], alignment.Value.IsFine);
            writer.Text(names[1], alignment.Value.Limit.Name);
            writer.WriteStartArray(names[2]);
            foreach (GroovedRun run in alignment.Value.Runs)
            {
                writer.WriteStartObject();
                writer.Text(RunMembers.Encoded[0], run.FromPulley);
                writer.Text(RunMembers.Encoded[1], run.ToPulley);
                writer.Quantity(RunMembers.Encoded[2], run.OffsetMm, WireUnits.Length);
                writer.Quantity(RunMembers.Encoded[3], run.FreeLengthMm, WireUnits.Length);
                writer.Quantity(RunMembers.Encoded[4], run.LeavingAngleDegrees, WireUnits.Angle);
                writer.Quantity(RunMembers.Encoded[5], run.EntryAngleDegrees, WireUnits.Angle);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        writer.Texts(names[3], alignment.Missing);
        writer.WriteEndObject();
    }
}
