using MarineService.Core;
using MarineService.Core.Internal;
using MarineService.Core.Jobs;

namespace MarineService.Reports.Sheets;

/// <summary>
/// The sheet that goes to the boat: what is done and why, what to take along, each step with its cautions in front of it, its hold points
/// and room to write, what has to be proved, where the waste goes, who signs.
/// </summary>
/// <remarks>It says what the job card says, and what the card does not know. It advises; the engine's own manual outranks it.</remarks>
public static class ServiceSheet
{
    /// <summary>The sheet of a job card.</summary>
    /// <param name="card">The job card.</param>
    /// <param name="drawings">Pictures to stand on the sheet, such as the belt drive; none when null.</param>
    /// <param name="lead">Which units stand first; the other ones stand beside them.</param>
    /// <param name="paper">Which paper it is laid out for; whatever the printer is set to by default.</param>
    /// <returns>The sheet, of one file.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="card"/> is null.</exception>
    /// <exception cref="ArgumentException">One of <paramref name="drawings"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lead"/> or <paramref name="paper"/> is not a defined value.</exception>
    public static Sheet Of(JobCard card, IEnumerable<Drawing>? drawings = null, DisplayUnits lead = DisplayUnits.Metric, Paper paper = Paper.OfPrinter)
    {
        Guard.NotNull(card);
        return new ServiceSheetParts(card, Guard.Items(drawings ?? [], nameof(drawings)), Guard.Defined(lead)).Whole(Guard.Defined(paper));
    }
}
