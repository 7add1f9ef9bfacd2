using System.Xml.Linq;
using MarineService.Reports.Internal;

namespace MarineService.Reports.Tests.Internal;

public sealed class HtmlWriterTest
{
    [Fact]
    public void VoidElements_AreNeverClosed_AndOthersNeverSelfClosed() =>
        Assert.Equal("<i>a<br>b<b></b></i>", Written(Html.Tag("i", "a", Html.Tag("br"), "b", Html.Tag("b"))));

    [Fact]
    public void Text_AndAttributes_AreEscaped() => Assert.Equal(
        "<i title=\"&lt;&amp;&quot;'&gt;&nbsp;\">&lt;b&gt;&amp;\"'&nbsp;</i>",
        Written(Html.Tag("i", Html.Attribute("title", "<&\"'>\u00A0"), "<b>&\"'\u00A0")));

    [Fact]
    public void Style_IsNotEscaped_ButOneInAPictureIs()
    {
        Assert.Equal("<style>a > b { }</style>", Written(Html.Tag("style", "a > b { }")));
        Assert.Equal("<i><style>a &gt; b</style></i>", Written(Html.Tag("i", new XElement(Svg.Space + "style", "a > b"))));
    }

    [Fact]
    public void Picture_StandsInThePage_WithItsNamesAndWithoutNamespaces() => Assert.Equal(
        "<i><svg viewBox=\"0 0 1 1\" xml:space=\"preserve\"><g></g></svg>\n</i>",
        Written(Html.Tag("i", new XElement(
            Svg.Space + "svg",
            new XAttribute("xmlns", Svg.Space),
            new XAttribute("viewBox", "0 0 1 1"),
            new XAttribute(XNamespace.Xml + "space", "preserve"),
            new XElement(Svg.Space + "g")))));

    [Fact]
    public void LinesEnd_InALineFeed_WhateverWasWritten() => Assert.Equal("<i>a\nb\nc</i>", Written(Html.Tag("i", "a\r\nb\rc")));

    [Fact]
    public void WhatNoDocumentHolds_IsShownAsReplaced() => Assert.Equal("<i>a\uFFFD\uFFFDb</i>", Written(Html.Tag("i", "a\0\uD800b")));

    private static string Written(XElement element) =>
        HtmlWriter.Document(element).Substring("<!DOCTYPE html>\n".Length);
}
