using MarineService.Core.Internal;

namespace MarineService.Core.Fluids;

/// <content>What each event does to the account, and when it is refused.</content>
public sealed partial class OilChange
{
    // No jug shows 5 mL: a pour of exactly the safe amount must not be blamed for its last drop.
    private const double PourGrainLiters = 0.005;

    // Warm oil runs down in minutes, cold oil takes far longer (common practice); the times are in the limits.
    private const double WarmCelsius = 40;

    // A figure this many standard deviations beyond what is possible is a typing mistake, not a measurement.
    private const double MistakeDeviations = 3;

    /// <summary>The period that was told first; later ones were refused.</summary>
    internal PeriodSinceChange? FindPeriod()
    {
        PeriodSinceChange? first = null;
        for (OilChange? change = this; change is not null; change = change.Previous)
        {
            first = change.Period ?? first;
        }

        return first;
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

            ratio = sump.Oil.FactorBetween(celsius, stick.ReferenceCelsius);
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

    private static OilChangeRemark RemarksOn(in BaseVolume volume) =>
        volume.IsAssumed && volume.Liters > 0 ? OilChangeRemark.TemperatureAssumed : OilChangeRemark.None;

    /// <summary>Takes the event into the state, or leaves the state as it was and says why.</summary>
    private OilChangeRemark Apply(ref AccountState state)
    {
        switch (Step)
        {
            case OilChangeStep.Begun:
                return Reading is DipstickReading before ? ApplyReading(ref state, before) : OilChangeRemark.None;
            case OilChangeStep.PeriodTold when state.PeriodTold:
                return OilChangeRemark.PeriodTwice;
            case OilChangeStep.PeriodTold:
                state.TellPeriod();
                return OilChangeRemark.None;
            case OilChangeStep.Looked:
                return (OilAppearance)_option switch
                {
                    OilAppearance.Milky or OilAppearance.WaterBelow => OilChangeRemark.Water,
                    OilAppearance.SmellsOfFuel => OilChangeRemark.Fuel,
                    OilAppearance.MetalInIt => OilChangeRemark.Metal,
                    _ => OilChangeRemark.None,
                };
            case OilChangeStep.FilterChanged or OilChangeStep.FilterKept:
                return ApplyFilter(ref state);
            case OilChangeStep.Ran:
                return ApplyRun(ref state);
            case OilChangeStep.Settled:
                return ApplyReading(ref state, Reading!);
            default:
                return ApplyVolume(ref state);
        }
    }

    private OilChangeRemark ApplyVolume(ref AccountState state)
    {
        bool isOut = Step is OilChangeStep.Drained or OilChangeStep.DrawnOff;
        BaseVolume volume = BaseVolume.Of(Measured!, Sump.Oil, Limits, isOut ? Limits.DrainAssumption : Limits.PourAssumption);
        return !volume.IsCovered ? OilChangeRemark.TemperatureOutside : Step switch
        {
            OilChangeStep.Drained => ApplyDrain(ref state, volume),
            OilChangeStep.FilterPrimed => ApplyPriming(ref state, volume),
            OilChangeStep.Poured => ApplyPour(ref state, volume),
            _ => ApplyDrawingOff(ref state, volume),
        };
    }

    private OilChangeRemark ApplyDrain(ref AccountState state, in BaseVolume volume)
    {
        if (state.DrainClosed || state.HasPour)
        {
            return OilChangeRemark.DrainAfterPour;
        }

        if (state.Drained + volume.Liters > Sump.MostThatCanDrainLiters)
        {
            return OilChangeRemark.DrainTooLarge;
        }

        state.Drain(volume, (DrainMethod)_option);
        return RemarksOn(volume);
    }

    private OilChangeRemark ApplyFilter(ref AccountState state)
    {
        if (state.FilterSaid)
        {
            return OilChangeRemark.FilterTwice;
        }

        if (Step == OilChangeStep.FilterKept)
        {
            state.KeepFilter();
            return OilChangeRemark.None;
        }

        if (state.HasPour)
        {
            return OilChangeRemark.FilterAfterPour;
        }

        state.TakeFilterOff(emptiedIntoMeasure: _option != 0);
        return OilChangeRemark.None;
    }

    private OilChangeRemark ApplyPriming(ref AccountState state, in BaseVolume volume)
    {
        if (!state.FilterDry)
        {
            return OilChangeRemark.PrimedWithoutFilter;
        }

        double doubt = MistakeDeviations * Math.Sqrt(FluidMath.Square(Sump.FilterSigmaLiters) + volume.Variance);
        if (state.Primed + volume.Liters > Sump.FilterLiters + doubt)
        {
            return OilChangeRemark.PrimedTooMuch;
        }

        state.Prime(volume);
        return RemarksOn(volume);
    }

    private OilChangeRemark ApplyPour(ref AccountState state, in BaseVolume volume)
    {
        OilChangeRemark remarks = RemarksOn(volume) | EndDrain(ref state);
        state.Pour(volume);
        return state.LevelKnown && state.Level + Limits.OverfillDeviations * state.LevelSigma > PourGrainLiters
            ? remarks | OilChangeRemark.MayPassFull
            : remarks;
    }

    private OilChangeRemark ApplyDrawingOff(ref AccountState state, in BaseVolume volume)
    {
        AccountState before = state;
        OilChangeRemark remarks = RemarksOn(volume) | EndDrain(ref state);
        double most = state.InSump + MistakeDeviations * Math.Sqrt(Math.Max(0, state.InSumpVariance) + volume.Variance);
        if (state.LevelKnown && volume.Liters > most)
        {
            state = before;
            return OilChangeRemark.DrawnOffTooMuch;
        }

        state.DrawOff(volume);
        return remarks;
    }

    private OilChangeRemark ApplyRun(ref AccountState state)
    {
        OilChangeRemark remarks = EndDrain(ref state);
        if (state.LevelKnown && state.Level + Limits.NoiseCoverageRatio * state.LevelSigma < -Sump.Dipstick.RangeLiters)
        {
            remarks |= OilChangeRemark.RanBelowAdd;
        }

        state.Run();
        return remarks;
    }

    private OilChangeRemark ApplyReading(ref AccountState state, DipstickReading reading)
    {
        OilChangeRemark refusal = LevelOf(reading, out double level, out double variance);
        if (refusal != OilChangeRemark.None)
        {
            return refusal;
        }

        if (state.HasMoved)
        {
            OilChangeRemark remarks = EndDrain(ref state);
            state.ReadAfter(level, variance);
            return remarks;
        }

        state.ReadBefore(level, variance);
        double noise = Limits.NoiseCoverageRatio * state.LevelSigma;
        return state.Level > noise ? OilChangeRemark.AboveFullBefore
            : state.Level < -Sump.Dipstick.RangeLiters - noise ? OilChangeRemark.BelowAddBefore
            : OilChangeRemark.None;
    }

    /// <summary>Closes the drain before anything goes in; a filter that nobody spoke of is taken to have stayed on.</summary>
    private OilChangeRemark EndDrain(ref AccountState state)
    {
        if (state.DrainClosed || !(state.HasDrain || state.FilterOff))
        {
            return OilChangeRemark.None;
        }

        OilChangeRemark remark = OilChangeRemark.None;
        if (!state.FilterSaid)
        {
            state.KeepFilter();
            remark = OilChangeRemark.FilterNotSaid;
        }

        state.CloseDrain(Sump, Limits.FineBandLiters(Sump.ServiceFillLiters));
        return remark;
    }
}
