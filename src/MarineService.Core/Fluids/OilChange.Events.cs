using MarineService.Core.Internal;

namespace MarineService.Core.Fluids;

/// <content>The events, in the order of a usual change.</content>
public sealed partial class OilChange
{
    // No jug shows 5 mL: a pour of exactly the safe amount must not be blamed for its last drop.
    private const double PourGrainLiters = 0.005;

    // Warm oil runs down in minutes, cold oil takes far longer (common practice); the times are in the limits.
    private const double WarmCelsius = 40;

    // A figure this many standard deviations beyond what is possible is a typing mistake, not a measurement.
    private const double MistakeDeviations = 3;

    /// <summary>Opens an account with the level before anything is drained.</summary>
    /// <param name="sump">What the engine holds; without faults.</param>
    /// <param name="before">The level before, read cold before any start.</param>
    /// <param name="limits">The limits, or null for <see cref="OilChangeLimits.Default"/>.</param>
    /// <returns>The account. When the reading cannot be used it is refused with a finding and the level before is not known.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sump"/> or <paramref name="before"/> is null.</exception>
    /// <exception cref="ArgumentException">The sump's figures do not fit together; the message names the faults of <see cref="Sump.Validate"/>.</exception>
    public static OilChange Begin(Sump sump, DipstickReading before, OilChangeLimits? limits = null)
    {
        Guard.NotNull(sump);
        Guard.NotNull(before);
        RefuseFaults(sump);
        OilChange next = new(sump, limits ?? OilChangeLimits.Default, before);
        OilChangeRemark remarks = next.LevelOf(before, out double level, out double variance);
        if (remarks == OilChangeRemark.None)
        {
            next._state.ReadBefore(level, variance);
            remarks = next.JudgeBefore();
        }

        next.Remarks = remarks;
        return next;
    }

    /// <summary>Opens an account without a reading: the level is known only once the sump has been drained.</summary>
    /// <param name="sump">What the engine holds; without faults.</param>
    /// <param name="limits">The limits, or null for <see cref="OilChangeLimits.Default"/>.</param>
    /// <returns>The account.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sump"/> is null.</exception>
    /// <exception cref="ArgumentException">The sump's figures do not fit together; the message names the faults of <see cref="Sump.Validate"/>.</exception>
    public static OilChange BeginWithoutReading(Sump sump, OilChangeLimits? limits = null)
    {
        Guard.NotNull(sump);
        RefuseFaults(sump);
        return new(sump, limits ?? OilChangeLimits.Default, null);
    }

    /// <summary>Tells what happened since the last change, so that the consumption can be reckoned.</summary>
    /// <param name="period">The level it began with, top-ups, hours, mean power.</param>
    /// <returns>The account with the period; refused when one was told already.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="period"/> is null.</exception>
    public OilChange Since(PeriodSinceChange period)
    {
        Guard.NotNull(period);
        return new(this, OilChangeStep.PeriodTold, period)
        {
            Remarks = FindPeriod() is null ? OilChangeRemark.None : OilChangeRemark.PeriodTwice,
        };
    }

    /// <summary>Tells how the oil looked or smelled, on the stick or in the pan.</summary>
    /// <param name="appearance">How.</param>
    /// <returns>The account with the look.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="appearance"/> is not defined.</exception>
    public OilChange Looked(OilAppearance appearance) =>
        new(this, OilChangeStep.Looked, null, (byte)Guard.Defined(appearance))
        {
            Remarks = appearance switch
            {
                OilAppearance.Milky or OilAppearance.WaterBelow => OilChangeRemark.Water,
                OilAppearance.SmellsOfFuel => OilChangeRemark.Fuel,
                OilAppearance.MetalInIt => OilChangeRemark.Metal,
                _ => OilChangeRemark.None,
            },
        };

