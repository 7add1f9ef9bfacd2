namespace MarineService.Core.Engines;

/// <summary>The days after the last reading: where each falls in the year, whether the engine is laid up, and what is planned.</summary>
internal sealed class UseAhead
{
    /// <summary>Ten years: beyond that a forecast of hours says nothing that the calendar limb does not say better.</summary>
    internal const int HorizonDays = 3653;

    private readonly int _lastDay;
    private readonly int[] _index = new int[HorizonDays];
    private readonly bool[] _rests = new bool[HorizonDays];
    private readonly double[] _planned = new double[HorizonDays];
    private int _firstPlanned = int.MaxValue;

    internal UseAhead(int lastDay, RestDays rest)
    {
        _lastDay = lastDay;
        YearDay at = new(lastDay + 1);
        for (int i = 0; i < HorizonDays; i++, at.Next())
        {
            _index[i] = at.Index;
            _planned[i] = double.NaN;
        }

        foreach ((int from, int to) in rest.Runs)
        {
            for (int i = Math.Max(0, from - lastDay - 1); i < Math.Min(HorizonDays, to - lastDay - 1); i++)
            {
                _rests[i] = true;
            }
        }
    }

    /// <summary>Puts a declared plan over the days: hours that remain of it, in the shape of past use, or evenly where that is empty.</summary>
    internal void Declare(int fromDay, int toDay, double remainingHours, double[] shape)
    {
        int from = Math.Max(0, fromDay - _lastDay - 1);
        int to = Math.Min(HorizonDays, toDay - _lastDay);
        double weight = 0;
        int inUse = 0;
        for (int i = from; i < to; i++)
        {
            weight += _rests[i] ? 0 : shape[_index[i]];
            inUse += _rests[i] ? 0 : 1;
        }

        for (int i = from; i < to; i++)
        {
            _planned[i] = _rests[i] ? 0 : weight > 0 ? remainingHours * shape[_index[i]] / weight : remainingHours / inUse;
        }

        _firstPlanned = to > from ? Math.Min(_firstPlanned, from) : _firstPlanned;
    }

    internal bool RestsOnPlan(int days) => _firstPlanned < days;

    /// <summary>The first day, counted from the last reading, at whose end hours run from a day on are reached; null beyond the horizon.</summary>
    internal int? DaysToReach(double[] hoursPerDay, double hours, int from = 0)
    {
        double run = 0;
        for (int i = from; i < HorizonDays; i++)
        {
            run += On(i, hoursPerDay);
            if (run >= hours - UseMath.GrainHours)
            {
                return i + 1;
            }
        }

        return null;
    }

    /// <summary>Whole days that pass before the hours are reached, as on a straight line; null beyond the horizon.</summary>
    internal int? DaysBefore(double[] hoursPerDay, double hours)
    {
        double run = 0;
        for (int i = 0; i < HorizonDays; i++)
        {
            run += On(i, hoursPerDay);
            if (run > hours + UseMath.GrainHours)
            {
                return i;
            }
        }

        return null;
    }

    /// <summary>The hours run since the last reading at the end of each day, the day of the reading first.</summary>
    internal double[] RunningTotal(double[] hoursPerDay, int days)
    {
        double[] total = new double[days + 1];
        for (int i = 0; i < days; i++)
        {
            total[i + 1] = total[i] + On(Math.Min(i, HorizonDays - 1), hoursPerDay);
        }

        return total;
    }

    /// <summary>The hours run in a number of days after the last reading.</summary>
    internal double HoursAfter(double[] hoursPerDay, int days)
    {
        double run = 0;
        for (int i = 0; i < days; i++)
        {
            run += On(i, hoursPerDay);
        }

        return run;
    }

    private double On(int i, double[] hoursPerDay) =>
        _rests[i] ? 0 : double.IsNaN(_planned[i]) ? hoursPerDay[_index[i]] : _planned[i];
}
