using PuppeteerSharp;

namespace MarineService.Reports.Browser;

/// <summary>A page in the browser, with everything that it complained of and asked for.</summary>
public sealed class OpenPage : IAsyncDisposable
{
    private readonly List<string> _complaints = [];
    private readonly List<string> _requests = [];

    internal OpenPage(IPage page)
    {
        Page = page;
        page.PageError += (_, error) => _complaints.Add(error.Message ?? "error");
        page.Error += (_, error) => _complaints.Add(error.Error);
        page.Console += (_, said) => _complaints.Add(said.Message.Text);
        page.RequestFailed += (_, failed) => _complaints.Add(failed.Request.Url);
        page.Request += (_, asked) => _requests.Add(asked.Request.Url);
    }

    public IPage Page { get; }

    public IReadOnlyList<string> Complaints => _complaints;

    public IReadOnlyList<string> Requests => _requests;

    public ValueTask DisposeAsync() => new(Page.CloseAsync());
}
