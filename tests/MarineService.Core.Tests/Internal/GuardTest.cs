using FsCheck;
using MarineService.Core.Internal;
using NodaTime;

namespace MarineService.Core.Tests.Internal;

public sealed class GuardTest
{
    private static readonly double[] NotFinite = [double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    [Law]
    public bool Range_AcceptsExactlyWhatLiesInIt(NormalFloat value, NormalFloat a, NormalFloat b)
    {
        double min = Math.Min(a.Get, b.Get);
        double max = Math.Max(a.Get, b.Get);
        bool accepted = Refusal(() => Guard.InRange(value.Get, min, max, "mm")) is null;
        return accepted == (value.Get >= min && value.Get <= max);
    }

    [Law]
    public bool Guard_GivesBackWhatItAccepts(NormalFloat value) =>
        Guard.Finite(value.Get, "mm").Equals(value.Get) && Guard.InRange(value.Get, value.Get, value.Get, "mm").Equals(value.Get);

    [Law]
    public bool Sign_IsWhatDecides(NormalFloat value) =>
        (Refusal(() => Guard.Positive(value.Get, "L")) is null) == (value.Get > 0)
        && (Refusal(() => Guard.NotNegative(value.Get, "L")) is null) == (value.Get >= 0);

    [Fact]
    public void Numbers_NotFinite_AreRefusedEverywhere_WithNameValueAndUnit()
    {
        foreach (double gap in NotFinite)
        {
            foreach (Action call in new Action[]
            {
                () => Guard.Finite(gap, "mm"),
                () => Guard.Positive(gap, "mm"),
                () => Guard.NotNegative(gap, "mm"),
                () => Guard.InRange(gap, -1, 1, "mm"),
                () => Guard.InRange(gap, double.NegativeInfinity, double.PositiveInfinity, "mm"),
            })
            {
                ArgumentOutOfRangeException refusal = Assert.IsType<ArgumentOutOfRangeException>(Refusal(call));
                Assert.Equal("gap", refusal.ParamName);
                Assert.Equal(gap, refusal.ActualValue);
                Assert.Contains("mm", refusal.Message, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Message_IsTheSameInEveryCulture()
    {
        string expected = Refusal(() => Guard.InRange(9.5, 0.5, 7.25, "mm"))!.Message;
        Assert.Contains("from 0.5 to 7.25 mm", expected, StringComparison.Ordinal);
        Assert.Contains("0.5 to 7.25", Root.InCulture.Run("de-DE", () => Refusal(() => Guard.InRange(9.5, 0.5, 7.25, "mm"))!.Message), StringComparison.Ordinal);
    }

    [Fact]
    public void WholeAndDecimalRanges_IncludeBothEnds()
    {
        Assert.Equal(1, Guard.InRange(1, 1, 12, "months"));
        Assert.Equal(12, Guard.InRange(12, 1, 12, "months"));
        Assert.NotNull(Refusal(() => Guard.InRange(0, 1, 12, "months")));
        Assert.NotNull(Refusal(() => Guard.InRange(13, 1, 12, "months")));
        Assert.Equal(0m, Guard.InRange(0m, 0m, 1m, "h"));
        Assert.NotNull(Refusal(() => Guard.InRange(1.001m, 0m, 1m, "h")));
    }

    [Fact]
    public void Enum_Undefined_IsRefused_NamingTheChoices()
    {
        Severity severity = (Severity)42;
        ArgumentOutOfRangeException refusal = Assert.IsType<ArgumentOutOfRangeException>(Refusal(() => Guard.Defined(severity)));
        Assert.Equal("severity", refusal.ParamName);
        Assert.Contains("Note, Advice, Act, Stop", refusal.Message, StringComparison.Ordinal);
        Assert.All(Enum.GetValues<Severity>(), value => Assert.Equal(value, Guard.Defined(value)));
    }

    [Fact]
    public void Date_OutsideTheServiceYears_OrOfAnotherCalendar_IsRefused()
    {
        LocalDate date = default;
        Assert.Equal("date", Assert.IsType<ArgumentOutOfRangeException>(Refusal(() => Guard.Date(date))).ParamName);
        Assert.NotNull(Refusal(() => Guard.Date(new LocalDate(1899, 12, 31))));
        Assert.NotNull(Refusal(() => Guard.Date(new LocalDate(2200, 1, 1))));
        Assert.NotNull(Refusal(() => Guard.Date(new LocalDate(2026, 4, 1, CalendarSystem.Julian))));
        Assert.Equal(new LocalDate(1900, 1, 1), Guard.Date(new LocalDate(1900, 1, 1)));
        Assert.Equal(new LocalDate(2199, 12, 31), Guard.Date(new LocalDate(2199, 12, 31)));
    }

    [Fact]
    public void Text_NullOrBlank_IsRefusedByName()
    {
        string? name = null;
        Assert.Equal("name", Assert.IsType<ArgumentNullException>(Refusal(() => Guard.NotBlank(name))).ParamName);
        name = " \t";
        Assert.Equal("name", Assert.IsType<ArgumentException>(Refusal(() => Guard.NotBlank(name))).ParamName);
        Assert.Equal("crank", Guard.NotBlank("crank"));
    }

    [Fact]
    public void Items_AreCopied_AndNullsAreRefusedWithTheirPlace()
    {
        string[] stops = ["crank", "pump"];
        IReadOnlyList<string> kept = Guard.Items(stops);
        stops[0] = "changed";
        Assert.Equal(["crank", "pump"], kept);
        Assert.IsNotType<string[]>(kept);
        stops[1] = null!;
        ArgumentException refusal = Assert.IsType<ArgumentException>(Refusal(() => Guard.Items(stops)));
        Assert.Equal("stops", refusal.ParamName);
        Assert.Contains("Item 1", refusal.Message, StringComparison.Ordinal);
    }

    private static ArgumentException? Refusal(Action call)
    {
        try
        {
            call();
            return null;
        }
        catch (ArgumentException refusal)
        {
            return refusal;
        }
    }
}
