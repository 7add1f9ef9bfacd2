using MarineService.Core.Belts;

namespace MarineService.Core.Tests.Belts;

/// <summary>Length and geometry take no memory from the heap.</summary>
public sealed class BeltAllocationTest
{
    [Fact]
    public void TryGetPitchLength_AllocatesNothing()
    {
        BeltRouting routing = Layouts.Routing("S07");
        double sum = 0;
        Assert.Equal(0, Allocation.Of(() =>
        {
            routing.TryGetPitchLength(out double length);
            sum += length;
        }));
        Assert.True(sum > 0);
    }

    [Fact]
    public void TryGetGeometry_IntoTheCallersSpan_AllocatesNothing()
    {
        BeltRouting routing = Layouts.Routing("S07");
        StopGeometry[] stops = new StopGeometry[7];
        Assert.Equal(0, Allocation.Of(() => routing.TryGetGeometry(stops, out _)));
    }

    [Fact]
    public void Closes_WithoutAList_AllocatesNothing()
    {
        BeltRouting routing = Layouts.Routing("S07");
        StopGeometry[] stops = new StopGeometry[7];
        Assert.Equal(0, Allocation.Of(() => RoutingExaminer.Closes(routing.Circles, [], routing.ExpectedTurningNumber, stops, out _)));
    }
}
