using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Fleet;

/// <summary>What came of one record: every task of the engine, or every fault. Never half of it.</summary>
/// <remarks>The same input under the same rules gives the same result, so that a repeated delivery can be told by <see cref="Fingerprint"/> and left out.</remarks>
public sealed class FleetResult
{
    internal FleetResult(
        string? engineId, string? depot, string? fingerprint, LocalDate today, IReadOnlyList<FleetTask> tasks, IReadOnlyList<PartDemand> parts, IReadOnlyList<FleetFault> faults) =>
        (EngineId, Depot, Fingerprint, Today, Tasks, Parts, Faults) = (engineId, depot, fingerprint, today, tasks, parts, faults);

    /// <summary>The engine, or null when the record does not say.</summary>
    public string? EngineId { get; }

    /// <summary>The depot, or null when none is stated.</summary>
    public string? Depot { get; }

    /// <summary>What tells the input from any other, or null when it did not come from a document.</summary>
    public string? Fingerprint { get; }

    /// <summary>The day that it was judged for.</summary>
    public LocalDate Today { get; }

    /// <summary>The version of the rules that judged; results of different versions may differ.</summary>
    public string Rules { get; } = FleetEvaluation.Rules;

    /// <summary>Whether the record was judged.</summary>
    public bool IsEvaluated => Faults.Count == 0;

    /// <summary>Every task in the order of the data sheet; empty when the record was not judged.</summary>
    public IReadOnlyList<FleetTask> Tasks { get; }

    /// <summary>What the tasks will use up.</summary>
    public IReadOnlyList<PartDemand> Parts { get; }

    /// <summary>Why the record was not judged; empty when it was.</summary>
    public IReadOnlyList<FleetFault> Faults { get; }

    /// <summary>The most urgent status of any task; not due when there is none.</summary>
    public DueStatus MostUrgent
    {
        get
        {
            DueStatus most = DueStatus.NotDue;
            for (int i = 0; i < Tasks.Count; i++)
            {
                most = Tasks[i].Status > most ? Tasks[i].Status : most;
            }

            return most;
        }
    }

    internal static FleetResult Refused(string? engineId, string? depot, string? fingerprint, LocalDate today, IReadOnlyList<FleetFault> faults) =>
        new(engineId, depot, fingerprint, today, [], [], faults);
}
