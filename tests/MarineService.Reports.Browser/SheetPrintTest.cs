using MarineService.Core.Jobs;
using MarineService.Reports.Sheets;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace MarineService.Reports.Browser;

/// <summary>The sheets as a real browser shows and prints them.</summary>
public sealed class SheetPrintTest(Chromium chromium) : IClassFixture<Chromium>
{
    // The texts of each row of each table, in the order of the page.
    private const string Rows =
        """
        () => [...document.querySelectorAll('tbody tr')].map(row => {
            const texts = [];
            const walker = document.createTreeWalker(row, NodeFilter.SHOW_TEXT);
            while (walker.nextNode()) texts.push(walker.currentNode.data);
            return texts;
        })
        """;

    // Whatever of the page's own text is smaller than 12 px; pictures are scaled, and their words stand below them again.
    private const string SmallPrint =
        """
        () => [...document.querySelectorAll('body *')].filter(element => !element.closest('svg') && element.checkVisibility()
            && [...element.childNodes].some(node => node.nodeType === Node.TEXT_NODE && node.data.trim()) && parseFloat(getComputedStyle(element).fontSize) < 12)
            .map(element => element.outerHTML.slice(0, 120))
        """;

    public static TheoryData<string> Names => [.. ClubSheets.All.Keys];

    public static TheoryData<string, Paper, bool> Printed => new(
        from name in ClubSheets.All.Keys from paper in new[] { Paper.A4, Paper.Letter } from byPrinter in new[] { false, true } select (name, paper, byPrinter));

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Page_OpensWithoutAnyError_AndAsksForNothingElse(string name)
    {
        await using OpenPage page = await Open(name, Paper.OfPrinter);

        Assert.Empty(page.Complaints);
        Assert.Equal([page.Page.Url], page.Requests);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Page_OnATelephone_NeedsNoScrollingToTheSide(string name)
    {
        await using OpenPage page = await Open(name, Paper.OfPrinter);
        await page.Page.SetViewportAsync(new ViewPortOptions { Width = 360, Height = 740, DeviceScaleFactor = 2, IsMobile = true, HasTouch = true });
        await page.Page.ScreenshotAsync(Path.Combine(Chromium.Folder, $"{name}-telephone.png"), new ScreenshotOptions { Clip = new() { Width = 360, Height = 8000 } });

        Assert.InRange(await page.Page.EvaluateExpressionAsync<int>("document.documentElement.scrollWidth"), 1, 360);
        Assert.Empty(await page.Page.EvaluateFunctionAsync<string[]>(SmallPrint));
    }

    [Theory]
    [MemberData(nameof(Printed))]
    public async Task Print_HasThePaperAsked_AndSplitsNoRow(string name, Paper paper, bool byPrinter)
    {
        await using OpenPage page = await Open(name, byPrinter ? Paper.OfPrinter : paper);
        string[][] rows = await page.Page.EvaluateFunctionAsync<string[][]>(Rows);
        PrintedPages printed = await Print(page.Page, name, paper, byPrinter);

        Assert.Equal(paper == Paper.A4 ? 210 : 215.9, printed.WidthMm, 0);
        Assert.Equal(paper == Paper.A4 ? 297 : 279.4, printed.HeightMm, 0);
        Assert.NotEmpty(rows);
        Assert.Empty(Split(rows, printed));
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public async Task Print_OfAServiceSheet_HoldsEveryTaskOnce_AndRepeatsTheHeadOfTheSteps(Paper paper)
    {
        JobCard card = ClubSheets.Card("curlew");
        await using OpenPage page = await Open("curlew-service-sheet", paper);
        PrintedPages printed = await Print(page.Page, "curlew-service-sheet", paper, byPrinter: false);

        string all = string.Concat(printed.Pages);
        int from = all.IndexOf(PrintedPages.Bare("What is done, and why now"), StringComparison.Ordinal);
        string why = all[from..all.IndexOf(PrintedPages.Bare("Take along"), from, StringComparison.Ordinal)];
        Assert.All(card.Tasks, task => Assert.Equal(1, Count(why, PrintedPages.Bare($"{task.Due.Task.Title}{task.TaskId}"))));
        Assert.All(card.Steps, step => Assert.Equal(1, Count(all, PrintedPages.Bare(step.Text) + Why(step))));
        int[] stepped = [.. Enumerable.Range(0, printed.Pages.Count).Where(i => card.Steps.Any(step => printed.Pages[i].Contains(PrintedPages.Bare(step.Text) + Why(step), StringComparison.Ordinal)))];
        Assert.True(stepped.Length > 2);
        Assert.All(stepped, i => Assert.Equal(1, Count(printed.Pages[i], PrintedPages.Bare("Hold points, values, initials"))));
    }

    /// <summary>Without the rule that keeps rows whole some are split, and the check above sees it.</summary>
    [Fact]
    public async Task Print_WithoutTheRule_SplitsRows()
    {
        await using OpenPage page = await Open("curlew-service-sheet", Paper.A4);
        string[][] rows = await page.Page.EvaluateFunctionAsync<string[][]>(Rows);
        await page.Page.AddStyleTagAsync(new AddTagOptions { Content = "* { break-inside: auto !important; }" });

        Assert.NotEmpty(Split(rows, await Print(page.Page, "split", Paper.A4, byPrinter: false)));
    }

    private static string Why(Core.Procedures.ProcedureStep step) => step.Why is string why ? PrintedPages.Bare($"Why: {why}") : "";

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    // A row is whole when one page holds all of its texts.
    private static IEnumerable<string> Split(string[][] rows, PrintedPages printed) => rows
        .Select(row => row.Select(PrintedPages.Bare).Where(text => text.Length > 0).ToArray())
        .Where(row => !printed.Pages.Any(page => row.All(text => page.Contains(text, StringComparison.Ordinal))))
        .Select(row => string.Join(" | ", row));

    private async Task<OpenPage> Open(string name, Paper paper)
    {
        string file = $"{name}-{paper}.html";
        await File.WriteAllTextAsync(Path.Combine(Chromium.Folder, file), ClubSheets.All[name](paper).ToHtml());
        return await chromium.Open(file);
    }

    private static async Task<PrintedPages> Print(IPage page, string name, Paper paper, bool byPrinter)
    {
        string file = Path.Combine(Chromium.Folder, $"{name}-{paper}{(byPrinter ? "-by-printer" : "")}.pdf");
        await page.PdfAsync(file, byPrinter
            ? new PdfOptions { Format = paper == Paper.A4 ? PaperFormat.A4 : PaperFormat.Letter, PrintBackground = true }
            : new PdfOptions { PreferCSSPageSize = true, PrintBackground = true });
        return PrintedPages.Of(file);
    }
}
