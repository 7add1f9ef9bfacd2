using PuppeteerSharp;

namespace MarineService.Reports.Browser;

/// <summary>A real browser without a window: Debian's Chromium, or the one that CHROMIUM names.</summary>
public sealed class Chromium : IAsyncLifetime
{
    /// <summary>How wide the window is in which a drawing is opened, px: two for each unit of the drawing.</summary>
    private const int Width = 1440;

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

    /// <summary>Opens a drawing as a reader would open its file, in a window as tall as the drawing is.</summary>
    internal async Task<OpenPage> Open(string name, Drawing drawing)
    {
        string file = $"{name}.svg";
        await File.WriteAllTextAsync(Path.Combine(Folder, file), drawing.ToSvg());
        OpenPage page = await Open(file);
        double height = await page.Page.EvaluateExpressionAsync<double>("document.documentElement.viewBox.baseVal.height / document.documentElement.viewBox.baseVal.width");
        await page.Page.SetViewportAsync(new ViewPortOptions { Width = Width, Height = (int)Math.Ceiling(Width * height) });
        return page;
    }
}
