namespace MarineService.Core.Cooling;

/// <summary>The check list at a moment after a start, with the verdict.</summary>
public sealed class StartReport
{
    internal StartReport(double elapsedSeconds, IReadOnlyList<StartItem> items, IReadOnlyList<string> wrong)
    {
        (ElapsedSeconds, Items) = (elapsedSeconds, items);
        Findings = Array.AsReadOnly<Finding>(
            [.. wrong.Select(what => ExhaustRules.SomethingElse.On("engine", Figure.Of("what", what))), .. items.Select((item, i) => Judge(item, i == 0)).OfType<Finding>()]);
        Verdict = Findings.Any(finding => finding.Severity == Severity.Stop) ? StartVerdict.StopNow
            : items.Any(item => item.CameAfterSeconds is null) ? StartVerdict.Watch
            : StartVerdict.KeepRunning;
    }

    /// <summary>The moment, after the engine fired [s].</summary>
    public double ElapsedSeconds { get; }

    /// <summary>The check list: oil pressure first, then each outlet.</summary>
    public IReadOnlyList<StartItem> Items { get; }

    /// <summary>What to do now.</summary>
    public StartVerdict Verdict { get; }

    /// <summary>What was found.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The verdict and the moment.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"after {ElapsedSeconds:0.#} s: ") + Verdict switch
    {
        StartVerdict.StopNow => "stop now",
        StartVerdict.KeepRunning => "keep running",
        _ => "watch",
    };

    private Finding? Judge(StartItem item, bool isPressure)
    {
        Figure limit = Figure.Of("limit", item.LimitSeconds, FigureUnit.Second);
        return item.CameAfterSeconds is double came
            ? came <= item.LimitSeconds ? null
                : (isPressure ? ExhaustRules.PressureLate : ExhaustRules.WaterLate).On(item.Name, Figure.Of("time", came, FigureUnit.Second), limit)
            : ElapsedSeconds <= item.LimitSeconds ? null
            : (isPressure ? ExhaustRules.PressureNotCome : ExhaustRules.WaterNotCome).On(
                item.Name, Figure.Of("time", ElapsedSeconds, FigureUnit.Second), limit);
    }
}
