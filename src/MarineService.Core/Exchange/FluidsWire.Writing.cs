using System.Text.Json;
using MarineService.Core.Fluids;

namespace MarineService.Core.Exchange;

/// <content>Writing sumps and events. What is as the library assumes it goes unsaid.</content>
internal static partial class FluidsWire
{
    internal static void Write(Utf8JsonWriter writer, Sump sump)
    {
        JsonEncodedText[] names = SumpMembers.Encoded;
        Sump assumed = Sump.Holding(sump.ServiceFill, sump.Filter, sump.Dipstick);
        writer.WriteStartObject();
        writer.Quantity(names[0], sump.ServiceFillLiters, WireUnits.Volume);
        writer.Quantity(names[1], Unless(sump.ServiceFillSigmaLiters, assumed.ServiceFillSigmaLiters), WireUnits.Volume);
        writer.Quantity(names[2], sump.FilterLiters, WireUnits.Volume);
        writer.Quantity(names[3], Unless(sump.FilterSigmaLiters, assumed.FilterSigmaLiters), WireUnits.Volume);
        writer.Quantity(names[4], sump.ServiceFillWithoutFilter?.Liters, WireUnits.Volume);
        writer.Quantity(names[5], sump.DryCapacity?.Liters, WireUnits.Volume);
        Sump.Residual plug = sump.FindResidual(DrainMethod.DrainPlug)!.Value;
        if (plug != assumed.FindResidual(DrainMethod.DrainPlug))
        {
            Write(writer, names[6], plug);
        }

        if (sump.FindResidual(DrainMethod.Extractor) is Sump.Residual extractor)
        {
            Write(writer, names[7], extractor);
        }

        if (sump.IsDrainedOnlyByExtractor)
        {
            writer.WriteBoolean(names[8], true);
        }

        if (sump.Passages.Count > 0)
        {
            writer.WriteStartArray(names[9]);
            for (int i = 0; i < sump.Passages.Count; i++)
            {
                writer.WriteStartObject();
                writer.Text(PassageMembers.Encoded[0], sump.Passages[i].Name);
                writer.Quantity(PassageMembers.Encoded[1], sump.Passages[i].Liters, WireUnits.Volume);
                writer.WriteBoolean(PassageMembers.Encoded[2], sump.Passages[i].Drains);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
        }

        double density = sump.Oil.DensityAt15C;
        writer.Quantity(names[10], Unless(density, OilDensity.Typical.DensityAt15C), WireUnits.Density);
        writer.WritePropertyName(names[11]);
        Write(writer, sump.Dipstick);
        writer.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter writer, IReadOnlyList<OilChangeEvent> events)
    {
        writer.WriteStartArray();
        for (int i = 0; i < events.Count; i++)
        {
            Write(writer, events[i]);
        }

        writer.WriteEndArray();
    }

    internal static void Write(Utf8JsonWriter writer, OilChangeEvent told)
    {
        JsonEncodedText[] names = EventMembers.Encoded;
        writer.WriteStartObject();
        writer.Word(names[0], told.Step);
        if (told.Measured is MeasuredVolume amount)
        {
            RecordsWire.WriteAmount(writer, names[1], amount);
        }

        if (told.DrainedBy is DrainMethod method)
        {
            writer.WordUnlessDefault(names[2], method);
        }

        if (told.OldFilterEmptiedIntoMeasure is bool emptied)
        {
            writer.WriteBoolean(names[3], emptied);
        }

        if (told.Appearance is OilAppearance appearance)
        {
            writer.Word(names[4], appearance);
        }

        if (told.Reading is DipstickReading reading)
        {
            writer.WritePropertyName(names[5]);
            Write(writer, reading);
        }

        if (told.Period is PeriodSinceChange period)
        {
            writer.WritePropertyName(names[6]);
            Write(writer, period);
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, DipstickReading reading)
    {
        JsonEncodedText[] names = ReadingMembers.Encoded;
        writer.WriteStartObject();
        writer.Real(names[0], reading.RangeFraction);
        if (Unless(reading.SigmaFraction, DipstickReading.DefaultSigma) is double sigma)
        {
            writer.Real(names[1], sigma);
        }

        writer.Quantity(names[2], reading.Celsius, WireUnits.Temperature);
        writer.Quantity(names[3], reading.SettledMinutes, WireUnits.Time);
        if (reading.Seating is StickSeating seating)
        {
            writer.Word(names[4], seating);
        }

        if (reading.Attitude is BoatAttitude attitude)
        {
            writer.Word(names[5], attitude);
        }

        if (reading.IsTilted)
        {
            writer.Quantity(names[6], Degrees(reading.PitchRad), WireUnits.Angle);
            writer.Quantity(names[7], Degrees(reading.RollRad), WireUnits.Angle);
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, PeriodSinceChange period)
    {
        JsonEncodedText[] names = PeriodMembers.Encoded;
        writer.WriteStartObject();
        writer.WritePropertyName(names[0]);
        Write(writer, period.LevelAfterLastChange);
        if (period.TopUps.Count > 0)
        {
            writer.WriteStartArray(names[1]);
            for (int i = 0; i < period.TopUps.Count; i++)
            {
                RecordsWire.WriteAmount(writer, period.TopUps[i]);
            }

            writer.WriteEndArray();
        }

        writer.Hours(names[2], period.Running);
        writer.Quantity(names[3], period.MeanPowerKilowatts, WireUnits.Power);
        if (period.EarlierLitersPer100Hours.Count > 0)
        {
            writer.WriteStartArray(names[4]);
            for (int i = 0; i < period.EarlierLitersPer100Hours.Count; i++)
            {
                writer.Real(period.EarlierLitersPer100Hours[i]);
            }

            writer.WriteEndArray();
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, Dipstick stick)
    {
        JsonEncodedText[] names = DipstickMembers.Encoded;
        writer.WriteStartObject();
        writer.Quantity(names[0], stick.RangeLiters, WireUnits.Volume);
        writer.Quantity(names[1], Unless(stick.RangeSigmaLiters, Dipstick.DefaultRangeSigma * stick.RangeLiters), WireUnits.Volume);
        writer.Quantity(names[2], Unless(stick.ReferenceCelsius, Dipstick.ColdCelsius), WireUnits.Temperature);
        writer.WordUnlessDefault(names[3], stick.Seating);
        writer.WordUnlessDefault(names[4], stick.Attitude);
        writer.Quantity(names[5], stick.AddMarkMm, WireUnits.Length);
        writer.Quantity(names[6], stick.FullMarkMm, WireUnits.Length);
        if (stick.Shape is SumpShape shape)
        {
            writer.WriteStartObject(names[7]);
            JsonEncodedText[] parts = ShapeMembers.Encoded;
            writer.Quantity(parts[0], shape.LengthMm, WireUnits.Length);
            writer.Quantity(parts[1], shape.WidthMm, WireUnits.Length);
            writer.Quantity(parts[2], shape.HeightMm, WireUnits.Length);
            writer.Quantity(parts[3], Unless(shape.StickXMm, 0), WireUnits.Length);
            writer.Quantity(parts[4], Unless(shape.StickYMm, 0), WireUnits.Length);
            writer.Quantity(parts[5], Unless(Degrees(shape.LeanRad), 0), WireUnits.Angle);
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, JsonEncodedText name, Sump.Residual residual)
    {
        writer.WriteStartObject(name);
        writer.Quantity(ResidualMembers.Encoded[0], residual.Liters, WireUnits.Volume);
        writer.Quantity(ResidualMembers.Encoded[1], residual.SigmaLiters, WireUnits.Volume);
        writer.WriteEndObject();
    }

    private static double? Unless(double value, double assumed) => value.Equals(assumed) ? null : value;

    // Degrees are what people write; twelve decimals keep what was read and not the last bits of the way through radians.
    private static double Degrees(double radians) => Math.Round(radians * 180 / Math.PI, 12);
}
