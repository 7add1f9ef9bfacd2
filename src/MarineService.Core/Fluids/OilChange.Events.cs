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
        OilChangeLimits chosen = limits ?? OilChangeLimits.Default;
        AccountState state = AccountState.At(sump);
        OilChangeRemark remarks = LevelOf(sump, chosen, state, before, out double level, out double variance);
        if ((remarks & OilChangeRemark.Refusals) == 0)
        {
            state.ReadBefore(level, variance);
            remarks |= JudgeBefore(sump, chosen, state);
        }

        return new(null, sump, chosen, OilChangeStep.Begun, before, 0, state, remarks);
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
        return new(null, sump, limits ?? OilChangeLimits.Default, OilChangeStep.Begun, null, 0, AccountState.At(sump), OilChangeRemark.None);
    }

    /// <summary>Tells what happened since the last change, so that the consumption can be reckoned.</summary>
    /// <param name="period">The level it began with, top-ups, hours, mean power.</param>
    /// <returns>The account with the period; refused when one was told already.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="period"/> is null.</exception>
    public OilChange Since(PeriodSinceChange period)
    {
        Guard.NotNull(period);
        return FindPeriod() is null
            ? Next(OilChangeStep.PeriodTold, period, 0, _state, OilChangeRemark.None)
            : Next(OilChangeStep.PeriodTold, period, 0, _state, OilChangeRemark.PeriodTwice);
    }

    /// <summary>Tells how the oil looked or smelled, on the stick or in the pan.</summary>
    /// <param name="appearance">How.</param>
    /// <returns>The account with the look.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="appearance"/> is not defined.</exception>
    public OilChange Looked(OilAppearance appearance) =>
        Next(OilChangeStep.Looked, null, (byte)Guard.Defined(appearance), _state, appearance switch
        {
            OilAppearance.Milky or OilAppearance.WaterBelow => OilChangeRemark.Water,
            OilAppearance.SmellsOfFuel => OilChangeRemark.Fuel,
            OilAppearance.MetalInIt => OilChangeRemark.Metal,
            _ => OilChangeRemark.None,
        });

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
        AccountState state = _state;
        OilChangeRemark remarks = RemarksOn(volume);
        if (state.DrainClosed || state.HasPour)
        {
            remarks |= OilChangeRemark.DrainAfterPour;
        }
        else if (state.Drained + volume.Liters > Sump.MostThatCanDrainLiters)
        {
            remarks |= OilChangeRemark.DrainTooLarge;
        }
        else if (volume.IsCovered)
        {
            state.Drain(volume, method);
        }

        return Next(OilChangeStep.Drained, measured, (byte)method, state, remarks);
    }

    /// <summary>The old filter came off and a new, dry one went on.</summary>
    /// <param name="oldEmptiedIntoMeasure">Whether the old filter was emptied into the measure of the drain, so that the drain counts its oil.</param>
    /// <returns>The account with the filter; refused the second time and after the first pour.</returns>
    public OilChange FilterChanged(bool oldEmptiedIntoMeasure)
    {
        AccountState state = _state;
        OilChangeRemark remarks = OilChangeRemark.None;
        if (state.HasPour)
        {
            remarks = OilChangeRemark.FilterAfterPour;
        }
        else if (state.FilterSaid)
        {
            remarks = OilChangeRemark.FilterTwice;
        }
        else
        {
            state.TakeFilterOff(oldEmptiedIntoMeasure);
        }

        return Next(OilChangeStep.FilterChanged, null, oldEmptiedIntoMeasure ? (byte)1 : (byte)0, state, remarks);
    }

    /// <summary>The filter stays on, full of old oil.</summary>
    /// <returns>The account; refused when the filter was told of already.</returns>
    public OilChange FilterKept()
    {
        AccountState state = _state;
        OilChangeRemark remarks = OilChangeRemark.None;
        if (state.FilterSaid)
        {
            remarks = OilChangeRemark.FilterTwice;
        }
        else
        {
            state.KeepFilter();
        }

        return Next(OilChangeStep.FilterKept, null, 0, state, remarks);
    }

    /// <summary>The new filter was filled by hand before it went on. It counts as poured.</summary>
    /// <remarks>Only upright oil filters, through the outer holes; never a diesel's fine fuel filter with unfiltered fuel.</remarks>
    /// <param name="measured">What went in.</param>
    /// <returns>The account; refused without a new filter, and when it is more than the filter holds.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange FilterPrimed(MeasuredVolume measured)
    {
        BaseVolume volume = BaseVolume.Of(Guard.NotNull(measured), Sump.Oil, Limits, Limits.PourAssumption);
        AccountState state = _state;
        OilChangeRemark remarks = RemarksOn(volume);
        double doubt = MistakeDeviations * FluidMath.RootSumSquare(Sump.FilterSigmaLiters, Math.Sqrt(volume.Variance));
        if (!state.FilterDry)
        {
            remarks |= OilChangeRemark.PrimedWithoutFilter;
        }
        else if (state.Primed + volume.Liters > Sump.FilterLiters + doubt)
        {
            remarks |= OilChangeRemark.PrimedTooMuch;
        }
        else if (volume.IsCovered)
        {
            state.Prime(volume);
        }

        return Next(OilChangeStep.FilterPrimed, measured, 0, state, remarks);
    }

    /// <summary>Oil was poured into the engine.</summary>
    /// <param name="measured">What went in.</param>
    /// <returns>The account with the pour; remarked on when it may pass the full mark.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange Poured(MeasuredVolume measured)
    {
        BaseVolume volume = BaseVolume.Of(Guard.NotNull(measured), Sump.Oil, Limits, Limits.PourAssumption);
        AccountState state = _state;
        OilChangeRemark remarks = RemarksOn(volume);
        if (volume.IsCovered)
        {
            remarks |= EndDrain(ref state);
            state.Pour(volume);
            if (state.LevelKnown && state.Level + Limits.OverfillDeviations * Math.Sqrt(Math.Max(0, state.LevelVariance)) > PourGrainLiters)
            {
                remarks |= OilChangeRemark.MayPassFull;
            }
        }

        return Next(OilChangeStep.Poured, measured, 0, state, remarks);
    }

    /// <summary>The engine ran until the pressure was normal, so that a new filter is full.</summary>
    /// <returns>The account; remarked on when the level was below the add mark.</returns>
    public OilChange Ran()
    {
        AccountState state = _state;
        OilChangeRemark remarks = OilChangeRemark.None;
        if (state.HasDrain || state.FilterOff)
        {
            remarks |= EndDrain(ref state);
        }

        double doubt = Limits.NoiseCoverageRatio * Math.Sqrt(Math.Max(0, state.LevelVariance));
        if (state.LevelKnown && state.Level + doubt < -Sump.Dipstick.RangeLiters)
        {
            remarks |= OilChangeRemark.RanBelowAdd;
        }

        state.Run();
        return Next(OilChangeStep.Ran, null, 0, state, remarks);
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
        Guard.NotNull(reading);
        AccountState state = _state;
        bool moved = state.HasDrain || state.FilterOff || state.HasMoved;
        OilChangeRemark filter = OilChangeRemark.None;
        if (moved)
        {
            filter = EndDrain(ref state);
        }

        OilChangeRemark remarks = LevelOf(Sump, Limits, state, reading, out double level, out double variance);
        if ((remarks & OilChangeRemark.Refusals) != 0)
        {
            return Next(OilChangeStep.Settled, reading, 0, _state, remarks);
        }

        if (moved)
        {
            state.ReadAfter(level, variance);
        }
        else if (state.LevelKnown)
        {
            state.ReadBeforeAgain(level, variance);
            remarks |= JudgeBefore(Sump, Limits, state);
        }
        else
        {
            state.ReadBefore(level, variance);
            remarks |= JudgeBefore(Sump, Limits, state);
        }

        return Next(OilChangeStep.Settled, reading, 0, state, remarks | filter);
    }

    /// <summary>Oil was taken out again because the level was too high.</summary>
    /// <param name="measured">What came out.</param>
    /// <returns>The account; refused when it is more than the sump holds.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="measured"/> is null.</exception>
    public OilChange DrawnOff(MeasuredVolume measured)
    {
        BaseVolume volume = BaseVolume.Of(Guard.NotNull(measured), Sump.Oil, Limits, Limits.DrainAssumption);
        AccountState state = _state;
        OilChangeRemark remarks = RemarksOn(volume);
        if (volume.IsCovered)
        {
            remarks |= state.HasDrain || state.FilterOff ? EndDrain(ref state) : OilChangeRemark.None;
            double most = state.InSump + MistakeDeviations * Math.Sqrt(Math.Max(0, state.InSumpVariance) + volume.Variance);
            if (state.LevelKnown && volume.Liters > most)
            {
                return Next(OilChangeStep.DrawnOff, measured, 0, _state, OilChangeRemark.DrawnOffTooMuch);
            }

            state.DrawOff(volume);
        }

        return Next(OilChangeStep.DrawnOff, measured, 0, state, remarks);
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
    internal static OilChangeRemark LevelOf(
        Sump sump, OilChangeLimits limits, in AccountState state, DipstickReading reading, out double level, out double variance)
    {
        (level, variance) = (0, 0);
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
            heat = full * sump.Oil.AlphaPerCelsius * limits.TemperatureSigmaKelvins;
        }

        if (reading.SettledMinutes is double minutes && minutes < SettlingMinutes(limits, reading))
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
        foreach (Finding fault in sump.Validate())
        {
            if (fault.Severity >= Severity.Act)
            {
                throw new ArgumentException($"Must hold figures that fit together. {string.Join(" ", sump.Validate())}", nameof(sump));
            }
        }
    }

    private static OilChangeRemark JudgeBefore(Sump sump, OilChangeLimits limits, in AccountState state)
    {
        double noise = limits.NoiseCoverageRatio * Math.Sqrt(state.BeforeVariance);
        double above = -state.RoomBefore;
        return above > noise ? OilChangeRemark.AboveFullBefore
            : above < -sump.Dipstick.RangeLiters - noise ? OilChangeRemark.BelowAddBefore
            : OilChangeRemark.None;
    }

    private static OilChangeRemark RemarksOn(in BaseVolume volume) =>
        !volume.IsCovered ? OilChangeRemark.TemperatureOutside
        : volume.IsAssumed && volume.Liters > 0 ? OilChangeRemark.TemperatureAssumed
        : OilChangeRemark.None;

    /// <summary>Closes the drain before anything goes in; a filter that nobody spoke of is taken to have stayed on.</summary>
    private OilChangeRemark EndDrain(ref AccountState state)
    {
        OilChangeRemark remark = OilChangeRemark.None;
        if (state.HasDrain && !state.FilterSaid)
        {
            state.KeepFilter();
            remark = OilChangeRemark.FilterNotSaid;
        }

        if (state.HasDrain || state.FilterOff)
        {
            state.CloseDrain(Sump, Limits.FineBandLiters(Sump.ServiceFillLiters));
        }

        return remark;
    }

    /// <summary>A refused event leaves the state as it was.</summary>
    private OilChange Next(OilChangeStep step, object? given, byte option, in AccountState state, OilChangeRemark remarks) =>
        (remarks & OilChangeRemark.Refusals) == 0
            ? new(this, Sump, Limits, step, given, option, state, remarks)
            : new(this, Sump, Limits, step, given, option, _state, remarks & OilChangeRemark.Refusals);
}
