namespace MarineService.Core.Tests;

/// <summary>How many bytes a call takes from the heap.</summary>
internal static class Allocation
{
    private const int WarmUp = 50;
    private const int Rounds = 7;

    /// <summary>Exact bytes of one call, after its code has been compiled and its caches filled.</summary>
    /// <remarks>
    /// The least of some rounds: when a collection that another test caused falls into one, the runtime counts what was left of this
    /// thread's buffer too.
    /// </remarks>
    internal static long Of(Action call)
    {
        for (int i = 0; i < WarmUp; i++)
        {
            call();
        }

        long least = long.MaxValue;
        for (int i = 0; i < Rounds; i++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            call();
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        return least;
    }
}
