using MarineService.Core.Parts;
using UnitsNet;

namespace MarineService.Core.Tests.Surface;

/// <content>What only fits and joints make.</content>
internal static partial class Samples
{
    private static IEnumerable<object> OfParts()
    {
        BoltPattern pattern = BoltPattern.Of(Length.FromMillimeters(34), 0, 110, 240);
        CoverFit fit = pattern.Fit(pattern, ScrewClearance.OfStandardHole(MetricThread.M5, ClearanceSeries.Medium).Value);
        return
        [
            MetricThread.M8, PropertyClass.Class88, NutFactor.Oiled, pattern, fit, fit.AsHeld(Angle.FromDegrees(10)).Value,
            ScrewClearance.OnTappedHole(Length.FromMillimeters(5.5), Length.FromMillimeters(5)),
            MarineService.Core.Specifications.FittedCover.Of(Joint.Of("lid", JointSeat.FlatGasket, thread: MetricThread.M8)).WithPattern(pattern, Length.FromMillimeters(9)),
            Joint.Of("bracket", JointSeat.Metal, ThreadMaterial.Steel, MetricThread.M8, PropertyClass.Class88),
        ];
    }
}
