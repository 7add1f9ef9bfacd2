using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Belts;

/// <summary>Pull, slip margin and least tension of a loaded drive.</summary>
/// <remarks>
/// <para>Going with the belt's travel, each driven pulley adds its turning pull, load over belt speed; the crank takes their sum away. A pulley
/// holds while the ratio of its two sides stays below exp(friction x wrap).</para>
/// <para>An automatic tensioner sets the pull in its own two spans, less the centrifugal part, running or standing. Without one the belt keeps the
/// length it was set to, so that the mean pull over the spans stays what it was.</para>
/// <para>Sources: textbook belt friction and centrifugal pull; the tensioner by momentum balance and the fixed belt by its stretch, both worked out.
/// Friction: see <see cref="BeltFriction"/>.</para>
/// </remarks>
public sealed class TensionCheck
{
    private readonly double _speed;
    private readonly double _centrifugal;
    private readonly double _given;
    private readonly double _least;

    internal TensionCheck(
        BeltRouting routing, StopGeometry[] stops, double[] turning, double speedMetersPerSecond, double centrifugalNewtons, double givenNewtons, BeltFriction friction)
    {
        (Routing, Friction) = (routing, friction);
        (_speed, _centrifugal, _given) = (speedMetersPerSecond, centrifugalNewtons, givenNewtons);
        int held = routing.Drive.Tensioner is { IsAutomatic: true } ? routing.PulleyIndexes.IndexOf(routing.Drive.TensionerIndex) : -1;
        IsHeldBySpring = held >= 0;
        double[] above = Above(turning, Math.Max(0, held));

        // What has to be taken from the given pull to get the pull at the place that 'above' counts from.
        double offset = IsHeldBySpring ? 0 : Mean(stops, above) + centrifugalNewtons;
        PulleyTension[] pulleys = new PulleyTension[stops.Length];
        double least = double.NegativeInfinity;
        for (int i = 0; i < stops.Length; i++)
        {
            double leaving = above[Next(i, stops.Length)];
            double mu = friction.Of(routing.Faces[i]);
            pulleys[i] = new(
                routing.NameOf(i), stops[i].WrapRadians, mu, turning[i], givenNewtons - offset + above[i], givenNewtons - offset + leaving);
            double needed = TensionMath.LeastSlackNewtons(Math.Abs(turning[i]), mu, stops[i].WrapRadians) - Math.Min(above[i], leaving) + offset;
            if (needed > least)
            {
                (least, DecidingPulley) = (needed, routing.NameOf(i));
            }
        }

        Pulleys = Array.AsReadOnly(pulleys);
        _least = Math.Max(0, least);
        Findings = List();
    }

    /// <summary>The routing.</summary>
    public BeltRouting Routing { get; }

    /// <summary>The friction that is counted on.</summary>
    public BeltFriction Friction { get; }

    /// <summary>True when an automatic tensioner holds the given pull; false when it is the pull of a standing belt on fixed centres.</summary>
    public bool IsHeldBySpring { get; }

    /// <summary>The speed of the belt.</summary>
    public Speed BeltSpeed => Speed.FromMetersPerSecond(_speed);

    /// <summary>The part of every span's pull that only bends the belt round at speed.</summary>
    public Force CentrifugalPull => Force.FromNewtons(_centrifugal);

    /// <summary>The pull that was given: at the tensioner less the centrifugal part, or of the standing belt.</summary>
    public Force GivenPull => Force.FromNewtons(_given);

    /// <summary>The least such pull at which no pulley slips and no span hangs slack.</summary>
    public Force LeastPull => Force.FromNewtons(_least);

    /// <summary>The pulley that decides the least pull.</summary>
    public string DecidingPulley { get; } = string.Empty;

    /// <summary>Both sides of each pulley, in belt order.</summary>
    public IReadOnlyList<PulleyTension> Pulleys { get; }

    /// <summary>What was found, in belt order.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>True when nothing slips, hangs slack or runs too fast.</summary>
    public bool Holds => Findings.Count == 0;

