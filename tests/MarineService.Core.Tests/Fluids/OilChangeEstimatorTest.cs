using MarineService.Core.Fluids;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Random;
using UnitsNet;
using static MarineService.Core.Tests.Fluids.Changes;

namespace MarineService.Core.Tests.Fluids;

/// <summary>The account against two independent methods: weighted least squares, and a hundred thousand simulated changes.</summary>
public sealed class OilChangeEstimatorTest
{
    private const int Samples = 100_000;

    // One change, every figure with its own standard uncertainty.
    private const double ServiceFill = 6.0;
    private const double ServiceFillSigma = 0.06;
    private const double Filter = 0.6;
    private const double FilterSigma = 0.08;
    private const double Residual = 0.1;
    private const double ResidualSigma = 0.05;
    private const double ReadingSigma = 0.05;
    private const double Before = 0.6;
    private const double Drained = 5.45;
    private const double DrainedSigma = 0.08;
    private const double Primed = 0.25;
    private const double PrimedSigma = 0.02;
    private const double Poured = 4.5;
    private const double PouredSigma = 0.07;
    private const double Dry = 0.32;
    private const double Last = 0.02;

    // The range is taken as exact here, so that a reading's doubt is the reading's alone.
    private static readonly Sump Book = Sump
        .Holding(L(ServiceFill), L(Filter), Dipstick.WithRange(L(1.0), Volume.Zero))
        .WithUncertainties(L(ServiceFillSigma), L(FilterSigma))
        .WithResidual(DrainMethod.DrainPlug, L(Residual), L(ResidualSigma));

    private static OilEstimate Estimate(bool emptied) =>
        OilChange.Begin(Book, DipstickReading.OfRange(Before, ReadingSigma), NoDoubtOfHeat)
            .Drained(At15(emptied ? Drained : Drained - Filter, DrainedSigma))
            .FilterChanged(emptied)
            .FilterPrimed(At15(Primed, PrimedSigma))
            .Poured(At15(Poured, PouredSigma))
            .Settled(DipstickReading.OfRange(Dry, ReadingSigma))
            .Ran()
            .Settled(DipstickReading.OfRange(Last, ReadingSigma))
            .Estimate.Value;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Estimate_LinearAccount_EqualsWeightedLeastSquares(bool emptied)
    {
        // Unknowns: level before, drain, filter, service fill, primed, poured. Each row: coefficients, value, sigma.
        double measuredDrain = emptied ? Drained : Drained - Filter;
        double e = emptied ? 1 : 0;
        (double[] Row, double Value, double Sigma)[] equations =
        [
            ([1, 0, 0, 0, 0, 0], Before - 1, ReadingSigma),
            ([0, 1, 0, 0, 0, 0], measuredDrain, DrainedSigma),
            ([0, 0, 1, 0, 0, 0], Filter, FilterSigma),
            ([0, 0, 0, 1, 0, 0], ServiceFill, ServiceFillSigma),
            ([0, 0, 0, 0, 1, 0], Primed, PrimedSigma),
            ([0, 0, 0, 0, 0, 1], Poured, PouredSigma),
            // The empty sump holds the residual: level - drain (+ filter, if the drain counted it) + fill - filter.
            ([1, -1, e - 1, 1, 0, 0], Residual, ResidualSigma),
            // The stick before the run, then after it.
            ([1, -1, e, 0, 0, 1], Dry - 1, ReadingSigma),
            ([1, -1, e - 1, 0, 1, 1], Last - 1, ReadingSigma),
        ];
        Matrix<double> a = Matrix<double>.Build.DenseOfRowArrays(equations.Select(equation => equation.Row));
        Vector<double> b = Vector<double>.Build.DenseOfEnumerable(equations.Select(equation => equation.Value));
        Matrix<double> w = Matrix<double>.Build.DenseOfDiagonalArray([.. equations.Select(equation => 1 / (equation.Sigma * equation.Sigma))]);
        Matrix<double> covariance = (a.Transpose() * w * a).Inverse();
        Vector<double> x = covariance * a.Transpose() * w * b;
        Vector<double> level = Vector<double>.Build.Dense([1, -1, e - 1, 0, 1, 1]);
        Vector<double> engine = Vector<double>.Build.Dense([1, -1, e - 1, 1, 1, 1]);
        Vector<double> filter = Vector<double>.Build.Dense([0, 0, 1, 0, 0, 0]);

        OilEstimate estimate = Estimate(emptied);
        Assert.Equal(-(level * x), estimate.RoomToFull.Liters, 1e-10);
        Assert.Equal(Math.Sqrt(level * covariance * level), estimate.RoomStandardUncertainty.Liters, 1e-10);
        Assert.Equal(engine * x, estimate.InEngine.Liters, 1e-10);
        Assert.Equal(Math.Sqrt(engine * covariance * engine), estimate.InEngineStandardUncertainty.Liters, 1e-10);
        Assert.Equal(filter * x, estimate.InFilter.Liters, 1e-10);
        Assert.Equal(Math.Sqrt(filter * covariance * filter), estimate.InFilterStandardUncertainty.Liters, 1e-10);
    }

