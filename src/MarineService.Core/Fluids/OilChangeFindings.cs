using UnitsNet;

namespace MarineService.Core.Fluids;

/// <summary>Turns the remarks on one event into findings, when somebody asks.</summary>
internal static class OilChangeFindings
{
    internal static IReadOnlyList<Finding> Of(OilChange change)
    {
        OilChangeRemark remarks = change.Remarks;
        List<Finding> findings = [];
        string subject = Subject(change.Step);
        foreach ((OilChangeRemark remark, Func<OilChange, string, Finding> build) in Builders)
        {
            if ((remarks & remark) != 0)
            {
                findings.Add(build(change, subject));
            }
        }

        if (change.Step == OilChangeStep.Settled && !change.IsRefused && change.State.AfterKnown
            && OilChange.JudgeLevel(change.Sump, change.Limits, change.State) is Finding level)
        {
            findings.Add(level);
        }

        return findings.AsReadOnly();
    }

    private static readonly (OilChangeRemark Remark, Func<OilChange, string, Finding> Build)[] Builders =
    [
        (OilChangeRemark.TemperatureOutside, (change, subject) => OilChangeRules.TemperatureOutside.On(
            subject, Figure.Of("temperature", change.Measured?.Celsius ?? change.Reading!.Celsius!.Value, FigureUnit.DegreeCelsius))),
        (OilChangeRemark.NotSettled, (change, subject) => OilChangeRules.NotSettled.On(
            subject,
            Figure.Of("waited", change.Reading!.SettledMinutes!.Value, FigureUnit.Minute),
            Figure.Of("needed", OilChange.SettlingMinutes(change.Limits, change.Reading), FigureUnit.Minute))),
        (OilChangeRemark.WrongSeating, (change, subject) => OilChangeRules.WrongSeating.On(
            subject, Figure.Of("was", Words(change.Reading!.Seating!.Value)), Figure.Of("wanted", Words(change.Sump.Dipstick.Seating)))),
        (OilChangeRemark.WrongAttitude, (change, subject) => OilChangeRules.WrongAttitude.On(
            subject, Figure.Of("was", Words(change.Reading!.Attitude!.Value)), Figure.Of("wanted", Words(change.Sump.Dipstick.Attitude)))),
        (OilChangeRemark.TiltNotCorrectable, (change, subject) => OilChangeRules.TiltNotCorrectable.On(
            subject,
            Figure.Of("pitch", Angle.FromRadians(change.Reading!.PitchRad).Degrees, FigureUnit.Degree),
            Figure.Of("roll", Angle.FromRadians(change.Reading.RollRad).Degrees, FigureUnit.Degree))),
        (OilChangeRemark.DrainTooLarge, (change, subject) => OilChangeRules.DrainTooLarge.On(
            subject,
            Figure.Of("drained", change.State.Drained + change.Measured!.Liters, FigureUnit.Liter),
            Figure.Of("held", change.Sump.MostThatCanDrainLiters / 2, FigureUnit.Liter))),
        (OilChangeRemark.DrainAfterPour, OutOfOrder),
        (OilChangeRemark.FilterTwice, OutOfOrder),
        (OilChangeRemark.FilterAfterPour, OutOfOrder),
        (OilChangeRemark.PrimedWithoutFilter, OutOfOrder),
        (OilChangeRemark.PeriodTwice, OutOfOrder),
        (OilChangeRemark.PrimedTooMuch, (change, subject) => OilChangeRules.PrimedTooMuch.On(
            subject,
            Figure.Of("primed", change.State.Primed + change.Measured!.Liters, FigureUnit.Liter),
            Figure.Of("filter", change.Sump.FilterLiters, FigureUnit.Liter))),
        (OilChangeRemark.DrawnOffTooMuch, (change, subject) => OilChangeRules.DrawnOffTooMuch.On(
            subject,
            Figure.Of("drawn off", change.Measured!.Liters, FigureUnit.Liter),
            Figure.Of("held", Math.Max(0, change.Current.State.InSump), FigureUnit.Liter))),
        (OilChangeRemark.TemperatureAssumed, TemperatureAssumed),
        (OilChangeRemark.FilterNotSaid, (change, subject) => OilChangeRules.FilterNotSaid.On(
            subject, Figure.Of("filter", change.Sump.FilterLiters, FigureUnit.Liter))),
        (OilChangeRemark.AboveFullBefore, (change, _) => OilChangeRules.AboveFullBefore.On(
            "oil level", Figure.Of("above", -change.State.RoomBefore, FigureUnit.Liter))),
        (OilChangeRemark.BelowAddBefore, (change, _) => OilChangeRules.BelowAddBefore.On(
            "oil level", Figure.Of("below", change.State.RoomBefore - change.Sump.Dipstick.RangeLiters, FigureUnit.Liter))),
        (OilChangeRemark.MayPassFull, (change, subject) => OilChangeRules.MayPassFull.On(
            subject,
            Figure.Of("chance", change.Estimate.Value.AboveFullChanceFraction, FigureUnit.Fraction),
            Figure.Of("risk", change.Limits.OverfillRiskFraction, FigureUnit.Fraction))),
        (OilChangeRemark.RanBelowAdd, (change, subject) => OilChangeRules.RanBelowAdd.On(
            subject, Figure.Of("below", -change.Previous!.Current.State.Level - change.Sump.Dipstick.RangeLiters, FigureUnit.Liter))),
        (OilChangeRemark.Water, (change, _) => Look(OilChangeRules.WaterInOil, change)),
        (OilChangeRemark.Fuel, (change, _) => Look(OilChangeRules.FuelInOil, change)),
        (OilChangeRemark.Metal, (change, _) => Look(OilChangeRules.MetalInOil, change)),
    ];

