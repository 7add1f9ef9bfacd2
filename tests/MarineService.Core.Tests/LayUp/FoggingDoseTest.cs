using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Engines;
using MarineService.Core.LayUp;
using MarineService.Core.Tests.Reference;
using UnitsNet;

namespace MarineService.Core.Tests.LayUp;

public sealed class FoggingDoseTest
{
    private static readonly Engine Petrol = Engine.Of("Corrie 60P", Fuel.Petrol);
    private static readonly Engine Diesel = Engine.Of("Brae 16D", Fuel.Diesel);

    private static Cylinders Each(double swept, double ratio, int count = 1) => Cylinders.Of(count, Volume.FromMilliliters(swept * count), ratio);

    [Law]
    public Property For_Diesel_NeverGivesADose() =>
        Prop.ForAll(Gen.Choose(100, 5000).Zip(Gen.Choose(40, 300)).ToArbitrary(), t =>
        {
            FoggingDose dose = FoggingDose.For(Diesel, Each(t.Item1, t.Item2 / 10.0));
            return (dose.Verdict == FoggingVerdict.RefusedForDiesel && !dose.Each.IsKnown && !dose.Total.IsKnown).Label($"{t}");
        });

    [Law]
    public Property For_Petrol_NeverFillsMoreThanTheLimit() =>
        Prop.ForAll(Gen.Choose(25, 3000).Zip(Gen.Choose(40, 300)).ToArbitrary(), t =>
        {
            Cylinders cylinders = Each(t.Item1, t.Item2 / 10.0);
            FoggingDose dose = FoggingDose.For(Petrol, cylinders);
            double room = cylinders.SweptEach.Milliliters / (t.Item2 / 10.0 - 1);
            return (dose.Verdict == FoggingVerdict.Dose ? dose.Each.Value.Milliliters <= room / 2 + 1e-9 : dose.Verdict == FoggingVerdict.TooMuch && !dose.Each.IsKnown).Label($"{t}");
        });

    [Fact]
    public void Dose_PublishedBands_Agree()
    {
        double least = 0;
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("fogging-doses.csv"))
        {
            foreach (double cubicInches in new[] { least + 0.01, row.Number("most_in3") })
            {
                double dose = FoggingMath.DoseMilliliters(Volume.FromCubicInches(cubicInches).Milliliters);
                Assert.Equal(row.Number("milliliters"), dose, 0.5);
                Assert.Equal(row.Number("ounces"), Volume.FromMilliliters(dose).UsOunces, 1e-9);
            }

            least = row.Number("most_in3");
        }
    }

    [Fact]
    public void Total_EightCylinders_AgreesWithTheWorkedCase()
    {
        // Worked out independently: 8 cylinders of 712 cm³ (43.5 in³): 8 × 30 = 237 mL by whole ounces.
        FoggingDose dose = FoggingDose.For(Petrol, Each(712, 9.4, 8));
        Assert.Equal(237, dose.Total.Value.Milliliters, 0.5);
        Assert.Equal(29.57 / (712 / 8.4), dose.ClearanceFraction.Value, 0.001);
    }

    [Theory]
    [InlineData(400, 22, 19, 15)]
    [InlineData(533, 22, 25, 30)]
    public void Clearance_SmallDiesels_LeaveHardlyRoomForTheDose(double swept, double ratio, double clearance, double dose)
    {
        // Worked out independently: why diesels are refused. The second would be locked solid.
        Assert.Equal(clearance, Each(swept, ratio).ClearanceEach.Value.Milliliters, 0.5);
        Assert.Equal(dose, FoggingMath.DoseMilliliters(swept), 0.5);
        Assert.Equal(FoggingVerdict.TooMuch, FoggingDose.For(Petrol, Each(swept, ratio)).Verdict);
    }

    [Fact]
    public void WithoutFuelCylindersOrRatio_IsNotKnown()
    {
        Assert.Equal(FoggingVerdict.NotKnown, FoggingDose.For(Engine.Of("x"), Each(600, 9)).Verdict);
        Assert.Equal(FoggingVerdict.NotKnown, FoggingDose.For(Petrol, null).Verdict);
        FoggingDose noRatio = FoggingDose.For(Petrol, Cylinders.Of(4, Volume.FromLiters(2.4)));
        Assert.Equal("The engine's compression ratio.", Assert.Single(noRatio.Each.Missing));
        Assert.Equal(LayUpRules.FoggingNotKnown, Assert.Single(noRatio.Findings).Rule);
    }

    [Fact]
    public void Cylinders_BadFigures_AreRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("count", () => Cylinders.Of(0, Volume.FromLiters(1)));
        Assert.Throws<ArgumentOutOfRangeException>("displacement", () => Cylinders.Of(4, Volume.FromLiters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("compressionRatio", () => Cylinders.Of(4, Volume.FromLiters(1), 1));
    }
}
