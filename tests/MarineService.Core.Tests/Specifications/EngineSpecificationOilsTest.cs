using MarineService.Core.Oils;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using UnitsNet;

namespace MarineService.Core.Tests.Specifications;

public sealed class EngineSpecificationOilsTest
{
    private static readonly EngineSpecification Brae = EngineSpecification.Named("Brae 16D")
        .WithPermittedOils(PermittedOils.Of("15W-40", "10W-30").Requiring("CI-4"))
        .WithFittedOil(LabelledOil.Of("15W-40", "CK-4"));

    [Fact]
    public void ChooseOil_AsksAmongThePermittedWithTheFittedSaid()
    {
        OilSelection selection = Brae.ChooseOil().Value.ForColdestStart(Temperature.FromDegreesCelsius(-17));
        Assert.Equal("10W-30", selection.Best.Value.Designation);
        Assert.Equal(Suitability.Marginal, selection.Fitted!.Suitability);
        Assert.Equal(Coverage.Covered, Assert.Single(selection.Fitted.Categories).Coverage);
    }

    [Fact]
    public void ChooseOil_PermittedNotStated_IsNotKnownAndSaysWhatIsMissing()
    {
        Answer<OilChoice> asked = EngineSpecification.Named("Brae 16D").WithFittedOil(LabelledOil.Of("30")).ChooseOil();
        Assert.Equal("The oil grades that the maker of 'Brae 16D' permits.", Assert.Single(asked.Missing));
    }

    [Fact]
    public void ChooseOil_FittedNotStated_AsksWithout() =>
        Assert.Null(EngineSpecification.Named("Brae 16D").WithPermittedOils(Brae.PermittedOils!).ChooseOil().Value.Fitted);

    [Fact]
    public void EveryOtherCopy_KeepsTheOils()
    {
        EngineVariant variant = EngineVariant.Of("Brae 16D-22", Power.FromKilowatts(22), RotationalSpeed.FromRevolutionsPerMinute(3000));
        EngineSpecification copy = Brae.With(variant).With(ServiceTask.Inspect("look", ServiceInterval.OfMonths(1)))
            .WithMeter(MarineService.Core.Engines.HourMeter.Plain).For("Brae 16D-22");
        Assert.Same(Brae.PermittedOils, copy.PermittedOils);
        Assert.Same(Brae.FittedOil, copy.FittedOil);
    }

    [Fact]
    public void With_Null_Throws()
    {
        Assert.Throws<ArgumentNullException>("permitted", () => Brae.WithPermittedOils(null!));
        Assert.Throws<ArgumentNullException>("oil", () => Brae.WithFittedOil(null!));
    }
}
