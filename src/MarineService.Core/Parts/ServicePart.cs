using MarineService.Core.Internal;

namespace MarineService.Core.Parts;

/// <summary>A part, a consumable or a tool: its number, its unit of issue, its reserve, and what it never goes without.</summary>
/// <remarks>Built by With methods; each returns a copy. An impeller names its gasket and washers as companions, and wherever it goes they go.</remarks>
/// <example><code>ServicePart.Of("LV-IMP-1", "impeller").With(KitItem.Of("LV-GSK-1"), KitItem.Of("LV-WSH-1", 6m));</code></example>
public sealed class ServicePart
{
    internal const decimal MostReserve = 10m;

    private ServicePart(string number, string title, string? unit, decimal reserve, bool isTool, bool isBought, IReadOnlyList<KitItem> companions) =>
        (Number, Title, Unit, ReserveFraction, IsTool, IsBoughtWhenMissing, Companions) = (number, title, unit, reserve, isTool, isBought, companions);

    /// <summary>The caller's own number.</summary>
    public string Number { get; }

    /// <summary>What it is.</summary>
    public string Title { get; }

    /// <summary>The unit that it is measured in, such as "L"; null when it is counted in whole pieces.</summary>
    public string? Unit { get; }

    /// <summary>The share that is taken along on top; 0 when none.</summary>
    public decimal ReserveFraction { get; }

    /// <summary>Whether it comes back: tools of several tasks are taken along once.</summary>
    public bool IsTool { get; }

    /// <summary>Whether it is bought when the shelf lacks it. A tool is gathered, from the boat, the shed or a neighbour, unless it is said to be bought.</summary>
    public bool IsBoughtWhenMissing { get; }

    /// <summary>What goes with each one of it.</summary>
    public IReadOnlyList<KitItem> Companions { get; }

    /// <summary>A part that is counted in whole pieces.</summary>
    /// <param name="number">The caller's own number; not blank.</param>
    /// <param name="title">What it is; not blank.</param>
    /// <returns>The part.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An argument is blank.</exception>
    public static ServicePart Of(string number, string title) => new(Guard.NotBlank(number), Guard.NotBlank(title), null, 0, false, true, []);

    /// <summary>Something that is measured, such as oil.</summary>
    /// <param name="number">The caller's own number; not blank.</param>
    /// <param name="title">What it is; not blank.</param>
    /// <param name="unit">The unit, such as "L"; not blank.</param>
    /// <param name="reserveFraction">The share that is taken along on top; from 0 to 10, such as 0.1 for a plan and 10 %.</param>
    /// <returns>The part.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reserveFraction"/> is outside its range.</exception>
    public static ServicePart Measured(string number, string title, string unit, decimal reserveFraction = 0m) => new(
        Guard.NotBlank(number), Guard.NotBlank(title), Guard.NotBlank(unit), Guard.InRange(reserveFraction, 0m, MostReserve, "of the amount"), false, true, []);

    /// <summary>A tool, which comes back and is gathered when the shelf lacks it.</summary>
    /// <param name="number">The caller's own number; not blank.</param>
    /// <param name="title">What it is; not blank.</param>
    /// <returns>The tool.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">An argument is blank.</exception>
    public static ServicePart Tool(string number, string title) => new(Guard.NotBlank(number), Guard.NotBlank(title), null, 0, true, false, []);

    /// <summary>A copy that is bought when the shelf lacks it; what is no tool always is.</summary>
    /// <returns>The copy.</returns>
    public ServicePart BoughtWhenMissing() => new(Number, Title, Unit, ReserveFraction, IsTool, true, Companions);

    /// <summary>A copy with a reserve.</summary>
    /// <param name="fraction">The share that is taken along on top; from 0 to 10; whole pieces are rounded up.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fraction"/> is outside its range.</exception>
    public ServicePart WithReserve(decimal fraction) =>
        new(Number, Title, Unit, Guard.InRange(fraction, 0m, MostReserve, "of the amount"), IsTool, IsBoughtWhenMissing, Companions);

    /// <summary>A copy with more companions: what goes with each one of it.</summary>
    /// <param name="companions">Gaskets, washers, keys; parts distinct from each other, from those already there and from the part itself.</param>
    /// <returns>The copy.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="companions"/> is null.</exception>
    /// <exception cref="ArgumentException">An item is null, or a part is named twice or is the part itself.</exception>
    public ServicePart With(params KitItem[] companions)
    {
        IReadOnlyList<KitItem> all = Array.AsReadOnly<KitItem>([.. Companions, .. Guard.Items(companions)]);
        Names.Distinct([Number, .. all.Select(item => item.Part)], nameof(companions));
        return new(Number, Title, Unit, ReserveFraction, IsTool, IsBoughtWhenMissing, all);
    }

    /// <summary>Number and title.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Number} {Title}";
}
