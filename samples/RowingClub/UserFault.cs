namespace RowingClub;

/// <summary>Something that the user can put right: shown without a stack trace, with the exit code that says what kind it is.</summary>
internal sealed class UserFault(int exitCode, IEnumerable<string> lines) : Exception(string.Join("\n", lines))
{
    internal UserFault(int exitCode, string line)
        : this(exitCode, [line])
    {
    }

    internal int ExitCode { get; } = exitCode;
}
