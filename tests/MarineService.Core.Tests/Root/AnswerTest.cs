using UnitsNet;

namespace MarineService.Core.Tests.Root;

public sealed class AnswerTest
{
    [Fact]
    public void Known_GivesItsValue_AndMissesNothing()
    {
        Answer<EngineHours> answer = Answer.Known(EngineHours.FromHours(512m));
        Assert.True(answer.IsKnown);
        Assert.Equal(EngineHours.FromHours(512m), answer.Value);
        Assert.Empty(answer.Missing);
        Assert.Equal(EngineHours.FromHours(512m), answer.OrElse(EngineHours.Zero));
        Assert.Equal("512.0 h", answer.ToString());
    }

    [Fact]
    public void NotKnown_ThrowsOnValue_NamingAllThatIsMissing()
    {
        Answer<int> answer = Answer.NotKnown<int>("A reading after the change.", "The service fill.");
        Assert.False(answer.IsKnown);
        InvalidOperationException refusal = Assert.Throws<InvalidOperationException>(() => answer.Value);
        Assert.Contains("A reading after the change.", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("The service fill.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(["A reading after the change.", "The service fill."], answer.Missing);
        Assert.Equal(7, answer.OrElse(7));
        Assert.Equal("not known: A reading after the change. The service fill.", answer.ToString());
    }

    [Fact]
    public void NotKnown_KeepsItsOwnCopy_AndGivesNoneAway()
    {
        string[] missing = ["A reading."];
        Answer<int> answer = Answer.NotKnown<int>(missing);
        missing[0] = "changed";
        Assert.Equal(["A reading."], answer.Missing);
        Assert.IsNotType<string[]>(answer.Missing);
    }

    [Fact]
    public void Known_Null_IsRefusedByName() =>
        Assert.Equal("value", Assert.Throws<ArgumentNullException>(() => Answer.Known<string>(null!)).ParamName);

    [Fact]
    public void NotKnown_WithoutWords_IsRefusedByName()
    {
        Assert.Equal("missing", Assert.Throws<ArgumentException>(() => Answer.NotKnown<int>()).ParamName);
        Assert.Equal("missing", Assert.Throws<ArgumentException>(() => Answer.NotKnown<int>("A reading.", " ")).ParamName);
        Assert.Equal("missing", Assert.Throws<ArgumentNullException>(() => Answer.NotKnown<int>(null!)).ParamName);
        Assert.Equal("missing", Assert.Throws<ArgumentNullException>(() => Answer.NotKnown<int>("A reading.", null!)).ParamName);
    }

    [Fact]
    public void Text_OfAKnownNumber_IsTheSameInEveryCulture() =>
        Assert.Equal("1.5 l", InCulture.Run("de-DE", Answer.Known(Volume.FromLiters(1.5)).ToString));
}
