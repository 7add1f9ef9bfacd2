using System.Text.Json;
using MarineService.Core.Oils;

namespace MarineService.Core.Exchange;

/// <content>Writing.</content>
internal static partial class OilsWire
{
    internal static void Write(Utf8JsonWriter writer, PermittedOils permitted)
    {
        writer.WriteStartObject();
        writer.WriteStartArray(PermittedMembers.Encoded[0]);
        for (int i = 0; i < permitted.Grades.Count; i++)
        {
            PermittedGrade grade = permitted.Grades[i];
            writer.WriteStartObject();
            writer.Text(GradeMembers.Encoded[0], grade.Grade.Designation);
            writer.Quantity(GradeMembers.Encoded[1], grade.ColdestCelsius, WireUnits.Temperature);
            writer.Quantity(GradeMembers.Encoded[2], grade.HottestCelsius, WireUnits.Temperature);
            if (grade.MakersPreference is int preference)
            {
                writer.WriteNumber(GradeMembers.Encoded[3], preference);
            }

            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        if (permitted.Required.Count > 0)
        {
            writer.WriteStartArray(PermittedMembers.Encoded[1]);
            for (int i = 0; i < permitted.Required.Count; i++)
            {
                writer.WriteStartArray();
                for (int j = 0; j < permitted.Required[i].AnyOf.Count; j++)
                {
                    writer.WriteStringValue(permitted.Required[i].AnyOf[j].ToString());
                }

                writer.WriteEndArray();
            }

            writer.WriteEndArray();
        }

        writer.Texts(PermittedMembers.Encoded[2], [.. permitted.Forbidden.Select(category => category.Name)]);
        writer.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter writer, LabelledOil oil)
    {
        writer.WriteStartObject();
        writer.Text(LabelMembers.Encoded[0], oil.Grade.Designation);
        writer.Texts(LabelMembers.Encoded[1], [.. oil.Claims.Select(claim => claim.ToString())]);
        writer.Quantity(LabelMembers.Encoded[2], oil.Viscosity?.Kv40, WireUnits.KinematicViscosity);
        writer.Quantity(LabelMembers.Encoded[3], oil.Viscosity?.Kv100, WireUnits.KinematicViscosity);
        writer.WriteEndObject();
    }
}
