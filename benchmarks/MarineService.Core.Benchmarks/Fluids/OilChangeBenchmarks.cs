using BenchmarkDotNet.Attributes;
using MarineService.Core.Fluids;
using UnitsNet;

namespace MarineService.Core.Benchmarks.Fluids;

/// <summary>One account of twenty events against the same sums written bare: no objects, no checks, no remarks.</summary>
[MemoryDiagnoser]
public class OilChangeBenchmarks
{
    private Sump _sump = null!;
    private DipstickReading _before = null!;
    private DipstickReading[] _readings = null!;
    private MeasuredVolume _drained = null!;
    private MeasuredVolume _primed = null!;
    private MeasuredVolume[] _pours = null!;

    [GlobalSetup]
    public void Build()
    {
        Temperature cold = Temperature.FromDegreesCelsius(18);
        _sump = Sump.Holding(Volume.FromLiters(6), Volume.FromLiters(0.6), Dipstick.WithRange(Volume.FromLiters(1)));
        _before = DipstickReading.OfRange(0.6);
        _drained = MeasuredVolume.Of(Volume.FromLiters(5.7), Temperature.FromDegreesCelsius(70), Volume.FromLiters(0.09));
        _primed = MeasuredVolume.Of(Volume.FromLiters(0.2), cold, Volume.FromLiters(0.02));
        _pours = [.. Enumerable.Range(0, 8).Select(i => MeasuredVolume.Of(Volume.FromLiters(i == 0 ? 4.2 : 0.1), cold, Volume.FromLiters(0.02)))];
        _readings = [.. Enumerable.Range(0, 7).Select(i => DipstickReading.OfRange(0.1 * i).WithOilAt(cold))];
    }

    /// <summary>Begin, drained, filter, primed, then pour and reading in turn, a run: twenty events, then the estimate.</summary>
    [Benchmark]
    public Answer<OilEstimate> Account() => Tell().Estimate;

    /// <summary>The same, with the next safe pour asked after every pour and reading.</summary>
    [Benchmark]
    public double AccountAskedAfterEveryEvent()
    {
        OilChange change = OilChange.Begin(_sump, _before).Drained(_drained).FilterChanged(true).FilterPrimed(_primed);
        double sum = 0;
        for (int i = 0; i < 7; i++)
        {
            change = change.Poured(_pours[i]);
            sum += change.NextSafePour().Value.Liters;
            change = change.Settled(_readings[i]);
            sum += change.NextSafePour().Value.Liters;
        }

        return sum;
    }

    private OilChange Tell()
    {
        OilChange change = OilChange.Begin(_sump, _before).Drained(_drained).FilterChanged(true).FilterPrimed(_primed);
        for (int i = 0; i < 7; i++)
        {
            change = change.Poured(_pours[i]).Settled(_readings[i]);
        }

        return change.Poured(_pours[7]).Ran();
    }

    [Benchmark(Baseline = true)]
    public double Bare()
    {
        const double Alpha = 0.6278 / 880;
        const double Range = 1.0;
        const double Full = 5.4;
        double filter = 0.6;
        double fill = 6.0;
        double ff = 0.0036;
        double ss = 0.0036;
        double fs = 0;
        double lf = 0;
        double ls = 0;
        double level = -0.4 * Range;
        double ll = 0.05 * 0.05 + 0.02 * 0.02;

        (double drained, double drainedVariance) = Base(_drained);
        level -= drained;
        ll += drainedVariance;

        double difference = drained - (fill + level + drained);
        level += filter;
        ll += 2 * lf + ff;
        lf += ff;
        ls += fs;
        if (Math.Abs(difference) <= 0.24)
        {
            Observe(1, -1, 1, -(level - filter + fill), 0.0025);
        }

        (double primed, double primedVariance) = Base(_primed);
        double sum = primed;
        double sumVariance = primedVariance;
        double stick = 0;
        double stickVariance = 0;
        double over = 0;
        for (int i = 0; i < 8; i++)
        {
            (double poured, double pouredVariance) = Base(_pours[i]);
            level += poured;
            ll += pouredVariance;
            sum += poured;
            sumVariance += pouredVariance;
            stick += poured;
            stickVariance += pouredVariance;
            over += level + 1.6449 * Math.Sqrt(ll) > 0 ? 1 : 0;
            if (i < 7)
            {
                double celsius = _readings[i].Celsius!.Value;
                double ratio = Factor(celsius) / Factor(15);
                double heat = Full * Alpha * 3;
                double p = _readings[i].RangeFraction;
                double read = Full * (ratio - 1) - (1 - p) * Range * ratio;
                double readVariance = 0.05 * 0.05 * Range * Range + (1 - p) * (1 - p) * 0.0025 + heat * heat;
                (stick, stickVariance) = (read, readVariance);
                Observe(1, 0, 0, read - level, readVariance);
            }
        }

        over += level + 2 * Math.Sqrt(ll) < -Range ? 1 : 0;
        stick += primed - filter;
        stickVariance += ff + primedVariance;
        level += primed - filter;
        ll += ff - 2 * lf + primedVariance;
        lf -= ff;
        ls -= fs;
        return level + ll + lf + ls + sum + sumVariance + stick + stickVariance + over;

        static double Factor(double celsius) => Math.Exp(-Alpha * (celsius - 15) * (1 + 0.8 * Alpha * (celsius - 15)));

        static (double Liters, double Variance) Base(MeasuredVolume measured)
        {
            double factor = Factor(measured.Celsius!.Value);
            double liters = measured.Liters * factor;
            double volume = factor * measured.SigmaLiters!.Value;
            double heat = liters * Alpha * 3;
            double spread = 0.05 * (measured.Liters - liters);
            return (liters, volume * volume + heat * heat + spread * spread);
        }

        void Observe(double hl, double hf, double hs, double innovation, double noise)
        {
            double gl = ll * hl + lf * hf + ls * hs;
            double gf = lf * hl + ff * hf + fs * hs;
            double gs = ls * hl + fs * hf + ss * hs;
            double share = 1 / (hl * gl + hf * gf + hs * gs + noise);
            level += gl * share * innovation;
            filter += gf * share * innovation;
            fill += gs * share * innovation;
            ll -= gl * gl * share;
            lf -= gl * gf * share;
            ls -= gl * gs * share;
            ff -= gf * gf * share;
            fs -= gf * gs * share;
            ss -= gs * gs * share;
        }
    }
}
