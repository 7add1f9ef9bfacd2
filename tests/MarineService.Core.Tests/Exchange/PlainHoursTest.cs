using System.Globalization;
using System.Text;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Exchange;

/// <summary>The short way of reading hours says what decimal arithmetic says, or nothing.</summary>
public sealed class PlainHoursTest
{
    [Law]
    public Property TryParse_NumberOfADocument_SaysWhatTheDecimalReaderSaysOrNothing()
    {
        Gen<string> digits = Gen.Choose(0, 9).Select(digit => digit.ToString(CultureInfo.InvariantCulture)).ArrayOf().Select(string.Concat);
        Gen<string> number =
            from sign in Gen.Frequency((9, Gen.Constant("")), (1, Gen.Constant("-")))
            from whole in Gen.Choose(0, 12_345_678).Select(value => value.ToString(CultureInfo.InvariantCulture))
            from decimals in Gen.OneOf(Gen.Constant(""), digits.Where(text => text.Length > 0).Select(text => $".{text}"))
            from exponent in Gen.Frequency((9, Gen.Constant("")), (1, Gen.Elements("e0", "E+1", "e-2")))
            select sign + whole + decimals + exponent;
        return Prop.ForAll(
            number.ToArbitrary(),
            text =>
            {
                bool isRead = PlainHours.TryParse(Encoding.UTF8.GetBytes(text), out EngineHours hours);
                int point = text.IndexOf('.', StringComparison.Ordinal);
                int places = point < 0 ? 0 : text.Length - point - 1;
                bool isPlain = !text.StartsWith('-') && !text.Contains('e', StringComparison.OrdinalIgnoreCase)
                    && (point < 0 ? text.Length : point) <= 6 && places <= 3;
                return (isRead == isPlain && (!isRead || hours.ToHours() == decimal.Parse(text, CultureInfo.InvariantCulture))).Label($"{text}: {isRead}, {hours}");
            });
    }

    [Law]
    public Property Format_AnyHours_IsTheShortestDecimal() => Prop.ForAll(
        Gen.OneOf(
            Gen.Choose(0, 1_000_000_000).Select(thousandths => (long)thousandths),
            Gen.Choose(0, 1_000_000).Select(hours => hours * 1000L),
            Gen.Choose(0, 99_999_999).Select(tenths => tenths * 10L),
            Gen.Choose(1, int.MaxValue).Select(part => part * (long.MaxValue / int.MaxValue))).ToArbitrary(),
        thousandths =>
        {
            EngineHours hours = EngineHours.FromThousandths(thousandths);
            Span<byte> text = stackalloc byte[PlainHours.MostBytes];
            Assert.Equal(hours.ToHours().ToString("0.###", CultureInfo.InvariantCulture), Encoding.UTF8.GetString(text[..PlainHours.Format(hours, text)].ToArray()));
        });

    [Theory]
    [InlineData("0", 0)]
    [InlineData("412.5", 412_500)]
    [InlineData("999999.999", 999_999_999)]
    [InlineData("0.001", 1)]
    [InlineData("7.05", 7_050)]
    public void TryParse_WhatMetersShow_IsExact(string text, long thousandths)
    {
        Assert.True(PlainHours.TryParse(Encoding.UTF8.GetBytes(text), out EngineHours hours));
        Assert.Equal(thousandths, hours.Thousandths);
    }
}
