using System.Text;
using MarineService.Core.Exchange;

namespace MarineService.Core.Tests.Exchange;

/// <summary>Comments in documents that people write by hand.</summary>
public sealed class CommentsTest
{
    private const string Log = """{"format":"marine-service/service-log","version":1,"entries":[{"kind":"reading","date":"2026-08-02","dial":503}]}""";

    // Behind every bracket, colon and comma white space may stand, so a comment may; no text in this document holds one of them.
    private static readonly string Commented = Log.Replace("{", "{/* a */", StringComparison.Ordinal).Replace(",", ", // one line\n", StringComparison.Ordinal)
        .Replace("\":", "\":/**/", StringComparison.Ordinal) + "// end";

    [Fact]
    public void Comments_WhereAllowed_ArePassedOver()
    {
        string plain = ServiceLogJson.ToText(ServiceLogJson.Read(Utf8(Log)).Value);
        Assert.Equal(plain, ServiceLogJson.ToText(ServiceLogJson.Read(Utf8(Commented), ReadLimits.Default.AllowingComments()).Value));
        Assert.Equal("marine-service/service-log", DocumentFormat.Of(Utf8(Commented)).Value);
    }

    [Fact]
    public void Comments_WhereNotAllowed_AreAFault()
    {
        Assert.False(ServiceLogJson.Read(Utf8(Commented)).IsRead);
        Assert.False(ServiceLogJson.Read(Utf8(Commented), ReadLimits.Of(32, 1000, 10)).IsRead);
    }

    [Theory]
    [InlineData("{/* never closed")]
    [InlineData("{}/ no comment")]
    public void Comments_Broken_AreAFault(string text) =>
        Assert.NotEmpty(ServiceLogJson.Read(Utf8(text), ReadLimits.Default.AllowingComments()).Faults);

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
