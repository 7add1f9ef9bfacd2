using System.Reflection;

namespace MarineService.Core.Tests.Root;

public sealed class FigureUnitTest
{
    private static readonly FigureUnit[] All =
    [
        .. typeof(FigureUnit).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(property => property.PropertyType == typeof(FigureUnit)).Select(property => (FigureUnit)property.GetValue(null)!),
    ];

    // NIST SP 811 (2008), appendix B.8; the inch, pound, US gallon and Fahrenheit scale are exact by definition.
    public static TheoryData<string, double, double> UsAmounts => new()
    {
        { nameof(FigureUnit.Liter), 0.946352946, 1 },
        { nameof(FigureUnit.LiterPerHour), 3.785411784 * 50, 50 },
        { nameof(FigureUnit.LiterPerMinute), 3.785411784 * 9, 9 },
        { nameof(FigureUnit.Millimeter), 25.4, 1 },
        { nameof(FigureUnit.MillimeterPerDegree), 25.4, 1 },
        { nameof(FigureUnit.MillimeterPerDecimeter), 100.0 / 12, 1 },
        { nameof(FigureUnit.MeterPerSecond), 0.3048 * 100 / 60, 100 },
        { nameof(FigureUnit.DegreeCelsius), -40, -40 },
        { nameof(FigureUnit.DegreeCelsius), 100, 212 },
        { nameof(FigureUnit.Kelvin), 5, 9 },
        { nameof(FigureUnit.KilogramPerCubicMeter), 0.45359237 * 7.25 / 0.003785411784, 7.25 },
        { nameof(FigureUnit.Newton), 4.4482216152605 * 120, 120 },
        { nameof(FigureUnit.NewtonMeter), 1.3558179483314004 * 30, 30 },
        { nameof(FigureUnit.Kilopascal), 6.894757293168361 * 14.5, 14.5 },
        { nameof(FigureUnit.Kilowatt), 0.74569987158227022 * 60, 60 },
        { nameof(FigureUnit.Milliliter), 29.5735295625 * 4, 4 },
    };

    [Theory]
    [MemberData(nameof(UsAmounts))]
    public void UsAmount_OfAPublishedFactor_IsTheRoundOne(string name, double metric, double us)
    {
        FigureUnit unit = Named(name);
        string shown = unit.Write(metric, DisplayUnits.UsCustomary);
        double number = double.Parse(shown.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(us, number, 9);
        Assert.EndsWith(" " + unit.UsShown, shown, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryUnitWithAnotherUsUnit_HasAPublishedAmountAbove()
    {
        IEnumerable<string> tested = UsAmounts.Select(row => Named(row.Data.Item1).UsShown).Distinct().Order(StringComparer.Ordinal);
        IEnumerable<string> converted = All.Where(unit => unit.UsShown != unit.Shown).Select(unit => unit.UsShown).Distinct().Order(StringComparer.Ordinal);
        Assert.Equal(converted, tested);
    }

    [Fact]
    public void Metric_IsWrittenWithoutConversion()
    {
        Assert.Equal("5.70 L", FigureUnit.Liter.Write(5.7, DisplayUnits.Metric));
        Assert.Equal("-17.5 °C", FigureUnit.DegreeCelsius.Write(-17.5, DisplayUnits.Metric));
        Assert.Equal("7", FigureUnit.Number.Write(7, DisplayUnits.Metric));
        Assert.Equal("95.0 %", FigureUnit.Fraction.Write(0.95, DisplayUnits.UsCustomary));
    }

    [Fact]
    public void Zero_IsNeverWrittenNegative()
    {
        Assert.Equal("0.00 L", FigureUnit.Liter.Write(-0.001, DisplayUnits.Metric));
        Assert.Equal("0 °C", FigureUnit.DegreeCelsius.Write(-0.0, DisplayUnits.Metric));
        Assert.Equal("-0.01 L", FigureUnit.Liter.Write(-0.01, DisplayUnits.Metric));
    }

    [Fact]
    public void Text_IsTheSameInEveryCulture() =>
        Assert.All(All, unit => Assert.Equal(
            unit.Write(-1234.5678, DisplayUnits.UsCustomary),
            InCulture.Run("de-DE", () => unit.Write(-1234.5678, DisplayUnits.UsCustomary))));

    private static FigureUnit Named(string name) => (FigureUnit)typeof(FigureUnit).GetProperty(name)!.GetValue(null)!;
}
