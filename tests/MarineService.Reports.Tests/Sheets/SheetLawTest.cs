using System.Globalization;
using AngleSharp.Dom;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Tests;
using MarineService.Reports.Internal;
using MarineService.Reports.Sheets;

namespace MarineService.Reports.Tests.Sheets;

/// <summary>What holds of every sheet, whatever stands in it.</summary>
public sealed class SheetLawTest
{
    public static TheoryData<string> Kinds => ["service-sheet", "logbook", "compliance-statement"];

    [Law(MaxTest = 60)]
    public Property NoWord_BreaksOutOfASheet() => Prop.ForAll(HostileText.Some, word =>
        All(Cards.Worded(word)).Zip(All(Cards.Worded("plain")), (hostile, plain) =>
        {
            IDocument page = SheetReader.Read(hostile);
            return SheetReader.Structure(page) == SheetReader.Structure(SheetReader.Read(plain))
                && page.QuerySelectorAll("bdi").Any(words => words.TextContent.Contains(Shown(word), StringComparison.Ordinal));
        }).All(holds => holds).Label(word));

    /// <summary>What a browser makes of the file, written down again, is the file: nothing was mended, moved or left out.</summary>
    [Law(MaxTest = 30)]
    public Property EveryWord_IsReadAsItIsWritten() => Prop.ForAll(HostileText.Some, word =>
        All(Cards.Worded(word)).All(sheet => sheet.ToHtml() == Reread(sheet)).Label(word));

    [Fact]
    public void EverySheetOfTheClub_IsReadAsItIsWritten() =>
        Assert.All(Club.Boats.SelectMany(OfClub), sheet => Assert.Equal(sheet.ToHtml(), Reread(sheet)));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Sheet_InAnyCulture_HasTheSameBytes(string kind)
    {
        byte[][] files = [.. new[] { "", "de-DE", "tr-TR", "ar-SA", "th-TH", "fa-IR" }.Select(culture => In(culture, () => Bytes(OfClub("curlew").Single(sheet => sheet.Name == kind))))];

        Assert.All(files, file => Assert.Equal(files[0], file));
        Assert.DoesNotContain((byte)'\r', files[0]);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Sheet_IsOneFile_WithoutScriptOrNetwork(string kind)
    {
        Sheet sheet = OfClub("curlew").Single(sheet => sheet.Name == kind);
        IDocument page = SheetReader.Read(sheet);

        Assert.Empty(page.QuerySelectorAll("script, link, img, iframe, object, embed, form, base"));
        Assert.DoesNotContain(page.All.SelectMany(element => element.Attributes), attribute =>
            attribute.Name is "src" or "href" or "srcset" or "action" || attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("url(", page.QuerySelector("style")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", page.QuerySelector("style")!.TextContent, StringComparison.Ordinal);
        Assert.StartsWith("default-src 'none'", page.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content"), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Sheet_SaysWhatItIs_AndThatTheManualOutranksIt(string kind)
    {
        Sheet sheet = OfClub("curlew").Single(sheet => sheet.Name == kind);
        IDocument page = SheetReader.Read(sheet);

        Assert.StartsWith("<!DOCTYPE html>\n<html lang=\"en\">", sheet.ToHtml(), StringComparison.Ordinal);
        Assert.Equal("utf-8", page.QuerySelector("meta[charset]")!.GetAttribute("charset"));
        Assert.Equal(sheet.Title, page.Title);
        Assert.Equal(sheet.Title, sheet.ToString());
        Assert.Single(page.QuerySelectorAll("h1"));
        Assert.Contains("The engine's own manual outranks this sheet.", page.QuerySelector("footer")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("certifies nothing", page.QuerySelector("footer")!.TextContent, StringComparison.Ordinal);
        Assert.All(page.QuerySelectorAll("[aria-labelledby]"), element => Assert.All(
            element.GetAttribute("aria-labelledby")!.Split(' '), id => Assert.NotNull(page.GetElementById(id))));
        Assert.All(page.QuerySelectorAll("table"), table => Assert.NotNull(table.QuerySelector("thead th[scope=col]")));
    }

    /// <summary>Where columns have no room, on a telephone, each cell says itself what it is.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Cell_CarriesTheHeadingOfItsColumn(string kind)
    {
        IDocument page = SheetReader.Read(OfClub("curlew").Single(sheet => sheet.Name == kind));
        Assert.All(page.QuerySelectorAll("tbody tr"), row =>
        {
            string[] headings = [.. row.Closest("table")!.QuerySelectorAll("thead th").Select(heading => heading.TextContent)];
            Assert.Equal(headings.Skip(1), row.QuerySelectorAll(":scope > td").Select(cell => cell.GetAttribute("data-label")!));
        });
    }

    private static IEnumerable<Sheet> OfClub(string boat)
    {
        yield return ServiceSheet.Of(Cards.Of(boat));
        yield return Logbook.Of(Club.Boat(boat), Club.Log(boat), Club.Today);
        yield return ComplianceStatement.Of(Club.Boat(boat), Club.Log(boat).Compliance(Club.Boat(boat).Engines[0].Specification, Club.Today));
    }

    private static IEnumerable<Sheet> All((Core.Specifications.BoatSpecification Boat, Core.Records.ServiceLog Log, Core.Jobs.JobCard Card) worded)
    {
        string engine = worded.Boat.Engines[0].Id;
        yield return ServiceSheet.Of(worded.Card);
        yield return Logbook.Of(worded.Boat, worded.Log, Cards.Spring);
        yield return ComplianceStatement.Of(worded.Boat, worded.Log.Compliance(worded.Boat.Engines[0].Specification, Cards.Spring, engine: engine), engine: engine);
    }

    // As HTML shows it: what no document can hold as the replacement character, every end of line as a line feed.
    private static string Shown(string word) => PlainText.Of(word.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n'));

    private static string Reread(Sheet sheet) => $"<!DOCTYPE html>\n{SheetReader.Read(sheet).DocumentElement.OuterHtml}";

    private static byte[] Bytes(Sheet sheet)
    {
        using MemoryStream stream = new();
        sheet.WriteTo(stream);
        return stream.ToArray();
    }

    private static T In<T>(string culture, Func<T> what)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            return what();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