    private static Finding OutOfOrder(OilChange change, string subject) =>
        OilChangeRules.OutOfOrder.On(subject, Figure.Of("step", subject));

    private static Finding TemperatureAssumed(OilChange change, string subject)
    {
        TemperatureAssumption assumption = change.Step is OilChangeStep.Drained or OilChangeStep.DrawnOff
            ? change.Limits.DrainAssumption
            : change.Limits.PourAssumption;
        return OilChangeRules.TemperatureAssumed.On(
            subject,
            Figure.Of("volume", change.Measured!.Liters, FigureUnit.Liter),
            Figure.Of("assumed", assumption.Celsius, FigureUnit.DegreeCelsius),
            Figure.Of("doubt", assumption.SigmaKelvins, FigureUnit.Kelvin));
    }

    private static Finding Look(FindingRule rule, OilChange change) => rule.On("oil", Figure.Of("look", Words(change.Appearance!.Value)));

    private static string Subject(OilChangeStep step) => step switch
    {
        OilChangeStep.Begun or OilChangeStep.Settled => "dipstick reading",
        OilChangeStep.PeriodTold => "period since the last change",
        OilChangeStep.Looked => "look at the oil",
        OilChangeStep.Drained => "drain",
        OilChangeStep.FilterChanged => "filter change",
        OilChangeStep.FilterKept => "filter kept",
        OilChangeStep.FilterPrimed => "priming of the filter",
        OilChangeStep.Poured => "pour",
        OilChangeStep.Ran => "run",
        _ => "drawing off",
    };

    private static string Words(StickSeating seating) => seating switch
    {
        StickSeating.Seated => "pushed home",
        StickSeating.ScrewedIn => "screwed in",
        _ => "rested on its thread",
    };

    private static string Words(BoatAttitude attitude) => attitude switch
    {
        BoatAttitude.Afloat => "afloat",
        BoatAttitude.OnTrailer => "on the trailer",
        _ => "level ashore",
    };

    private static string Words(OilAppearance appearance) => appearance switch
    {
        OilAppearance.Milky => "milky",
        OilAppearance.WaterBelow => "as if it stood on water",
        OilAppearance.SmellsOfFuel => "and smelled of fuel",
        OilAppearance.MetalInIt => "as if it held metal",
        _ => "usual",
    };
}
