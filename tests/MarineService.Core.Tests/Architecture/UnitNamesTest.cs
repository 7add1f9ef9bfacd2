using MarineService.Core.Tests.Architecture.Specimens.Doubles;

namespace MarineService.Core.Tests.Architecture;

public sealed class UnitNamesTest
{
    [Fact]
    public void EveryPublicDouble_SaysItsUnit()
    {
        string[] broken = [.. UnitNames.DoublesWithoutAUnit(Library.Types)];
        Assert.True(broken.Length == 0, string.Join('\n', broken));
    }

    [Theory]
    [InlineData("xMm", true)]
    [InlineData("mm", true)]
    [InlineData("overfillRiskFraction", true)]
    [InlineData("HoursPerDay", true)]
    [InlineData("hours", true)]
    [InlineData("x", false)]
    [InlineData("length", false)]
    [InlineData("comm", false)]
    [InlineData("MmOfBelt", false)]
    public void Name_EndsWithUnit_OnlyAsItsLastWord(string name, bool expected) => Assert.Equal(expected, UnitNames.EndsWithUnit(name));

    [Fact]
    public void Specimen_WithBareDoubles_IsFoundAtEachOfThem() =>
        Assert.Equal(3, UnitNames.DoublesWithoutAUnit([typeof(BareDoubles)]).Count());
}
