using MarineService.Core.Scheduling;

namespace MarineService.Core.Records;

/// <summary>What can stand against a record of service.</summary>
public static class ComplianceRules
{
    /// <summary>A completion whose hours the readings leave open.</summary>
    public static FindingRule CannotBeShown { get; } = new(
        "RECORD-001",
        Severity.Advice,
        "A service on time is shown by a reading of the day",
        "done on {done}, due at {due hours}; the readings allow {at least} to {at most}",
        IntervalRule.CannotBeShown.Citation,
        "Look for an invoice, a fuel receipt or a photograph that shows the dial near that day, and add it as a reading; it narrows the bounds.");

    /// <summary>A service that was not done and whose tolerance has passed.</summary>
    public static FindingRule Missing { get; } = new(
        "RECORD-002",
        Severity.Act,
        "What is due is done",
        "was due {due} and is not in the record",
        Citation.CommonPractice,
        "If it was done, add the entry with its proof; say that it was reconstructed. If not, do it now.");

    /// <summary>A service that was done too late.</summary>
    public static FindingRule Exceeded { get; } = new(
        "RECORD-003",
        Severity.Note,
        "What is due is done within the tolerance",
        "was due {due} and done {done}, beyond the tolerance of {tolerance}",
        IntervalRule.Tolerance.Citation);

    /// <summary>A completion with weak proof.</summary>
    public static FindingRule WeakEvidence { get; } = new(
        "RECORD-004",
        Severity.Advice,
        "A record that others trust has proofs",
        "the completion of {done} rests on {grade}",
        Citation.Secondary("California Department of Insurance, guide to auto service contracts", clause: "page 17"),
        "Keep the receipts for oil and filters, and a photograph of the dial.");
}
