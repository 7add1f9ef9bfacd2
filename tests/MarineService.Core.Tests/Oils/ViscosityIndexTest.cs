using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using MathNet.Numerics.Interpolation;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class ViscosityIndexTest
{
    [Law]
    public Property Of_ThickerAt40C_IsALowerIndex() =>
        Prop.ForAll(Gen.Choose(20, 900).Zip(Gen.Choose(30, 200)).ToArbitrary(), pair =>
        {
            double y = pair.Item1 / 10.0;
            double u = y * pair.Item2 / 10.0;
            return (ViscosityIndex.Of(Kv(u), Kv(y)).Value.UnroundedNumber > ViscosityIndex.Of(Kv(u * 1.01), Kv(y)).Value.UnroundedNumber).Label($"{u} {y}");
        });

    [Fact]
    public void Of_EveryCheckRow_IsExactAndUnroundedTo0001()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("astm-d2270-checks.csv"))
        {
            ViscosityIndex index = ViscosityIndex.Of(Kv(row.Number("u")), Kv(row.Number("y"))).Value;
            Assert.Equal($"{row["id"]} {row["vi"]}", $"{row["id"]} {index}");
            Assert.Equal(row.Number("unrounded"), index.UnroundedNumber, 0.001);
            if (row.NumberOrNull("l") is double l)
            {
                // The standard prints L and H to the table's own digits: half a unit of the last.
                Assert.Equal(l, index.L.Centistokes, l > 1000 ? 0.5 : 0.005);
                Assert.Equal(row.Number("h"), index.H.Centistokes, l > 1000 ? 0.5 : 0.005);
            }
        }
    }

    [Fact]
    public void Of_ByQuadratics_IsThePublishedExample()
    {
        // ASTM D2270 X2.5: U 73.50, Y 8.860 give L 119.9588, H 69.4765, index 92.
        ViscosityIndex index = ViscosityIndex.Of(Kv(73.5), Kv(8.86), ViscosityIndexMethod.Quadratics).Value;
        Assert.Equal(119.9588, index.L.Centistokes, 0.0001);
        Assert.Equal(69.4765, index.H.Centistokes, 0.0001);
        Assert.Equal(92, index.Number);
        Assert.Equal(92.0298, index.UnroundedNumber, 0.001);
    }

    [Fact]
    public void Table_IsThePublishedTableRowByRow()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = ReferenceTable.Read("astm-d2270-lh.csv");
        Assert.Equal(311, rows.Count);
        Assert.Equal(rows.Count, D2270Table.Rows);
        for (int i = 0; i < rows.Count; i++)
        {
            (double y, double l, double h) = D2270Table.Row(i);
            Assert.Equal(rows[i].Number("kv100_Y_mm2_s"), y, 1e-9);
            Assert.Equal(rows[i].Number("L_mm2_s"), l);
            Assert.Equal(rows[i].Number("H_mm2_s"), h);
            (double atL, double atH) = D2270Table.Interpolate(y);
            Assert.Equal(l, atL, 1e-9 * l);
            Assert.Equal(h, atH, 1e-9 * h);
        }
    }

    [Fact]
    public void Interpolate_AgreesWithAnIndependentLinearSpline()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = ReferenceTable.Read("astm-d2270-lh.csv");
        double[] y = [.. rows.Select(row => row.Number("kv100_Y_mm2_s"))];
        LinearSpline l = LinearSpline.InterpolateSorted(y, [.. rows.Select(row => row.Number("L_mm2_s"))]);
        LinearSpline h = LinearSpline.InterpolateSorted(y, [.. rows.Select(row => row.Number("H_mm2_s"))]);
        for (double at = 2; at <= 70; at += 0.037)
        {
            (double gotL, double gotH) = D2270Table.Interpolate(at);
            Assert.Equal(l.Interpolate(at), gotL, 1e-9 * gotL);
            Assert.Equal(h.Interpolate(at), gotH, 1e-9 * gotH);
        }
    }

    [Fact]
    public void Quadratic_AgainstTheTable_StaysWithinTheStandards01PercentExceptOneRow()
    {
        List<string> exceeded = [];
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("astm-d2270-lh.csv"))
        {
            double y = row.Number("kv100_Y_mm2_s");

            // A row on a boundary belongs to both pieces: the standard prints both ends. Check each.
            foreach (IReadOnlyDictionary<string, string> piece in ReferenceTable.Read("astm-d2270-quadratics.csv"))
            {
                if (y >= piece.Number("Y_min") && y <= (piece.NumberOrNull("Y_max") ?? double.MaxValue))
                {
                    double l = (piece.Number("a") * y * y) + (piece.Number("b") * y) + piece.Number("c");
                    double h = (piece.Number("d") * y * y) + (piece.Number("e") * y) + piece.Number("f");
                    Note("L", l, row.Number("L_mm2_s"));
                    Note("H", h, row.Number("H_mm2_s"));
                    if (y < (piece.NumberOrNull("Y_max") ?? double.MaxValue))
                    {
                        (double ourL, double ourH) = D2270Table.Quadratic(y);
                        Assert.Equal(l, ourL, 1e-9 * l);
                        Assert.Equal(h, ourH, 1e-9 * h);
                    }
                }
            }

            void Note(string name, double quadratic, double table)
            {
                if (Math.Abs(quadratic - table) > 0.001 * table)
                {
                    exceeded.Add(FormattableString.Invariant($"{name} at {y}: {100 * Math.Abs(quadratic - table) / table:0.000} %"));
                }
            }
        }

        Assert.Equal(["H at 7.7: 0.113 %"], exceeded);
    }

    [Theory]
    [InlineData(92.5, 92)]
    [InlineData(93.5, 94)]
    [InlineData(92.4999, 92)]
    [InlineData(-0.5, 0)]
    [InlineData(-1.5, -2)]
    public void RoundE29_ATie_GoesToTheEvenNumber(double index, int reported) => Assert.Equal(reported, D2270Math.RoundE29(index));

    [Fact]
    public void Of_UAtH_IsExactly100ByProcedureA()
    {
        (_, double h) = D2270Math.LAndH(10, ViscosityIndexMethod.Table);
        ViscosityIndex index = ViscosityIndex.Of(Kv(h), Kv(10)).Value;
        Assert.Equal(100, index.UnroundedNumber);
        Assert.False(index.IsProcedureB);
        Assert.True(ViscosityIndex.Of(Kv(h - 1e-6), Kv(10)).Value.IsProcedureB);
        Assert.Equal(100, ViscosityIndex.Of(Kv(h - 1e-6), Kv(10)).Value.UnroundedNumber, 1e-3);
    }

    [Fact]
    public void LAndH_AtExactly70_AreTheTablesLastRow()
    {
        // One open library uses the equations at 70 and prints 4903.87; the table says 4905.
        Assert.Equal(4905, D2270Math.LAndH(70, ViscosityIndexMethod.Table).L);
        Assert.Equal((0.8353 * 70.5 * 70.5) + (14.67 * 70.5) - 216, D2270Math.LAndH(70.5, ViscosityIndexMethod.Table).L, 1e-6);
    }

    [Fact]
    public void Of_Below2At100C_IsNotDefined()
    {
        // ASTM D2270 scope; Y 1.5.
        Answer<ViscosityIndex> index = ViscosityIndex.Of(Kv(5), Kv(1.5));
        Assert.False(index.IsKnown);
        Assert.Contains("no index below 2 mm²/s", index.Missing[0], StringComparison.Ordinal);
        Assert.True(ViscosityIndex.Of(Kv(7), Kv(2)).IsKnown);
        Assert.False(ViscosityIndex.Of(Kv(7), Kv(2 - Grain)).IsKnown);
    }

    [Fact]
    public void Explain_ShowsLHAndProcedure()
    {
        string text = ViscosityIndex.Of(Kv(22.83), Kv(5.05)).Value.Explain(DisplayUnits.Metric).ToString();
        Assert.Contains("B, because U is below H", text, StringComparison.Ordinal);
        Assert.Contains("41.11 mm²/s", text, StringComparison.Ordinal);
        Assert.Contains("ASTM E29", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_BadInput_Throws()
    {
        Assert.Throws<ArgumentException>("at100C", () => ViscosityIndex.Of(Kv(10), Kv(10)));
        Assert.Throws<ArgumentException>("at100C", () => ViscosityIndex.Of(Kv(10), Kv(20)));
        Assert.Throws<ArgumentOutOfRangeException>("at40C", () => ViscosityIndex.Of(default, Kv(20)));
        Assert.Throws<ArgumentOutOfRangeException>("at100C", () => ViscosityIndex.Of(Kv(100), Kv(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("method", () => ViscosityIndex.Of(Kv(100), Kv(10), (ViscosityIndexMethod)4));
        foreach (double bad in NotNumbers)
        {
            Assert.ThrowsAny<ArgumentException>(() => ViscosityIndex.Of(Kv(bad), Kv(10)));
            Assert.ThrowsAny<ArgumentException>(() => ViscosityIndex.Of(Kv(100), Kv(bad)));
        }
    }
}
