using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using NodaTime;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class OilSeasonTest
{
    private static readonly LocalDate FirstNight = new(2026, 10, 12);

    [Law]
    public Property ForNights_AgreesWithJudgingEachNightAlone() =>
        Prop.ForAll(OilSelectionTest.Shuffled().Zip(Gen.ArrayOf(Gen.Choose(-40, 20), 30)).Zip(Gen.Choose(0, 29)).ToArbitrary(), three =>
        {
            ((string[] grades, int[] celsius), int layUpFrom) = three;
            NightMinimum[] nights = [.. celsius.Select((c, i) => NightMinimum.Of(FirstNight.PlusDays(i), C(c)))];
            LocalDate from = FirstNight.PlusDays(layUpFrom);
            OilChoice choice = OilSelection.Among(grades).WithFitted(LabelledOil.Of(grades[0])).LaidUpBetween(from, from.PlusDays(5));
            OilSeason season = choice.ForNights(nights);
            NightMinimum[] starts = [.. nights.Where(night => night.Date < from || night.Date > from.PlusDays(5))];
            bool holds = season.NightsWithStart == starts.Length && season.Nights == 30;
            for (int g = 0; g < grades.Length; g++)
            {
                Suitability At(NightMinimum night) => choice.ForColdestStart(night.Temperature).Ranked.Single(v => v.Designation == grades[g]).Suitability;
                GradeSeason grade = season.Grades[g];
                holds &= grade.NightsAccepted == starts.Count(night => At(night) == Suitability.Accepted)
                    && grade.NightsRefused == starts.Count(night => At(night) == Suitability.Refused)
                    && grade.NightsMarginal + grade.NightsAccepted + grade.NightsRefused == starts.Length
                    && grade.FirstNotAccepted == starts.Where(night => At(night) != Suitability.Accepted).Select(night => (LocalDate?)night.Date).Min()
                    && grade.FirstRefused == starts.Where(night => At(night) == Suitability.Refused).Select(night => (LocalDate?)night.Date).Min();
            }

            return holds.Label(string.Join(" ", grades) + ": " + string.Join(" ", celsius));
        });

    [Fact]
    public void FittedStopsBeingAccepted_IsTheEarliestDateWhateverTheOrder()
    {
        NightMinimum[] nights = [Night(5, -30), Night(2, -16), Night(1, -15), Night(4, -17)];
        OilSeason season = OilSelection.Among("15W-40", "5W-40").WithFitted(LabelledOil.Of("15W-40")).ForNights(nights);
        Assert.Equal(FirstNight.PlusDays(2), season.FittedStopsBeingAccepted.Value);
        Assert.Equal(FirstNight.PlusDays(5), season.FittedSeason!.FirstRefused);
        Assert.Equal(FirstNight.PlusDays(5), season.Coldest.Date);
        Assert.Equal((1, 2, 1), (season.Grades[0].NightsAccepted, season.Grades[0].NightsMarginal, season.Grades[0].NightsRefused));
    }

    [Fact]
    public void FittedStopsBeingAccepted_NeverOrWithoutFitted_IsNotKnown()
    {
        NightMinimum[] nights = [Night(0, 5)];
        Assert.Contains("accepted for all", OilSelection.Among("15W-40").WithFitted(LabelledOil.Of("15W-40")).ForNights(nights).FittedStopsBeingAccepted.Missing[0], StringComparison.Ordinal);
        Assert.Contains("in the sump", OilSelection.Among("15W-40").ForNights(nights).FittedStopsBeingAccepted.Missing[0], StringComparison.Ordinal);
        Assert.Null(OilSelection.Among("15W-40").ForNights(nights).FittedSeason);
    }

    [Fact]
    public void FittedStopsBeingAccepted_NotPermitted_IsTheFirstStart() =>
        Assert.Equal(FirstNight, OilSelection.Among("15W-40").WithFitted(LabelledOil.Of("30")).ForNights([Night(1, 20), Night(0, 20)]).FittedStopsBeingAccepted.Value);

    [Fact]
    public void ForNights_LaidUpThroughout_AsksForNoChange()
    {
        OilSeason season = OilSelection.Among("15W-40").WithFitted(LabelledOil.Of("15W-40"))
            .LaidUpBetween(FirstNight, FirstNight.PlusDays(100)).ForNights([Night(3, -25), Night(4, -28)]);
        Assert.Equal(0, season.NightsWithStart);
        Assert.True(season.Selection.IsLaidUp);
        Assert.False(season.FittedStopsBeingAccepted.IsKnown);
        Assert.Equal("Laid up: -28 °C asks for no change of oil.", season.Explain(DisplayUnits.Metric).Answer);
    }

    [Fact]
    public void ForNights_FrostInTheLayUp_DoesNotCount()
    {
        OilSeason season = OilSelection.Among("15W-40").LaidUpBetween(FirstNight.PlusDays(1), FirstNight.PlusDays(1)).ForNights([Night(0, 2), Night(1, -25), Night(2, 1)]);
        Assert.Equal("15W-40", season.Selection.Best.Value.Designation);
        Assert.Equal(1, season.Coldest.Temperature.DegreesCelsius, 9);
        Assert.Contains("3 given, 2 with a possible start", season.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ForNights_BadInput_Throws()
    {
        OilChoice choice = OilSelection.Among("15W-40");
        Assert.Throws<ArgumentNullException>("nights", () => choice.ForNights(null!));
        Assert.Throws<ArgumentException>("nights", () => choice.ForNights([]));
        Assert.Throws<ArgumentException>("nights", () => choice.ForNights([Night(0, 1), null!]));
        Assert.Throws<ArgumentOutOfRangeException>("until", () => choice.LaidUpBetween(FirstNight, FirstNight.PlusDays(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("from", () => choice.LaidUpBetween(default, FirstNight));
        Assert.Throws<ArgumentOutOfRangeException>("date", () => NightMinimum.Of(default, C(1)));
        Assert.Throws<ArgumentOutOfRangeException>("temperature", () => NightMinimum.Of(FirstNight, default));
        Assert.Throws<ArgumentOutOfRangeException>("date", () => choice.WithClaimsAsOf(default));
    }

    private static NightMinimum Night(int day, double celsius) => NightMinimum.Of(FirstNight.PlusDays(day), C(celsius));
}
