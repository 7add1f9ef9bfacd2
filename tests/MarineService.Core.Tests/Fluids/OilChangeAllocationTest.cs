using System.Runtime.CompilerServices;
using MarineService.Core.Fluids;
using static MarineService.Core.Tests.Fluids.Changes;

namespace MarineService.Core.Tests.Fluids;

public sealed class OilChangeAllocationTest
{
    [Fact]
    public void Event_OfAnyKind_CostsOneObject()
    {
        MeasuredVolume hot = At(5.5, 70);
        MeasuredVolume cold = At15(0.5);
        DipstickReading before = DipstickReading.OfRange(0.6);
        DipstickReading after = DipstickReading.OfRange(0.9).WithOilAt(C(20));
        PeriodSinceChange period = PeriodSinceChange.From(DipstickReading.OfRange(1));
        Sump sump = SixLiters;
        OilChange begun = OilChange.Begin(sump, before);
        OilChange drained = begun.Drained(hot);
        OilChange changed = drained.FilterChanged(true);
        OilChange poured = changed.FilterPrimed(cold).Poured(At15(4.2));
        OilChange ran = poured.Ran();

        long one = Bytes(() => RuntimeHelpers.GetUninitializedObject(typeof(OilChange)));
        Assert.True(one > 0);
        (string Name, Func<object> Act)[] events =
        [
            ("since", () => begun.Since(period)),
            ("looked", () => begun.Looked(OilAppearance.Milky)),
            ("drained", () => begun.Drained(hot)),
            ("filter changed", () => drained.FilterChanged(true)),
            ("filter kept", () => drained.FilterKept()),
            ("primed", () => changed.FilterPrimed(cold)),
            ("poured", () => changed.Poured(cold)),
            ("ran", () => poured.Ran()),
            ("settled", () => ran.Settled(after)),
            ("drawn off", () => ran.DrawnOff(cold)),
            ("refused", () => ran.Drained(cold)),
        ];
        Assert.All(events, item => Assert.Equal((item.Name, one), (item.Name, Bytes(item.Act))));

        // Opening an account costs a second one, which holds sump, limits and level for all the events to come.
        Assert.InRange(Bytes(() => OilChange.Begin(sump, before)), one + 1, 2 * one);
    }

    [Fact]
    public void VolumeCorrection_InALoop_AllocatesNothing()
    {
        OilDensity oil = OilDensity.Typical;
        double sum = 0;
        Assert.Equal(0, Allocation.Of(() =>
        {
            for (int celsius = 0; celsius < 100; celsius++)
            {
                sum += oil.VolumeCorrectionRatio(celsius);
            }
        }));
        Assert.True(sum > 0);
    }

    private static long Bytes(Func<object> act) => Allocation.Of(() => GC.KeepAlive(act()));
}
