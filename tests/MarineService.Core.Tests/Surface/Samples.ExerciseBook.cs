using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Surface;

/// <content>An exercise book with a good and a bad line.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfExerciseBooks()
    {
        ExerciseBookResult read = ExerciseBookCsv.Read("date,hours\n2026-04-01,412.5\nyesterday,413"u8);
        return [ExerciseBookForm.Default, read, read.BadLines[0], read.Faults[0]];
    }
}
