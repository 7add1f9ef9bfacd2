using MarineService.Core.Engines;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>Whether a hose ashore feeds an idling engine: it must carry the heat away, and give what the pump takes. Both tests must pass.</summary>
/// <remarks>
/// At idle nearly all of the fuel's energy is heat, and about 45 % of it goes to the water (from memory). Supply on before the start and off
/// after the stop; idle only; never force water into a stopped engine, it can climb the exhaust into the cylinders.
/// </remarks>
public sealed class FlushCheck
{
    private const double ShareToWater = 0.45;
    private const double UsualRiseKelvins = 20;

    private readonly double _hose;
    private readonly double _thermal;
    private readonly double? _displacement;

    private FlushCheck(double hose, double thermal, double? displacement, double rise)
    {
        (_hose, _thermal, _displacement) = (hose, thermal, displacement);
        Figure given = Figure.Of("hose", hose, FigureUnit.LiterPerMinute);
        List<Finding> findings = [];
        if (hose < thermal)
        {
            findings.Add(WaterRules.HoseTooWarm.On(
                "flushing hose", given, Figure.Of("need", thermal, FigureUnit.LiterPerMinute), Figure.Of("rise", rise, FigureUnit.Kelvin)));
        }

        if (displacement is not double takes)
        {
            findings.Add(WaterRules.HoseNotProved.On("flushing hose"));
        }
        else if (hose < takes)
        {
            findings.Add(WaterRules.HoseStarvesPump.On("flushing hose", given, Figure.Of("need", takes, FigureUnit.LiterPerMinute)));
        }

        Findings = findings.AsReadOnly();
    }

    /// <summary>What the hose gives.</summary>
    public VolumeFlow Hose => VolumeFlow.FromLitersPerMinute(_hose);

    /// <summary>What carries the heat of idling away.</summary>
    public VolumeFlow ThermalNeed => VolumeFlow.FromLitersPerMinute(_thermal);

    /// <summary>What the pump takes at idle; not known when its displacement is not.</summary>
    public Answer<VolumeFlow> DisplacementNeed => _displacement is double takes
        ? Answer.Known(VolumeFlow.FromLitersPerMinute(takes))
        : Answer.NotKnown<VolumeFlow>("What the raw-water pump moves in one turn with a new impeller.");

    /// <summary>True when both tests are passed.</summary>
    public bool Passes => Findings.Count == 0;

    /// <summary>What was found.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Judges a hose.</summary>
    /// <param name="hose">What it gives, from 0.1 to 10,000 L/min; time a bucket.</param>
    /// <param name="fuel">What the engine burns.</param>
    /// <param name="idleFuelRate">What it burns at idle, from 0.05 to 100 L/h.</param>
    /// <param name="pump">The pump; null when it is not stated, and then the hose is not proved.</param>
    /// <param name="idleSpeed">The idle speed, from 50 to 15,000 revolutions a minute.</param>
    /// <param name="rise">The rise of temperature, from 1 to 60 K; 20 K when left out (project choice).</param>
    /// <returns>The check; not known when the fuel is not stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<FlushCheck> Of(
        VolumeFlow hose, Fuel fuel, VolumeFlow idleFuelRate, RawWaterPump? pump, RotationalSpeed idleSpeed, TemperatureDelta? rise = null)
    {
        double gives = WaterNeed.CheckedFlow(hose, nameof(hose));
        double litersPerHour = Guard.InRange(idleFuelRate.LitersPerHour, 0.05, 100, "L/h", nameof(idleFuelRate));
        double speed = RawWaterPump.CheckedSpeed(idleSpeed, nameof(idleSpeed));
        double kelvins = rise is TemperatureDelta given ? Guard.InRange(Canonical.Kelvins(given), 1, 60, "K", nameof(rise)) : UsualRiseKelvins;
        if (Guard.Defined(fuel) == Fuel.NotStated)
        {
            return Answer.NotKnown<FlushCheck>("What the engine burns.");
        }

        double energy = fuel == Fuel.Petrol ? WaterMath.PetrolKilowattHoursPerLiter : WaterMath.DieselKilowattHoursPerLiter;
        double thermal = WaterMath.FlowLitersPerMinute(ShareToWater * energy * litersPerHour, kelvins, WaterKind.Fresh);
        double? takes = pump?.LitersPerRevolution is double liters ? WaterMath.PumpLitersPerMinute(liters, speed * pump.SpeedRatio, 0) : null;
        return Answer.Known(new FlushCheck(gives, thermal, takes, kelvins));
    }

    /// <summary>Both tests in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() =>
        FormattableString.Invariant($"{(Passes ? "passes" : "does not pass")}: {_hose:0.0} L/min, heat needs {_thermal:0.0}, the pump takes ")
        + (_displacement is double takes ? FormattableString.Invariant($"{takes:0.0}") : "an unknown amount");
}
