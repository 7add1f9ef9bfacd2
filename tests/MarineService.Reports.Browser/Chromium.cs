using PuppeteerSharp;

namespace MarineService.Reports.Browser;

/// <summary>A real browser without a window: Debian's Chromium, or the one that CHROMIUM names.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IBrowser? _browser;

    /// <summary>Where files go: the folder that BROWSER_OUT names, for a look at them, or one of its own.</summary>
    public static string Folder { get; } = Directory.CreateDirectory(
        Environment.GetEnvironmentVariable("BROWSER_OUT") is { Length: > 0 } named ? Path.GetFullPath(named) : Directory.CreateTempSubdirectory("sheets").FullName).FullName;

    public async ValueTask InitializeAsync() => _browser = await Puppeteer.LaunchAsync(new LaunchOptions
    {
        ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } named ? named : "/usr/bin/chromium",
        Headless = true,
        Args =
        [
            "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
        ],
    });

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }
    }

    /// <summary>Opens a file as a reader would.</summary>
    public async Task<OpenPage> Open(string file)
    {
        OpenPage page = new(await _browser!.NewPageAsync());
        await page.Page.GoToAsync(new Uri(Path.Combine(Folder, file)).AbsoluteUri, new NavigationOptions { WaitUntil = [WaitUntilNavigation.Load] });
        return page;
    }
}
