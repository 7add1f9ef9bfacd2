using MarineService.Core.Fluids;
using UnitsNet;
using Duration = NodaTime.Duration;

namespace MarineService.Core.Exchange;

/// <content>The events of an oil change.</content>
internal static partial class FluidsWire
{
    private static readonly MemberNames EventMembers = new(
        "step", "amount", "method", "emptiedIntoMeasure", "appearance", "reading", "period");

    private static readonly MemberNames ReadingMembers = new(
        "range", "uncertainty", "oilTemperature", "settled", "seating", "attitude", "pitch", "roll");

    private static readonly MemberNames PeriodMembers = new("levelAfter", "topUps", "hours", "meanPower", "litersPer100Hours");

    // Which members go with which step: first what must be there, then what may be.
    private static readonly (int[] Must, int[] May)[] EventShapes =
    [
        ([], [5]), ([6], []), ([4], []), ([1], [2]), ([3], []), ([], []), ([1], []), ([1], []), ([], []), ([5], []), ([1], []),
    ];

    /// <summary>The events of one change; null when any is at fault.</summary>
    internal static List<OilChangeEvent>? ReadEvents(ref JsonCursor json)
    {
        if (!json.BeginArray("a list of events"))
        {
            return null;
        }

        List<OilChangeEvent> events = [];
        int before = json.FaultCount;
        int count = 0;
        while (json.NextItem())
        {
            if (ReadEvent(ref json, count++ == 0) is OilChangeEvent read)
            {
                events.Add(read);
            }
        }

        if (count == 0)
        {
            json.Note("", "an empty list", "at least the event that opens the account");
        }

        return json.FaultCount == before ? events : null;
    }

    internal static DipstickReading? ReadReading(ref JsonCursor json)
    {
        if (!json.BeginObject("a dipstick reading"))
        {
            return null;
        }

        double? range = null;
        double? sigma = null;
        double? celsius = null;
        double? minutes = null;
        StickSeating? seating = null;
        BoatAttitude? attitude = null;
        double? pitch = null;
        double? roll = null;
        int before = json.FaultCount;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(ReadingMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: range = json.Real(-5, 10); break;
                case 1: sigma = json.Real(0, 2); break;
                case 2: celsius = json.Quantity(WireUnits.Temperature, -60, 200); break;
                case 3: minutes = json.Quantity(WireUnits.Time, 0, 1_440_000); break;
                case 4: seating = json.Word<StickSeating>(); break;
                case 5: attitude = json.Word<BoatAttitude>(); break;
                case 6: pitch = json.Quantity(WireUnits.Angle, -45, 45); break;
                default: roll = json.Quantity(WireUnits.Angle, -45, 45); break;
            }

            json.EndMember();
        }

        json.Require(ReadingMembers, seen, 0);
        if (json.FaultCount > before)
        {
            return null;
        }

