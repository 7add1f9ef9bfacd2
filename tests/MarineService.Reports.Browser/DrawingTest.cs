using PuppeteerSharp;

namespace MarineService.Reports.Browser;

/// <summary>Every drawing and chart as a real browser shows it.</summary>
public sealed class DrawingTest(Chromium chromium) : IClassFixture<Chromium>
{
    public static TheoryData<string> Names => [.. ClubDrawings.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Drawing_OpensWithoutAnyError_AndAsksForNothingElse(string name)
    {
        await using OpenPage page = await chromium.Open(name, ClubDrawings.All[name]());
        await page.Page.ScreenshotAsync(Path.Combine(Chromium.Folder, $"{name}.png"));
        Assert.Empty(page.Complaints);
        Assert.Equal([page.Page.Url], page.Requests);
    }
}
