namespace Fleet;

/// <summary>One engine on a cluster.</summary>
public interface IEngineGrain : IGrainWithStringKey
{
    /// <summary>Judges the engine.</summary>
    /// <param name="line">Its document, one line of NDJSON.</param>
    /// <param name="number">The number of that line.</param>
    /// <param name="today">The day, ISO 8601.</param>
    public Task<EngineAnswer> JudgeAsync(byte[] line, long number, string today);
}
