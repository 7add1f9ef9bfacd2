namespace MarineService.Core.Oils;

/// <summary>A share of one known only to lie between two rules' results.</summary>
public sealed record FractionBracket
{
    internal FractionBracket(double oneEnd, double otherEnd) => (LowFraction, HighFraction) = (Math.Min(oneEnd, otherEnd), Math.Max(oneEnd, otherEnd));

    /// <summary>The smaller end, from 0 to 1.</summary>
    public double LowFraction { get; }

    /// <summary>The greater end, from 0 to 1.</summary>
    public double HighFraction { get; }

    /// <summary>Both ends in percent, invariant.</summary>
    /// <returns>Never blank.</returns>
    public override string ToString() =>
        $"{FigureUnit.Fraction.Write(LowFraction, DisplayUnits.Metric)} to {FigureUnit.Fraction.Write(HighFraction, DisplayUnits.Metric)}";
}
