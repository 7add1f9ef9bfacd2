namespace RowingClub;

/// <summary>Says on the error output what takes so long, once it has taken a second.</summary>
internal sealed class Patience : IDisposable
{
    private readonly Timer _timer;

    internal Patience(string what) => _timer = new(_ => Console.Error.WriteLine(what), null, TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(5));

    public void Dispose() => _timer.Dispose();
}
