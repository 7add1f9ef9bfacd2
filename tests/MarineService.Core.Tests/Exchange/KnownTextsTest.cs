using System.Text;
using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Exchange;

/// <summary>A text that is known says what the reader of the framework says, whatever took its place in the table before.</summary>
public sealed class KnownTextsTest
{
    // Short texts of few letters, so that many share a place of the table; some longer than the table keeps, some that JSON escapes.
    private static readonly Gen<string> Text = Gen.Elements("a", "b", "ab", "-", "é", "…", "\"", "\\", "\n", "𝄞", "aaaaaaaaaaaaaaaaaaaa")
        .ArrayOf().Select(string.Concat);

    [Law]
    public Property Read_AnyTexts_IsWhatTheFrameworkReads() => Prop.ForAll(
        Text.ArrayOf().ToArbitrary(),
        texts =>
        {
            KnownTexts known = new();
            foreach (string text in texts.Concat(texts))
            {
                Utf8JsonReader reader = new(JsonSerializer.SerializeToUtf8Bytes(text));
                reader.Read();
                Assert.Equal(text, known.Read(ref reader));
            }
        });

    [Fact]
    public void Read_TheSameShortTextTwice_IsMadeOnce()
    {
        KnownTexts known = new();
        byte[] json = Encoding.UTF8.GetBytes("\"engine-oil\"");
        Assert.Same(Read(known, json), Read(known, json));
    }

    [Fact]
    public void Read_HalfASurrogatePair_IsRefusedEachTime()
    {
        KnownTexts known = new();
        byte[] json = [(byte)'"', 0xED, 0xA0, 0x80, (byte)'"'];
        Assert.Throws<InvalidOperationException>(() => Read(known, json));
        Assert.Throws<InvalidOperationException>(() => Read(known, json));
    }

    private static string Read(KnownTexts known, byte[] json)
    {
        Utf8JsonReader reader = new(json);
        reader.Read();
        return known.Read(ref reader);
    }
}
