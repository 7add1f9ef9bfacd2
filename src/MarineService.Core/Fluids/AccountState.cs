namespace MarineService.Core.Fluids;

/// <summary>What an oil change knows after an event: plain sums of what was measured, and the estimate made from them.</summary>
/// <remarks>
/// <para>All in liters of oil at 15 °C. Three unknowns are estimated together, with their covariances: the level (oil in
/// the sump less what it holds at the full mark; negative is room), the filter's volume, and the service fill. Every
/// event is linear in them, so the estimate is the Kalman filter, the same as weighted least squares.</para>
/// <para>Moves: drain, level -D. Filter off into the measure, level +filter (the measure counted it). Pour, level +F.
/// Run, level -(filter - what it was primed with). Observations: a settled dipstick sees the level; an empty sump should
/// hold the residual, which sees level - filter + service fill.</para>
/// </remarks>
internal partial struct AccountState
{
    // The estimate: means, then the upper triangle of the covariance.
    private double _level;
    private double _filter;
    private double _fill;
    private double _ll;
    private double _lf;
    private double _ls;
    private double _ff;
    private double _fs;
    private double _ss;

    // What is in the filter while it is not full.
    private double _primed;
    private double _primedVariance;

    // The sums of what was measured.
    private double _before;
    private double _beforeVariance;
    private double _drained;
    private double _drainedVariance;
    private double _poured;
    private double _pouredVariance;

    // The level by the last settled reading alone and what has moved since.
    private double _stick;
    private double _stickVariance;

    private Marks _marks;

    [Flags]
    private enum Marks : ushort
    {
        None = 0,
        LevelKnown = 1,
        BeforeKnown = 2,
        FilterSaid = 4,
        FilterOff = 8,
        Emptied = 16,
        FilterDry = 32,
        Drained = 64,
        Closed = 128,
        Poured = 256,
        AfterKnown = 512,
        Replaced = 1024,
        ByPlug = 2048,
        ByExtractor = 4096,
        StickKnown = 8192,
        PeriodTold = 16384,
        WaterSeen = 32768,
    }

    /// <summary>Oil in the sump less what it holds at the full mark.</summary>
    internal readonly double Level => _level;

    internal readonly double LevelVariance => _ll;

    /// <summary>Rounding may leave a variance of nothing a hair below nothing.</summary>
    internal readonly double LevelSigma => _ll > 0 ? Math.Sqrt(_ll) : 0;

    /// <summary>Whether the level may stand above a limit: it does so by more than the given number of standard deviations below.</summary>
    internal readonly bool MayExceed(double limit, double deviations)
    {
        double room = limit - _level;
        return LevelKnown && (room < 0 || deviations * deviations * _ll > room * room);
    }

    /// <summary>Whether the level stands below a limit by more than the given number of standard deviations.</summary>
    internal readonly bool IsBelow(double limit, double deviations)
    {
        double gap = limit - _level;
        return LevelKnown && gap > 0 && gap * gap > deviations * deviations * _ll;
    }

    internal readonly double FilterVolume => _filter;

    internal readonly bool LevelKnown => Has(Marks.LevelKnown);

    internal readonly bool BeforeKnown => Has(Marks.BeforeKnown);

    internal readonly bool AfterKnown => Has(Marks.AfterKnown);

    internal readonly bool HasDrain => Has(Marks.Drained);

    internal readonly bool HasPour => Has(Marks.Poured);

    /// <summary>Something was drained, poured or drawn off, or the filter came off: readings now are readings after.</summary>
    internal readonly bool HasMoved => HasDrain || FilterOff || HasPour || _poured != 0;

    internal readonly bool PeriodTold => Has(Marks.PeriodTold);

    internal readonly bool WaterSeen => Has(Marks.WaterSeen);

    internal readonly bool DrainClosed => Has(Marks.Closed);

    internal readonly bool FilterSaid => Has(Marks.FilterSaid);

    internal readonly bool FilterOff => Has(Marks.FilterOff);

    /// <summary>The old filter's oil is in the measure of the drain.</summary>
    internal readonly bool FilterCounted => Has(Marks.Emptied) && HasDrain;

    /// <summary>The old filter's oil went away unmeasured.</summary>
    internal readonly bool FilterLost => FilterOff && !FilterCounted;

    /// <summary>The new filter has not been filled by a run yet.</summary>
    internal readonly bool FilterDry => Has(Marks.FilterDry);

    /// <summary>Measured and expected drain disagreed, so the estimate took the one that leaves less room.</summary>
    internal readonly bool DrainDisputed => Has(Marks.Replaced);

    internal readonly double Primed => FilterDry ? _primed : 0;

    internal readonly double InFilter => FilterDry ? _primed : _filter;

    internal readonly double InFilterVariance => FilterDry ? _primedVariance : _ff;

    internal readonly double InSump => _level + _fill - _filter;

    internal readonly double InEngine => InSump + InFilter;

    internal readonly double InEngineVariance =>
        FilterDry ? _ll + _ff + _ss + 2 * (_ls - _lf - _fs) + _primedVariance : _ll + _ss + 2 * _ls;

    internal readonly double InSumpVariance => _ll + _ff + _ss + 2 * (_ls - _lf - _fs);

    /// <summary>Room below full before the change.</summary>
    internal readonly double RoomBefore => -_before;

