using MarineService.Core.Internal;
using UnitsNet;

namespace MarineService.Core.Parts;

/// <summary>The strength of a screw by the mark on its head, with the stress that it must bear in the proof test.</summary>
/// <remarks>
/// A closed list of ISO 898-1 (as reproduced in trade tables), steel only. Stainless screws (A2, A4) have no proof stress in that
/// standard: give their maker's figure with <see cref="Given"/>, and mind that they gall when dry.
/// </remarks>
public sealed class PropertyClass
{
    internal const double LeastMegapascals = 50;
    internal const double MostMegapascals = 2000;
    private const double ThickFromMm = 16;

    private readonly double _proofMegapascals;
    private readonly double _thickProofMegapascals;

    private PropertyClass(string name, double proofMegapascals, Citation citation, double? thickProofMegapascals = null) =>
        (Name, _proofMegapascals, _thickProofMegapascals, Citation) =
            (name, proofMegapascals, thickProofMegapascals ?? proofMegapascals, citation);

    /// <summary>4.8: 310 MPa.</summary>
    public static PropertyClass Class48 { get; } = new("4.8", 310, PartsSources.ProofStress);

    /// <summary>5.8: 380 MPa.</summary>
    public static PropertyClass Class58 { get; } = new("5.8", 380, PartsSources.ProofStress);

    /// <summary>6.8: 440 MPa, worked out from published proof loads.</summary>
    public static PropertyClass Class68 { get; } = new("6.8", 440, Citation.Derived("published proof loads of ISO 898-1 over their stress areas"));

    /// <summary>8.8: 580 MPa up to M16, 600 MPa above.</summary>
    public static PropertyClass Class88 { get; } = new("8.8", 580, PartsSources.ProofStress, 600);

    /// <summary>9.8: 650 MPa.</summary>
    public static PropertyClass Class98 { get; } = new("9.8", 650, PartsSources.ProofStress);

    /// <summary>10.9: 830 MPa.</summary>
    public static PropertyClass Class109 { get; } = new("10.9", 830, PartsSources.ProofStress);

    /// <summary>12.9: 970 MPa.</summary>
    public static PropertyClass Class129 { get; } = new("12.9", 970, PartsSources.ProofStress);

    /// <summary>The whole list, weakest first.</summary>
    public static IReadOnlyList<PropertyClass> All { get; } =
        Array.AsReadOnly<PropertyClass>([Class48, Class58, Class68, Class88, Class98, Class109, Class129]);

    /// <summary>The mark on the head.</summary>
    public string Name { get; }

    /// <summary>Where the proof stress comes from.</summary>
    public Citation Citation { get; }

    /// <summary>A class that is not in the list, with the proof stress that the screw's maker states.</summary>
    /// <param name="name">The mark on the head, such as "A4-80"; not blank.</param>
    /// <param name="proofStress">From 50 to 2000 MPa.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="proofStress"/> is outside its range.</exception>
    public static PropertyClass Given(string name, Pressure proofStress) =>
        new(Guard.NotBlank(name), Guard.InRange(Canonical.Megapascals(proofStress), LeastMegapascals, MostMegapascals, "MPa", nameof(proofStress)), Citation.GivenByCaller);

    /// <summary>A class of the list by its mark.</summary>
    /// <param name="mark">The mark on the head, such as "8.8".</param>
    /// <returns>The class; not known for a mark that is not in the list.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="mark"/> is null.</exception>
    public static Answer<PropertyClass> Marked(string mark)
    {
        Guard.NotNull(mark);
        return All.FirstOrDefault(known => known.Name == mark) is PropertyClass found
            ? Answer.Known(found)
            : Answer.NotKnown<PropertyClass>($"The proof stress of a screw marked '{mark}', which its maker states.");
    }

    /// <summary>The stress under proof load in a screw of a thread.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>The stress.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    public Pressure ProofStress(MetricThread thread) => Pressure.FromMegapascals(ProofMegapascals(Guard.NotNull(thread)));

    /// <summary>The load that a screw of a thread must bear in the proof test: proof stress times stress area, unrounded.</summary>
    /// <param name="thread">The thread.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    public Force ProofLoad(MetricThread thread) => Force.FromNewtons(ProofNewtons(Guard.NotNull(thread)));

    /// <summary>The mark on the head.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;

    internal double ProofMegapascals(MetricThread thread) => thread.DiameterMm > ThickFromMm ? _thickProofMegapascals : _proofMegapascals;

    internal double ProofNewtons(MetricThread thread) => ProofMegapascals(thread) * thread.StressAreaSquareMm;
}
