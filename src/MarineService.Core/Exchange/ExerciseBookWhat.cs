namespace MarineService.Core.Exchange;

/// <summary>What a line of an exercise book says, in the words of the column "what".</summary>
internal enum ExerciseBookWhat
{
    Reading,
    Done,
    Passed,
    Failed,
    Event,
    TopUp,
    LaidUp,
    Commissioned,
}
