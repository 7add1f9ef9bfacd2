#pragma warning disable // Specimens are bad on purpose: the tests show that each fault is found.

namespace MarineService.Core.Tests.Architecture.Specimens.Doubles;

public sealed class BareDoubles
{
    public double? Length => null;

    public double WrapRad => 1;

    public IReadOnlyList<double> Spans() => [];

    public int At(double x, double yMm) => 0;
}
