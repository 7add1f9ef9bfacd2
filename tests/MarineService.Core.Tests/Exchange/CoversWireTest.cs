using MarineService.Core.Exchange;
using MarineService.Core.Parts;
using MarineService.Core.Specifications;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

public sealed class CoversWireTest
{
    [Fact]
    public void Cover_SurvivesARoundTrip()
    {
        FittedCover cover = FittedCover
            .Of(Joint.Of("raw-water pump cover", JointSeat.FlatGasket, ThreadMaterial.Bronze, MetricThread.M6, PropertyClass.Given("A4-70", Pressure.FromMegapascals(450)))
                .WithMakersTorque(Torque.FromNewtonMeters(4)))
            .WithPattern(BoltPattern.Of(Length.FromMillimeters(34), 0, 110, 235.5), Length.FromMillimeters(6.6), CoverLocation.Free, firstHoleOn: 2);
        FittedCover other = FittedCover.Of(Joint.Of("thermostat housing", JointSeat.Metal, ThreadMaterial.Steel, MetricThread.M8, PropertyClass.Class88));
        string text = EngineSpecificationJson.ToText(EngineSpecification.Named("Corrie 24P").With(cover, other));
        IReadOnlyList<FittedCover> read = EngineSpecificationJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Value.Covers;
        Assert.Equal(["raw-water pump cover", "thermostat housing"], read.Select(item => item.Name));
        Assert.Equal((JointSeat.FlatGasket, ThreadMaterial.Bronze, MetricThread.M6), (read[0].Joint.Seat, read[0].Joint.ThreadedInto, read[0].Joint.Thread));
        Assert.Equal("A4-70", read[0].Joint.PropertyClass!.Name);
        Assert.Equal(450, read[0].Joint.PropertyClass!.ProofStress(MetricThread.M6).Megapascals, 9);
        Assert.Equal(4, read[0].Joint.MakersTorque!.Value.NewtonMeters, 9);
        Assert.Equal((CoverLocation.Free, 2, 6.6), (read[0].Location, read[0].FirstHoleOn, read[0].CoverHole!.Value.Millimeters));
        Assert.Equal(34, read[0].Pattern!.BoltCircleRadius.Millimeters, 9);
        Assert.All(read[0].Pattern!.AnglesDegrees.Zip([0, 110, 235.5]), pair => Assert.Equal(pair.Second, pair.First, 9));
        Assert.Same(PropertyClass.Class88, read[1].Joint.PropertyClass);
        Assert.Null(read[1].Pattern);
    }

    [Theory]
    [InlineData(""" "name": " " """, "/covers/0/name")]
    [InlineData(""" "seat": "metal" """, "/covers/0/name")]
    [InlineData(""" "name": "a", "seat": "glue" """, "/covers/0/seat")]
    [InlineData(""" "name": "a", "makersTorque": { "value": 0, "unit": "N.m" } """, "/covers/0/makersTorque/value")]
    [InlineData(""" "name": "a", "screwClass": { "mark": "A4-70" } """, "/covers/0/screwClass/mark")]
    [InlineData(""" "name": "a", "thread": { "diameter": { "value": 6, "unit": "mm" }, "pitch": { "value": 2, "unit": "mm" } } """, "/covers/0/thread/pitch")]
    [InlineData(""" "name": "a", "pattern": { "radius": { "value": 34, "unit": "mm" }, "angles": [0] } """, "/covers/0/pattern/angles")]
    [InlineData(""" "name": "a", "pattern": { "radius": { "value": 34, "unit": "mm" }, "angles": [0, 110, 110] } """, "/covers/0/pattern/angles")]
    [InlineData(""" "name": "a", "pattern": { "radius": { "value": 34, "unit": "mm" }, "angles": [0, 235, 110] } """, "/covers/0/pattern/angles")]
    [InlineData(""" "name": "a", "pattern": { "radius": { "value": 34, "unit": "mm" }, "angles": [0, 110, 235], "firstHoleOn": 4 } """, "/covers/0/pattern/firstHoleOn")]
    [InlineData(""" "name": "a", "pattern": { "radius": { "value": 34, "unit": "mm" }, "angles": [0, 180], "coverHole": { "value": 6, "unit": "mm" } }, "thread": { "diameter": { "value": 6, "unit": "mm" }, "pitch": { "value": 1, "unit": "mm" } } """, "/covers/0/pattern/coverHole")]
    [InlineData(""" "name": "a" }, { "name": "a" """, "/covers/1/name")]
    public void Cover_ThatCannotBe_IsAFaultInItsPlace(string members, string place)
    {
        string text = $$"""
            { "format": "marine-service/engine-specification", "version": 1, "engine": { "designation": "Brae 16D" }, "tasks": [], "covers": [ { {{members}} } ] }
            """;
        Assert.Equal([place], EngineSpecificationJson.Read(System.Text.Encoding.UTF8.GetBytes(text)).Faults.Select(fault => fault.Place));
    }
}
