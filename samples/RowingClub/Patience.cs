namespace RowingClub;

/// <summary>Tells the one who waits at a terminal what takes so long, once it has taken a second.</summary>
internal sealed class Patience : IDisposable
{
    // A file or another program does not wait.
    private readonly Timer? _timer;

    internal Patience(string what) =>
        _timer = Console.IsErrorRedirected ? null : new(_ => Console.Error.WriteLine(what), null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(5));

    public void Dispose() => _timer?.Dispose();
}
