using MarineService.Core.Internal;
using NodaTime;
using NodaTime.Text;

namespace MarineService.Core;

/// <summary>One named value behind a finding: a number with its unit, a date, or a word.</summary>
public sealed class Figure
{
    private Figure(string name, double? number, FigureUnit? unit, LocalDate? date, string? word) =>
        (Name, Number, Unit, Date, Word) = (name, number, unit, date, word);

    /// <summary>What the value is, in the trade's words; also its placeholder in the rule's message.</summary>
    public string Name { get; }

    /// <summary>The number in <see cref="Unit"/>, or null when the value is a date or a word.</summary>
    public double? Number { get; }

    /// <summary>The unit of <see cref="Number"/>, or null when the value is a date or a word.</summary>
    public FigureUnit? Unit { get; }

    /// <summary>The date, or null when the value is a number or a word.</summary>
    public LocalDate? Date { get; }

    /// <summary>The word, or null when the value is a number or a date.</summary>
    public string? Word { get; }

    /// <summary>A number with its unit.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="number">A finite number in <paramref name="unit"/>.</param>
    /// <param name="unit">Its unit.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is not finite.</exception>
    public static Figure Of(string name, double number, FigureUnit unit) =>
        new(Guard.NotBlank(name), Guard.Finite(number, "unit of the figure"), Guard.NotNull(unit), null, null);

    /// <summary>A running time.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="hours">The running time.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public static Figure Of(string name, EngineHours hours) =>
        new(Guard.NotBlank(name), (double)hours.ToHours(), FigureUnit.Hour, null, null);

    /// <summary>A date.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="date">The date.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="date"/> is outside 1900 to 2199.</exception>
    public static Figure Of(string name, LocalDate date) => new(Guard.NotBlank(name), null, null, Guard.Date(date), null);

    /// <summary>A word, such as a name or a state.</summary>
    /// <param name="name">What it is; not blank.</param>
    /// <param name="word">The word; not null.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="word"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is blank.</exception>
    public static Figure Of(string name, string word) => new(Guard.NotBlank(name), null, null, null, Guard.NotNull(word));

    /// <summary>The value as text, without its name.</summary>
    /// <param name="units">Which units to write.</param>
    /// <returns>Invariant text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a defined value.</exception>
    public string ToString(DisplayUnits units)
    {
        Guard.Defined(units);
        return Number is double number ? Unit!.Write(number, units)
            : Date is LocalDate date ? LocalDatePattern.Iso.Format(date)
            : Word!;
    }

    /// <summary>Name and value in metric units.</summary>
    /// <returns>Invariant text.</returns>
    public override string ToString() => $"{Name} {ToString(DisplayUnits.Metric)}";
}
