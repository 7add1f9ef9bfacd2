using MarineService.Core.Internal;

namespace MarineService.Core.Scheduling;

/// <summary>The limits of many tasks, each kind kept once under a small number, for tables of due points.</summary>
/// <remarks>
/// <para>What counts as soon and what is within tolerance depends on the interval alone, so a fleet has few kinds. A number is never
/// given to another kind. Numbers may be asked for from any thread.</para>
/// <para>Source: as the rules INTERVAL-04, -05 and -15 say.</para>
/// </remarks>
public sealed class DueLimitTable
{
    private readonly Dictionary<DueLimits, ushort> _codes = [];
    private DueLimits[] _limits = new DueLimits[16];
    private int _count;

    /// <summary>A table of no kinds yet.</summary>
    public DueLimitTable()
    {
    }

    /// <summary>How many kinds there are.</summary>
    public int Count => Volatile.Read(ref _count);

    internal ReadOnlySpan<DueLimits> Limits
    {
        get
        {
            // The count first: the array that is read after it holds at least as many.
            int count = Count;
            return Volatile.Read(ref _limits).AsSpan(0, count);
        }
    }

    /// <summary>The number of the limits of an interval; a new one when the table has none like it.</summary>
    /// <param name="interval">The interval.</param>
    /// <param name="tolerancePercent">Its tolerance, 0 to 50 % of the interval.</param>
    /// <returns>The number, from 0 up.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="interval"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tolerancePercent"/> is outside 0 to 50.</exception>
    /// <exception cref="InvalidOperationException">The table holds 65,536 kinds already.</exception>
    public ushort CodeOf(ServiceInterval interval, decimal tolerancePercent = ServiceTask.DefaultTolerancePercent)
    {
        Guard.NotNull(interval);
        DueAt unscaled = new(null, null, null, interval.Months ?? 0, interval.Hours?.Thousandths ?? 0);
        return CodeOf(DueLimits.Of(unscaled, Guard.InRange(tolerancePercent, 0m, 50m, "%")));
    }

    internal ushort CodeOf(DueLimits limits)
    {
        lock (_codes)
        {
            if (_codes.TryGetValue(limits, out ushort code))
            {
                return code;
            }

            if (_count > ushort.MaxValue)
            {
                throw new InvalidOperationException("The table holds 65,536 kinds of limits already.");
            }

            if (_count == _limits.Length)
            {
                DueLimits[] longer = new DueLimits[2 * _count];
                _limits.CopyTo(longer, 0);
                Volatile.Write(ref _limits, longer);
            }

            code = (ushort)_count;
            _limits[code] = limits;
            _codes.Add(limits, code);
            Volatile.Write(ref _count, _count + 1);
            return code;
        }
    }
}
