namespace MarineService.Core.Scheduling;

/// <summary>How urgent a task is, least urgent first.</summary>
public enum DueStatus
{
    /// <summary>Nothing to do yet. The default value.</summary>
    NotDue = 0,

    /// <summary>To be done at every use; has no due date.</summary>
    EachUse = 1,

    /// <summary>Within a tenth of its hours, or within 30 days (three days a month for short intervals) of its date.</summary>
    DueSoon = 2,

    /// <summary>At or past its due point, within the tolerance.</summary>
    Due = 3,

    /// <summary>Past the tolerance.</summary>
    Overdue = 4,
}
