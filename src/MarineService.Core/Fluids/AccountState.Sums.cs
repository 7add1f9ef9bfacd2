namespace MarineService.Core.Fluids;

/// <content>What the plain sums promise, by the book's own figures, and the end of the drain where they meet the book.</content>
internal partial struct AccountState
{
    /// <summary>What left the engine by the sums: the measure, and the filter's oil when the measure did not count it.</summary>
    internal readonly double Out(Sump sump) => _drained + (FilterLost ? sump.FilterLiters : 0);

    internal readonly double OutVariance(Sump sump) =>
        _drainedVariance + (FilterLost ? FluidMath.Square(sump.FilterSigmaLiters) : 0);

    /// <summary>Service fill less the residual, less the room before, less the filter unless the measure counted it.</summary>
    internal readonly double ExpectedDrain(Sump sump, double residual) =>
        sump.ServiceFillLiters - residual - RoomBefore - (FilterCounted ? 0 : sump.FilterLiters);

    internal readonly double DrainDifferenceVariance(Sump sump, double residualVariance) =>
        _drainedVariance + FluidMath.Square(sump.ServiceFillSigmaLiters) + residualVariance + _beforeVariance
        + (FilterCounted ? 0 : FluidMath.Square(sump.FilterSigmaLiters));

    /// <summary>The fill that the drain and the two readings explain; a filter not yet filled is allowed for.</summary>
    internal readonly double ExpectedFill(Sump sump) =>
        Out(sump) + RoomBefore - RoomAfter - (FilterDry ? sump.FilterLiters - _primed : 0);

    internal readonly double FillDifferenceVariance(Sump sump)
    {
        // The filter enters once through what left uncounted and once through what is not filled yet; they cancel.
        bool filterCounts = FilterLost != FilterDry;
        return _pouredVariance + _drainedVariance + _beforeVariance + _stickVariance
            + (filterCounts ? FluidMath.Square(sump.FilterSigmaLiters) : 0) + (FilterDry ? _primedVariance : 0);
    }

    /// <summary>
    /// Ends the drain: the filter's oil that the measure counted goes back to the account of the sump, and what an empty
    /// sump should hold is weighed against what the sums say.
    /// </summary>
    /// <remarks>
    /// When the two agree within the band, the estimate takes both in. When they do not, one of them is wrong and nobody
    /// knows which: the estimate then takes the one that leaves less room, so that the next pour errs on the safe side.
    /// </remarks>
    internal void CloseDrain(Sump sump, double fineBand)
    {
        if (DrainClosed)
        {
            return;
        }

        _marks |= Marks.Closed;
        if (FilterCounted)
        {
            _level += _filter;
            _ll += 2 * _lf + _ff;
            _lf += _ff;
            _ls += _fs;
        }

        if (!HasDrain || FindResidual(sump) is not Sump.Residual left)
        {
            return;
        }

        double difference = BeforeKnown ? _drained - ExpectedDrain(sump, left.Liters) : 0;
        double variance = left.SigmaLiters * left.SigmaLiters;
        if (BeforeKnown && Math.Abs(difference) <= fineBand)
        {
            // Sees level - filter + service fill.
            double gl = _ll - _lf + _ls;
            double gf = _lf - _ff + _fs;
            double gs = _ls - _fs + _ss;
            Weigh(gl, gf, gs, gl - gf + gs + variance, left.Liters - (_level - _filter + _fill));
            return;
        }

        if (!BeforeKnown || difference > 0)
        {
            _level = left.Liters - _fill + _filter;
            _ll = variance + _ss + _ff - 2 * _fs;
            _lf = _ff - _fs;
            _ls = _fs - _ss;
        }

        _marks |= Marks.LevelKnown | (BeforeKnown ? Marks.Replaced : Marks.None);
    }

    /// <summary>What the best of the ways of draining that were used leaves behind.</summary>
    internal readonly Sump.Residual? FindResidual(Sump sump) =>
        sump.FindResidual(Has(Marks.ByPlug) ? DrainMethod.DrainPlug : DrainMethod.Extractor);
}
