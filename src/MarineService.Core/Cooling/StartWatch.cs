using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>The first half minute after a start, as a check list with times: oil pressure, and water at every outlet.</summary>
/// <remarks>About 10 s for the pressure and 30 s for the water are common practice; the engine's manual goes before both. Never changes.</remarks>
/// <example><code>
/// StartReport report = StartWatch.Of(circuit).Value
///     .PressureCame(Duration.FromSeconds(4))
///     .WaterCame("exhaust outlet", Duration.FromSeconds(12))
///     .At(Duration.FromSeconds(30));
/// </code></example>
public sealed class StartWatch
{
    private const double PressureSeconds = 10;
    private const double WaterSeconds = 30;
    private const double MostSeconds = StartTimes.MostSeconds;

    private readonly IReadOnlyList<string> _outlets;
    private readonly double _pressureLimit;
    private readonly double _waterLimit;
    private readonly double? _pressure;
    private readonly IReadOnlyDictionary<string, double> _water;
    private readonly IReadOnlyList<KeyValuePair<string, double>> _other;

    private StartWatch(
        IReadOnlyList<string> outlets, double pressureLimit, double waterLimit, double? pressure, IReadOnlyDictionary<string, double> water, IReadOnlyList<KeyValuePair<string, double>> other) =>
        (_outlets, _pressureLimit, _waterLimit, _pressure, _water, _other) = (outlets, pressureLimit, waterLimit, pressure, water, other);

    /// <summary>Begins the watch at the moment the engine fires.</summary>
    /// <param name="circuit">The circuit, with its outlets.</param>
    /// <param name="pressureWithin">By when oil pressure must show, from 1 to 600 s; 10 s when left out.</param>
    /// <param name="waterWithin">By when water must show at every outlet, from 1 to 600 s; 30 s when left out.</param>
    /// <returns>The watch; not known when the circuit names no outlet.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="circuit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range.</exception>
    public static Answer<StartWatch> Of(RawWaterCircuit circuit, Duration? pressureWithin = null, Duration? waterWithin = null)
    {
        Guard.NotNull(circuit);
        double pressure = pressureWithin is Duration p ? Guard.InRange(Canonical.Seconds(p), 1, MostSeconds, "s", nameof(pressureWithin)) : PressureSeconds;
        double water = waterWithin is Duration w ? Guard.InRange(Canonical.Seconds(w), 1, MostSeconds, "s", nameof(waterWithin)) : WaterSeconds;
        return circuit.Outlets.Count == 0
            ? Answer.NotKnown<StartWatch>("The exhaust outlets of the circuit.")
            : Answer.Known(Of([.. circuit.Outlets.Select(outlet => outlet.Name)], pressure, water));
    }

    internal static StartWatch Of(string[] outlets, double pressureSeconds = PressureSeconds, double waterSeconds = WaterSeconds) => new(
        Array.AsReadOnly(outlets), pressureSeconds, waterSeconds, null, new Dictionary<string, double>(StringComparer.Ordinal), []);

    /// <summary>Oil pressure showed.</summary>
    /// <param name="after">After the engine fired, from 0 to 600 s.</param>
    /// <returns>A new watch.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is outside its range.</exception>
    public StartWatch PressureCame(Duration after) =>
        new(_outlets, _pressureLimit, _waterLimit, Checked(after, nameof(after)), _water, _other);

    /// <summary>Water showed at an outlet.</summary>
    /// <param name="outlet">One of the circuit's outlets.</param>
    /// <param name="after">After the engine fired, from 0 to 600 s.</param>
    /// <returns>A new watch.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="outlet"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such outlet.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is outside its range.</exception>
    public StartWatch WaterCame(string outlet, Duration after)
    {
        Dictionary<string, double> water = _water.ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);
        water[ExhaustCheck.Known(_outlets, outlet)] = Checked(after, nameof(after));
        return new(_outlets, _pressureLimit, _waterLimit, _pressure, water, _other);
    }

    /// <summary>Something else went wrong: an alarm, a leak, a noise, water that stopped.</summary>
    /// <param name="what">What; not blank.</param>
    /// <param name="after">After the engine fired, from 0 to 600 s.</param>
    /// <returns>A new watch.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="what"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="what"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="after"/> is outside its range.</exception>
    public StartWatch WentWrong(string what, Duration after) =>
        new(_outlets, _pressureLimit, _waterLimit, _pressure, _water, [.. _other, new(Guard.NotBlank(what), Checked(after, nameof(after)))]);

    /// <summary>The check list and the verdict at a moment.</summary>
    /// <param name="elapsed">After the engine fired, from 0 to 600 s; what came later is not known yet.</param>
    /// <returns>The report.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="elapsed"/> is outside its range.</exception>
    public StartReport At(Duration elapsed)
    {
        double now = Checked(elapsed, nameof(elapsed));
        double? ByNow(double? came) => came <= now ? came : null;
        List<StartItem> items = [new("oil pressure", _pressureLimit, ByNow(_pressure))];
        items.AddRange(_outlets.Select(outlet => new StartItem(
            $"water at {outlet}", _waterLimit, _water.TryGetValue(outlet, out double came) ? ByNow(came) : null)));
        return new(now, items.AsReadOnly(), [.. _other.Where(other => other.Value <= now).Select(other => other.Key)]);
    }

    private static double Checked(Duration time, string argument) => Guard.InRange(Canonical.Seconds(time), 0, MostSeconds, "s", argument);
}
