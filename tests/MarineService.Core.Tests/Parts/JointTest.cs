using MarineService.Core.Parts;
using UnitsNet;

namespace MarineService.Core.Tests.Parts;

public sealed class JointTest
{
    /// <summary>Common practice, no source: cover screws of about 10 mm head (M6) are made snug on their gasket and no more.</summary>
    [Fact]
    public void CoverScrew_OfTenMillimetreHead_IsSnugOnItsGasketAndNoMore()
    {
        TighteningInstruction way = Joint.Of("pump cover", JointSeat.FlatGasket, ThreadMaterial.Bronze, MetricThread.M6, PropertyClass.Class88).Tightening();
        Assert.Equal(TighteningWay.ToContactThenNoMore, way.Way);
        Assert.False(way.Torque.IsKnown);
        Assert.Null(way.Computed);
        Assert.Equal("pump cover: to contact, then no more.", way.ToString());
    }

    [Theory]
    [InlineData(JointSeat.FlatGasket)]
    [InlineData(JointSeat.RubberWasher)]
    [InlineData(JointSeat.Plastic)]
    public void SoftJoint_NeverGetsAWorkedOutTorque_AndTheMakersFigureIsItsLimit(JointSeat seat)
    {
        Joint joint = Joint.Of("thermostat cover", seat, ThreadMaterial.Steel, MetricThread.M8, PropertyClass.Class88);
        Assert.Null(joint.Tightening().Computed);
        Assert.Empty(joint.Tightening().Judge(Torque.FromNewtonMeters(30)));
        TighteningInstruction limited = joint.WithMakersTorque(Torque.FromNewtonMeters(9)).Tightening();
        Assert.Equal(TighteningWay.ToContactThenNoMore, limited.Way);
        Assert.Equal(9, limited.Torque.Value.NewtonMeters, 9);
        Assert.Empty(limited.Judge(Torque.FromNewtonMeters(1)));
        Assert.Empty(limited.Judge(Torque.FromNewtonMeters(9.35)));
        Assert.Equal("TORQUE-002", Assert.Single(limited.Judge(Torque.FromNewtonMeters(9.37))).Code);
    }

    [Theory]
    [InlineData(ThreadMaterial.NotStated)]
    [InlineData(ThreadMaterial.CastIron)]
    [InlineData(ThreadMaterial.Aluminium)]
    [InlineData(ThreadMaterial.Bronze)]
    [InlineData(ThreadMaterial.Plastic)]
    public void HardJoint_InAWeakerThread_AsksTheMaker(ThreadMaterial into)
    {
        TighteningInstruction way = Joint.Of("bracket", JointSeat.Metal, into, MetricThread.M8, PropertyClass.Class88).Tightening();
        Assert.Equal(TighteningWay.AskTheMaker, way.Way);
        Assert.Contains("'bracket'", Assert.Single(way.Torque.Missing), StringComparison.Ordinal);
    }

    [Fact]
    public void HardJoint_InSteel_IsWorkedOut_AndTheMakersFigureGoesBeforeIt()
    {
        Joint joint = Joint.Of("bracket", JointSeat.Metal, ThreadMaterial.Steel, MetricThread.M8, PropertyClass.Class88);
        Assert.Equal(25.480, joint.Tightening().Torque.Value.NewtonMeters, 3);
        Assert.Equal(19.110, joint.Tightening(NutFactor.Oiled).Torque.Value.NewtonMeters, 3);
        TighteningInstruction told = joint.WithMakersTorque(Torque.FromNewtonMeters(20)).Tightening();
        Assert.Equal(20, told.Torque.Value.NewtonMeters, 9);
        Assert.Contains("25.5 N·m", told.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
        Assert.Equal("TORQUE-003", Assert.Single(told.Judge(Torque.FromNewtonMeters(20.81))).Code);
        Assert.Equal("TORQUE-004", Assert.Single(told.Judge(Torque.FromNewtonMeters(19.19))).Code);
        Assert.Empty(told.Judge(Torque.FromNewtonMeters(20.79)));
        Assert.Empty(told.Judge(Torque.FromNewtonMeters(19.21)));
    }

    [Fact]
    public void HardJoint_OfUnknownScrew_AsksTheMaker() =>
        Assert.Equal(TighteningWay.AskTheMaker, Joint.Of("bracket", JointSeat.Metal, ThreadMaterial.Steel, MetricThread.M8).Tightening().Way);

    [Theory]
    [InlineData(270, true, true, "")]
    [InlineData(225, true, true, "")]
    [InlineData(224, true, true, "SPINON-003")]
    [InlineData(315, true, true, "")]
    [InlineData(316, true, true, "SPINON-004")]
    [InlineData(270, false, true, "SPINON-001")]
    [InlineData(270, true, false, "SPINON-002")]
    public void SpinOn_IsJudged_ByTurnGasketAndOil(double turned, bool seen, bool oiled, string expected) =>
        Assert.Equal(
            expected,
            string.Join(' ', SpinOnTightening.ByTurn(Angle.FromDegrees(270)).Judge(Angle.FromDegrees(turned), seen, oiled).Select(finding => finding.Code)));

    [Fact]
    public void SpinOn_WithoutTheMakersTurn_IsNotJudged()
    {
        Assert.False(SpinOnTightening.NotStated.Turn.IsKnown);
        Assert.Equal("SPINON-005", Assert.Single(SpinOnTightening.NotStated.Judge(Angle.FromDegrees(180), true, true)).Code);
    }

    /// <summary>TM 55-1930-209-14&amp;P-17, appendix C: contact plus half a turn on one craft.</summary>
    [Fact]
    public void SpinOn_OfTheArmyCraft_TakesHalfATurn() =>
        Assert.Empty(SpinOnTightening.ByTurn(Angle.FromRevolutions(0.5)).Judge(Angle.FromDegrees(180), true, true, Angle.FromDegrees(0)));
}
