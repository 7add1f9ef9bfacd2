using MarineService.Core.Cooling;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>What a document says of one impeller inspection, before it is put together.</summary>
internal sealed class ImpellerParts
{
    internal int Vanes { get; set; }

    internal List<VaneRecord> Seen { get; set; } = [];

    internal List<ImpellerFault> Faults { get; set; } = [];

    internal List<FoundPiece> Pieces { get; set; } = [];

    internal LocalDate? FittedOn { get; set; }

    /// <summary>The inspection; called only when nothing was wrong with the parts.</summary>
    internal ImpellerInspection Build(LocalDate date, EngineHours? dial)
    {
        ImpellerInspection inspection = ImpellerInspection.Of(Vanes, date, dial).With([.. Seen]).With([.. Faults]).WithFound([.. Pieces]);
        return FittedOn is LocalDate fitted ? inspection.WithFittedOn(fitted) : inspection;
    }
}
