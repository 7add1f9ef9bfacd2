using MarineService.Core.Engines;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.LayUp;

/// <summary>How much fogging oil goes into each cylinder of a petrol engine; refused for diesels and where it could lock the engine.</summary>
/// <remarks>
/// The dose follows an army bulletin on preserving vessels. It is checked against the volume above the piston: a small engine of high
/// compression may have less room than the dose. The engine's own manual outranks it.
/// </remarks>
public sealed class FoggingDose
{
    private readonly IReadOnlyList<string> _missing;
    private readonly Cylinders? _cylinders;
    private readonly LayUpLimits _limits;

    private FoggingDose(FoggingVerdict verdict, double? eachMilliliters, IReadOnlyList<string> missing, IReadOnlyList<Finding> findings, Cylinders? cylinders, LayUpLimits limits) =>
        (Verdict, EachMilliliters, _missing, Findings, _cylinders, _limits) = (verdict, eachMilliliters, missing, findings, cylinders, limits);

    /// <summary>Whether the engine may be fogged.</summary>
    public FoggingVerdict Verdict { get; }

    /// <summary>The dose for each cylinder; not known unless it may be poured.</summary>
    public Answer<Volume> Each => Verdict == FoggingVerdict.Dose ? Answer.Known(Volume.FromMilliliters(EachMilliliters!.Value)) : Answer.NotKnown<Volume>([.. _missing]);

    /// <summary>The dose for all cylinders together; not known unless it may be poured.</summary>
    public Answer<Volume> Total =>
        Verdict == FoggingVerdict.Dose ? Answer.Known(Volume.FromMilliliters(EachMilliliters!.Value * _cylinders!.Count)) : Answer.NotKnown<Volume>([.. _missing]);

    /// <summary>The share of the clearance volume that the dose would fill; not known without cylinders and compression ratio.</summary>
    public Answer<double> ClearanceFraction =>
        EachMilliliters is double dose && _cylinders?.ClearanceMilliliters is double clearance ? Answer.Known(dose / clearance) : Answer.NotKnown<double>([.. _missing]);

    /// <summary>Why it is refused or not known; empty when it may be poured.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    internal double? EachMilliliters { get; }

    /// <summary>The dose for an engine.</summary>
    /// <param name="engine">The engine; its fuel decides whether it may be fogged at all.</param>
    /// <param name="cylinders">Its cylinders, or null when they are not known.</param>
    /// <param name="limits">The most of the clearance volume; <see cref="LayUpLimits.Default"/> when null.</param>
    /// <returns>The dose, or why there is none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engine"/> is null.</exception>
    public static FoggingDose For(Engine engine, Cylinders? cylinders, LayUpLimits? limits = null)
    {
        string subject = $"engine '{Guard.NotNull(engine).Designation}'";
        limits ??= LayUpLimits.Default;
        double? dose = cylinders is null ? null : FoggingMath.DoseMilliliters(cylinders.SweptMilliliters);
        if (engine.Fuel == Fuel.Diesel)
        {
            return new(FoggingVerdict.RefusedForDiesel, dose, ["What the engine's maker says on preserving it: a diesel is not fogged by a general rule."],
                [LayUpRules.DieselNotFogged.On(subject)], cylinders, limits);
        }

        string[] missing =
        [
            .. engine.Fuel == Fuel.NotStated ? new[] { "What the engine burns." } : [],
            .. cylinders is null ? new[] { "How many cylinders it has, what they sweep, and the compression ratio." }
                : cylinders.CompressionRatio is null ? ["The engine's compression ratio."] : [],
        ];
        if (cylinders?.ClearanceMilliliters is not double clearance || dose is not double each || missing.Length > 0)
        {
            return new(FoggingVerdict.NotKnown, dose, missing, [LayUpRules.FoggingNotKnown.On(subject, Figure.Of("missing", string.Join(" ", missing)))], cylinders, limits);
        }

        if (each > limits.MostFoggingFraction * clearance)
        {
            Finding finding = LayUpRules.DoseFillsClearance.On(
                subject,
                Figure.Of("dose", each, FigureUnit.Milliliter),
                Figure.Of("clearance", clearance, FigureUnit.Milliliter),
                Figure.Of("share", each / clearance, FigureUnit.Fraction),
                Figure.Of("limit", limits.MostFoggingFraction, FigureUnit.Fraction));
            return new(FoggingVerdict.TooMuch, dose, ["What the engine's maker says on preserving it: the general dose leaves too little room."], [finding], cylinders, limits);
        }

        return new(FoggingVerdict.Dose, dose, [], [], cylinders, limits);
    }

    /// <summary>The dose, the room above the piston, and the source.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        ExplanationBuilder lines = new(Verdict switch
        {
            FoggingVerdict.Dose => $"{FigureUnit.Milliliter.Write(EachMilliliters!.Value, units)} of fogging oil in each cylinder, {FigureUnit.Milliliter.Write(EachMilliliters.Value * _cylinders!.Count, units)} in all.",
            FoggingVerdict.RefusedForDiesel => "Do not fog: a diesel can lock on the oil or start on it.",
            FoggingVerdict.TooMuch => "Do not pour the general dose: it leaves too little room above the piston.",
            _ => $"Dose not known: {string.Join(" ", _missing)}",
        });
        lines.AddIf(_cylinders is not null, "cylinder", () => $"sweeps {FigureUnit.Milliliter.Write(_cylinders!.SweptMilliliters, units)}, general dose {FigureUnit.Milliliter.Write(EachMilliliters!.Value, units)}")
            .AddIf(_cylinders?.ClearanceMilliliters is not null, "clearance", () =>
                $"{FigureUnit.Milliliter.Write(_cylinders!.ClearanceMilliliters!.Value, units)}, of which the dose would fill {FigureUnit.Fraction.Write(ClearanceFraction.Value, units)}; at most {FigureUnit.Fraction.Write(_limits.MostFoggingFraction, units)}");
        return lines.Build(LayUpSources.VesselPreservation, Citation.Derived("the definition of the compression ratio"), Citation.ProjectChoice);
    }

    /// <summary>The dose or why there is none, metric and invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;
}
