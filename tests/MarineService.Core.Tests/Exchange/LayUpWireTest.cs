using System.Text;
using MarineService.Core.Exchange;
using MarineService.Core.LayUp;
using MarineService.Core.Specifications;

namespace MarineService.Core.Tests.Exchange;

public sealed class LayUpWireTest
{
    [Fact]
    public void Golden_IsReadAsItSays_AndMakesAPlan()
    {
        EngineSpecification sheet = EngineSpecificationJson.Read(GoldenDocuments.Read("Documents/v1/engine-specification-winter.json")).Value;
        RawWaterSide side = sheet.LayUp!.RawWaterSide!;
        Assert.Equal(9, side.LowPoints.Count);
        Assert.Equal(0.3, side.Trapped.Value.Liters, 1e-9);
        Assert.Equal("pump cover", side.LowPoints[2].Title);
        Assert.Equal(24, sheet.LayUp.FuelTank!.Capacity.UsGallons, 1e-9);
        Assert.Equal(9.2, sheet.LayUp.Cylinders!.CompressionRatio);
        Assert.Empty(side.NotAccountedFor(sheet.Engine));
        Assert.NotNull(sheet.PlanLayUp(FreezeDecision.ForLow(UnitsNet.Temperature.FromDegreesCelsius(-10))).Fuel);
    }

    [Theory]
    [InlineData("\"lowPoints\":[{\"id\":\"a\",\"kind\":\"hose\",\"drains\":1},{\"id\":\"a\",\"kind\":\"hose\",\"drains\":1}]", "/layUp/lowPoints/1/id")]
    [InlineData("\"lowPoints\":[{\"id\":\"a\",\"kind\":\"hose\",\"drains\":1}],\"absent\":[\"hose\"]", "/layUp/absent/0")]
    [InlineData("\"lowPoints\":[{\"id\":\"a\",\"kind\":\"hose\",\"drains\":0,\"holds\":{\"value\":3,\"unit\":\"L\"}}],\"circuit\":{\"value\":2,\"unit\":\"L\"}", "/layUp/circuit")]
    [InlineData("\"lowPoints\":[{\"id\":\"a\",\"kind\":\"hose\",\"drains\":0,\"holds\":{\"value\":1,\"unit\":\"L\"},\"trapped\":{\"value\":2,\"unit\":\"L\"}}]", "/layUp/lowPoints/0/trapped")]
    [InlineData("\"lowPoints\":[{\"id\":\"a\",\"kind\":\"pipe\",\"drains\":1}]", "/layUp/lowPoints/0/kind")]
    [InlineData("\"circuit\":{\"value\":2,\"unit\":\"L\"}", "/layUp/lowPoints")]
    [InlineData("\"cylinders\":{\"count\":4,\"displacement\":{\"value\":2,\"unit\":\"L\"},\"compressionRatio\":1}", "/layUp/cylinders/compressionRatio")]
    public void Fault_HasItsPlace(string layUp, string place)
    {
        string text = "{\"format\":\"marine-service/engine-specification\",\"version\":1,\"engine\":{\"designation\":\"x\"},\"tasks\":[],\"layUp\":{" + layUp + "}}";
        ReadFault fault = Assert.Single(EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(text)).Faults);
        Assert.Equal(place, fault.Place);
    }
}
