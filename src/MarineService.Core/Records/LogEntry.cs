using MarineService.Core.Internal;
using MarineService.Core.Scheduling;
using NodaTime;

namespace MarineService.Core.Records;

/// <summary>One line of a log: a fact with its id, whose it is, who did and who checked it, and its proofs.</summary>
/// <remarks>Entries are never changed. A later entry may correct or withdraw an earlier one and names it.</remarks>
public sealed class LogEntry
{
    /// <summary>The engine that an entry concerns when nothing else is said.</summary>
    public const string MainEngine = DueList.MainScope;

    private Particulars _more = Particulars.None;

    private LogEntry(ServiceFact? fact, LocalDate date) => (Fact, Date) = (fact, date);

    private LogEntry(LogEntry other)
        : this(other.Fact, other.Date)
    {
        Id = other.Id;
        Scope = other.Scope;
        By = other.By;
        _more = other._more;
    }

    /// <summary>The id, or null until the entry is in a log.</summary>
    public string? Id { get; private set; }

    /// <summary>Whose entry it is: an engine's id, or "boat".</summary>
    public string Scope { get; private set; } = MainEngine;

    /// <summary>What was read, done or happened; null when the entry withdraws another.</summary>
    public ServiceFact? Fact { get; }

    /// <summary>The date of the fact, or of the withdrawal.</summary>
    public LocalDate Date { get; }

    /// <summary>Who did it, or null.</summary>
    public string? By { get; private set; }

    /// <summary>Who checked it, or null.</summary>
    public string? CheckedBy => _more.CheckedBy;

    /// <summary>Its proofs.</summary>
    public IReadOnlyList<Evidence> Evidence => _more.Evidence;

    /// <summary>A remark, or null.</summary>
    public string? Note => _more.Note;

    /// <summary>The id of the entry that this one corrects or withdraws, or null.</summary>
    public string? Corrects => _more.Corrects;

    /// <summary>Whether it was put together afterwards from memory or circumstance.</summary>
    public bool IsReconstructed => _more.IsReconstructed;

    /// <summary>How well the entry is proved.</summary>
    public EvidenceGrade Grade
    {
        get
        {
            bool receipt = Evidence.Any(proof => proof.Kind == EvidenceKind.Receipt);
            return IsReconstructed ? EvidenceGrade.Reconstructed
                : receipt && CheckedBy is not null && Evidence.Any(proof => proof.Kind == EvidenceKind.DialPhoto) ? EvidenceGrade.PhotoReceiptAndChecker
                : receipt && Fact?.Dial is not null ? EvidenceGrade.DialAndReceipt
                : EvidenceGrade.EntryOnly;
        }
    }

    /// <summary>An entry of the main engine.</summary>
    /// <param name="fact">What was read, done or happened.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fact"/> is null.</exception>
    public static LogEntry Of(ServiceFact fact) => new(Guard.NotNull(fact), fact.Date);

    /// <summary>An entry that withdraws another without anything in its place.</summary>
    /// <param name="entryId">The id of the entry to withdraw; not blank.</param>
    /// <param name="on">The date of the withdrawal, from 1900 to 2199.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="entryId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="entryId"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="on"/> is outside 1900 to 2199.</exception>
    public static LogEntry Withdrawing(string entryId, LocalDate on) =>
        new LogEntry(null, Guard.Date(on)).Correcting(entryId);

    /// <summary>An entry as a document has it, each member checked by its reader; null or false where it says nothing.</summary>
    internal static LogEntry Read(
        ServiceFact? fact,
        LocalDate date,
        string? id,
        string? scope,
        string? by,
        string? checkedBy,
        List<Evidence>? evidence,
        string? note,
        string? corrects,
        bool isReconstructed) => new(fact, date)
        {
            Id = id,
            Scope = scope ?? MainEngine,
            By = by,
            _more = checkedBy is null && evidence is null && note is null && corrects is null && !isReconstructed ? Particulars.None : new()
            {
                CheckedBy = checkedBy,
                Evidence = evidence is { Count: > 0 } ? Array.AsReadOnly<Evidence>([.. evidence]) : [],
                Note = note,
                Corrects = corrects,
                IsReconstructed = isReconstructed,
            },
        };

    /// <summary>A copy under an id of the caller's.</summary>
    /// <param name="id">The id; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="id"/> is blank.</exception>
    public LogEntry WithId(string id) => new(this) { Id = Guard.NotBlank(id) };

    /// <summary>A copy for another engine, or for the boat.</summary>
    /// <param name="scope">An engine's id, or "boat"; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="scope"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="scope"/> is blank.</exception>
    public LogEntry For(string scope) => new(this) { Scope = Guard.NotBlank(scope) };

    /// <summary>A copy that says who did it.</summary>
    /// <param name="name">Name or initials; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public LogEntry DoneBy(string name) => new(this) { By = Guard.NotBlank(name) };

    /// <summary>A copy that says who checked it.</summary>
    /// <param name="name">Name or initials; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public LogEntry WithChecker(string name) => new(this) { _more = _more with { CheckedBy = Guard.NotBlank(name) } };

    /// <summary>A copy with more proofs.</summary>
    /// <param name="proofs">The proofs.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="proofs"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null.</exception>
    public LogEntry WithEvidence(params Evidence[] proofs) =>
        new(this) { _more = _more with { Evidence = Array.AsReadOnly<Evidence>([.. Evidence, .. Guard.Items(proofs)]) } };

    /// <summary>A copy with a remark.</summary>
    /// <param name="note">The remark; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="note"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="note"/> is blank.</exception>
    public LogEntry WithNote(string note) => new(this) { _more = _more with { Note = Guard.NotBlank(note) } };

    /// <summary>A copy that takes the place of an earlier entry.</summary>
    /// <param name="entryId">The id of the entry to correct; not blank.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="entryId"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="entryId"/> is blank.</exception>
    public LogEntry Correcting(string entryId) => new(this) { _more = _more with { Corrects = Guard.NotBlank(entryId) } };

    /// <summary>A copy that admits it was put together afterwards.</summary>
    /// <returns>The copy.</returns>
    public LogEntry AsReconstructed() => new(this) { _more = _more with { IsReconstructed = true } };

    // What few entries say, kept apart so that the many are small.
    private sealed record Particulars
    {
        internal static readonly Particulars None = new();

        internal string? CheckedBy { get; set; }

        internal IReadOnlyList<Evidence> Evidence { get; set; } = [];

        internal string? Note { get; set; }

        internal string? Corrects { get; set; }

        internal bool IsReconstructed { get; set; }
    }
}
