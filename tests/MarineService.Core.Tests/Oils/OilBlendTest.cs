using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Oils;
using MarineService.Core.Tests.Reference;
using static MarineService.Core.Tests.Oils.OilUnits;

namespace MarineService.Core.Tests.Oils;

public sealed class OilBlendTest
{
    private static readonly OilViscosity Multigrade = OilViscosity.Of(Kv(110), Kv(14.5));
    private static readonly OilViscosity Thirty = OilViscosity.Of(Kv(95), Kv(11));

    [Law]
    public Property By_AnyMethod_LiesBetweenThePartsAndIsSymmetric() =>
        Prop.ForAll(Cases().ToArbitrary(), pair =>
        {
            (OilViscosity a, OilViscosity b, double x) = pair;
            return Enum.GetValues<BlendingMethod>().All(method =>
            {
                OilViscosity mix = OilBlend.Of(a, b, x).By(method);
                OilViscosity mirrored = OilBlend.Of(b, a, 1 - x).By(method);
                return Between(mix.At40C.Centistokes, a.At40C.Centistokes, b.At40C.Centistokes)
                    && Between(mix.At100C.Centistokes, a.At100C.Centistokes, b.At100C.Centistokes)
                    && Near(mix.At40C.Centistokes, mirrored.At40C.Centistokes) && Near(mix.At100C.Centistokes, mirrored.At100C.Centistokes);
            }).Label($"{a} | {b} | {x}");
        });

    [Law]
    public Property By_DoubleLog_IsNeverThickerThanTheSingleLog() =>
        Prop.ForAll(Cases().ToArbitrary(), pair =>
        {
            (OilViscosity a, OilViscosity b, double x) = pair;
            OilBlend blend = OilBlend.Of(a, b, x);
            return (blend.By(BlendingMethod.DoubleLog).At100C.Centistokes <= blend.By(BlendingMethod.SingleLog).At100C.Centistokes + 1e-9).Label($"{a} | {b} | {x}");
        });

    [Law]
    public Property Tolerable_UpToTheShare_StaysInsideTheGrade() =>
        Prop.ForAll(Gen.Choose(931, 1249).Zip(Gen.Choose(200, 3000)).ToArbitrary(), pair =>
        {
            OilViscosity first = OilViscosity.Of(Kv(100), Kv(pair.Item1 / 100.0));
            OilViscosity second = OilViscosity.Of(Kv(400), Kv(pair.Item2 / 100.0));
            SaeGrade grade = SaeGrade.Parse("30");
            double low = OilBlend.Tolerable(first, second, grade).Value.LowFraction;
            double At(double x) => OilBlend.Of(first, second, x).Estimate.At100C.Centistokes;
            bool inside = At(Math.Max(0, low - 1e-6)) is >= 9.3 and < 12.5;
            bool leaves = low == 1 || OilBlend.Tolerable(first, second, grade).Value is { } bracket
                && (OilBlend.Of(first, second, Math.Min(1, bracket.HighFraction + 1e-6)).By(BlendingMethod.DoubleLog).At100C.Centistokes is < 9.3 or >= 12.5
                    || OilBlend.Of(first, second, Math.Min(1, bracket.HighFraction + 1e-6)).By(BlendingMethod.SingleLog).At100C.Centistokes is < 9.3 or >= 12.5);
            return (inside && leaves).Label($"{first} | {second} | {low}");
        });

