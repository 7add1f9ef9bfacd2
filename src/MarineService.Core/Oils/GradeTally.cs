using NodaTime;

namespace MarineService.Core.Oils;

/// <summary>A grade's verdicts over nights, counted as they come.</summary>
internal struct GradeTally
{
    internal int Accepted { get; private set; }

    internal int Marginal { get; private set; }

    internal int Refused { get; private set; }

    internal LocalDate? FirstNotAccepted { get; private set; }

    internal LocalDate? FirstRefused { get; private set; }

    internal void Add(Suitability suitability, LocalDate date)
    {
        if (suitability == Suitability.Accepted)
        {
            Accepted++;
            return;
        }

        FirstNotAccepted = Earlier(FirstNotAccepted, date);
        if (suitability == Suitability.Marginal)
        {
            Marginal++;
            return;
        }

        Refused++;
        FirstRefused = Earlier(FirstRefused, date);
    }

    private static LocalDate Earlier(LocalDate? known, LocalDate date) => known < date ? known.Value : date;
}
