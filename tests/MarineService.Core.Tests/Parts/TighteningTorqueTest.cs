using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Parts;
using MarineService.Core.Tests.Reference;
using UnitsNet;

namespace MarineService.Core.Tests.Parts;

public sealed class TighteningTorqueTest
{
    [Fact]
    public void Threads_OfTheTable_HaveItsDiametersAndAreas()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("iso898-screws.csv"))
        {
            MetricThread thread = Coarse(row);
            Assert.Equal(row.Number("pitch"), thread.Pitch.Millimeters, 9);
            Assert.InRange(Math.Abs(thread.PitchDiameter.Millimeters - row.Number("d2")), 0, 0.00005);
            Assert.InRange(Math.Abs(thread.RootDiameter.Millimeters - row.Number("d3")), 0, 0.00005);
            Assert.InRange(Math.Abs(thread.StressArea.SquareMillimeters - row.Number("area")), 0, 0.05);

            // The same area by the one-diameter form of ISO 898-1.
            double d = thread.Diameter.Millimeters - (0.9382 * thread.Pitch.Millimeters);
            Assert.InRange(Math.Abs(thread.StressArea.SquareMillimeters - (Math.PI / 4 * d * d)), 0, 0.001);
        }
    }

    [Fact]
    public void ProofLoads_OfTheTable_AreThose()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("iso898-screws.csv"))
        {
            AssertProof(row, PropertyClass.Class88, "proof88");
            AssertProof(row, PropertyClass.Class109, "proof109");
            AssertProof(row, PropertyClass.Class129, "proof129");
        }
    }

    [Fact]
    public void Classes_OfTheTable_HaveItsProofStress()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = ReferenceTable.Read("iso898-proof-stress.csv");
        Assert.Equal(rows.Select(row => row["mark"]), PropertyClass.All.Select(known => known.Name));
        MetricThread m20 = MetricThread.Of(Length.FromMillimeters(20), Length.FromMillimeters(2.5));
        MetricThread m16 = MetricThread.Of(Length.FromMillimeters(16), Length.FromMillimeters(2));
        foreach (IReadOnlyDictionary<string, string> row in rows)
        {
            PropertyClass marked = PropertyClass.Marked(row["mark"]).Value;
            Assert.Equal(row.Number("proof"), marked.ProofStress(m16).Megapascals, 6);
            Assert.Equal(row.Number("above16"), marked.ProofStress(m20).Megapascals, 6);
        }

        Assert.False(PropertyClass.Marked("A4-80").IsKnown);
    }

    [Fact]
    public void Torque_OfTheWorkedFigures_IsThat()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("torque-checks.csv"))
        {
            TighteningTorque torque = TighteningTorque.Of(Coarse(row), PropertyClass.Class88, NutFactor.Given(row.Number("nutFactor")));
            Assert.InRange(Math.Abs(torque.Torque.NewtonMeters - row.Number("torque")), 0, 0.0005);
        }
    }

    [Fact]
    public void NutFactor_FromFriction_IsTheLongFormulas()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("nut-factors.csv"))
        {
            NutFactor factor = NutFactor.FromFriction(MetricThread.M8, row.Number("friction"), Length.FromMillimeters(10.3));
            Assert.InRange(Math.Abs(factor.Ratio - row.Number("nutFactor")), 0, 0.0005);
        }
    }

    /// <summary>A published page: M12 8.8 at 70 % of proof, K 0.2, 82 N·m and 34 kN. It calls 45.6 kN with oil "past proof", which is 93 %.</summary>
    [Fact]
    public void Torque_OfThePublishedExample_IsItsFigure()
    {
        TighteningTorque dry = TighteningTorque.Of(MetricThread.M12, PropertyClass.Class88, NutFactor.AsReceived, proofFraction: 0.70);
        Assert.Equal(82, dry.Torque.NewtonMeters, 0);
        Assert.Equal(34, dry.ClampForce.Kilonewtons, 0);
        Assert.InRange(Math.Abs(dry.ClampForceWith(NutFactor.Oiled).Kilonewtons - 45.6), 0, 0.05);
        Assert.InRange(dry.ActualProofFraction(NutFactor.Oiled), 0.925, 0.935);
    }

    /// <summary>A machine design textbook, example 6.1: 0.2 x 0.75 in x 0.85 x 85,000 psi x 0.334 in² = 3619.73 lbf·in.</summary>
    [Fact]
    public void Kernel_OfTheTextbooksInchExample_GivesItsTorque()
    {
        double clamp = Force.FromPoundsForce(0.85 * 85_000 * 0.334).Newtons;
        double torque = TorqueMath.TorqueNewtonMeters(0.2, clamp, Length.FromInches(0.75).Millimeters);
        Assert.InRange(Math.Abs(Torque.FromNewtonMeters(torque).PoundForceInches - 3619.73), 0, 0.006);
    }

    [Law]
    public Property Torque_RisesWithFriction() => Prop.ForAll(
        Gen.Choose(0, 590).Zip(Gen.Choose(1, 10)).Zip(Gen.Elements(MetricThread.Coarse.ToArray())).ToArbitrary(),
        t =>
        {
            ((int thousandths, int more), MetricThread thread) = t;
            Length head = Length.FromMillimeters(1.3 * thread.Diameter.Millimeters);
            NutFactor slippery = NutFactor.FromFriction(thread, thousandths / 1000.0, head);
            NutFactor rough = NutFactor.FromFriction(thread, (thousandths + more) / 1000.0, head);
            return TighteningTorque.Of(thread, PropertyClass.Class88, slippery).Torque.NewtonMeters
                < TighteningTorque.Of(thread, PropertyClass.Class88, rough).Torque.NewtonMeters;
        });

    [Fact]
    public void Torque_GivesBackItsOwnClampForce()
    {
        TighteningTorque torque = TighteningTorque.Of(MetricThread.M10, PropertyClass.Class109, NutFactor.Oiled, 0.6);
        Assert.Equal(0.6, torque.ActualProofFraction(NutFactor.Oiled), 12);
        Assert.Equal(0.6 * 1.3, torque.HighestClampForce.Newtons / PropertyClass.Class109.ProofLoad(MetricThread.M10).Newtons, 12);
        Assert.Equal(0.6 * 0.7, torque.LeastClampForce.Newtons / PropertyClass.Class109.ProofLoad(MetricThread.M10).Newtons, 12);
    }

    [Fact]
    public void Scatter_PastTheProofLoad_IsFound()
    {
        Assert.Empty(TighteningTorque.Of(MetricThread.M8, PropertyClass.Class88, NutFactor.Oiled, 0.75).Findings);
        Finding found = Assert.Single(TighteningTorque.Of(MetricThread.M8, PropertyClass.Class88, NutFactor.Oiled, 0.80).Findings);
        Assert.Equal("TORQUE-001", found.Code);
        Assert.Equal(21233 * 0.8 * 1.3, found["highest"]!.Number!.Value, 0.8);
        Assert.DoesNotContain("{", found.Explain(DisplayUnits.UsCustomary).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Explanation_NamesClampForceAndSources()
    {
        string text = TighteningTorque.Of(MetricThread.M6, PropertyClass.Class88, NutFactor.AsReceived).Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("10.5 N·m for M6 8.8", text, StringComparison.Ordinal);
        Assert.Contains("ISO 898-1", text, StringComparison.Ordinal);
        Assert.Contains("the engine maker's figure", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5, 0.8, "M5")]
    [InlineData(8, 1, "M8x1")]
    public void Thread_IsNamed_ByItsPitchUnlessCoarse(double d, double p, string expected)
    {
        MetricThread thread = MetricThread.Of(Length.FromMillimeters(d), Length.FromMillimeters(p));
        Assert.Equal(expected, thread.ToString());
        Assert.Equal(thread, MetricThread.Of(Length.FromMillimeters(d), Length.FromMillimeters(p)));
    }

    private static MetricThread Coarse(IReadOnlyDictionary<string, string> row) =>
        MetricThread.Coarse.Single(thread => thread.Diameter.Millimeters == row.Number("thread"));

    private static void AssertProof(IReadOnlyDictionary<string, string> row, PropertyClass marked, string column)
    {
        double printed = row.Number(column);
        double unit = printed < 10_000 ? 10 : 100;
        Assert.InRange(Math.Abs(marked.ProofLoad(Coarse(row)).Newtons - printed), 0, unit);
    }
}
