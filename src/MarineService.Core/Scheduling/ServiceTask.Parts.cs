using System.Collections.ObjectModel;

namespace MarineService.Core.Scheduling;

/// <content>A task put together at once from what a document says of it.</content>
public sealed partial class ServiceTask
{
    /// <summary>What is said of one task; who fills it in has checked it as the With methods would.</summary>
    internal struct Parts
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

        internal readonly bool IsWhole => Id is not null && Action is not null && (Interval is not null || Occasion is not null);

        internal readonly ServiceTask Build()
        {
            ServiceTask task = new(Id!, Action!.Value, Occasion ?? TaskOccasion.Interval, Interval)
            {
                FirstService = FirstService,
                TolerancePercent = Tolerance ?? MakerTolerance ?? DefaultTolerancePercent,
                MakerTolerancePercent = MakerTolerance,
                AnchorPolicy = Policy ?? default,
                LayUpRule = LayUpRule ?? default,
                IfFailed = IfFailed,
            };
            task.Title = Title ?? task.Title;
            task.PartialExchange = Partial ?? task.PartialExchange;
            task.Includes = Includes?.AsReadOnly() ?? task.Includes;
            task.DueAfter = DueAfter?.AsReadOnly() ?? task.DueAfter;
            task.SevereDuty = SevereDuty is { Count: > 0 } factors ? FactorsOf(factors) : task.SevereDuty;
            task.Source = Source ?? task.Source;
            return task;
        }
    }

    private static ReadOnlyDictionary<string, decimal> FactorsOf(IEnumerable<KeyValuePair<string, decimal>> conditions)
    {
        Dictionary<string, decimal> factors = new(StringComparer.Ordinal);
        foreach (KeyValuePair<string, decimal> factor in conditions)
        {
            factors[factor.Key] = factor.Value;
        }

        return new(factors);
    }
}