    internal readonly double BeforeVariance => _beforeVariance;

    internal readonly double Drained => _drained;

    internal readonly double DrainedVariance => _drainedVariance;

    /// <summary>Poured, primed included, drawn off taken away.</summary>
    internal readonly double Poured => _poured;

    internal readonly double PouredVariance => _pouredVariance;

    internal readonly double RoomAfter => -_stick;

    /// <summary>A settled reading was taken after the drain or a pour.</summary>
    internal readonly bool StickKnown => Has(Marks.StickKnown);

    /// <summary>The level by the last settled reading alone and what has moved since, for when it contradicts the estimate.</summary>
    internal readonly double StickLevel => _stick;

    internal readonly double StickVariance => _stickVariance;

    internal readonly double AfterVariance => _stickVariance;

    internal readonly bool ByExtractorOnly => Has(Marks.ByExtractor) && !Has(Marks.ByPlug);

    internal static AccountState At(Sump sump)
    {
        AccountState state = default;
        state._filter = sump.FilterLiters;
        state._ff = FluidMath.Square(sump.FilterSigmaLiters);
        state._fill = sump.ServiceFillLiters;
        state._ss = FluidMath.Square(sump.ServiceFillSigmaLiters);
        return state;
    }

    /// <summary>A reading before anything has moved; a second one sharpens the first.</summary>
    internal void ReadBefore(double level, double variance)
    {
        Read(level, variance);
        (_before, _beforeVariance) = (_level, _ll);
        _marks |= Marks.BeforeKnown;
    }

    internal void TellPeriod() => _marks |= Marks.PeriodTold;

    internal void SeeWater() => _marks |= Marks.WaterSeen;

    internal void Drain(BaseVolume measured, DrainMethod method)
    {
        _level -= measured.Liters;
        _ll += measured.Variance;
        _drained += measured.Liters;
        _drainedVariance += measured.Variance;
        _marks = (_marks & ~Marks.AfterKnown)
            | Marks.Drained | (method == DrainMethod.DrainPlug ? Marks.ByPlug : Marks.ByExtractor);
    }

    internal void TakeFilterOff(bool emptiedIntoMeasure)
    {
        _marks |= Marks.FilterSaid | Marks.FilterOff | Marks.FilterDry | (emptiedIntoMeasure ? Marks.Emptied : Marks.None);
        (_primed, _primedVariance) = (0, 0);
    }

    internal void KeepFilter() => _marks |= Marks.FilterSaid;

    internal void Prime(BaseVolume measured)
    {
        _primed += measured.Liters;
        _primedVariance += measured.Variance;
        _poured += measured.Liters;
        _pouredVariance += measured.Variance;
    }

    internal void Pour(BaseVolume measured)
    {
        _level += measured.Liters;
        _ll += measured.Variance;
        _stick += measured.Liters;
        _stickVariance += measured.Variance;
        _poured += measured.Liters;
        _pouredVariance += measured.Variance;
        _marks = (_marks & ~Marks.AfterKnown) | Marks.Poured;
    }

    internal void DrawOff(BaseVolume measured)
    {
        _level -= measured.Liters;
        _ll += measured.Variance;
        _stick -= measured.Liters;
        _stickVariance += measured.Variance;
        _poured -= measured.Liters;
        _pouredVariance += measured.Variance;
        _marks &= ~Marks.AfterKnown;
    }

    /// <summary>The pump fills the filter from the sump.</summary>
    internal void Run()
    {
        if (!FilterDry)
        {
            return;
        }

        _stick += _primed - _filter;
        _stickVariance += _ff + _primedVariance;
        _level += _primed - _filter;
        _ll += _ff - 2 * _lf + _primedVariance;
        _lf -= _ff;
        _ls -= _fs;
        _marks &= ~(Marks.FilterDry | Marks.AfterKnown);
    }

    /// <summary>A settled dipstick: the last one closes the fill sum, every one sharpens the estimate.</summary>
    internal void ReadAfter(double level, double variance)
    {
        (_stick, _stickVariance) = (level, variance);
        _marks |= Marks.AfterKnown | Marks.StickKnown;
        Read(level, variance);
    }

    private void Read(double level, double variance)
    {
        if (LevelKnown)
        {
            Weigh(_ll, _lf, _ls, _ll + variance, level - _level);
            return;
        }

        (_level, _ll, _lf, _ls) = (level, variance, 0, 0);
        _marks |= Marks.LevelKnown;
    }

    private readonly bool Has(Marks marks) => (_marks & marks) == marks;

    /// <summary>Takes in one observation: g is covariance times what it sees, spread its own variance and that of what it sees.</summary>
    private void Weigh(double gl, double gf, double gs, double spread, double innovation)
    {
        if (spread <= 0)
        {
            // Everything is said to be exact already: there is nothing left to weigh.
            return;
        }

        double share = 1 / spread;
        double kl = gl * share;
        double kf = gf * share;
        double ks = gs * share;
        _level += kl * innovation;
        _filter += kf * innovation;
        _fill += ks * innovation;
        _ll -= kl * gl;
        _lf -= kl * gf;
        _ls -= kl * gs;
        _ff -= kf * gf;
        _fs -= kf * gs;
        _ss -= ks * gs;
    }
}