    /// <summary>Oil came out. May be told more than once: through the plug, then with the extractor.</summary>
    /// <param name="measured">What the measure showed; with the old filter's oil in it when that is emptied there too.</param>
    /// <param name="method">How it came out.</param>
    /// <returns>The account with the drain; refused after the first pour, and when it is more than the engine can hold.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not defined.</exception>
    public OilChange Drained(MeasuredVolume measured, DrainMethod method = DrainMethod.DrainPlug)
    {
        BaseVolume volume = BaseVolume.Of(Guard.NotNull(measured), Sump.Oil, Limits, Limits.DrainAssumption);
        Guard.Defined(method);
        OilChange next = new(this, OilChangeStep.Drained, measured, (byte)method);
        OilChangeRemark refusal = !volume.IsCovered ? OilChangeRemark.TemperatureOutside
            : _state.DrainClosed || _state.HasPour ? OilChangeRemark.DrainAfterPour
            : _state.Drained + volume.Liters > Sump.MostThatCanDrainLiters ? OilChangeRemark.DrainTooLarge
            : OilChangeRemark.None;
        if (refusal != OilChangeRemark.None)
        {
            return next.Refused(refusal);
        }

        next._state.Drain(volume, method);
        next.Remarks = RemarksOn(volume);
        return next;
    }

    /// <summary>The old filter came off and a new, dry one went on.</summary>
    /// <param name="oldEmptiedIntoMeasure">Whether the old filter was emptied into the measure of the drain, so that the drain counts its oil.</param>
    /// <returns>The account with the filter; refused the second time and after the first pour.</returns>
    public OilChange FilterChanged(bool oldEmptiedIntoMeasure)
    {
        OilChange next = new(this, OilChangeStep.FilterChanged, null, oldEmptiedIntoMeasure ? (byte)1 : (byte)0);
        if (_state.HasPour || _state.FilterSaid)
        {
            return next.Refused(_state.HasPour ? OilChangeRemark.FilterAfterPour : OilChangeRemark.FilterTwice);
        }

        next._state.TakeFilterOff(oldEmptiedIntoMeasure);
        return next;
    }

    /// <summary>The filter stays on, full of old oil.</summary>
    /// <returns>The account; refused when the filter was told of already.</returns>
    public OilChange FilterKept()
    {
        OilChange next = new(this, OilChangeStep.FilterKept);
        if (_state.FilterSaid)
        {
            return next.Refused(OilChangeRemark.FilterTwice);
        }

        next._state.KeepFilter();
        return next;
    }

    /// <summary>The new filter was filled by hand before it went on. It counts as poured.</summary>
    /// <remarks>Only upright oil filters, through the outer holes; never a diesel's fine fuel filter with unfiltered fuel.</remarks>
    /// <param name="measured">What went in.</param>
    /// <returns>The account; refused without a new filter, and when it is more than the filter holds.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange FilterPrimed(MeasuredVolume measured)
    {
        BaseVolume volume = BaseVolume.Of(Guard.NotNull(measured), Sump.Oil, Limits, Limits.PourAssumption);
        OilChange next = new(this, OilChangeStep.FilterPrimed, measured);
        double doubt = MistakeDeviations * Math.Sqrt(FluidMath.Square(Sump.FilterSigmaLiters) + volume.Variance);
        OilChangeRemark refusal = !volume.IsCovered ? OilChangeRemark.TemperatureOutside
            : !_state.FilterDry ? OilChangeRemark.PrimedWithoutFilter
            : _state.Primed + volume.Liters > Sump.FilterLiters + doubt ? OilChangeRemark.PrimedTooMuch
            : OilChangeRemark.None;
        if (refusal != OilChangeRemark.None)
        {
            return next.Refused(refusal);
        }

        next._state.Prime(volume);
        next.Remarks = RemarksOn(volume);
        return next;
    }