    [Fact]
    public void Mix_OfTheHandbookCharts_IsWithinReadingError()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("blend-checks.csv"))
        {
            double first = Saybolt.Kinematic(row.Number("first_ssu"));
            double second = Saybolt.Kinematic(row.Number("second_ssu"));
            double Mixed(BlendingMethod method) => Saybolt.Seconds(BlendMath.Mix(method, first, second, row.Number("second_fraction")));
            Assert.Equal(row.Number("chart_ssu"), Mixed(BlendingMethod.DoubleLog), 1.5);
            Assert.Equal(row.Number("double_log_ssu"), Mixed(BlendingMethod.DoubleLog), 0.15);
            Assert.Equal(row.Number("index_ssu"), Mixed(BlendingMethod.BlendingIndex), 0.15);
            Assert.Equal(row.Number("single_log_ssu"), Mixed(BlendingMethod.SingleLog), 0.15);

            // So the handbook's form is the double log and not the single log.
            Assert.True(Math.Abs(row.Number("chart_ssu") - Mixed(BlendingMethod.SingleLog)) > 4);
        }
    }

    [Fact]
    public void Of_ATopUp_GivesBothViscositiesAndTheIndex()
    {
        // Worked out independently: 80 % (110, 14.5) with 20 % (95, 11.0).
        OilBlend blend = OilBlend.Of(Multigrade, Thirty, 0.2);
        Assert.Equal(106.7833, blend.Estimate.At40C.Centistokes, 1e-3);
        Assert.Equal(13.6941, blend.Estimate.At100C.Centistokes, 1e-4);
        Assert.Equal(127.69, blend.Index.Value.UnroundedNumber, 0.01);
        Assert.True(blend.At100C.Low.Centistokes <= blend.At100C.High.Centistokes);
    }

    [Fact]
    public void Tolerable_ThatOil_IsABracketAroundTheCheckValue()
    {
        FractionBracket share = OilBlend.Tolerable(Multigrade, OilViscosity.Of(Kv(70), Kv(9.5)), SaeGrade.Parse("15W-40")).Value;
        Assert.Equal(0.335839, share.LowFraction, 1e-5);
        Assert.True(share.HighFraction > share.LowFraction);
    }

    [Fact]
    public void Tolerable_AnOilWithinTheGrade_IsTheWhole() =>
        Assert.Equal(1, OilBlend.Tolerable(Multigrade, OilViscosity.Of(Kv(120), Kv(15)), SaeGrade.Parse("40")).Value.LowFraction);

    [Fact]
    public void Tolerable_AnOilOutsideItsOwnGrade_IsNotKnown() =>
        Assert.False(OilBlend.Tolerable(Thirty, Multigrade, SaeGrade.Parse("15W-40")).IsKnown);

    [Fact]
    public void Grade_OfABlend_IsNeverKnown()
    {
        OilBlend blend = OilBlend.Of(Multigrade, Multigrade, 0.5);
        Assert.False(blend.Grade.IsKnown);
        Assert.Contains("no SAE J300 grade until it is tested", blend.Grade.Missing[0], StringComparison.Ordinal);
        Assert.Contains("no SAE J300 grade until it is tested", blend.Explain(DisplayUnits.Metric).ToString(), StringComparison.Ordinal);
        Assert.Contains("label of the one oil", OilBlend.Of(Multigrade, Thirty, 0).Grade.Missing[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Of_BadInput_Throws()
    {
        Assert.Throws<ArgumentNullException>("first", () => OilBlend.Of(null!, Thirty, 0.1));
        Assert.Throws<ArgumentNullException>("second", () => OilBlend.Of(Thirty, null!, 0.1));
        Assert.Throws<ArgumentNullException>("grade", () => OilBlend.Tolerable(Thirty, Thirty, null!));
        Assert.Throws<ArgumentOutOfRangeException>("method", () => OilBlend.Of(Thirty, Thirty, 0.5).By((BlendingMethod)8));
        Assert.Throws<ArgumentOutOfRangeException>("at40C", () => OilViscosity.Of(Kv(0.39), Kv(0.38)));
        Assert.Throws<ArgumentException>("at100C", () => OilViscosity.Of(Kv(10), Kv(10)));
        Assert.Throws<ArgumentOutOfRangeException>("at40C", () => OilViscosity.Of(default, Kv(10)));
        foreach (double bad in NotNumbers.Concat([-0.01, 1.01]))
        {
            Assert.Throws<ArgumentOutOfRangeException>("secondFraction", () => OilBlend.Of(Multigrade, Thirty, bad));
        }
    }

    private static Gen<(OilViscosity First, OilViscosity Second, double Share)> Cases() =>
        from first in ViscosityLineTest.Pairs()
        from second in ViscosityLineTest.Pairs()
        from percent in Gen.Choose(0, 100)
        select (OilViscosity.Of(Kv(first.Kv40), Kv(first.Kv100)), OilViscosity.Of(Kv(second.Kv40), Kv(second.Kv100)), percent / 100.0);

    private static bool Between(double value, double a, double b) => value >= Math.Min(a, b) && value <= Math.Max(a, b);

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-10 * a;
}
