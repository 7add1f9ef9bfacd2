using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <content>What is asked of a routing that runs: is it in line, does it hold, how tight is it.</content>
public sealed partial class BeltRouting
{
    internal const double FastestTurnsPerMinute = 20_000;

    /// <summary>Checks that the belt runs straight into its grooves and in the middle of its smooth pulleys.</summary>
    /// <param name="limit">The limit to compare with; null for ribbed belts on engines.</param>
    /// <returns>The check, or which pulleys' positions along the crankshaft are missing.</returns>
    public Answer<AlignmentCheck> CheckAlignment(AlignmentLimit? limit = null)
    {
        string[] missing =
        [
            .. _pulleys
                .Select(pulley => Drive.Pulleys[pulley])
                .Where(pulley => pulley.Surface == PulleySurface.Grooved && pulley.AxialPositionMm is null)
                .Select(pulley => $"The position of '{pulley.Name}' along the crankshaft."),
        ];
        if (missing.Length > 0)
        {
            return Answer.NotKnown<AlignmentCheck>(missing);
        }

        if (!_pulleys.Any(pulley => Drive.Pulleys[pulley].Surface == PulleySurface.Grooved))
        {
            return Answer.NotKnown<AlignmentCheck>("At least one grooved pulley, which holds the belt sideways.");
        }

        return TryMeasure() is RoutingGeometry geometry
            ? Answer.Known(new AlignmentCheck(this, geometry, limit ?? AlignmentLimit.EngineDrives))
            : Answer.NotKnown<AlignmentCheck>([.. Measure().Missing]);
    }

    /// <summary>Checks pull and slip with a given tension.</summary>
    /// <param name="crankSpeed">Speed of the crank; above 0 and up to 20,000 turns a minute.</param>
    /// <param name="pull">With an automatic tensioner, the pull that its spring sets, less the centrifugal part; otherwise the pull of the
    /// standing belt. From 0 to 20,000 N.</param>
    /// <param name="friction">The friction to count on; null for the design figures.</param>
    /// <returns>The check, or what is missing: loads of driven pulleys, ribs, a path that can be measured.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public Answer<TensionCheck> CheckTension(RotationalSpeed crankSpeed, Force pull, BeltFriction? friction = null)
    {
        double turns = Guard.Positive(Canonical.RevolutionsPerMinute(crankSpeed), "turns a minute", nameof(crankSpeed));
        Guard.InRange(turns, 0, FastestTurnsPerMinute, "turns a minute", nameof(crankSpeed));
        double newtons = Guard.InRange(Canonical.Newtons(pull), 0, TensionerCheck.StrongestPullNewtons, "N", nameof(pull));
        List<string> missing = [];
        double[] turning = Loads(missing);
        if (Drive.Belt.MassKilogramsPerMeter is null)
        {
            missing.Add("The number of ribs of the belt.");
        }

        StopGeometry[] stops = new StopGeometry[_circles.Length];
        if (!TryGetGeometry(stops, out _))
        {
            missing.AddRange(Measure().Missing);
        }

        if (missing.Count > 0)
        {
            return Answer.NotKnown<TensionCheck>([.. missing]);
        }

        double speed = TensionMath.SpeedMetersPerSecond(stops[0].PitchRadiusMm, turns);
        for (int i = 1; i < turning.Length; i++)
        {
            turning[i] = turning[i] * 1000 / speed;
            turning[0] -= turning[i];
        }

        double centrifugal = TensionMath.CentrifugalNewtons(Drive.Belt.MassKilogramsPerMeter!.Value, speed);
        return Answer.Known(new TensionCheck(this, stops, turning, speed, centrifugal, newtons, friction ?? BeltFriction.Design));
    }

    /// <summary>Checks pull and slip with what the tensioner's spring sets on the drive's own belt.</summary>
    /// <param name="crankSpeed">Speed of the crank; above 0 and up to 20,000 turns a minute.</param>
    /// <param name="friction">The friction to count on; null for the design figures.</param>
    /// <returns>The check, or what is missing: the spring's moment, the belt's length, loads, ribs.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="crankSpeed"/> is outside its range.</exception>
    public Answer<TensionCheck> CheckSpringTension(RotationalSpeed crankSpeed, BeltFriction? friction = null)
    {
        double turns = Guard.Positive(Canonical.RevolutionsPerMinute(crankSpeed), "turns a minute", nameof(crankSpeed));
        Guard.InRange(turns, 0, FastestTurnsPerMinute, "turns a minute", nameof(crankSpeed));
        if (Drive.Belt.EffectiveLength is not Length length)
        {
            return Answer.NotKnown<TensionCheck>("The effective length printed on the belt.");
        }

        Answer<TensionerCheck> tensioner = CheckTensioner(length);
        if (!tensioner.IsKnown)
        {
            return Answer.NotKnown<TensionCheck>([.. tensioner.Missing]);
        }

        Answer<Force> pull = tensioner.Value.BeltTension;
        return pull.IsKnown ? CheckTension(crankSpeed, pull.Value, friction) : Answer.NotKnown<TensionCheck>([.. pull.Missing]);
    }

    /// <summary>The pull in the span that leaves a stop, from the note it gives when plucked.</summary>
    /// <param name="stop">The stop's place in the list, from 0.</param>
    /// <param name="readings">One or more readings of the lowest note; above 0 and up to 5,000 Hz each. The median counts.</param>
    /// <returns>The pull, or what is missing: the ribs of the belt, a path that can be measured.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="readings"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Answer<SpanTensionReading> TensionFromNote(int stop, params Frequency[] readings)
    {
        int place = Place(stop);
        LinearDensity mass = LinearDensity.FromKilogramsPerMeter(Drive.Belt.MassKilogramsPerMeter ?? 1);
        RoutingGeometry? geometry = TryMeasure();
        SpanTensionReading reading = SpanTensionReading.FromNote(
            Length.FromMillimeters(geometry?.Stops[place].ExitSpanMm ?? 1), mass, readings);
        return Drive.Belt.MassKilogramsPerMeter is not null && geometry is not null
            ? Answer.Known(reading)
            : Answer.NotKnown<SpanTensionReading>("The number of ribs, and a routing that can be measured.");
    }

    /// <summary>The turning loads in kilowatts, the crank's place left at zero. Idlers and the tensioner take none.</summary>
    private double[] Loads(List<string> missing)
    {
        double[] loads = new double[_pulleys.Length];
        for (int i = 1; i < loads.Length; i++)
        {
            Pulley pulley = Drive.Pulleys[_pulleys[i]];
            bool isIdle = pulley.Duty is PulleyDuty.Idler or PulleyDuty.Tensioner || _pulleys[i] == Drive.TensionerIndex;
            if (pulley.LoadKilowatts is null && !isIdle)
            {
                missing.Add($"The power that '{pulley.Name}' takes from the belt.");
            }

            loads[i] = pulley.LoadKilowatts ?? 0;
        }

        return loads;
    }
}