    /// <summary>Oil was poured into the engine.</summary>
    /// <param name="measured">What went in.</param>
    /// <returns>The account with the pour; remarked on when it may pass the full mark.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange Poured(MeasuredVolume measured)
    {
        BaseVolume volume = BaseVolume.Of(Guard.NotNull(measured), Sump.Oil, Limits, Limits.PourAssumption);
        OilChange next = new(this, OilChangeStep.Poured, measured);
        if (!volume.IsCovered)
        {
            return next.Refused(OilChangeRemark.TemperatureOutside);
        }

        OilChangeRemark remarks = RemarksOn(volume) | next.EndDrain();
        next._state.Pour(volume);
        if (next._state.LevelKnown && next._state.Level + Limits.OverfillDeviations * next._state.LevelSigma > PourGrainLiters)
        {
            remarks |= OilChangeRemark.MayPassFull;
        }

        next.Remarks = remarks;
        return next;
    }

    /// <summary>The engine ran until the pressure was normal, so that a new filter is full.</summary>
    /// <returns>The account; remarked on when the level was below the add mark.</returns>
    public OilChange Ran()
    {
        OilChange next = new(this, OilChangeStep.Ran);
        OilChangeRemark remarks = next.EndDrain();
        if (next._state.LevelKnown
            && next._state.Level + Limits.NoiseCoverageRatio * next._state.LevelSigma < -Sump.Dipstick.RangeLiters)
        {
            remarks |= OilChangeRemark.RanBelowAdd;
        }

        next._state.Run();
        next.Remarks = remarks;
        return next;
    }

    /// <summary>The oil settled and the dipstick was read.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>
    /// The account with the reading weighed in; refused when it was read before settling or in another way than the marks
    /// expect. Before anything was drained or poured it sharpens the level before.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="reading"/> is null.</exception>
    public OilChange Settled(DipstickReading reading)
    {
        OilChange next = new(this, OilChangeStep.Settled, Guard.NotNull(reading));
        OilChangeRemark refusal = LevelOf(reading, out double level, out double variance);
        if (refusal != OilChangeRemark.None)
        {
            return next.Refused(refusal);
        }

        if (_state.HasDrain || _state.FilterOff || _state.HasMoved)
        {
            next.Remarks = next.EndDrain();
            next._state.ReadAfter(level, variance);
            return next;
        }

        if (_state.LevelKnown)
        {
            next._state.ReadBeforeAgain(level, variance);
        }
        else
        {
            next._state.ReadBefore(level, variance);
        }

        next.Remarks = next.JudgeBefore();
        return next;
    }

    /// <summary>Oil was taken out again because the level was too high.</summary>
    /// <param name="measured">What came out.</param>
    /// <returns>The account; refused when it is more than the sump holds.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange DrawnOff(MeasuredVolume measured)
    {
        BaseVolume volume = BaseVolume.Of(Guard.NotNull(measured), Sump.Oil, Limits, Limits.DrainAssumption);
        OilChange next = new(this, OilChangeStep.DrawnOff, measured);
        if (!volume.IsCovered)
        {
            return next.Refused(OilChangeRemark.TemperatureOutside);
        }

        OilChangeRemark remarks = RemarksOn(volume) | next.EndDrain();
        double most = next._state.InSump + MistakeDeviations * Math.Sqrt(Math.Max(0, next._state.InSumpVariance) + volume.Variance);
        if (next._state.LevelKnown && volume.Liters > most)
        {
            return next.Refused(OilChangeRemark.DrawnOffTooMuch);
        }

        next._state.DrawOff(volume);
        next.Remarks = remarks;
        return next;
    }

    internal PeriodSinceChange? FindPeriod()
    {
        for (OilChange? change = this; change is not null; change = change.Previous)
        {
            if (change.Period is PeriodSinceChange period && !change.IsRefused)
            {
                return period;
            }
        }

        return null;
    }

