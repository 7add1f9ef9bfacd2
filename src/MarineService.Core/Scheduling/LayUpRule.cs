namespace MarineService.Core.Scheduling;

/// <summary>What happens to a due date that falls into a lay-up.</summary>
public enum LayUpRule
{
    /// <summary>The calendar runs on and the date stands. The default value.</summary>
    AsIs = 0,

    /// <summary>Done at the lay-up, so that fresh oil or fuel is stored.</summary>
    PullForward = 1,

    /// <summary>Done when the boat comes out; the overrun is excused if the engine did not run.</summary>
    DeferToCommissioning = 2,

    /// <summary>Lay-up days do not count: wear needs running.</summary>
    Suspend = 3,
}
