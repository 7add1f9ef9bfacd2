using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using UnitsNet;

namespace MarineService.Core.Tests.LayUp;

public sealed class LayUpPlanTest
{
    [Fact]
    public void Plan_OfAnEngineThatIsWellKnown_HasAmountsAndNothingAgainstIt()
    {
        LayUpPlan plan = Winters.Plan
            .WithFuel(FuelLayUp.Of(FuelTank.Of(Fuel.Petrol, Volume.FromLiters(90)), Volume.FromLiters(40), FuelStabilizer.Of("stabilizer", Volume.FromMilliliters(25), Volume.FromLiters(10))))
            .WithBattery(BatteryReading.OfVoltage(BatteryKind.FloodedLead, ElectricPotential.FromVolts(12.6), 24));
        Assert.Empty(plan.Missing);
        Assert.Equal([LayUpRules.NoDrain], plan.Findings.Select(finding => finding.Rule));
        Assert.Equal(6, plan.Openings.Value);
        string text = plan.Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("Put 203 mL of 'stabilizer' in the tank for 81.00 L of fuel, before filling.", text, StringComparison.Ordinal);
        Assert.Contains("Add 41.00 L of fuel, to 90.0 % of the tank.", text, StringComparison.Ordinal);
        Assert.Contains("about 7.50 L of 50.0 % glycol", text, StringComparison.Ordinal);
        Assert.Contains("-23 °C or below by the propylene glycol scale", text, StringComparison.Ordinal);
        Assert.Contains("30 mL of preserving oil in each of 4 cylinders, 118 mL in all", text, StringComparison.Ordinal);
        Assert.Equal(["seacock shut", "do not crank: fogged", "impeller out", "air intake covered", "exhaust covered"], plan.Tags);
    }

