using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <summary>What a document says of one task, before it is put together.</summary>
internal sealed class TaskParts
{
    internal string? Id { get; set; }

    internal string? Title { get; set; }

    internal TaskAction? Action { get; set; }

    internal ServiceInterval? Interval { get; set; }

    internal TaskOccasion? Occasion { get; set; }

    internal ServiceInterval? FirstService { get; set; }

    internal decimal? Tolerance { get; set; }

    internal decimal? MakerTolerance { get; set; }

    internal AnchorPolicy? Policy { get; set; }

    internal LayUpRule? LayUpRule { get; set; }

    internal PartialExchange? Partial { get; set; }

    internal List<string>? Includes { get; set; }

    internal string? IfFailed { get; set; }

    internal List<string>? DueAfter { get; set; }

    internal List<KeyValuePair<string, decimal>>? SevereDuty { get; set; }

    internal Citation? Source { get; set; }

    internal bool IsWhole => Id is not null && Action is not null && (Interval is not null || Occasion is not null);

    internal ServiceTask Build()
    {
        ServiceTask task = (Occasion, Action) switch
        {
            (TaskOccasion.EachUse, TaskAction action) => ServiceTask.EachUse(Id!, action),
            (TaskOccasion.LayUp, TaskAction action) => ServiceTask.AtLayUp(Id!, action),
            (TaskOccasion.Commissioning, TaskAction action) => ServiceTask.AtCommissioning(Id!, action),
            (_, TaskAction.Inspect) => ServiceTask.Inspect(Id!, Interval!),
            (_, TaskAction.Adjust) => ServiceTask.Adjust(Id!, Interval!),
            (_, TaskAction.Clean) => ServiceTask.Clean(Id!, Interval!),
            _ => ServiceTask.Replace(Id!, Interval!),
        };
        task = Title is null ? task : task.WithTitle(Title);
        task = FirstService is null ? task : task.WithFirstService(FirstService);
        task = MakerTolerance is decimal maker ? task.WithMakerTolerance(maker) : task;
        task = Tolerance is decimal tolerance ? task.WithTolerance(tolerance) : task;
        task = Policy is AnchorPolicy policy ? task.WithAnchorPolicy(policy) : task;
        task = LayUpRule is LayUpRule rule ? task.WithLayUpRule(rule) : task;
        task = Partial is null ? task : task.WithPartialExchange(Partial);
        task = Includes is { Count: > 0 } ? task.Including([.. Includes]) : task;
        task = IfFailed is null ? task : task.IfFailedDo(IfFailed);
        task = DueAfter is { Count: > 0 } ? task.DueAfterEvents([.. DueAfter]) : task;
        task = SevereDuty is { Count: > 0 } ? task.WithSevereDuty(SevereDuty) : task;
        return Source is null ? task : task.WithSource(Source);
    }
}
