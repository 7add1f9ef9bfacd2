namespace MarineService.Core.Scheduling;

/// <summary>Walks the changes of duty that bear on one task, from an anchor forward, without allocating.</summary>
/// <remarks>Changes at the same point count together, smallest factor first (INTERVAL-16); a later point replaces an earlier one.</remarks>
internal ref struct DutyWalk(ServiceTask task, ReadOnlySpan<ServiceStep> duties, int untilDay)
{
    private readonly ReadOnlySpan<ServiceStep> _duties = duties;
    private int _next;

    internal decimal StartByHours(long anchor, int anchorDay)
    {
        decimal factor = 1m;
        while (Peek() is int end && (_duties[_next].Hours is { } hours ? hours.Estimate.Thousandths <= anchor : _duties[_next].Day <= anchorDay))
        {
            factor = Take(end);
        }

        return factor;
    }

    internal bool NextByHours(out long at, out decimal factor)
    {
        if (Peek() is not int end)
        {
            (at, factor) = (0, 1m);
            return false;
        }

        // A change that no reading places lies before the first reading, hence before any anchor with known hours: it was taken at the start.
        at = _duties[_next].Hours!.Estimate.Thousandths;
        factor = Take(end);
        return true;
    }

    internal decimal StartByDay(int anchorDay)
    {
        decimal factor = 1m;
        while (Peek() is int end && _duties[_next].Day <= anchorDay)
        {
            factor = Take(end);
        }

        return factor;
    }

    internal bool NextByDay(out int at, out decimal factor)
    {
        if (Peek() is not int end)
        {
            (at, factor) = (0, 1m);
            return false;
        }

        at = _duties[_next].Day;
        factor = Take(end);
        return true;
    }

    // The end of the run of changes at the same point, or null when none is left or known yet.
    private readonly int? Peek()
    {
        if (_next >= _duties.Length || _duties[_next].Day > untilDay)
        {
            return null;
        }

        int end = _next + 1;
        while (end < _duties.Length && _duties[end].Day == _duties[_next].Day && _duties[end].Hours == _duties[_next].Hours)
        {
            end++;
        }

        return end;
    }

    private decimal Take(int end)
    {
        decimal factor = 1m;
        for (; _next < end; _next++)
        {
            factor = Math.Min(factor, task.FactorUnder(((DutyChange)_duties[_next].Fact).Conditions));
        }

        return factor;
    }
}
