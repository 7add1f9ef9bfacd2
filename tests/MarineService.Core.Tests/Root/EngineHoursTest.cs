using System.Globalization;
using FsCheck;
using FsCheck.Fluent;

namespace MarineService.Core.Tests.Root;

public sealed class EngineHoursTest
{
    private static readonly Arbitrary<int> Thousandths = Gen.Choose(0, 1_000_000_000).ToArbitrary();
    private static readonly Arbitrary<(int A, int B, int C)> Three =
        Gen.Choose(0, 300_000_000).Three().Select(t => (A: t.Item1, B: t.Item2, C: t.Item3)).ToArbitrary();

    [Law]
    public Property Hours_ToTheThousandth_ComeBackExactly() =>
        Prop.ForAll(Thousandths, n => EngineHours.FromHours(n / 1000m).ToHours() == n / 1000m);

    [Law]
    public Property Hours_FinerThanAThousandth_AreRoundedToTheNearest() =>
        Prop.ForAll(Gen.Choose(0, 2_000_000_000).ToArbitrary(), n =>
            Math.Abs(EngineHours.FromHours(n / 1_000_000m).ToHours() - (n / 1_000_000m)) <= 0.0005m);

    [Law]
    public Property Sum_IsTheSumOfTheHours_InAnyOrder() =>
        Prop.ForAll(Three, t =>
        {
            EngineHours a = EngineHours.FromHours(t.A / 1000m);
            EngineHours b = EngineHours.FromHours(t.B / 1000m);
            EngineHours c = EngineHours.FromHours(t.C / 1000m);
            return a.Plus(b) == b.Plus(a)
                && a.Plus(b).Plus(c) == a.Plus(b.Plus(c))
                && a.Plus(b).ToHours() == (t.A + t.B) / 1000m
                && a.Plus(b).Minus(b) == a
                && a.Plus(EngineHours.Zero) == a;
        });

    [Law]
    public Property Order_IsTheOrderOfTheHours() =>
        Prop.ForAll(Three, t =>
        {
            EngineHours a = EngineHours.FromHours(t.A / 1000m);
            EngineHours b = EngineHours.FromHours(t.B / 1000m);
            return (a < b) == (t.A < t.B)
                && (a <= b) == (t.A <= t.B)
                && (a > b) == (t.A > t.B)
                && (a >= b) == (t.A >= t.B)
                && (a == b) == (t.A == t.B)
                && Math.Sign(a.CompareTo(b)) == t.A.CompareTo(t.B);
        });

    [Fact]
    public void TenTenths_AreExactlyOneHour()
    {
        EngineHours sum = EngineHours.Zero;
        for (int i = 0; i < 10; i++)
        {
            sum = sum.Plus(EngineHours.FromHours(0.1m));
        }

        Assert.Equal(EngineHours.FromHours(1m), sum);
    }

    [Fact]
    public void Default_IsZero()
    {
        Assert.Equal(EngineHours.Zero, default);
        Assert.Equal(0m, default(EngineHours).ToHours());
        Assert.Equal("0.0 h", default(EngineHours).ToString());
    }

    [Theory]
    [InlineData("-0.001")]
    [InlineData("1000000.001")]
    [InlineData("-79228162514264337593543950335")]
    [InlineData("79228162514264337593543950335")]
    public void FromHours_OutsideTheRange_IsRefusedByName(string hours)
    {
        decimal value = decimal.Parse(hours, CultureInfo.InvariantCulture);
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => EngineHours.FromHours(value));
        Assert.Equal("hours", refusal.ParamName);
        Assert.Equal(value, refusal.ActualValue);
        Assert.Contains("1000000 h", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromHours_AtTheEnds_IsAccepted()
    {
        Assert.Equal(0m, EngineHours.FromHours(0m).ToHours());
        Assert.Equal(1_000_000m, EngineHours.FromHours(1_000_000m).ToHours());
    }

    [Fact]
    public void Plus_BeyondTheRange_Overflows()
    {
        EngineHours most = EngineHours.FromHours(1_000_000m);
        Assert.Throws<OverflowException>(() => most.Plus(EngineHours.FromHours(0.001m)));
        Assert.Equal(most, most.Plus(EngineHours.Zero));
    }

    [Fact]
    public void Minus_OfMore_IsRefusedByName()
    {
        ArgumentOutOfRangeException refusal =
            Assert.Throws<ArgumentOutOfRangeException>(() => EngineHours.FromHours(1m).Minus(EngineHours.FromHours(1.001m)));
        Assert.Equal("other", refusal.ParamName);
    }

    [Theory]
    [InlineData("412", "412.0 h")]
    [InlineData("0.125", "0.125 h")]
    [InlineData("99.99", "99.99 h")]
    [InlineData("1000000", "1000000.0 h")]
    public void Text_HasTheUnitAndAtLeastOneDecimal_InEveryCulture(string hours, string expected)
    {
        EngineHours value = EngineHours.FromHours(decimal.Parse(hours, CultureInfo.InvariantCulture));
        Assert.Equal(expected, InCulture.Run("de-DE", value.ToString));
        Assert.Equal(expected, InCulture.Run("de-DE", () => value.ToString(null, null)));
    }

    [Fact]
    public void Text_FollowsAProvider_ThatTheCallerPasses() =>
        Assert.Equal("412,50 h", EngineHours.FromHours(412.5m).ToString("0.00", CultureInfo.GetCultureInfo("de-DE")));
}
