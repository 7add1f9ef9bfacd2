namespace MarineService.Core.Exchange;

/// <content>Which members go with which kind of entry.</content>
internal static partial class RecordsWire
{
    private const int DialMember = 4;
    private const int SourceMember = 5;
    private const int TaskMember = 6;
    private const int ResultMember = 7;
    private const int FractionMember = 8;
    private const int FractionUncertaintyMember = 9;
    private const int DueDateMember = 10;
    private const int DueHoursMember = 11;
    private const int EventMember = 12;
    private const int ConditionsMember = 13;
    private const int FluidMember = 14;
    private const int AmountMember = 15;
    private const int UntilMember = 16;
    private const int OldFinalMember = 17;
    private const int NewInitialMember = 18;
    private const int UnmeteredMember = 19;
    private const int DeadSinceMember = 20;
    private const int NewMeterMember = 21;
    private const int EngineZeroMember = 22;
    private const int CorrectsMember = 27;
    private const int ReconstructedMember = 28;
    private const int AccountMember = 29;
    private const int ImpellerMember = 30;
    private const int WorksMember = 31;
    private const int PlannedHoursMember = 32;
    private const int BucketMember = 33;
    private const int AnodeMember = 34;

    // The members that go with some kinds only.
    private static readonly ulong KindMembers = Bits(
        [.. Enumerable.Range(DialMember, EngineZeroMember - DialMember + 1), AccountMember, ImpellerMember, WorksMember, PlannedHoursMember, BucketMember, AnodeMember]);

    private static (ulong Must, ulong May)[] BuildShapes()
    {
        (ulong Must, ulong May)[] shapes = new (ulong, ulong)[(int)EntryKind.Withdrawal + 1];
        shapes[(int)EntryKind.Reading] = (Bits(DialMember), Bits(SourceMember));
        shapes[(int)EntryKind.Completion] = (Bits(TaskMember), Bits(DialMember, ResultMember, FractionMember, FractionUncertaintyMember));
        shapes[(int)EntryKind.OilChange] = (Bits(TaskMember, AccountMember), Bits(DialMember));
        shapes[(int)EntryKind.WinterWork] = (Bits(WorksMember), Bits(DialMember));
        shapes[(int)EntryKind.MeterChange] = (Bits(), Bits(OldFinalMember, NewInitialMember, UnmeteredMember, DeadSinceMember, NewMeterMember));
        shapes[(int)EntryKind.EnteredService] = (Bits(), Bits(DialMember, EngineZeroMember));
        shapes[(int)EntryKind.OpeningDuePoint] = (Bits(TaskMember), Bits(DueDateMember, DueHoursMember));
        shapes[(int)EntryKind.GridOrigin] = (Bits(TaskMember), Bits());
        shapes[(int)EntryKind.Event] = (Bits(EventMember), Bits(DialMember));
        shapes[(int)EntryKind.Duty] = (Bits(ConditionsMember), Bits(DialMember));
        shapes[(int)EntryKind.TopUp] = (Bits(FluidMember, AmountMember), Bits(DialMember));
        shapes[(int)EntryKind.LaidUp] = (Bits(), Bits(DialMember));
        shapes[(int)EntryKind.Commissioned] = (Bits(), Bits(DialMember));
        shapes[(int)EntryKind.PlannedLayUp] = (Bits(UntilMember), Bits());
        shapes[(int)EntryKind.PlannedUse] = (Bits(UntilMember, PlannedHoursMember), Bits());
        shapes[(int)EntryKind.ImpellerInspection] = (Bits(ImpellerMember), Bits(DialMember));
        shapes[(int)EntryKind.BucketTest] = (Bits(BucketMember), Bits(DialMember));
        shapes[(int)EntryKind.AnodeInspection] = (Bits(AnodeMember), Bits(DialMember));
        shapes[(int)EntryKind.Withdrawal] = (Bits(CorrectsMember), Bits());
        return shapes;
    }

    private static ulong Bits(params ReadOnlySpan<int> members)
    {
        ulong bits = 0;
        foreach (int member in members)
        {
            bits |= 1UL << member;
        }

        return bits;
    }

    private static void CheckUntil(ref JsonCursor json, in EntryParts parts)
    {
        if (parts.Rare.Until is not { } until || parts.Date is not { } from)
        {
            return;
        }

        string text = NodaTime.Text.LocalDatePattern.Iso.Format(until);
        if (parts.Kind != EntryKind.PlannedUse)
        {
            if (until <= from)
            {
                json.NoteMeaning("/until", text, "a date after the first day of the lay-up");
            }
        }
        else if (until < from || until > from.PlusYears(10))
        {
            json.NoteMeaning("/until", text, "a date on or after the first day of the plan, and within ten years of it");
        }
        else if (parts.Rare.PlannedHours is { } hours && hours.ToHours() > 24m * (NodaTime.Period.DaysBetween(from, until) + 1))
        {
            json.NoteMeaning("/plannedHours", hours.ToString(), "at most 24 h for each day of the plan");
        }
    }
}