    /// <summary>The frequency at which the span that leaves a stop would sound with this pull while the belt stands.</summary>
    /// <remarks>With a spring the standing belt has the given pull everywhere; on fixed centres likewise. Source: the stretched string of physics texts.</remarks>
    /// <param name="stop">The stop's place in the list, from 0.</param>
    /// <returns>The frequency, or not known when the ribs or the span are not.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="stop"/> is not a place in the list.</exception>
    public Answer<Frequency> StandingFrequency(int stop)
    {
        Guard.InRange(stop, 0, Routing.Stops.Count - 1, "(place)");
        return Routing.Drive.Belt.MassKilogramsPerMeter is double mass && Routing.TryMeasure() is RoutingGeometry geometry
            ? Answer.Known(Frequency.FromHertz(TensionMath.Hertz(_given, mass, geometry.Stops[stop].ExitSpanMm / 1000)))
            : Answer.NotKnown<Frequency>("The number of ribs, and a routing that can be measured.");
    }

    /// <summary>Speed, pulls and margins of each pulley, and what was found.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Structured lines.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public Explanation Explain(DisplayUnits units)
    {
        Guard.Defined(units);
        string N(double newtons) => FigureUnit.Newton.Write(newtons, units);
        ExplanationBuilder lines = new(
            $"{(Holds ? "The belt holds" : "The belt does not hold")} at {N(_given)}; {N(_least)} is the least, and '{DecidingPulley}' decides it.");
        lines.Add("pull given", IsHeldBySpring ? "at the tensioner, less the centrifugal part" : "of the standing belt, on fixed centres");
        lines.Add("belt speed", FigureUnit.MeterPerSecond.Write(_speed, units));
        lines.Add("centrifugal", N(_centrifugal));
        lines.Add("friction", Friction.ToString());
        foreach (PulleyTension pulley in Pulleys)
        {
            lines.Add(
                pulley.PulleyName,
                $"{N(Canonical.Newtons(pulley.ArrivingPull))} in, {N(Canonical.Newtons(pulley.LeavingPull))} out; "
                + FormattableString.Invariant($"ratio {pulley.WorkingRatio:0.000} of {pulley.LimitRatio:0.000}, margin {pulley.SlipMarginRatio:0.00}"));
        }

        foreach (Finding finding in Findings)
        {
            lines.Add(finding.Code, $"{finding.Severity}: {finding.Message(units)}");
        }

        return lines.Build(Citation.Derived("textbook belt friction, with design figures for the friction from memory"));
    }

    /// <summary>The answer in one line.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Explain(DisplayUnits.Metric).Answer;

    private static int Next(int stop, int count) => stop + 1 < count ? stop + 1 : 0;

    /// <summary>The pull of each arriving span above the one that arrives at a starting stop.</summary>
    private static double[] Above(double[] turning, int start)
    {
        double[] above = new double[turning.Length];
        int at = start;
        for (int i = 1; i < turning.Length; i++)
        {
            int next = Next(at, turning.Length);
            above[next] = above[at] + turning[at];
            at = next;
        }

        return above;
    }

    private static double Mean(StopGeometry[] stops, double[] above)
    {
        double weighted = 0;
        double length = 0;
        for (int i = 0; i < stops.Length; i++)
        {
            weighted += stops[i].ExitSpanMm * above[Next(i, stops.Length)];
            length += stops[i].ExitSpanMm;
        }

        return weighted / length;
    }

    private System.Collections.ObjectModel.ReadOnlyCollection<Finding> List()
    {
        List<Finding> findings = [];
        Figure least = Figure.Of("least", _least, FigureUnit.Newton);
        for (int i = 0; i < Pulleys.Count; i++)
        {
            PulleyTension pulley = Pulleys[i];
            string subject = $"pulley '{pulley.PulleyName}'";
            if (double.IsInfinity(pulley.WorkingRatio))
            {
                findings.Add(TensionRules.Slack.On(subject, least));
            }
            else if (pulley.Slips)
            {
                findings.Add(TensionRules.Slips.On(
                    subject,
                    Figure.Of("needed", pulley.FrictionNeededRatio, FigureUnit.Number),
                    Figure.Of("friction", Friction.Of(Routing.Faces[i]), FigureUnit.Number),
                    least));
            }
        }

        if (_speed > PkProfile.HighestSpeedMetersPerSecond)
        {
            findings.Add(TensionRules.TooFast.On(
                "belt",
                Figure.Of("speed", _speed, FigureUnit.MeterPerSecond),
                Figure.Of("limit", PkProfile.HighestSpeedMetersPerSecond, FigureUnit.MeterPerSecond)));
        }

        return findings.AsReadOnly();
    }
}
