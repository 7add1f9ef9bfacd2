using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>Where one task of one engine stands, in short; for the reasons make the engine's due list.</summary>
public sealed class FleetTask
{
    internal FleetTask(ServiceTask task, in TaskVerdict verdict)
    {
        (TaskId, Status, Governs) = (task.Id, verdict.Status, verdict.Governs);
        DueDay = verdict.Due.Day;
        DueHours = verdict.Due.Hours is long hours ? EngineHours.FromThousandths(hours) : null;
    }

    /// <summary>The task.</summary>
    public string TaskId { get; }

    /// <summary>How urgent it is.</summary>
    public DueStatus Status { get; }

    /// <summary>Which limb decides.</summary>
    public GoverningLimb Governs { get; }

    /// <summary>The due date, or null when no date is due.</summary>
    public LocalDate? DueDate => CalendarDay.ToDate(DueDay);

    internal int? DueDay { get; }

    /// <summary>The engine's hours in all at which it is due, or null when no hours are due.</summary>
    public EngineHours? DueHours { get; }
}
