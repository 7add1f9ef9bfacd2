namespace MarineService.Core.Parts;

/// <summary>One thing in which a spin-on filter may differ from another, with the standard that measures it.</summary>
/// <remarks>A closed list. Standards are named by number and title; their texts were not seen whole.</remarks>
public sealed class FilterProperty
{
    private static readonly Citation Sizes = Citation.Secondary("ISO 6415 Spin-on filters for lubricating oil - Dimensions", "2005", "essential dimensions for interchange");

    private FilterProperty(int index, string name, FigureUnit unit, bool isSafety, Citation source) =>
        (Index, Name, Unit, IsSafety, Source) = (index, name, unit, isSafety, source);

    /// <summary>Thread: the same designation. A safety attribute.</summary>
    public static FilterProperty Thread { get; } =
        new(0, "thread", FigureUnit.Number, true, Citation.Secondary("ISO 6415 Spin-on filters for lubricating oil - Dimensions; SAE J363 Filter base mounting", null, "by their titles; their texts were not seen"));

    /// <summary>Outer diameter of the gasket: on the land of the base. A safety attribute.</summary>
    public static FilterProperty GasketOuter { get; } = new(1, "gasket outer diameter", FigureUnit.Millimeter, true, Sizes);

    /// <summary>Inner diameter of the gasket: on the land of the base. A safety attribute.</summary>
    public static FilterProperty GasketInner { get; } = new(2, "gasket inner diameter", FigureUnit.Millimeter, true, Sizes);

    /// <summary>Section of the gasket. A safety attribute.</summary>
    public static FilterProperty GasketSection { get; } = new(3, "gasket section", FigureUnit.Millimeter, true, Sizes);

    /// <summary>Height: no more than the room above the base.</summary>
    public static FilterProperty Height { get; } = new(4, "height", FigureUnit.Millimeter, false, Sizes);

    /// <summary>Outer diameter: no more than the room, and the wrench fits.</summary>
    public static FilterProperty OuterDiameter { get; } = new(5, "outer diameter", FigureUnit.Millimeter, false, Sizes);

    /// <summary>Whether there is a bypass valve. A safety attribute.</summary>
    public static FilterProperty Bypass { get; } = new(6, "bypass valve", FigureUnit.Number, true, Citation.FromMemory);

    /// <summary>The pressure at which the bypass valve opens: inside the engine's range. A safety attribute.</summary>
    public static FilterProperty BypassOpening { get; } = new(7, "bypass opening pressure", FigureUnit.Kilopascal, true, Citation.FromMemory);

    /// <summary>Whether there is an anti-drain-back valve: needed unless the gasket is up.</summary>
    public static FilterProperty AntiDrainBack { get; } =
        new(8, "anti-drain-back valve", FigureUnit.Number, false, Citation.Secondary("ISO 4548-9 Inlet and outlet anti-drain valve tests", "2008", "by its title; its text was not seen"));

    /// <summary>The hottest oil that the anti-drain-back valve bears.</summary>
    public static FilterProperty AntiDrainTemperature { get; } =
        new(9, "anti-drain-back temperature", FigureUnit.DegreeCelsius, false, Citation.Secondary("ISO 4548-9 Inlet and outlet anti-drain valve tests", "2008", "by its title; its text was not seen"));

    /// <summary>Static burst pressure: no less than required, for the peaks of a cold start. A safety attribute.</summary>
    public static FilterProperty Burst { get; } =
        new(10, "burst pressure", FigureUnit.Kilopascal, true, Citation.Secondary("ISO 4548-6 Static burst pressure test", "2021", "by its title; its text was not seen"));

    /// <summary>Pressure drop at the rated flow: no more than required.</summary>
    public static FilterProperty PressureDrop { get; } =
        new(11, "pressure drop", FigureUnit.Kilopascal, false, Citation.Secondary("ISO 4548-1 Pressure drop/flow characteristics", null, "by its title; its text was not seen"));

    /// <summary>Efficiency at the stated particle size: no less than required.</summary>
    public static FilterProperty Efficiency { get; } = new(12, "efficiency", FigureUnit.Fraction, false, Citation.FromMemory);

    /// <summary>Capacity for dirt, in grams: no less than required.</summary>
    public static FilterProperty Capacity { get; } = new(13, "dirt capacity in g", FigureUnit.Number, false, Citation.FromMemory);

    /// <summary>Pressure at which the element collapses: no less than required.</summary>
    public static FilterProperty Collapse { get; } = new(14, "collapse pressure", FigureUnit.Kilopascal, false, Citation.FromMemory);

    /// <summary>Cycles of pressure that the housing bears: no fewer than required.</summary>
    public static FilterProperty Fatigue { get; } = new(15, "fatigue cycles", FigureUnit.Number, false, Citation.FromMemory);

    /// <summary>Cycles of vibration that it bears: no fewer than required.</summary>
    public static FilterProperty Vibration { get; } = new(16, "vibration cycles", FigureUnit.Number, false, Citation.FromMemory);

    /// <summary>Whether the tests for aftermarket petrol filters were passed, the cold gasket and ageing among them.</summary>
    public static FilterProperty AftermarketTests { get; } =
        new(17, "aftermarket filter tests", FigureUnit.Number, false, Citation.Secondary("SAE/USCAR-36", "2013", "its list of 15 tests for aftermarket petrol filters"));

    /// <summary>All of them, in the order in which they are judged.</summary>
    public static IReadOnlyList<FilterProperty> All { get; } = Array.AsReadOnly<FilterProperty>(
    [
        Thread, GasketOuter, GasketInner, GasketSection, Height, OuterDiameter, Bypass, BypassOpening, AntiDrainBack, AntiDrainTemperature,
        Burst, PressureDrop, Efficiency, Capacity, Collapse, Fatigue, Vibration, AftermarketTests,
    ]);

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>The unit of its figure.</summary>
    public FigureUnit Unit { get; }

    /// <summary>Whether a filter may not be judged without it: thread, gasket, bypass, burst.</summary>
    public bool IsSafety { get; }

    /// <summary>The standard that measures it, by title, or from memory.</summary>
    public Citation Source { get; }

    internal int Index { get; }

    internal bool IsYesOrNo => this == Bypass || this == AntiDrainBack || this == AftermarketTests;

    /// <summary>The name.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => Name;
}
