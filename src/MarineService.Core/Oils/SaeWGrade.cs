using UnitsNet;

namespace MarineService.Core.Oils;

/// <summary>A winter grade of SAE J300, such as 15W: how thick the oil may be when cranked and pumped cold.</summary>
/// <remarks>
/// A closed published list. The test temperatures are laboratory temperatures at which a ceiling holds; the standard recommends no
/// ambient temperature, and speaks of new oil only. Source: SAE J300 table 1, limits of the 2015 and 2021 revisions.
/// </remarks>
public sealed class SaeWGrade
{
    private SaeWGrade(int index, string designation, double crankingMax, double crankingCelsius, double kv100Min) =>
        (Index, Designation, CrankingMax, CrankingCelsius, Kv100Min) = (index, designation, crankingMax, crankingCelsius, kv100Min);

    /// <summary>SAE 0W.</summary>
    public static SaeWGrade Sae0W { get; } = new(0, "0W", 6_200, -35, 3.8);

    /// <summary>SAE 5W.</summary>
    public static SaeWGrade Sae5W { get; } = new(1, "5W", 6_600, -30, 3.8);

    /// <summary>SAE 10W.</summary>
    public static SaeWGrade Sae10W { get; } = new(2, "10W", 7_000, -25, 4.1);

    /// <summary>SAE 15W.</summary>
    public static SaeWGrade Sae15W { get; } = new(3, "15W", 7_000, -20, 5.6);

    /// <summary>SAE 20W.</summary>
    public static SaeWGrade Sae20W { get; } = new(4, "20W", 9_500, -15, 5.6);

    /// <summary>SAE 25W.</summary>
    public static SaeWGrade Sae25W { get; } = new(5, "25W", 13_000, -10, 9.3);

    /// <summary>All winter grades, the one for the deepest cold first.</summary>
    public static IReadOnlyList<SaeWGrade> All { get; } = Array.AsReadOnly([Sae0W, Sae5W, Sae10W, Sae15W, Sae20W, Sae25W]);

    /// <summary>The grade as a label writes it: "15W".</summary>
    public string Designation { get; }

    /// <summary>The greatest apparent viscosity in the cold-cranking simulator (ASTM D5293), inclusive.</summary>
    public DynamicViscosity CrankingLimit => DynamicViscosity.FromMillipascalSeconds(CrankingMax);

    /// <summary>The temperature of the cranking test.</summary>
    public Temperature CrankingTestTemperature => Temperature.FromDegreesCelsius(CrankingCelsius);

    /// <summary>The greatest apparent viscosity in the mini-rotary viscometer (ASTM D4684), inclusive, with no yield stress.</summary>
    public DynamicViscosity PumpingLimit => DynamicViscosity.FromMillipascalSeconds(PumpingMax);

    /// <summary>The temperature of the pumping test, 5 K below the cranking test.</summary>
    public Temperature PumpingTestTemperature => Temperature.FromDegreesCelsius(PumpingCelsius);

    /// <summary>The least kinematic viscosity at 100 °C, inclusive. A winter grade alone has no greatest one.</summary>
    public KinematicViscosity LeastViscosityAt100C => KinematicViscosity.FromCentistokes(Kv100Min);

    internal int Index { get; }

    internal double CrankingMax { get; }

    internal double CrankingCelsius { get; }

    /// <summary>The same for every winter grade, each at its own temperature.</summary>
    internal double PumpingMax { get; } = 60_000;

    internal double PumpingCelsius => CrankingCelsius - 5;

    internal double Kv100Min { get; }

    /// <summary>The grade as a label writes it.</summary>
    /// <returns>Same as <see cref="Designation"/>.</returns>
    public override string ToString() => Designation;
}
