using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>What somebody saw after a start, as plain times: when oil pressure and water came, and what went wrong.</summary>
/// <remarks>It names outlets as it likes; <see cref="ReportFor"/> holds it against an engine's own circuit. Never changes.</remarks>
/// <example><code>
/// StartTimes seen = StartTimes.Until(Duration.FromSeconds(30)).PressureCame(Duration.FromSeconds(4)).WaterCame("exhaust outlet", Duration.FromSeconds(12));
/// </code></example>
public sealed class StartTimes
{
    internal const double MostSeconds = 600;

    private readonly KeyValuePair<string, double>[] _water;
    private readonly KeyValuePair<string, double>[] _wrong;

    private StartTimes(double elapsed, double? pressure, KeyValuePair<string, double>[] water, KeyValuePair<string, double>[] wrong) =>
        (ElapsedSeconds, PressureSeconds, _water, _wrong) = (elapsed, pressure, water, wrong);

    /// <summary>How long somebody watched, after the engine fired [s].</summary>
    public double ElapsedSeconds { get; }

    /// <summary>When oil pressure showed; null when it did not [s].</summary>
    public double? PressureSeconds { get; }

    /// <summary>When water showed, by outlet [s].</summary>
    public IReadOnlyList<KeyValuePair<string, double>> WaterSeconds => Array.AsReadOnly(_water);

    /// <summary>What else went wrong, and when [s].</summary>
    public IReadOnlyList<KeyValuePair<string, double>> WrongSeconds => Array.AsReadOnly(_wrong);

    /// <summary>Watched for a time, and nothing seen yet.</summary>
    /// <param name="elapsed">How long, after the engine fired, from 0 to 600 s.</param>
    /// <returns>The times.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="elapsed"/> is outside its range.</exception>
    public static StartTimes Until(Duration elapsed) => UntilSeconds(Checked(elapsed, nameof(elapsed)));

    /// <summary>A copy in which oil pressure showed.</summary>
    /// <param name="after">After the engine fired, from 0 to 600 s.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is outside its range.</exception>
    public StartTimes PressureCame(Duration after) => PressureCameAfter(Checked(after, nameof(after)));

    /// <summary>A copy in which water showed at one more outlet.</summary>
    /// <param name="outlet">The outlet's name; not blank, and not named before.</param>
    /// <param name="after">After the engine fired, from 0 to 600 s.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="outlet"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="outlet"/> is blank or named before.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is outside its range.</exception>
    public StartTimes WaterCame(string outlet, Duration after) => Array.Exists(_water, one => one.Key == Guard.NotBlank(outlet))
        ? throw new ArgumentException($"'{outlet}' is named twice.", nameof(outlet))
        : WaterCameAfter(Guard.NotBlank(outlet), Checked(after, nameof(after)));

    /// <summary>A copy in which something else went wrong: an alarm, a leak, a noise, water that stopped.</summary>
    /// <param name="what">What; not blank.</param>
    /// <param name="after">After the engine fired, from 0 to 600 s.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="what"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="what"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is outside its range.</exception>
    public StartTimes WentWrong(string what, Duration after) => WentWrongAfter(Guard.NotBlank(what), Checked(after, nameof(after)));

    /// <summary>The check list and the verdict for an engine.</summary>
    /// <param name="circuit">The engine's circuit; null when it is not stated, and the outlets are those that were seen.</param>
    /// <returns>The report; not known when an outlet is none of the circuit's, or nobody names any.</returns>
    public Answer<StartReport> ReportFor(RawWaterCircuit? circuit)
    {
        string[] outlets = circuit is { Outlets.Count: > 0 } ? [.. circuit.Outlets.Select(outlet => outlet.Name)] : [.. _water.Select(one => one.Key)];
        string[] strange = [.. _water.Select(one => one.Key).Where(outlet => !outlets.Contains(outlet))];
        if (outlets.Length == 0 || strange.Length > 0)
        {
            return Answer.NotKnown<StartReport>(outlets.Length == 0
                ? ["An outlet at which water was to come."]
                : [.. strange.Select(outlet => $"Which outlet '{outlet}' is; the engine has {string.Join(", ", outlets)}.")]);
        }

        StartWatch watch = StartWatch.Of(outlets);
        watch = PressureSeconds is double pressure ? watch.PressureCame(Duration.FromSeconds(pressure)) : watch;
        watch = _water.Aggregate(watch, (all, one) => all.WaterCame(one.Key, Duration.FromSeconds(one.Value)));
        watch = _wrong.Aggregate(watch, (all, one) => all.WentWrong(one.Key, Duration.FromSeconds(one.Value)));
        return Answer.Known(watch.At(Duration.FromSeconds(ElapsedSeconds)));
    }

    /// <summary>How long was watched, and what came.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"watched {ElapsedSeconds:0.#} s, water at {_water.Length} outlets");

    internal static StartTimes UntilSeconds(double elapsed) => new(elapsed, null, [], []);

    internal StartTimes PressureCameAfter(double seconds) => new(ElapsedSeconds, seconds, _water, _wrong);

    internal StartTimes WaterCameAfter(string outlet, double seconds) => new(ElapsedSeconds, PressureSeconds, [.. _water, new(outlet, seconds)], _wrong);

    internal StartTimes WentWrongAfter(string what, double seconds) => new(ElapsedSeconds, PressureSeconds, _water, [.. _wrong, new(what, seconds)]);

    private static double Checked(Duration time, string argument) => Guard.InRange(Canonical.Seconds(time), 0, MostSeconds, "s", argument);
}
