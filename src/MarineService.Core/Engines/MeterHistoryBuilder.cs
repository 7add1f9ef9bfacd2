using MarineService.Core.Internal;

namespace MarineService.Core.Engines;

/// <summary>Takes readings and meter changes in any order and accepts or refuses each in the order of time.</summary>
/// <param name="meter">The meter that the engine started with.</param>
/// <param name="readings">About how many readings there will be.</param>
internal sealed class MeterHistoryBuilder(HourMeter meter, int readings)
{
    private readonly List<(int Day, long Dial, ReadingSource Source)> _readings = new(readings);
    private readonly List<MeterChange> _changes = [];
    private readonly List<Finding> _findings = [];
    private MeterPoint[] _points = [];
    private int _pointCount;
    private bool _inOrder = true;

    // The present meter: hours in all = offset + dial, each end of the bounds with its own offset.
    private long? _modulus = meter.Modulus?.Thousandths;
    private long _offset;
    private long _lowerSlack;
    private long _upperSlack;
    private bool _estimated;
    private int? _lastDay;
    private long _lastDial;

    internal void Add(int day, EngineHours dial, ReadingSource source)
    {
        (int Day, long Dial, ReadingSource Source) reading = (day, dial.Thousandths, source);
        _inOrder = _inOrder && (_readings.Count == 0 || InOrderOfTime(_readings[_readings.Count - 1], reading) <= 0);
        _readings.Add(reading);
    }

    internal void Add(MeterChange change) => _changes.Add(change);

    internal MeterHistory Build()
    {
        if (!_inOrder)
        {
            _readings.Sort(InOrderOfTime);
        }

        _changes.Sort((left, right) => left.CompareTo(right));

        // Each reading is one point at most; a change takes the old meter's last one and the new one's first.
        _points = new MeterPoint[_readings.Count + (2 * _changes.Count)];
        int next = 0;
        for (int i = 0; i < _changes.Count; i++)
        {
            if (i > 0 && _changes[i].CompareTo(_changes[i - 1]) == 0)
            {
                _findings.Add(EngineRules.ChangeEnteredTwice.On("hour meter", Figure.Of("date", _changes[i].Date)));
                continue;
            }

            next = TakeOldMeter(next, _changes[i]);
            Apply(_changes[i]);
        }

        for (; next < _readings.Count; next++)
        {
            Take(_readings[next]);
        }

        Array.Resize(ref _points, _pointCount);
        return new(_points, _offset, _modulus, _findings.AsReadOnly());
    }

    private static int InOrderOfTime((int Day, long Dial, ReadingSource Source) left, (int Day, long Dial, ReadingSource Source) right)
    {
        int order = left.Day.CompareTo(right.Day);
        order = order != 0 ? order : left.Dial.CompareTo(right.Dial);
        return order != 0 ? order : ((int)left.Source).CompareTo((int)right.Source);
    }

    // Readings before the change belong to the old meter. On the day of the change a reading is the old meter's when it
    // lies between what that meter showed last and what it ended at.
    private int TakeOldMeter(int next, MeterChange change)
    {
        int day = change.Day;
        long final = change.OldFinal?.Thousandths ?? long.MinValue;
        while (next < _readings.Count && _readings[next].Day < day)
        {
            Take(_readings[next++]);
        }

        List<(int Day, long Dial, ReadingSource Source)> sameDay = [];
        for (; next < _readings.Count && _readings[next].Day == day; next++)
        {
            if (_readings[next].Dial >= _lastDial && _readings[next].Dial <= final && _readings[next].Dial != change.NewInitial.Thousandths)
            {
                Take(_readings[next]);
            }
            else
            {
                sameDay.Add(_readings[next]);
            }
        }

        next -= sameDay.Count;
        for (int i = 0; i < sameDay.Count; i++)
        {
            _readings[next + i] = sameDay[i];
        }

        return next;
    }

