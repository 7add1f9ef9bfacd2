using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>What few log entries say; made for those alone.</summary>
internal sealed class RareEntryParts
{
    /// <summary>What most entries say of it: nothing.</summary>
    internal static readonly RareEntryParts None = new();

    internal CompletionOutcome? Result { get; set; }

    internal decimal? Fraction { get; set; }

    internal decimal? FractionUncertainty { get; set; }

    internal LocalDate? DueDate { get; set; }

    internal EngineHours? DueHours { get; set; }

    internal string? Event { get; set; }

    internal List<string>? Conditions { get; set; }

    internal string? Fluid { get; set; }

    internal MeasuredVolume? Amount { get; set; }

    internal LocalDate? Until { get; set; }

    internal EngineHours? PlannedHours { get; set; }

    internal EngineHours? OldFinal { get; set; }

    internal EngineHours? NewInitial { get; set; }

    internal EngineHours? Unmetered { get; set; }

    internal LocalDate? DeadSince { get; set; }

    internal HourMeter? NewMeter { get; set; }

    internal EngineHours? EngineZero { get; set; }

    internal string? CheckedBy { get; set; }

    internal List<Evidence>? Evidence { get; set; }

    internal string? Note { get; set; }

    internal string? Corrects { get; set; }

    internal bool? Reconstructed { get; set; }

    internal List<OilChangeEvent>? Account { get; set; }

    internal ImpellerParts? Impeller { get; set; }

    internal List<LowPointWork>? Works { get; set; }

    internal Func<LocalDate, EngineHours?, BucketTest>? Bucket { get; set; }

    internal Func<LocalDate, EngineHours?, AnodeInspection>? Anode { get; set; }
}
