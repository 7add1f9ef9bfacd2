using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Binary numbers in documents read back the same, and are written the same by both builds.</summary>
public sealed class RealNumbersTest
{
    [Law]
    public Property Real_AnyFiniteNumber_ReadsBackAndHasTheDigitsOfTheFramework() =>
        Prop.ForAll(
            Gen.OneOf(
                ArbMap.Default.GeneratorFor<NormalFloat>().Select(number => number.Get),
                Gen.Choose(-1_000_000, 1_000_000).Zip(Gen.Choose(0, 9)).Select(t => t.Item1 / Math.Pow(10, t.Item2)),
                Gen.Choose(1, 1_000_000).Zip(Gen.Choose(1, 1_000_000)).Select(t => (double)t.Item1 / t.Item2)).ToArbitrary(),
            number =>
            {
                string written = Written(number);
                string own = ShortestDigits.Of(number);
                return (double.Parse(written, CultureInfo.InvariantCulture).Equals(number)
                    && written == number.ToString("R", CultureInfo.InvariantCulture) && own == written).Label($"{number:R}: {written}, {own}");
            });

    [Theory]
    [InlineData(0.4, "0.4")]
    [InlineData(0.6521, "0.6521")]
    [InlineData(5.9620235598, "5.9620235598")]
    [InlineData(1.0 / 3, "0.3333333333333333")]
    [InlineData(0.1 + 0.2, "0.30000000000000004")]
    [InlineData(-0.022, "-0.022")]
    [InlineData(0, "0")]
    public void Real_FigureOfADocument_HasNoDigitTooMany(double number, string expected) => Assert.Equal(expected, Written(number));

    private static string Written(double number)
    {
        ArrayBufferWriter<byte> buffer = new();
        using (Utf8JsonWriter writer = new(buffer))
        {
            writer.Real(number);
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }
}
