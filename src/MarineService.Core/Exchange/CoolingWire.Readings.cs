using System.Text.Json;
using MarineService.Core.Cooling;
using NodaTime;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <content>Bucket tests and anode inspections in logs.</content>
internal static partial class CoolingWire
{
    private static readonly MemberNames BucketMembers = new("speed", "catches");
    private static readonly MemberNames CatchMembers = new("outlet", "amount", "time");
    private static readonly MemberNames AnodeMembers = new("name", "metal", "worn", "monthsInWater");

    /// <summary>A bucket test that waits for its date and dial; null when something is wrong with it.</summary>
    internal static Func<LocalDate, EngineHours?, BucketTest>? ReadBucket(ref JsonCursor json)
    {
        if (!json.BeginObject("a bucket test with speed and catches"))
        {
            return null;
        }

        int before = json.FaultCount;
        double? speed = null;
        List<BucketCatch> catches = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(BucketMembers, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                speed = json.Quantity(WireUnits.RotationalSpeed, RawWaterPump.LeastRpm, RawWaterPump.MostRpm);
            }
            else
            {
                catches = ReadCatches(ref json);
            }

            json.EndMember();
        }

        json.Require(BucketMembers, seen, 0, 1);
        return json.FaultCount > before || speed is not double rpm
            ? null
            : (date, dial) => BucketTest.Of(date, RotationalSpeed.FromRevolutionsPerMinute(rpm), catches, dial);
    }

    /// <summary>An anode inspection that waits for its date and dial; null when something is wrong with it.</summary>
    internal static Func<LocalDate, EngineHours?, AnodeInspection>? ReadAnode(ref JsonCursor json)
    {
        if (!json.BeginObject("an anode with name, worn and monthsInWater"))
        {
            return null;
        }

        string? name = null;
        AnodeMetal? metal = null;
        double? worn = null;
        int? months = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(AnodeMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: name = json.NotBlank(); break;
                case 1: metal = json.Word<AnodeMetal>(); break;
                case 2: worn = json.Real(0, 1); break;
                default: months = json.WholeNumber(0, AnodeInspection.MostMonths); break;
            }

            json.EndMember();
        }

        json.Require(AnodeMembers, seen, 0, 2, 3);
        return name is not null && worn is double gone && months is int time
            ? (date, dial) => AnodeInspection.Of(date, name, metal ?? default, gone, time, dial)
            : null;
    }

    internal static void Write(Utf8JsonWriter writer, BucketTest test)
    {
        writer.WriteStartObject();
        writer.Quantity(BucketMembers.Encoded[0], test.Rpm, WireUnits.RotationalSpeed);
        writer.WriteStartArray(BucketMembers.Encoded[1]);
        for (int i = 0; i < test.Catches.Count; i++)
        {
            writer.WriteStartObject();
            writer.Text(CatchMembers.Encoded[0], test.Catches[i].Outlet);
            RecordsWire.WriteAmount(writer, CatchMembers.Encoded[1], test.Catches[i].Volume);
            writer.Quantity(CatchMembers.Encoded[2], test.Catches[i].Seconds, WireUnits.ShortTime);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter writer, AnodeInspection inspection)
    {
        writer.WriteStartObject();
        writer.Text(AnodeMembers.Encoded[0], inspection.Anode);
        writer.WordUnlessDefault(AnodeMembers.Encoded[1], inspection.Metal);
        writer.Real(AnodeMembers.Encoded[2], inspection.WornFraction);
        writer.WriteNumber(AnodeMembers.Encoded[3], inspection.MonthsInWater);
        writer.WriteEndObject();
    }

    private static List<BucketCatch> ReadCatches(ref JsonCursor json)
    {
        List<BucketCatch> catches = [];
        HashSet<string> outlets = new(StringComparer.Ordinal);
        if (!json.BeginArray("a list of catches"))
        {
            return catches;
        }

        bool isEmpty = true;
        while (json.NextItem())
        {
            isEmpty = false;
            if (ReadCatch(ref json) is BucketCatch bucket)
            {
                if (outlets.Add(bucket.Outlet))
                {
                    catches.Add(bucket);
                }
                else
                {
                    json.NoteMeaning("/outlet", $"'{bucket.Outlet}'", "an outlet that no other catch has");
                }
            }
        }

        if (isEmpty)
        {
            json.Note("", "nothing", "at least one catch");
        }

        return catches;
    }

    private static BucketCatch? ReadCatch(ref JsonCursor json)
    {
        if (!json.BeginObject("a catch with outlet, amount and time"))
        {
            return null;
        }

        string? outlet = null;
        MeasuredVolume? amount = null;
        double? seconds = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(CatchMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: outlet = json.NotBlank(); break;
                case 1: amount = RecordsWire.ReadAmount(ref json); break;
                default: seconds = json.Quantity(WireUnits.ShortTime, BucketCatch.LeastSeconds, BucketCatch.MostSeconds); break;
            }

            json.EndMember();
        }

        json.Require(CatchMembers, seen, 0, 1, 2);
        if (amount is { Liters: 0 })
        {
            json.NoteMeaning("/amount/volume/value", "0", "more than nothing: an outlet that stays dry is left out");
            return null;
        }

        return outlet is not null && amount is not null && seconds is double time
            ? BucketCatch.Of(outlet, amount, UnitsNet.Duration.FromSeconds(time))
            : null;
    }
}
