using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Cooling;

/// <summary>What was seen on one vane.</summary>
/// <remarks>Vanes are numbered from any one on, in the way the impeller turns. Shares are kept to a thousandth of a vane.</remarks>
public sealed class VaneRecord
{
    internal const int WholeVane = 1000;
    private const double MostSetDegrees = 90;

    private VaneRecord(int number, VaneState state, int missing, double? setDegrees) =>
        (Number, State, MissingThousandths, SetDegrees) = (number, state, missing, setDegrees);

    /// <summary>The number of the vane, counted from 1.</summary>
    public int Number { get; }

    /// <summary>What it looks like.</summary>
    public VaneState State { get; }

    /// <summary>The share of the vane that is gone, from 0 to 1.</summary>
    public double MissingFraction => MissingThousandths / (double)WholeVane;

    /// <summary>How far it stays bent from a new one, or null when it is not set or was not measured [degrees].</summary>
    public double? SetDegrees { get; }

    internal int MissingThousandths { get; }

    /// <summary>A vane that is whole.</summary>
    /// <param name="number">Its number, from 1 to 24.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is outside its range.</exception>
    public static VaneRecord Whole(int number) => new(Checked(number), VaneState.Whole, 0, null);

    /// <summary>A vane that is cracked, with nothing gone.</summary>
    /// <param name="number">Its number, from 1 to 24.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is outside its range.</exception>
    public static VaneRecord Cracked(int number) => new(Checked(number), VaneState.Cracked, 0, null);

    /// <summary>A vane that stays bent after a night out of the pump.</summary>
    /// <param name="number">Its number, from 1 to 24.</param>
    /// <param name="bend">How far from a new one; from 0 to 90 degrees.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static VaneRecord Set(int number, Angle bend) =>
        new(Checked(number), VaneState.Set, 0, Guard.InRange(Canonical.Degrees(bend), 0, MostSetDegrees, "degrees", nameof(bend)));

    /// <summary>A vane that is torn.</summary>
    /// <param name="number">Its number, from 1 to 24.</param>
    /// <param name="missingFraction">The share of it that is gone, from 0 to below 1 (fraction).</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static VaneRecord Torn(int number, double missingFraction) =>
        new(Checked(number), VaneState.Torn, Thousandths(Guard.InRange(missingFraction, 0, 0.999, "(fraction)")), null);

    /// <summary>A vane that is gone.</summary>
    /// <param name="number">Its number, from 1 to 24.</param>
    /// <returns>The record.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is outside its range.</exception>
    public static VaneRecord Missing(int number) => new(Checked(number), VaneState.Missing, WholeVane, null);

    /// <summary>Number, state and share.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => FormattableString.Invariant($"vane {Number}: {Word}");

    internal static int Thousandths(double fraction) => (int)Math.Round(fraction * WholeVane, MidpointRounding.AwayFromZero);

    private string Word => State switch
    {
        VaneState.Whole => "whole",
        VaneState.Set => FormattableString.Invariant($"set by {SetDegrees:0.#} deg"),
        VaneState.Cracked => "cracked",
        VaneState.Torn => FormattableString.Invariant($"torn, {MissingFraction:0.###} of it gone"),
        _ => "missing",
    };

    private static int Checked(int number) => Guard.InRange(number, 1, Impeller.MostVanes, "(number of a vane)");
}
