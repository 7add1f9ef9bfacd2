using System.Runtime.CompilerServices;
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
    internal static OilChangeRemark LevelOf(
        DipstickReading reading, Sump sump, OilChangeLimits limits, out double level, out double variance)
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

            ratio = sump.Oil.FactorBetween(celsius, stick.ReferenceCelsius);
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

    /// <summary>Takes the event into the state, or leaves the state as it was and says why.</summary>
    private OilChangeRemark Apply(ref AccountState state, OilChangeOpening opening)
    {
        switch (Step)
        {
            case OilChangeStep.Begun:
                return Reading is DipstickReading before ? ApplyReading(ref state, before, opening) : OilChangeRemark.None;
            case OilChangeStep.PeriodTold when state.PeriodTold:
                return OilChangeRemark.PeriodTwice;
            case OilChangeStep.PeriodTold:
                state.TellPeriod();
                return OilChangeRemark.None;
            case OilChangeStep.Looked:
                return ApplyLook(ref state);
            case OilChangeStep.FilterChanged or OilChangeStep.FilterKept:
                return ApplyFilter(ref state, opening);
            case OilChangeStep.Ran:
                return ApplyRun(ref state, opening);
            case OilChangeStep.Settled:
                return ApplyReading(ref state, Reading!, opening);
            default:
                return ApplyVolume(ref state, opening);
        }
    }

    private bool ShowsWater => Appearance is OilAppearance.Milky or OilAppearance.WaterBelow;

    private OilChangeRemark ApplyLook(ref AccountState state)
    {
        if (ShowsWater)
        {
            state.SeeWater();
            return OilChangeRemark.Water;
        }

        return (OilAppearance)_option switch
        {
            OilAppearance.SmellsOfFuel => OilChangeRemark.Fuel,
            OilAppearance.MetalInIt => OilChangeRemark.Metal,
            _ => OilChangeRemark.None,
        };
    }

    private OilChangeRemark ApplyVolume(ref AccountState state, OilChangeOpening opening)
    {
        bool isOut = Step is OilChangeStep.Drained or OilChangeStep.DrawnOff;
        MeasuredVolume measured = Measured!;
        BaseVolume volume = BaseVolume.Of(measured, opening.Sump.Oil, opening.Limits, isOut ? opening.Limits.DrainAssumption : opening.Limits.PourAssumption);
        if (!volume.IsCovered)
        {
            return OilChangeRemark.TemperatureOutside;
        }

        OilChangeRemark remarks = Step switch
        {
            OilChangeStep.Drained => ApplyDrain(ref state, volume, opening),
            OilChangeStep.FilterPrimed => ApplyPriming(ref state, volume, opening),
            OilChangeStep.Poured => ApplyPour(ref state, volume, opening),
            _ => ApplyDrawingOff(ref state, volume, opening),
        };
        return measured.Celsius is null && measured.Liters > 0 && (remarks & OilChangeRemark.Refusals) == 0
            ? remarks | OilChangeRemark.TemperatureAssumed
            : remarks;
    }

    private OilChangeRemark ApplyDrain(ref AccountState state, BaseVolume volume, OilChangeOpening opening)
    {
        if (state.DrainClosed || state.HasPour)
        {
            return OilChangeRemark.DrainAfterPour;
        }

        if (state.Drained + volume.Liters > opening.Sump.MostThatCanDrainLiters)
        {
            return OilChangeRemark.DrainTooLarge;
        }

        state.Drain(volume, (DrainMethod)_option);
        return OilChangeRemark.None;
    }

    private OilChangeRemark ApplyFilter(ref AccountState state, OilChangeOpening opening)
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

    private static OilChangeRemark ApplyPriming(ref AccountState state, BaseVolume volume, OilChangeOpening opening)
    {
        if (!state.FilterDry)
        {
            return OilChangeRemark.PrimedWithoutFilter;
        }

        double doubt = MistakeDeviations * Math.Sqrt(FluidMath.Square(opening.Sump.FilterSigmaLiters) + volume.Variance);
        if (state.Primed + volume.Liters > opening.Sump.FilterLiters + doubt)
        {
            return OilChangeRemark.PrimedTooMuch;
        }

        state.Prime(volume);
        return OilChangeRemark.None;
    }

    private static OilChangeRemark ApplyPour(ref AccountState state, BaseVolume volume, OilChangeOpening opening)
    {
        OilChangeRemark remarks = EndDrain(ref state, opening);
        state.Pour(volume);
        return state.MayExceed(PourGrainLiters, opening.Limits.OverfillDeviations)
            ? remarks | OilChangeRemark.MayPassFull
            : remarks;
    }

    // Kept out of line: its copy of the state would have to be cleared at every volume.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static OilChangeRemark ApplyDrawingOff(ref AccountState state, BaseVolume volume, OilChangeOpening opening)
    {
        AccountState before = state;
        OilChangeRemark remarks = EndDrain(ref state, opening);
        double most = state.InSump + MistakeDeviations * Math.Sqrt(Math.Max(0, state.InSumpVariance) + volume.Variance);
        if (state.LevelKnown && volume.Liters > most)
        {
            state = before;
            return OilChangeRemark.DrawnOffTooMuch;
        }

        state.DrawOff(volume);
        return remarks;
    }

    private static OilChangeRemark ApplyRun(ref AccountState state, OilChangeOpening opening)
    {
        OilChangeRemark remarks = EndDrain(ref state, opening);
        if (state.IsBelow(-opening.Sump.Dipstick.RangeLiters, opening.Limits.NoiseCoverageRatio))
        {
            remarks |= OilChangeRemark.RanBelowAdd;
        }

        state.Run();
        return remarks;
    }

    private static OilChangeRemark ApplyReading(ref AccountState state, DipstickReading reading, OilChangeOpening opening)
    {
        OilChangeRemark refusal = LevelOf(reading, opening.Sump, opening.Limits, out double level, out double variance);
        if (refusal != OilChangeRemark.None)
        {
            return refusal;
        }

        if (state.HasMoved)
        {
            OilChangeRemark remarks = EndDrain(ref state, opening);
            state.ReadAfter(level, variance);
            return remarks;
        }

        state.ReadBefore(level, variance);
        double noise = opening.Limits.NoiseCoverageRatio * state.LevelSigma;
        return state.Level > noise ? OilChangeRemark.AboveFullBefore
            : state.Level < -opening.Sump.Dipstick.RangeLiters - noise ? OilChangeRemark.BelowAddBefore
            : OilChangeRemark.None;
    }

    /// <summary>Closes the drain before anything goes in; a filter that nobody spoke of is taken to have stayed on.</summary>
    private static OilChangeRemark EndDrain(ref AccountState state, OilChangeOpening opening)
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

        state.CloseDrain(opening.Sump, opening.FineBandLiters);
        return remark;
    }
}
