using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

/// <summary>Single check values, each with its source in the table.</summary>
public sealed class OilScalarChecksTest
{
    private static readonly OilBlend TopUp = OilBlend.Of(OilViscosity.Of(Kv(110), Kv(14.5)), OilViscosity.Of(Kv(95), Kv(11)), 0.2);
    private static readonly ViscosityIndex ByQuadratics = ViscosityIndex.Of(Kv(73.5), Kv(8.86), ViscosityIndexMethod.Quadratics).Value;

    private static readonly Dictionary<string, double> Ours = new(StringComparer.Ordinal)
    {
        ["D341-5"] = ViscosityLine.Through(Kv(110), C(40), Kv(14.5), C(100)).TemperatureFor(Kv(500)).Value.DegreesCelsius,
        ["D341-7"] = D341Math.ZShort(0.5),
        ["D341-8"] = D341Math.KinematicFromZShort(D341Math.ZShort(0.5)),
        ["VI-6"] = ViscosityIndex.Of(Kv(5), Kv(1.5)).IsKnown ? 1 : 0,
        ["VI-8L"] = ByQuadratics.L.Centistokes,
        ["VI-8H"] = ByQuadratics.H.Centistokes,
        ["BL-3"] = BlendMath.ToScale(BlendingMethod.BlendingIndex, 2.234),
        ["BL-3c"] = BlendMath.ToScale(BlendingMethod.BlendingIndex, 2.234),
        ["BL-4a"] = BlendMath.ToScale(BlendingMethod.BlendingIndex, 5),
        ["BL-4b"] = BlendMath.ToScale(BlendingMethod.BlendingIndex, 20),
        ["BL-4"] = BlendMath.Mix(BlendingMethod.BlendingIndex, 5, 20, 0.4),
        ["BL-5a"] = TopUp.Estimate.At40C.Centistokes,
        ["BL-5b"] = TopUp.Estimate.At100C.Centistokes,
        ["BL-5c"] = TopUp.Index.Value.Unrounded.Number!.Value,
        ["BL-6"] = OilBlend.Tolerable(OilViscosity.Of(Kv(110), Kv(14.5)), OilViscosity.Of(Kv(70), Kv(9.5)), SaeGrade.Parse("15W-40")).Value.LowFraction,
        ["FD-3a"] = FuelDilution.ViscosityWith(Kv(10.5), Kv(1.2), 0.05).Low.Centistokes,
        ["FD-3b"] = FuelDilution.ViscosityWith(Kv(10.5), Kv(1.2), 0.05).High.Centistokes,
        ["FD-4a"] = FuelDilution.ViscosityWith(Kv(14.5), Kv(1.2), 0.05).Low.Centistokes,
        ["FD-4b"] = FuelDilution.ViscosityWith(Kv(14.5), Kv(1.2), 0.05).High.Centistokes,
    };

    public static TheoryData<string, double, double> Rows
    {
        get
        {
            TheoryData<string, double, double> rows = [];
            foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("oils-scalar-checks.csv"))
            {
                rows.Add(row["id"], row.Number("expected"), row.Number("tolerance"));
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Value_IsTheTablesWithinItsTolerance(string id, double expected, double tolerance) =>
        Assert.True(Math.Abs(Ours[id] - expected) <= tolerance, FormattableString.Invariant($"{id}: {Ours[id]} against {expected} ± {tolerance}"));

    [Fact]
    public void Table_HoldsEveryValueOnce() =>
        Assert.Equal(Ours.Keys.Order(StringComparer.Ordinal), ReferenceTable.Read("oils-scalar-checks.csv").Select(row => row["id"]).Order(StringComparer.Ordinal));
}