    /// <summary>What a reading says of the level (liters at 15 °C above full), or why it says nothing.</summary>
    /// <remarks>
    /// level = C(r - 1) - (1 - p)·range·r - tilt, with C what the sump holds at full and r the volume correction at the oil's
    /// temperature over that at the temperature of the marks: hot oil stands higher than the same oil cold.
    /// </remarks>
    internal OilChangeRemark LevelOf(DipstickReading reading, out double level, out double variance)
    {
        (level, variance) = (0, 0);
        Sump sump = Sump;
        Dipstick stick = sump.Dipstick;
        double ratio = 1;
        double heat = 0;
        double full = sump.ServiceFillLiters - sump.FilterLiters;
        if (reading.Celsius is double celsius)
        {
            if (!OilDensity.CoversCelsius(celsius))
            {
                return OilChangeRemark.TemperatureOutside;
            }

            ratio = sump.Oil.FactorTo15C(celsius) / sump.Oil.FactorTo15C(stick.ReferenceCelsius);
            heat = full * sump.Oil.AlphaPerCelsius * Limits.TemperatureSigmaKelvins;
        }

        if (reading.SettledMinutes is double minutes && minutes < SettlingMinutes(Limits, reading))
        {
            return OilChangeRemark.NotSettled;
        }

        if (reading.Seating is StickSeating seating && seating != stick.Seating)
        {
            return OilChangeRemark.WrongSeating;
        }

        double room = (1 - reading.RangeFraction) * stick.RangeLiters;
        double tilt = 0;
        if (reading.IsTilted)
        {
            Answer<TiltCorrection>? correction =
                stick.Shape?.CorrectionFor(reading.PitchRad, reading.RollRad, Math.Max(full - room, 1e-3));
            if (correction is not { IsKnown: true })
            {
                return OilChangeRemark.TiltNotCorrectable;
            }

            tilt = Canonical.Liters(correction.Value.VolumeError);
        }
        else if (reading.Attitude is BoatAttitude attitude && attitude != stick.Attitude)
        {
            return OilChangeRemark.WrongAttitude;
        }

        level = full * (ratio - 1) - (room + tilt) * ratio;
        variance = FluidMath.Square(reading.SigmaFraction * stick.RangeLiters)
            + FluidMath.Square((1 - reading.RangeFraction) * stick.RangeSigmaLiters)
            + heat * heat;
        return OilChangeRemark.None;
    }

    internal static double SettlingMinutes(OilChangeLimits limits, DipstickReading reading) =>
        reading.Celsius >= WarmCelsius ? limits.SettleWarmMinutes : limits.SettleColdMinutes;

    private static void RefuseFaults(Sump sump)
    {
        IReadOnlyList<Finding> faults = sump.Validate();
        for (int i = 0; i < faults.Count; i++)
        {
            if (faults[i].Severity >= Severity.Act)
            {
                throw new ArgumentException($"Must hold figures that fit together. {string.Join(" ", faults)}", nameof(sump));
            }
        }
    }

    private static OilChangeRemark RemarksOn(in BaseVolume volume) =>
        volume.IsAssumed && volume.Liters > 0 ? OilChangeRemark.TemperatureAssumed : OilChangeRemark.None;

    private OilChangeRemark JudgeBefore()
    {
        double noise = Limits.NoiseCoverageRatio * Math.Sqrt(_state.BeforeVariance);
        double above = -_state.RoomBefore;
        return above > noise ? OilChangeRemark.AboveFullBefore
            : above < -Sump.Dipstick.RangeLiters - noise ? OilChangeRemark.BelowAddBefore
            : OilChangeRemark.None;
    }

    /// <summary>Closes the drain before anything goes in; a filter that nobody spoke of is taken to have stayed on.</summary>
    private OilChangeRemark EndDrain()
    {
        if (_state.DrainClosed || !(_state.HasDrain || _state.FilterOff))
        {
            return OilChangeRemark.None;
        }

        OilChangeRemark remark = OilChangeRemark.None;
        if (!_state.FilterSaid)
        {
            _state.KeepFilter();
            remark = OilChangeRemark.FilterNotSaid;
        }

        _state.CloseDrain(Sump, Limits.FineBandLiters(Sump.ServiceFillLiters));
        return remark;
    }

    /// <summary>A refused event leaves the account as it was.</summary>
    private OilChange Refused(OilChangeRemark refusal)
    {
        _state = Previous!._state;
        Remarks = refusal;
        return this;
    }
}
