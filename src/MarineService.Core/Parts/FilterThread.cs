using System.Globalization;
using System.Text.RegularExpressions;
using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>The thread of a spin-on filter: an inch one such as 3/4-16, or a metric one such as M20x1.5.</summary>
/// <remarks>Two threads are equal when system, diameter and pitch are. A thread that nearly fits starts to turn and then strips or lets go.</remarks>
/// <example><code>FilterThread.Inch(3, 4, 16).IsNearMissOf(FilterThread.Metric(20, 1.5)); // true</code></example>
public sealed record FilterThread
{
    /// <summary>Diameters closer than this, in mm, with nearly the same pitch, may be taken for each other; project choice.</summary>
    private const double NearDiameterMm = 1.5;

    /// <summary>Pitches closer than this share of the coarser one may be taken for each other; project choice.</summary>
    private const double NearPitchShare = 0.15;

    private const double MillimetersPerInch = 25.4;

    private static readonly Regex Designation = new(
        @"^(?:M(?<metric>[1-9][0-9]?(?:\.[0-9])?)x(?<pitch>[0-9](?:\.[0-9]{1,2})?)|(?:(?<whole>[1-3])|(?:(?<whole>[1-3]) )?(?<above>[1-9][0-9]?)/(?<below>2|4|8|16|32))-(?<turns>[1-9][0-9]?))$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);

    private FilterThread(double diameterMm, double pitchMm, bool isInch, string text) =>
        (DiameterMm, PitchMm, IsInch, Text) = (diameterMm, pitchMm, isInch, text);

    /// <summary>Whether it is an inch thread.</summary>
    public bool IsInch { get; }

    /// <summary>The nominal diameter.</summary>
    public Length Diameter => Length.FromMillimeters(DiameterMm);

    /// <summary>The pitch.</summary>
    public Length Pitch => Length.FromMillimeters(PitchMm);

    internal double DiameterMm { get; }

    internal double PitchMm { get; }

    private string Text { get; }

    /// <summary>An inch thread by the fraction of its diameter and its threads to the inch.</summary>
    /// <param name="above">The upper figure of the fraction; from 1 to 99.</param>
    /// <param name="below">The lower figure of the fraction: 1, 2, 4, 8, 16 or 32.</param>
    /// <param name="threadsPerInch">Threads to the inch; from 4 to 40.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range, or the diameter is not from 1/4 to 3 1/2 inches.</exception>
    public static FilterThread Inch(int above, int below, int threadsPerInch)
    {
        Guard.InRange(below, 1, 32, "to the fraction");
        if ((below & (below - 1)) != 0)
        {
            throw new ArgumentOutOfRangeException(nameof(below), below, "Must be 1, 2, 4, 8, 16 or 32.");
        }

        Guard.InRange(above, 1, 99, "to the fraction");
        Guard.InRange((double)above / below, 0.25, 3.5, "in", nameof(above));
        Guard.InRange(threadsPerInch, 4, 40, "to the inch");
        while (above % 2 == 0 && below > 1)
        {
            (above, below) = (above / 2, below / 2);
        }

        string size = below == 1 ? FormattableString.Invariant($"{above}")
            : above > below ? FormattableString.Invariant($"{above / below} {above % below}/{below}")
            : FormattableString.Invariant($"{above}/{below}");
        return new(MillimetersPerInch * above / below, MillimetersPerInch / threadsPerInch, true, FormattableString.Invariant($"{size}-{threadsPerInch}"));
    }

    /// <summary>A metric thread.</summary>
    /// <param name="diameterMm">The nominal diameter; from 6 to 90 mm.</param>
    /// <param name="pitchMm">The pitch; from 0.5 to 6 mm and at most a quarter of the diameter.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside its range.</exception>
    public static FilterThread Metric(double diameterMm, double pitchMm)
    {
        Guard.InRange(diameterMm, 6, 90, "mm");
        Guard.InRange(pitchMm, 0.5, Math.Min(6, diameterMm / 4), "mm");
        return new(diameterMm, pitchMm, false, FormattableString.Invariant($"M{diameterMm}x{pitchMm}"));
    }

    /// <summary>Reads a designation such as "3/4-16", "1 1/2-16", "1-12" or "M20x1.5".</summary>
    /// <param name="designation">The designation; not blank.</param>
    /// <returns>The thread, or not known when the text is no such designation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="designation"/> is blank.</exception>
    public static Answer<FilterThread> Read(string designation) =>
        Find(Guard.NotBlank(designation)) is FilterThread thread
            ? Answer.Known(thread)
            : Answer.NotKnown<FilterThread>("The thread as its designation is printed, such as 3/4-16 or M20x1.5.");

    /// <summary>Whether the two are different threads that may be taken for each other: diameters within 1.5 mm, pitches within 15 % (project choice).</summary>
    /// <param name="other">The other thread.</param>
    /// <returns>False when they are equal or plainly different.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public bool IsNearMissOf(FilterThread other) =>
        !Equals(Guard.NotNull(other))
        && Math.Abs(DiameterMm - other.DiameterMm) <= NearDiameterMm
        && Math.Abs(PitchMm - other.PitchMm) <= NearPitchShare * Math.Max(PitchMm, other.PitchMm);

    /// <summary>The designation, such as "3/4-16" or "M20x1.5".</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Text;

    internal static FilterThread? Find(string designation)
    {
        Match match = Designation.Match(designation);
        if (!match.Success || designation[designation.Length - 1] == '\n')
        {
            return null;
        }

        if (match.Groups["metric"].Success)
        {
            double diameter = double.Parse(match.Groups["metric"].Value, CultureInfo.InvariantCulture);
            double pitch = double.Parse(match.Groups["pitch"].Value, CultureInfo.InvariantCulture);
            return diameter is >= 6 and <= 90 && pitch >= 0.5 && pitch <= Math.Min(6, diameter / 4) ? Metric(diameter, pitch) : null;
        }

        int below = Whole(match, "below", 1);
        int above = (Whole(match, "whole", 0) * below) + Whole(match, "above", 0);
        int turns = Whole(match, "turns", 0);
        double inches = (double)above / below;
        return inches is >= 0.25 and <= 3.5 && above <= 99 && turns is >= 4 and <= 40 ? Inch(above, below, turns) : null;
    }

    private static int Whole(Match match, string group, int otherwise) =>
        match.Groups[group].Success ? int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : otherwise;
}
