using NodaTime;

namespace MarineService.Core.Tests.Root;

public sealed class FigureTest
{
    [Fact]
    public void Number_IsKeptWithItsUnit_AndNothingElse()
    {
        Figure figure = Figure.Of("gap", 2.54, FigureUnit.Millimeter);
        Assert.Equal("gap", figure.Name);
        Assert.Equal(2.54, figure.Number);
        Assert.Same(FigureUnit.Millimeter, figure.Unit);
        Assert.Null(figure.Date);
        Assert.Null(figure.Word);
        Assert.Equal("gap 2.5 mm", figure.ToString());
        Assert.Equal("0.100 in", figure.ToString(DisplayUnits.UsCustomary));
    }

    [Fact]
    public void Hours_AreANumberInHours()
    {
        Figure figure = Figure.Of("due", EngineHours.FromHours(512.125m));
        Assert.Equal(512.125, figure.Number);
        Assert.Equal("512.125 h", figure.ToString(DisplayUnits.UsCustomary));
    }

    [Fact]
    public void Date_IsWrittenIsoInBothSystemsAndEveryCulture()
    {
        Figure figure = Figure.Of("since", new LocalDate(2026, 4, 1));
        Assert.Equal(new LocalDate(2026, 4, 1), figure.Date);
        Assert.Null(figure.Number);
        Assert.Null(figure.Unit);
        Assert.Equal("2026-04-01", InCulture.Run("ar-SA", () => figure.ToString(DisplayUnits.Metric)));
        Assert.Equal("2026-04-01", figure.ToString(DisplayUnits.UsCustomary));
    }

    [Fact]
    public void Word_IsWrittenAsItIs()
    {
        Figure figure = Figure.Of("face", "back");
        Assert.Equal("back", figure.Word);
        Assert.Equal("face back", figure.ToString());
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Number_NotFinite_IsRefusedByName(double number) =>
        Assert.Equal("number", Assert.Throws<ArgumentOutOfRangeException>(() => Figure.Of("gap", number, FigureUnit.Millimeter)).ParamName);

    [Fact]
    public void Date_Default_IsRefusedByName() =>
        Assert.Equal("date", Assert.Throws<ArgumentOutOfRangeException>(() => Figure.Of("since", default(LocalDate))).ParamName);

    [Fact]
    public void Name_Blank_IsRefusedByName() =>
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => Figure.Of(" ", "word")).ParamName);
}