    [Fact]
    public void Plan_InUsUnits_DecidesTheSame()
    {
        string text = Winters.Plan.Explain(DisplayUnits.UsCustomary).ToString();
        Assert.Contains("Protect down to -4 °F.", text, StringComparison.Ordinal);
        Assert.Contains("-9.4 °F or below", text, StringComparison.Ordinal);
        Assert.Contains("7.93 US qt", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_AreInOrder()
    {
        LayUpTopic[] order =
        [
            LayUpTopic.Fuel, LayUpTopic.Oil, LayUpTopic.Coolant, LayUpTopic.Drain, LayUpTopic.Antifreeze, LayUpTopic.Proof,
            LayUpTopic.Fogging, LayUpTopic.Impeller, LayUpTopic.Battery, LayUpTopic.Closing,
        ];
        foreach (CoolingKind cooling in Enum.GetValues<CoolingKind>())
        {
            int[] places = [.. LayUpPlan.For(Engine.Of("x", Fuel.Petrol, cooling), Winters.Low).WithRawWaterSide(Winters.Side).WithAntifreeze(Winters.Glycol)
                .WithCylinders(Cylinders.Of(4, Volume.FromLiters(2.4), 9)).Steps.Select(step => Array.IndexOf(order, step.Topic))];
            Assert.Equal(places.Order(), places);
            Assert.DoesNotContain(-1, places);
        }
    }

    [Fact]
    public void Plan_OfAnUnknownEngine_SaysWhatIsMissing_AndIsCareful()
    {
        LayUpPlan plan = LayUpPlan.For(Engine.Of("x"), Winters.Low);
        Assert.Contains("The low points of the raw-water side.", plan.Missing);
        Assert.Contains("Whether the raw-water inlet has a seacock.", plan.Missing);
        Assert.Contains("What the engine burns.", plan.Missing);
        Assert.Contains(plan.Steps, step => step.Topic == LayUpTopic.Drain);
        Assert.DoesNotContain(plan.Steps, step => step.Topic is LayUpTopic.Fogging or LayUpTopic.Antifreeze);

        // Petrol is not ruled out, so its caution stands.
        Assert.Contains(plan.Steps, step => step.Caution is { Word: SignalWord.Danger } caution && caution.Text.Contains("Petrol", StringComparison.Ordinal));
        Assert.False(plan.Openings.IsKnown);
        Assert.False(plan.Prove([]).IsKnown);
    }

    [Fact]
    public void Diesel_IsNotFogged_AndHasNoPetrolCaution()
    {
        LayUpPlan plan = LayUpPlan.For(Engine.Of("Brae 16D", Fuel.Diesel, CoolingKind.FreshWater), Winters.Low).WithCylinders(Cylinders.Of(3, Volume.FromLiters(1.6), 22));
        Assert.DoesNotContain(plan.Steps, step => step.Topic == LayUpTopic.Fogging);
        Assert.Contains(plan.Findings, finding => finding.Rule == LayUpRules.DieselNotFogged);
        Assert.DoesNotContain(plan.Steps, step => step.Caution?.Text.Contains("Blower", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void NoFrost_NeedsNoAntifreeze_ButStillDrainsAndSaysWhy()
    {
        LayUpPlan plan = LayUpPlan.For(Winters.RawCooled, FreezeDecision.ForLow(Temperature.FromDegreesCelsius(6))).WithRawWaterSide(Winters.Side).WithAntifreeze(Winters.Glycol);
        Assert.DoesNotContain(plan.Steps, step => step.Topic is LayUpTopic.Antifreeze or LayUpTopic.Proof);
        Assert.Contains(plan.Steps, step => step.Topic == LayUpTopic.Drain);
        Assert.Contains(plan.Findings, finding => finding.Rule == LayUpRules.MildWinter);
    }

    [Theory]
    [InlineData(-23.0, false)]
    [InlineData(-22.5, true)]
    public void Coolant_OfAClosedCircuit_IsJudged(double read, bool isTooWeak)
    {
        LayUpPlan plan = LayUpPlan.For(Engine.Of("x", Fuel.Diesel, CoolingKind.FreshWater), Winters.Low);
        Assert.Contains(plan.Findings, finding => finding.Rule == LayUpRules.CoolantNotRead);
        LayUpPlan withReading = plan.WithCoolant(RefractometerReading.Of(GlycolKind.Ethylene, Temperature.FromDegreesCelsius(read)));
        Assert.Equal(isTooWeak, withReading.Findings.Any(finding => finding.Rule == LayUpRules.CoolantTooWeak));
        Assert.DoesNotContain(withReading.Findings, finding => finding.Rule == LayUpRules.CoolantNotRead);
    }

    [Fact]
    public void Antifreeze_WithEthanol_IsNeverPouredByThePlan()
    {
        LayUpPlan plan = Winters.Plan.WithAntifreeze(Antifreeze.Of("pink", AntifreezeBase.PropyleneGlycolWithEthanol, 0.3, isReadyMixed: true));
        Assert.DoesNotContain(plan.Steps, step => step.Topic == LayUpTopic.Antifreeze);
        Assert.Contains(plan.Steps, step => step.Topic == LayUpTopic.Proof && step.ToString().StartsWith("Count the drains", StringComparison.Ordinal));
        Assert.Contains(plan.Findings, finding => finding.Rule == LayUpRules.EthanolNotProvable);
    }

    [Fact]
    public void Boat_WithoutASeacock_IsDrainedAshore()
    {
        LayUpPlan plan = LayUpPlan.For(Winters.RawCooled, Winters.Low).WithRawWaterSide(Winters.Side).WithBoat(Boat.Of("Tern", KeptWhere.OnTrailer, WaterKind.Fresh, hasSeacock: false));
        Assert.Contains(plan.Steps, step => step.Topic == LayUpTopic.Drain && step.Caution?.Text.Contains("only ashore", StringComparison.Ordinal) == true);
        Assert.DoesNotContain("seacock shut", plan.Tags);
    }

    [Fact]
    public void EveryStep_NamesItsSource_AndFillsItsPlaceholders() =>
        Assert.All(Winters.Plan.Steps, step =>
        {
            Assert.NotNull(step.Citation);
            Assert.DoesNotContain("{", step.Text(DisplayUnits.UsCustomary), StringComparison.Ordinal);
        });
}
