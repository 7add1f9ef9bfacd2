using MarineService.Reports.Sheets;
using PuppeteerSharp;

namespace MarineService.Reports.Browser;

/// <summary>Drawings on a printed sheet: each whole, on one page, between the margins, in letters that can be read.</summary>
public sealed class DrawingPrintTest(Chromium chromium) : IClassFixture<Chromium>
{
    /// <summary>The margin of every sheet at its sides.</summary>
    private const double MarginMm = 14;

    /// <summary>What the browser rounds to whole dots.</summary>
    private const double DotMm = 0.3;

    // The texts of each drawing, and how high its common letters are on paper, pt.
    private const string Drawings =
        """
        () => [...document.querySelectorAll('figure')].map(figure => {
            const svg = figure.querySelector('svg'), caption = figure.querySelector('figcaption');
            return {
                texts: [...svg.querySelectorAll('text')].map(text => text.textContent),
                letters: 13 * svg.getScreenCTM().a * 72 / 96,
                words: getComputedStyle(caption).display === 'none' ? null : caption.textContent,
            };
        })
        """;

    // What is wider than the paper would have the browser print the whole sheet smaller, and cut what leaves it on the left.
    private const string IsBetweenMargins =
        """
        () => document.documentElement.scrollWidth <= innerWidth && [...document.querySelectorAll('figure svg')].every(svg => {
            const box = svg.getBoundingClientRect();
            return box.left >= 0 && box.right <= innerWidth;
        })
        """;

    [Theory]
    [InlineData(Paper.A4, 210)]
    [InlineData(Paper.Letter, 215.9)]
    public async Task Print_OfASheetWithBelts_HasEachWholeOnOnePage_InLettersThatCanBeRead(Paper paper, double widthMm)
    {
        await using OpenPage page = await Open("belts", paper);
        (Picture[] drawings, PrintedPages printed) = await Print(page.Page, "belts", widthMm);

        Assert.True(await page.Page.EvaluateFunctionAsync<bool>(IsBetweenMargins));
        Assert.Equal(2, drawings.Length);
        Assert.All(drawings, drawing => Assert.Equal(1, Wholes(drawing, printed)));
        Assert.All(Enumerable.Range(0, printed.Pages.Count), number => AssertWithinMargins(printed, number));

        // As large as the sheet's own small print; a picture with so many words that it had to shrink says them below it again.
        Assert.True(drawings[0].Letters > 7.5, $"{drawings[0].Letters} pt");
        Assert.Null(drawings[0].Words);
        Assert.True(drawings[1].Letters > 7.5 || drawings[1].Words?.Contains("lead the belt over 'tensioner' after 'crank'", StringComparison.Ordinal) == true);
    }

    /// <summary>Without the rules that keep it whole the picture is cut at the side and split, and the checks above see both.</summary>
    [Fact]
    public async Task Print_WithoutTheRules_CutsAndSplitsIt()
    {
        await using OpenPage page = await Open("belts-cut", Paper.A4);
        await page.Page.AddStyleTagAsync(new AddTagOptions { Content = "figure { break-inside: auto !important; } figure svg { max-height: none !important; width: 260mm !important; transform: translateX(-12mm); }" });
        (Picture[] drawings, PrintedPages printed) = await Print(page.Page, "belts-cut", 210);

        Assert.False(await page.Page.EvaluateFunctionAsync<bool>(IsBetweenMargins));
        Assert.Contains(drawings, drawing => Wholes(drawing, printed) == 0);
        Assert.Contains(Enumerable.Range(0, printed.Pages.Count), number => printed.TextAcross(number).LeftMm < MarginMm - DotMm);
    }

    private static void AssertWithinMargins(PrintedPages printed, int page)
    {
        (double left, double right) = printed.TextAcross(page);
        Assert.InRange(left, MarginMm - DotMm, printed.WidthMm);
        Assert.InRange(right, 0, printed.WidthMm - MarginMm + DotMm);
    }

    // The pages that hold all texts of a drawing.
    private static int Wholes(Picture drawing, PrintedPages printed) =>
        printed.Pages.Count(page => drawing.Texts.All(text => page.Contains(PrintedPages.Bare(text), StringComparison.Ordinal)));

    private async Task<OpenPage> Open(string name, Paper paper)
    {
        Sheet sheet = ServiceSheet.Of(
            ClubSheets.Card("curlew"),
            [.. new[] { "curlew-belt-right", "curlew-belt-tensioner-missed" }.Select(belt => ClubDrawings.All[belt]())],
            paper: paper);
        string file = $"{name}-{paper}.html";
        await File.WriteAllTextAsync(Path.Combine(Chromium.Folder, file), sheet.ToHtml());
        return await chromium.Open(file);
    }

    private static async Task<(Picture[] Drawings, PrintedPages Printed)> Print(IPage page, string name, double widthMm)
    {
        string file = Path.Combine(Chromium.Folder, $"{name}-{widthMm:0}.pdf");
        await page.PdfAsync(file, new PdfOptions { PreferCSSPageSize = true, PrintBackground = true });

        // The same layout on the screen, as wide as the paper between its margins, to be measured.
        await page.EmulateMediaTypeAsync(PuppeteerSharp.Media.MediaType.Print);
        await page.SetViewportAsync(new ViewPortOptions { Width = (int)((widthMm - (2 * MarginMm)) * 96 / 25.4), Height = 1000 });
        return (await page.EvaluateFunctionAsync<Picture[]>(Drawings), PrintedPages.Of(file));
    }

    /// <summary>A drawing on the sheet; null words where it has no caption.</summary>
    public sealed record Picture(IReadOnlyList<string> Texts, double Letters, string? Words);
}