    [Fact]
    public void Estimate_HundredThousandSimulatedChanges_AgreeInMeanAndSpread()
    {
        // Draw the truth from what was measured, weigh each draw by how well it explains the observations.
        MersenneTwister random = new(20261012);
        Normal unit = new(0, 1, random);
        double[] level = new double[Samples];
        double[] weight = new double[Samples];
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < Samples; i++)
        {
            double filter = Filter + FilterSigma * unit.Sample();
            double primed = Primed + PrimedSigma * unit.Sample();
            double empty = Before - 1 + ReadingSigma * unit.Sample() - (Drained + DrainedSigma * unit.Sample()) + filter;
            double fill = ServiceFill + ServiceFillSigma * unit.Sample();
            double dry = empty + Poured + PouredSigma * unit.Sample();
            level[i] = dry - filter + primed;
            weight[i] = Likelihood(empty - filter + fill - Residual, ResidualSigma)
                * Likelihood(dry - (Dry - 1), ReadingSigma)
                * Likelihood(level[i] - (Last - 1), ReadingSigma);
            sum += weight[i];
            squares += weight[i] * weight[i];
        }

        double mean = level.Zip(weight, (x, w) => x * w).Sum() / sum;
        double variance = level.Zip(weight, (x, w) => w * (x - mean) * (x - mean)).Sum() / sum;
        double sigma = Math.Sqrt(variance);
        double effective = sum * sum / squares;
        Assert.True(effective > 5000, $"{effective} effective samples");

        OilEstimate estimate = Estimate(emptied: true);
        // Four standard errors of the simulation itself.
        Assert.Equal(-mean, estimate.RoomToFull.Liters, 4 * sigma / Math.Sqrt(effective));
        Assert.Equal(sigma, estimate.RoomStandardUncertainty.Liters, 4 * sigma / Math.Sqrt(2 * effective));

        static double Likelihood(double difference, double sigma) => Math.Exp(-0.5 * difference * difference / (sigma * sigma));
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.20)]
    public void NextSafePour_SimulatedChanges_PassFullNoMoreOftenThanChosen(double risk)
    {
        // The whole change is simulated, with true amounts that nobody sees; every pour is exactly what the account allows.
        const int Cases = 20_000;
        MersenneTwister random = new(412);
        Normal unit = new(0, 1, random);
        OilChangeLimits limits = NoDoubtOfHeat.WithPours(overfillRiskFraction: risk, firstPourFraction: 1, laterPourRangeFraction: 1, targetRangeFraction: 1);
        MeasuringVessel jug = MeasuringVessel.WorkshopJug;
        int firstPassed = 0;
        int secondPassed = 0;
        int agreed = 0;
        for (int i = 0; i < Cases; i++)
        {
            double filter = Filter + FilterSigma * unit.Sample();
            double fill = ServiceFill + ServiceFillSigma * unit.Sample();
            double residual = Residual + ResidualSigma * unit.Sample();
            double levelBefore = -0.4;
            double inSump = levelBefore + fill - filter;
            double drained = inSump - residual + filter;
            OilChange change = OilChange
                .Begin(Book, DipstickReading.OfRange(1 + levelBefore + ReadingSigma * unit.Sample(), ReadingSigma), limits)
                .Drained(At15(drained + DrainedSigma * unit.Sample(), DrainedSigma))
                .FilterChanged(oldEmptiedIntoMeasure: true);
            double level = residual - (fill - filter);
            agreed += change.Balance().Drain.Value.Band == BalanceBand.Fine ? 1 : 0;

            level = Pour(ref change, level);
            firstPassed += level > 0 ? 1 : 0;

            change = change.Ran();
            level -= filter;
            change = change.Settled(DipstickReading.OfRange(1 + level + ReadingSigma * unit.Sample(), ReadingSigma));
            level = Pour(ref change, level);
            secondPassed += level > 0 ? 1 : 0;
        }

        double grain = 3 * Math.Sqrt(risk * (1 - risk) / Cases);
        Assert.True(agreed > 0.7 * Cases);
        Assert.InRange(firstPassed / (double)Cases, 0.5 * risk, risk + grain);
        Assert.InRange(secondPassed / (double)Cases, 0.5 * risk, risk + grain);

        double Pour(ref OilChange change, double level)
        {
            double allowed = change.NextSafePour(from: jug).Value.Volume.Liters;
            double sigma = jug.Read(L(allowed)).StandardUncertainty!.Value.Liters;
            change = change.Poured(At15(allowed, sigma));
            return level + allowed + sigma * unit.Sample();
        }
    }
}