    private void Apply(MeterChange change)
    {
        int day = change.Day;
        int lastGoodDay = _lastDay ?? day;
        if (change.OldFinal is EngineHours final)
        {
            // A dead meter may have been read again after it stopped; time never runs backwards here.
            int stopped = change.DeadSince is NodaTime.LocalDate dead ? CalendarDay.Of(dead) : day;
            Take((Math.Max(stopped, _lastDay ?? stopped), final.Thousandths, ReadingSource.Dial));
            lastGoodDay = _lastDay ?? day;
        }

        long ended = _offset + _lastDial;
        if (change.Unmetered > EngineHours.Zero)
        {
            // Nothing but the clock bounds what ran without a meter.
            _lowerSlack += change.Unmetered.Thousandths;
            _upperSlack += Math.Max(0, ((day - lastGoodDay) * MeterHistory.ThousandthsPerDay) - change.Unmetered.Thousandths);
            _estimated = true;
            _findings.Add(EngineRules.UnmeteredHours.On("hour meter", Figure.Of("unmetered", change.Unmetered), Figure.Of("date", change.Date)));
        }

        _modulus = change.NewMeter is null ? _modulus : change.NewMeter.Modulus?.Thousandths;
        _offset = ended + change.Unmetered.Thousandths - change.NewInitial.Thousandths;
        _lastDial = change.NewInitial.Thousandths;
        _lastDay = day;
        AddPoint(day, _lastDial, ReadingSource.Dial);
    }

    private void Take((int Day, long Dial, ReadingSource Source) reading)
    {
        (int day, long dial, ReadingSource source) = reading;
        if (day == _lastDay && dial == _lastDial)
        {
            // Read twice on one day: the better source, which comes first, has said it.
            return;
        }

        if (_modulus is long modulus && dial >= modulus)
        {
            _findings.Add(EngineRules.BeyondDial.On("hour meter", Shown(dial), Figure.Of("modulus", EngineHours.FromThousandths(modulus)), Read(day)));
            return;
        }

        if (_lastDay is int lastDay)
        {
            long most = Math.Max(1, day - lastDay) * MeterHistory.ThousandthsPerDay;
            long gain = dial - _lastDial;
            if (gain < 0)
            {
                if (!IsRollover(dial, most))
                {
                    _findings.Add(EngineRules.FallingReading.On(
                        "hour meter", Shown(dial), Figure.Of("earlier dial", EngineHours.FromThousandths(_lastDial)), Earlier(lastDay), Read(day)));
                    return;
                }

                _offset += _modulus!.Value;
                gain += _modulus.Value;
            }

            if (gain > most)
            {
                _findings.Add(EngineRules.ImpossibleRate.On(
                    "hour meter",
                    Figure.Of("gain", EngineHours.FromThousandths(gain)),
                    Earlier(lastDay),
                    Figure.Of("most possible", EngineHours.FromThousandths(most)),
                    Shown(dial),
                    Read(day)));
                return;
            }
        }

        _lastDay = day;
        _lastDial = dial;
        AddPoint(day, dial, source);
    }

    // Made only for a finding: most readings are as they should be.
    private static Figure Shown(long dial) => Figure.Of("dial", EngineHours.FromThousandths(dial));

    private static Figure Read(int day) => Figure.Of("date", CalendarDay.ToDate(day));

    private static Figure Earlier(int day) => Figure.Of("earlier date", CalendarDay.ToDate(day));

    private bool IsRollover(long dial, long most) =>
        _modulus is long modulus
        && _lastDial > modulus / 10 * 9
        && dial < modulus / 10
        && modulus - _lastDial + dial <= most;

    private void AddPoint(int day, long dial, ReadingSource source)
    {
        long hours = _offset + dial;
        ReadingQuality quality = _estimated || source == ReadingSource.Estimate ? ReadingQuality.Estimated : ReadingQuality.Measured;
        _points[_pointCount++] = new(day, dial, hours - _lowerSlack, hours, hours + _upperSlack, quality);
    }
}
