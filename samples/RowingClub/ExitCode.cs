namespace RowingClub;

/// <summary>What the program tells the shell; from 64 on as BSD's sysexits has them.</summary>
internal static class ExitCode
{
    internal const int Fine = 0;
    internal const int SomethingMustBeDone = 1;
    internal const int WrongUsage = 64;
    internal const int BadData = 65;
    internal const int NoSuchFile = 66;
    internal const int OurFault = 70;
}
