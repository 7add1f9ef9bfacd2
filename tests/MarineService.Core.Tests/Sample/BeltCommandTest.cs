using System.Text.Json;

namespace MarineService.Core.Tests.Sample;

/// <summary>The belt command as the shell sees it: the demo drive is right, and one mistake of each kind is found and named in words.</summary>
public sealed class BeltCommandTest
{
    private const string Right = "crank, tensioner(back), raw-water pump, alternator, circulating pump(back), steering pump, idler(back)";

    [Fact]
    public void Belt_OfTheDemoDrive_IsRight()
    {
        (string output, string errors, int exit) = Run("belt", "Curlew");
        Assert.Equal(0, exit);
        Assert.Empty(errors);
        Assert.Contains("Curlew, belt 6PK1910: The belt lies as the engine's routing says.", output, StringComparison.Ordinal);
        Assert.Contains($"Lies:       {Right}", output, StringComparison.Ordinal);
        Assert.Contains("to release, turn it clockwise, seen from the pulley end", output, StringComparison.Ordinal);

        // Arm at 26.67 deg for 1910 mm, longest 1937.53 mm at the stop: worked out independently for the same pulleys.
        Assert.Contains("Arm at 26.7 deg, 27.5 mm of take-up left", output, StringComparison.Ordinal);
        Assert.Contains("Pull:       The belt holds at 394 N; 90 N is the least, and 'crank' decides it.", output, StringComparison.Ordinal);
        Assert.Contains("'crank' decides it", output, StringComparison.Ordinal);
        Assert.DoesNotContain("STOP", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("crank, raw-water pump, alternator, circulating pump, steering pump, idler", "lead the belt over 'tensioner' after 'crank', on the belt's back", "'tensioner' is in the way")]
    [InlineData("crank, tensioner, alternator, circulating pump, steering pump, idler", "lead the belt over 'raw-water pump' after 'tensioner', on the belt's ribs", "the belt does not come to it; it belongs after 'tensioner'")]
    [InlineData("crank, tensioner, raw-water pump, circulating pump, alternator, steering pump, idler", "let 'circulating pump' and 'alternator' change places", "'circulating pump' and 'alternator' have changed places")]
    [InlineData("crank, tensioner, raw-water pump(back), alternator, circulating pump, steering pump, idler", "turn the belt over at 'raw-water pump', so that it runs on the belt's ribs", "would turn counter-clockwise")]
    [InlineData("crank, tensioner, raw-water pump, alternator, circulating pump(ribs), steering pump, idler", "turn the belt over at 'circulating pump', so that it runs on the belt's back", "crosses the span")]
    [InlineData("crank, tensioner, raw-water pump, alternator, circulating pump, steering pump, idler(ribs)", "turn the belt over at 'idler', so that it runs on the belt's back", "the rim is smooth")]
    [InlineData("crank, tensioner, raw-water pump, alternator, circulating pump, steering pump", "lead the belt over 'idler' after 'steering pump', on the belt's back", "'idler' is in the way")]
    public void Belt_OnWrong_IsNamedInWords_WithTheStepThatPutsItRight(string lies, string step, string found)
    {
        (string output, string errors, int exit) = Run("belt", "Curlew", "--lies", lies);
        Assert.Equal(1, exit);
        Assert.Empty(errors);
        Assert.Contains("The belt is not on right: one step puts it right.", output, StringComparison.Ordinal);
        Assert.Contains($"Step 1:     {step}", output, StringComparison.Ordinal);
        Assert.Contains(found, output, StringComparison.Ordinal);
        Assert.Contains("With the belt on right:", output, StringComparison.Ordinal);
        Assert.Contains("to release, turn it clockwise, seen from the pulley end", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Belt_Find_ListsTheTwoThatClose_AndTheLengthDecides()
    {
        // Two routings of these pulleys close, 422 mm apart: worked out independently.
        (string output, _, int exit) = Run("belt", "Curlew", "--find");
        Assert.Equal(0, exit);
        Assert.Contains("One routing agrees with all that is known", output, StringComparison.Ordinal);
        Assert.Contains("720 orders and faces, 2 possible:", output, StringComparison.Ordinal);
        Assert.Contains($"fits      {Right}", output, StringComparison.Ordinal);
        Assert.Contains("46080 orders and faces, 22 possible:", Run("belt", "Curlew", "--find", "--any-face").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Belt_Json_SaysTheSame()
    {
        using JsonDocument seen = JsonDocument.Parse(Run("belt", "Curlew", "--json", "--lies", "crank, tensioner, raw-water pump, circulating pump, alternator, steering pump, idler").Output);
        Assert.Equal("closes", seen.RootElement.GetProperty("verdict").GetString());
        Assert.False(seen.RootElement.GetProperty("isFine").GetBoolean());
        Assert.Equal("swap", seen.RootElement.GetProperty("edits")[0].GetProperty("kind").GetString());
        Assert.Equal(422.368, seen.RootElement.GetProperty("lengthDifference").GetProperty("value").GetDouble(), 3);
        using JsonDocument routings = JsonDocument.Parse(Run("belt", "Curlew", "--find", "--json").Output);
        Assert.Equal(2, routings.RootElement.GetProperty("routings").GetArrayLength());
        Assert.Equal(1, routings.RootElement.GetProperty("plausible").GetInt32());
    }

    [Fact]
    public void Belt_InUsUnits_DecidesTheSame()
    {
        (string output, _, int exit) = Run("belt", "Curlew", "--units", "us");
        Assert.Equal(0, exit);
        Assert.Contains(" in of take-up left", output, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Belt_Why_ShowsWrapsPullsAndSources()
    {
        string output = Run("belt", "Curlew", "--why").Output;
        Assert.Contains("then 208.9 mm of span", output, StringComparison.Ordinal);
        Assert.Contains("common tangents of oriented circles", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Belt_OfALaunchWithoutDrive_IsNotKnown()
    {
        (string output, _, int exit) = Run("belt", "Dipper");
        Assert.Equal(0, exit);
        Assert.Contains("not known: the pulleys of the belt drive", output, StringComparison.Ordinal);
        Assert.Equal(65, Run("belt", "Dipper", "--json").Exit);
    }

    [Theory]
    [InlineData("--lies", "crank, tensionr, raw-water pump, crank", "No pulley 'tensionr'")]
    [InlineData("--lies", "crank, tensionr, raw-water pump, crank", "named twice")]
    [InlineData("--lies", "tensioner, idler", "The belt must come to 'crank'")]
    [InlineData("--speed", "NaN", "--speed takes turns a minute")]
    [InlineData("--speed", "0", "--speed takes turns a minute")]
    public void Belt_BadArguments_AreWrongUsage(string option, string value, string message)
    {
        (_, string errors, int exit) = Run("belt", "Curlew", option, value);
        Assert.Equal(64, exit);
        Assert.Contains(message, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Belt_OptionsThatDoNotGoTogether_AreWrongUsage()
    {
        Assert.Equal(64, Run("belt", "Curlew", "--find", "--lies", "crank, idler").Exit);
        Assert.Equal(64, Run("belt", "Curlew", "--any-face").Exit);
    }

    private static (string Output, string Errors, int Exit) Run(params string[] arguments) =>
        SampleRun.In(Path.GetTempPath(), string.Join(' ', arguments.Select(argument => $"\"{argument}\"")));
}
