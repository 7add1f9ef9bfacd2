using System.Text.Json;
using MarineService.Core.Belts;

namespace MarineService.Core.Exchange;

/// <content>Writing. What is as usual goes unsaid.</content>
internal static partial class BeltsWire
{
    internal static void Write(Utf8JsonWriter writer, BeltDrive drive)
    {
        JsonEncodedText[] names = DriveMembers.Encoded;
        writer.WriteStartObject();
        Write(writer, names[0], drive.CrankTurns);
        writer.Quantity(names[1], drive.CenterUncertaintyMm == BeltDrive.TapeMeasureMm ? null : drive.CenterUncertaintyMm, WireUnits.Length);
        writer.WriteStartArray(names[2]);
        foreach (Pulley pulley in drive.Pulleys)
        {
            Write(writer, pulley);
        }

        writer.WriteEndArray();
        if (drive.Belt != RibbedBelt.Unmeasured)
        {
            writer.WritePropertyName(names[3]);
            Write(writer, drive.Belt);
        }

        if (drive.Tensioner is Tensioner tensioner)
        {
            writer.WritePropertyName(names[4]);
            Write(writer, tensioner);
        }

        if (drive.EngineRouting.IsKnown)
        {
            Write(writer, names[5], drive.EngineRouting.Value);
        }

        writer.WriteEndObject();
    }

    /// <summary>A routing as people write it: the back is always said, the ribs where they run on a smooth rim.</summary>
    internal static void Write(Utf8JsonWriter writer, JsonEncodedText name, BeltRouting routing)
    {
        writer.WriteStartArray(name);
        foreach (string stop in routing.Written())
        {
            writer.WriteStringValue(stop);
        }

        writer.WriteEndArray();
    }

    internal static void Write(Utf8JsonWriter writer, JsonEncodedText name, Rotation rotation) =>
        RotationWire.Write(writer, name, rotation.Sense, rotation.SeenFrom);

    private static void Write(Utf8JsonWriter writer, Pulley pulley)
    {
        JsonEncodedText[] names = PulleyMembers.Encoded;
        writer.WriteStartObject();
        writer.Text(names[0], pulley.Name);
        writer.Word(names[1], pulley.Surface);
        WritePoint(writer, names[2], pulley.XMm, pulley.YMm);
        writer.Quantity(names[pulley.Surface == PulleySurface.Grooved ? EffectiveDiameter : EffectiveDiameter + 1], pulley.DiameterMm, WireUnits.Length);
        writer.WordUnlessDefault(names[6], pulley.Duty);
        if (pulley.MustTurn is Rotation required)
        {
            Write(writer, names[7], required);
        }

        writer.Quantity(names[8], pulley.LoadKilowatts, WireUnits.Power);
        writer.Quantity(names[9], pulley.WidthMm, WireUnits.Length);
        if (pulley.AxialPositionMm is double axial)
        {
            writer.WriteStartObject(names[10]);
            writer.Quantity(PlaneMembers.Encoded[0], axial, WireUnits.Length);
            WriteUnlessZero(writer, PlaneMembers.Encoded[1], pulley.LeanAcrossRatio);
            WriteUnlessZero(writer, PlaneMembers.Encoded[2], pulley.LeanUpRatio);
            writer.WriteEndObject();
        }

        writer.Quantity(names[11], pulley.LeastWrapDegrees, WireUnits.Angle);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, RibbedBelt belt)
    {
        JsonEncodedText[] names = BeltMembers.Encoded;
        RibbedBelt usual = RibbedBelt.Unmeasured;
        writer.WriteStartObject();
        if (belt.Ribs is int ribs)
        {
            writer.WriteNumber(names[0], ribs);
        }

        writer.Quantity(names[1], belt.EffectiveLengthMm, WireUnits.Length);
        writer.Quantity(names[2], belt.ToleranceIsGiven ? belt.ToleranceMm : null, WireUnits.Length);
        WriteUnlessUsual(writer, names[3], belt.EffectiveLineDifferentialMm, usual.EffectiveLineDifferentialMm, WireUnits.Length);
        WriteUnlessUsual(writer, names[4], belt.BackToPitchLineMm, usual.BackToPitchLineMm, WireUnits.Length);
        WriteUnlessUsual(writer, names[5], belt.ThicknessMm, usual.ThicknessMm, WireUnits.Length);
        WriteUnlessUsual(writer, names[6], belt.MassPerRibKilogramsPerMeter, usual.MassPerRibKilogramsPerMeter, WireUnits.LinearDensity);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, Tensioner tensioner)
    {
        JsonEncodedText[] names = TensionerMembers.Encoded;
        writer.WriteStartObject();
        writer.Word(names[0], tensioner.IsAutomatic ? TensionerKind.Automatic : TensionerKind.SetByHand);
        writer.Text(names[1], tensioner.PulleyName);
        WritePoint(writer, names[2], tensioner.PivotXMm, tensioner.PivotYMm);
        writer.Quantity(names[3], tensioner.FromDegrees, WireUnits.Angle);
        writer.Quantity(names[4], tensioner.ToDegrees, WireUnits.Angle);
        if (tensioner.TorqueNewtonMeters is double torque)
        {
            writer.WriteStartObject(names[5]);
            writer.Quantity(SpringMembers.Encoded[0], torque, WireUnits.Torque);
            WriteUnlessUsual(writer, SpringMembers.Encoded[1], tensioner.SpringRateNewtonMetersPerDegree, 0, WireUnits.TorquePerAngle);
            if (tensioner.SpringPushes is Sense pushes)
            {
                Write(writer, SpringMembers.Encoded[2], Rotation.Of(pushes, Viewpoint.PulleyEnd));
            }

            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    internal static void WritePoint(Utf8JsonWriter writer, JsonEncodedText name, double xMm, double yMm)
    {
        writer.WriteStartObject(name);
        writer.Real(PointMembers.Encoded[0], xMm);
        writer.Real(PointMembers.Encoded[1], yMm);
        writer.WriteString(PointMembers.Encoded[2], WireUnits.Length.CanonicalText);
        writer.WriteEndObject();
    }

    private static void WriteUnlessZero(Utf8JsonWriter writer, JsonEncodedText name, double ratio)
    {
        if (ratio != 0)
        {
            writer.Real(name, ratio);
        }
    }

    private static void WriteUnlessUsual(Utf8JsonWriter writer, JsonEncodedText name, double value, double usual, WireUnits units) =>
        writer.Quantity(name, value == usual ? null : value, units);
}
