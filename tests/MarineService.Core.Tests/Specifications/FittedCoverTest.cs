using MarineService.Core.Parts;
using MarineService.Core.Specifications;
using UnitsNet;

namespace MarineService.Core.Tests.Specifications;

public sealed class FittedCoverTest
{
    private static readonly BoltPattern Unequal = BoltPattern.Of(Length.FromMillimeters(34), 0, 110, 235);
    private static readonly Joint Screws = Joint.Of("raw-water pump cover", JointSeat.FlatGasket, ThreadMaterial.Bronze, MetricThread.M6);

    /// <summary>Common practice, no source: three holes that make no equal triangle let a cover on in one of three rotations.</summary>
    [Fact]
    public void UnequalTriangle_FitsInOneOfThreeRotations()
    {
        CoverFit fit = FittedCover.Of(Screws).WithPattern(Unequal, Length.FromMillimeters(6.6), firstHoleOn: 1).FitOfItself().Value;
        Assert.Equal((3, 1), (fit.Rotations.Count, fit.Fitting.Count));
        Assert.Equal(1, fit.Fitting[0].FirstHoleOn);

        // Held a gap too far round, it does not go on, and says how to turn it.
        HeldCover held = fit.AsHeld(Angle.FromDegrees(110)).Value;
        Assert.False(held.Goes);
        Assert.Equal(-110, held.TurnToFitDegrees.Value, 6);
    }

    /// <summary>Equal gaps let it on as often as it has holes.</summary>
    [Fact]
    public void EqualTriangle_AdmitsAWrongFit()
    {
        CoverFit fit = FittedCover.Of(Screws).WithPattern(BoltPattern.EvenlySpaced(Length.FromMillimeters(34), 3), Length.FromMillimeters(6.6), firstHoleOn: 1).FitOfItself().Value;
        Assert.Equal(3, fit.Fitting.Count);
        Assert.True(fit.AdmitsWrongFit);
    }

    [Fact]
    public void Cover_OfAnotherPattern_DoesNotFit() =>
        Assert.False(FittedCover.Of(Screws).WithPattern(Unequal, Length.FromMillimeters(6.6)).Fit(BoltPattern.Of(Length.FromMillimeters(34), 0, 120, 240)).Value.Fits);

    [Fact]
    public void Fit_WithoutPatternThreadOrHole_NamesEachThatIsMissing()
    {
        FittedCover bare = FittedCover.Of(Joint.Of("lid", JointSeat.Plastic));
        Assert.Equal(["The bolt pattern of 'lid'."], bare.FitOfItself().Missing);
        Assert.Equal(["The bolt pattern of 'lid'.", "The thread of the screws of 'lid'.", "The diameter of the holes in 'lid'."], bare.Fit(Unequal).Missing);
        Assert.Equal(["The thread of the screws of 'lid'.", "The diameter of the holes in 'lid'."], bare.WithPattern(Unequal).FitOfItself().Missing);
    }

    [Fact]
    public void WithPattern_HoleNoWiderThanTheScrews_OrAHoleThatIsNotThere_IsRefused()
    {
        FittedCover cover = FittedCover.Of(Screws);
        Assert.Equal("coverHole", Assert.Throws<ArgumentOutOfRangeException>(() => cover.WithPattern(Unequal, Length.FromMillimeters(6))).ParamName);
        Assert.Equal("firstHoleOn", Assert.Throws<ArgumentOutOfRangeException>(() => cover.WithPattern(Unequal, firstHoleOn: 4)).ParamName);
        Assert.Equal("covers", Assert.Throws<ArgumentException>(() => EngineSpecification.Named("Corrie 24P").With(cover, cover)).ParamName);
    }
}