        DipstickReading reading = DipstickReading.OfRange(range!.Value, sigma ?? DipstickReading.DefaultSigma);
        reading = celsius is double t ? reading.WithOilAt(Temperature.FromDegreesCelsius(t)) : reading;
        reading = minutes is double waited ? reading.SettledFor(Duration.FromMinutes(waited)) : reading;
        reading = seating is StickSeating seat ? reading.With(seat) : reading;
        reading = attitude is BoatAttitude lay ? reading.With(lay) : reading;
        return pitch is null && roll is null ? reading : reading.Tilted(Angle.FromDegrees(pitch ?? 0), Angle.FromDegrees(roll ?? 0));
    }

    private static OilChangeEvent? ReadEvent(ref JsonCursor json, bool isFirst)
    {
        if (!json.BeginObject("an event of an oil change"))
        {
            return null;
        }

        OilChangeStep? step = null;
        MeasuredVolume? amount = null;
        DrainMethod? method = null;
        bool? emptied = null;
        OilAppearance? appearance = null;
        DipstickReading? reading = null;
        PeriodSinceChange? period = null;
        int before = json.FaultCount;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(EventMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: step = json.Word<OilChangeStep>(); break;
                case 1: amount = RecordsWire.ReadAmount(ref json); break;
                case 2: method = json.Word<DrainMethod>(); break;
                case 3: emptied = json.YesOrNo(); break;
                case 4: appearance = json.Word<OilAppearance>(); break;
                case 5: reading = ReadReading(ref json); break;
                default: period = ReadPeriod(ref json); break;
            }

            json.EndMember();
        }

        json.Require(EventMembers, seen, 0);
        if (step is not OilChangeStep told)
        {
            return null;
        }

        CheckEvent(ref json, seen, told, isFirst);
        return json.FaultCount > before ? null : told switch
        {
            OilChangeStep.Begun => OilChangeEvent.Begun(reading),
            OilChangeStep.PeriodTold => OilChangeEvent.Since(period!),
            OilChangeStep.Looked => OilChangeEvent.Looked(appearance!.Value),
            OilChangeStep.Drained => OilChangeEvent.Drained(amount!, method ?? default),
            OilChangeStep.FilterChanged => OilChangeEvent.FilterChanged(emptied!.Value),
            OilChangeStep.FilterKept => OilChangeEvent.FilterKept,
            OilChangeStep.FilterPrimed => OilChangeEvent.FilterPrimed(amount!),
            OilChangeStep.Poured => OilChangeEvent.Poured(amount!),
            OilChangeStep.Ran => OilChangeEvent.Ran,
            OilChangeStep.Settled => OilChangeEvent.Settled(reading!),
            _ => OilChangeEvent.DrawnOff(amount!),
        };
    }

    private static void CheckEvent(ref JsonCursor json, ulong seen, OilChangeStep step, bool isFirst)
    {
        (int[] must, int[] may) = EventShapes[(int)step];
        json.Require(EventMembers, seen, must);
        for (int member = 1; member < EventMembers.Names.Length; member++)
        {
            if ((seen & (1UL << member)) != 0 && Array.IndexOf(must, member) < 0 && Array.IndexOf(may, member) < 0)
            {
                json.Note($"/{EventMembers.Names[member]}", "present", $"no such member in an event '{WireEnum<OilChangeStep>.Word(step)}'");
            }
        }

        if ((step == OilChangeStep.Begun) != isFirst)
        {
            json.NoteMeaning("/step", $"'{WireEnum<OilChangeStep>.Word(step)}'", isFirst ? "'begun': the first event opens the account" : "another event: the account is open");
        }
    }

    private static PeriodSinceChange? ReadPeriod(ref JsonCursor json)
    {
        if (!json.BeginObject("the period since the last change"))
        {
            return null;
        }

        DipstickReading? level = null;
        List<MeasuredVolume> topUps = [];
        EngineHours? hours = null;
        double? kilowatts = null;
        List<double> earlier = [];
        int before = json.FaultCount;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PeriodMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: level = ReadReading(ref json); break;
                case 1: topUps = ReadTopUps(ref json); break;
                case 2: hours = json.Hours(0.001m); break;
                case 3: kilowatts = json.Quantity(WireUnits.Power, 0.01, 100_000); break;
                default: earlier = ReadRates(ref json); break;
            }

            json.EndMember();
        }

        json.Require(PeriodMembers, seen, 0);
        if (json.FaultCount > before)
        {
            return null;
        }

        PeriodSinceChange period = topUps.Aggregate(PeriodSinceChange.From(level!), (told, topUp) => told.ToppedUp(topUp));
        period = hours is EngineHours run ? period.RunFor(run) : period;
        period = kilowatts is double power ? period.AtMeanPower(Power.FromKilowatts(power)) : period;
        return period.After([.. earlier]);
    }

    private static List<MeasuredVolume> ReadTopUps(ref JsonCursor json)
    {
        List<MeasuredVolume> topUps = [];
        if (json.BeginArray("a list of amounts"))
        {
            while (json.NextItem())
            {
                if (RecordsWire.ReadAmount(ref json) is MeasuredVolume amount)
                {
                    topUps.Add(amount);
                }
            }
        }

        return topUps;
    }

    private static List<double> ReadRates(ref JsonCursor json)
    {
        List<double> rates = [];
        if (json.BeginArray("a list of numbers"))
        {
            while (json.NextItem())
            {
                if (json.Real(-100, 100) is double rate)
                {
                    rates.Add(rate);
                }
            }
        }

        return rates;
    }
}
