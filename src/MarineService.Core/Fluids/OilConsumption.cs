using System.Globalization;
using MarineService.Core.Internal;

namespace MarineService.Core.Fluids;

/// <summary>What the engine used since the last change, by the hour and by the work done.</summary>
/// <remarks>
/// Litres an hour mean nothing without the mean power: 3 L per 100 h is usual at 60 kW and far too much at 12 kW. Usual:
/// 0.09 to 0.45 g/kWh, found on seven heavy and light-heavy diesels of US 2004 emission class. It is a band for healthy
/// engines, not a limit; the manual's own figure goes first.
/// </remarks>
public sealed class OilConsumption
{
    internal const double LeastGramsPerKilowattHour = 0.09;
    internal const double MostGramsPerKilowattHour = 0.45;

    internal static readonly Citation BandSource =
        Citation.Secondary("DieselNet technology guide", null, "impact of engine oil on emissions: seven diesels, US 2004 class");

    private OilConsumption(double rate, double sigma, Answer<double> specific, double specificSigma, Answer<double> trend) =>
        (LitersPer100Hours, StandardUncertaintyLitersPer100Hours, GramsPerKilowattHour, SpecificSigma, TrendRatio) =
            (rate, sigma, specific, specificSigma, trend);

    /// <summary>Litres (at 15 °C) for each 100 hours of running; negative when volume was gained.</summary>
    public double LitersPer100Hours { get; }

    /// <summary>Standard uncertainty of <see cref="LitersPer100Hours"/>.</summary>
    public double StandardUncertaintyLitersPer100Hours { get; }

    /// <summary>Grams for each kilowatt hour of work; not known without the mean power.</summary>
    public Answer<double> GramsPerKilowattHour { get; }

    /// <summary>This period over the median of the last three; not known with fewer than three, or when their median is not above 0.</summary>
    public Answer<double> TrendRatio { get; }

    /// <summary>Whether the use lies at or below the top of the usual band; not known without the mean power.</summary>
    public Answer<bool> IsUsual =>
        GramsPerKilowattHour.IsKnown
            ? Answer.Known(GramsPerKilowattHour.Value <= MostGramsPerKilowattHour)
            : Answer.NotKnown<bool>([.. GramsPerKilowattHour.Missing]);

    internal double SpecificSigma { get; }

    /// <summary>The consumption with what it is judged by.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not defined.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string Write(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);
        string rate = $"{FigureUnit.Liter.Write(LitersPer100Hours, units)} ± {FigureUnit.Liter.Write(StandardUncertaintyLitersPer100Hours, units)} per 100 h";
        string verdict = !IsUsual.IsKnown ? "whether that is much is not known" : IsUsual.Value ? "usual" : "above what engines were found to use";
        return new ExplanationBuilder($"{rate}: {verdict}.")
            .Add("by work", GramsPerKilowattHour.IsKnown ? $"{Write(GramsPerKilowattHour.Value)} g/kWh" : GramsPerKilowattHour.ToString())
            .Add("usual", $"{Write(LeastGramsPerKilowattHour)} to {Write(MostGramsPerKilowattHour)} g/kWh")
            .Add("trend", TrendRatio.IsKnown ? $"{Write(TrendRatio.Value)} times the median of the last three changes" : TrendRatio.ToString())
            .Build(BandSource, Citation.ProjectChoice);
    }

    /// <summary>The rate, invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => LitersPer100Hours.ToString("0.00", CultureInfo.InvariantCulture) + " L per 100 h";

    internal static Answer<OilConsumption> Of(double usedLiters, double sigmaLiters, PeriodSinceChange period, OilDensity oil)
    {
        if (period.Running is not EngineHours running)
        {
            return Answer.NotKnown<OilConsumption>("The hours run since the last change.");
        }

        double per100 = 100 / (double)running.ToHours();
        double rate = usedLiters * per100;
        double gramsPerLiter = Canonical.KilogramsPerCubicMeter(oil.BaseDensity);
        Answer<double> specific = period.MeanPowerKilowatts is double kilowatts
            ? Answer.Known(rate * gramsPerLiter / (100 * kilowatts))
            : Answer.NotKnown<double>("The mean power over those hours; fuel used over the same hours tells it.");
        double specificSigma = period.MeanPowerKilowatts is double power ? sigmaLiters * per100 * gramsPerLiter / (100 * power) : 0;
        return Answer.Known(new OilConsumption(rate, sigmaLiters * per100, specific, specificSigma, Trend(rate, period.EarlierLitersPer100Hours)));
    }

    private static Answer<double> Trend(double rate, IReadOnlyList<double> earlier)
    {
        if (earlier.Count < 3)
        {
            return Answer.NotKnown<double>("What the engine used in its last three periods.");
        }

        double[] last = [earlier[0], earlier[1], earlier[2]];
        Array.Sort(last);
        return last[1] > 0
            ? Answer.Known(rate / last[1])
            : Answer.NotKnown<double>("Three earlier periods whose median use is above nothing.");
    }
}
