using MarineService.Core.Fluids;
using MarineService.Core.Oils;
using UnitsNet;

namespace MarineService.Core.Jobs;

/// <summary>Which oil goes in, and how much of it to have at hand.</summary>
public sealed class JobOil
{
    /// <summary>What is kept above the planned amount: a tenth.</summary>
    private const double ReserveFactor = 1.1;

    private const double FirstPourFraction = 0.85;

    internal JobOil(Answer<OilSelection> choice, Answer<Sump> sump, Answer<FluidBalance> lastChange) =>
        (Choice, Sump, LastChange) = (choice, sump, lastChange);

    /// <summary>The permitted grades, ranked for the weather to come; not known without the weather or the maker's list.</summary>
    public Answer<OilSelection> Choice { get; }

    /// <summary>What the oil system holds; not known when the data sheet does not say.</summary>
    public Answer<Sump> Sump { get; }

    /// <summary>The last recorded change, cast up; not known when the log holds none.</summary>
    public Answer<FluidBalance> LastChange { get; }

    /// <summary>What went in at the last change; not known when the log holds none.</summary>
    public Answer<Volume> PouredLastTime => LastChange.IsKnown
        ? Answer.Known(Volume.FromLiters(LastChange.Value.Account.Events
            .Where(one => !one.IsRefused && one.Step is OilChangeStep.Poured or OilChangeStep.FilterPrimed && one.Measured is not null)
            .Sum(one => one.Measured!.Volume.Liters)))
        : Answer.NotKnown<Volume>([.. LastChange.Missing]);

    /// <summary>The oil to have at hand: service fill with filter, and a tenth more.</summary>
    public Answer<Volume> ToHave => Times(ReserveFactor);

    /// <summary>The first pour: 85 % of the service fill with filter, less when the drain brings less.</summary>
    public Answer<Volume> FirstPour => Times(FirstPourFraction);

    private Answer<Volume> Times(double factor) => Sump.IsKnown
        ? Answer.Known(Volume.FromLiters(Sump.Value.ServiceFill.Liters * factor))
        : Answer.NotKnown<Volume>([.. Sump.Missing]);
}
