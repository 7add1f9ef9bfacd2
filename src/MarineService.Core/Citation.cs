using MarineService.Core.Internal;

namespace MarineService.Core;

/// <summary>Where a rule or a figure comes from, and how well it is known.</summary>
/// <remarks>Two citations are equal when all four parts are.</remarks>
public sealed record Citation
{
    private Citation(CitationStanding standing, string? document = null, string? edition = null, string? clause = null) =>
        (Standing, Document, Edition, Clause) = (standing, document, edition, clause);

    /// <summary>Common practice of the trade; no source was found.</summary>
    public static Citation CommonPractice { get; } = new(CitationStanding.CommonPractice);

    /// <summary>A choice of this project where nobody publishes a figure; the caller may change it.</summary>
    public static Citation ProjectChoice { get; } = new(CitationStanding.ProjectChoice);

    /// <summary>From memory, not confirmed by any document.</summary>
    public static Citation FromMemory { get; } = new(CitationStanding.FromMemory);

    /// <summary>Given by the caller: the engine's own manual, a label, a measurement.</summary>
    public static Citation GivenByCaller { get; } = new(CitationStanding.GivenByCaller);

    /// <summary>How well it is known.</summary>
    public CitationStanding Standing { get; }

    /// <summary>The document's number and title; null when <see cref="Standing"/> is not tied to a document.</summary>
    public string? Document { get; }

    /// <summary>The edition or year; null when the document has none or it is not known.</summary>
    public string? Edition { get; }

    /// <summary>The clause, table or page; null when only the whole document was seen.</summary>
    public string? Clause { get; }

    /// <summary>Read in the document itself, its official preview, or in independent copies that agree.</summary>
    /// <param name="document">Number and title; not blank.</param>
    /// <param name="edition">Edition or year, or null.</param>
    /// <param name="clause">Clause, table or page, or null.</param>
    /// <returns>The citation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="document"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="document"/> is blank.</exception>
    public static Citation Published(string document, string? edition = null, string? clause = null) =>
        new(CitationStanding.Published, Guard.NotBlank(document), edition, clause);

    /// <summary>Read in somebody else's summary of the document.</summary>
    /// <param name="document">Number and title; not blank.</param>
    /// <param name="edition">Edition or year, or null.</param>
    /// <param name="clause">Clause, table or page, or null.</param>
    /// <returns>The citation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="document"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="document"/> is blank.</exception>
    public static Citation Secondary(string document, string? edition = null, string? clause = null) =>
        new(CitationStanding.Secondary, Guard.NotBlank(document), edition, clause);

    /// <summary>Worked out and checked by a second method.</summary>
    /// <param name="from">What it was worked out from; not blank.</param>
    /// <returns>The citation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="from"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="from"/> is blank.</exception>
    public static Citation Derived(string from) => new(CitationStanding.Derived, Guard.NotBlank(from));

    /// <summary>Common practice that a named text describes without giving a standard's authority to it.</summary>
    /// <param name="asDescribedIn">The text; not blank.</param>
    /// <returns>The citation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="asDescribedIn"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="asDescribedIn"/> is blank.</exception>
    public static Citation PracticeDescribedIn(string asDescribedIn) =>
        new(CitationStanding.CommonPractice, Guard.NotBlank(asDescribedIn));

    /// <summary>The citation as one line of text, such as "SAE J300, 2021, table 1".</summary>
    /// <returns>Never blank.</returns>
    public override string ToString()
    {
        string? text = Document is null ? null : string.Join(", ", new[] { Document, Edition, Clause }.Where(part => part is not null));
        return Standing switch
        {
            CitationStanding.CommonPractice => text is null ? "common practice, no source" : $"common practice, described in {text}",
            CitationStanding.Secondary => $"{text} (as summarized by others)",
            CitationStanding.Derived => $"derived from {text}",
            CitationStanding.ProjectChoice => "project choice, may be changed",
            CitationStanding.FromMemory => "from memory, not confirmed",
            CitationStanding.GivenByCaller => "given by the caller",
            _ => text ?? string.Empty,
        };
    }
}
