using MarineService.Core.Engines;

namespace MarineService.Core.Scheduling;

/// <summary>A fact with its place in time: its day and, where the readings tell, the engine's hours with bounds.</summary>
internal readonly struct ServiceStep(ServiceFact fact, HoursEstimate? hours) : IComparable<ServiceStep>
{
    internal ServiceFact Fact { get; } = fact;

    internal int Day => Fact.Day;

    /// <summary>Null when no reading tells.</summary>
    internal HoursEstimate? Hours { get; } = hours;

    /// <summary>Date, then hours, then what must come first when both are the same; never the order of entry.</summary>
    public int CompareTo(ServiceStep other)
    {
        int order = Day.CompareTo(other.Day);
        order = order != 0 ? order : Nullable.Compare(Hours?.Estimate, other.Hours?.Estimate);
        order = order != 0 ? order : Rank(Fact).CompareTo(Rank(other.Fact));
        order = order != 0 ? order : (Fact, other.Fact) switch
        {
            (Completion left, Completion right) => Compare(left, right),
            (ServiceEvent left, ServiceEvent right) => string.CompareOrdinal(left.Kind, right.Kind),
            (OpeningDuePoint left, OpeningDuePoint right) => Compare(left, right),
            (EnteredService left, EnteredService right) => Compare(left, right),
            _ => 0,
        };
        return order != 0 ? order : Compare(Hours, other.Hours);
    }

    // On one day at the same hours: the engine enters service, duty and opening state are set, something happens, then work is
    // done; a failed inspection comes before the replacement that answers it.
    private static int Rank(ServiceFact fact) => fact switch
    {
        EnteredService => 0,
        DutyChange => 1,
        GridOrigin => 2,
        OpeningDuePoint => 3,
        ServiceEvent => 4,
        Completion { Outcome: CompletionOutcome.Passed } => 5,
        Completion { Outcome: CompletionOutcome.Failed } => 6,
        Completion { ExchangedFraction: not null } => 7,
        Completion => 8,
        _ => 9,
    };

    private static int Compare(Completion left, Completion right)
    {
        int order = string.CompareOrdinal(left.TaskId, right.TaskId);
        order = order != 0 ? order : (left.ExchangedFraction ?? 1m).CompareTo(right.ExchangedFraction ?? 1m);
        order = order != 0 ? order : Nullable.Compare(right.Dial, left.Dial);

        // Of twins the first one counts: the one that is known less well.
        return order != 0 ? order : Nullable.Compare(right.FractionUncertainty, left.FractionUncertainty);
    }

    // Of two zeros the smaller counts, from which the first service is due earlier: the last one entered is the one that stands.
    private static int Compare(EnteredService left, EnteredService right)
    {
        int order = left.Rebuilt.CompareTo(right.Rebuilt);
        return order != 0 ? order : right.EngineZero.CompareTo(left.EngineZero);
    }

    // The same hours may be known to different bounds where two meters were read on one day.
    private static int Compare(HoursEstimate? left, HoursEstimate? right)
    {
        int order = Nullable.Compare(left?.Lower, right?.Lower);
        order = order != 0 ? order : Nullable.Compare(left?.Upper, right?.Upper);
        return order != 0 ? order : Nullable.Compare(left?.Quality, right?.Quality);
    }

    private static int Compare(OpeningDuePoint left, OpeningDuePoint right)
    {
        int order = string.CompareOrdinal(left.TaskId, right.TaskId);
        order = order != 0 ? order : Nullable.Compare(left.DueDate, right.DueDate);
        return order != 0 ? order : Nullable.Compare(left.DueHours, right.DueHours);
    }
}
