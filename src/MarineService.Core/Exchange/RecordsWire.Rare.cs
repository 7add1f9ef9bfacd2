using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <content>The members that few entries have.</content>
internal static partial class RecordsWire
{
    private static void ReadRare(ref JsonCursor json, int member, RareEntryParts parts)
    {
        switch (member)
        {
            case ResultMember: parts.Result = json.Word<CompletionOutcome>(); break;
            case FractionMember: parts.Fraction = json.Number(0.000001m, 1m); break;
            case FractionUncertaintyMember: parts.FractionUncertainty = json.Number(0m, 1m); break;
            case DueDateMember: parts.DueDate = json.Date(); break;
            case DueHoursMember: parts.DueHours = json.Hours(); break;
            case EventMember: parts.Event = json.NotBlank(); break;
            case ConditionsMember: parts.Conditions = json.Names(); break;
            case FluidMember: parts.Fluid = json.NotBlank(); break;
            case AmountMember: parts.Amount = ReadAmount(ref json); break;
            case UntilMember: parts.Until = json.Date(); break;
            case OldFinalMember: parts.OldFinal = json.Hours(); break;
            case NewInitialMember: parts.NewInitial = json.Hours(); break;
            case UnmeteredMember: parts.Unmetered = json.Hours(); break;
            case DeadSinceMember: parts.DeadSince = json.Date(); break;
            case NewMeterMember: parts.NewMeter = EnginesWire.ReadMeter(ref json); break;
            case EngineZeroMember: parts.EngineZero = json.Hours(); break;
            case 24: parts.CheckedBy = json.NotBlank(); break;
            case 25: parts.Evidence = ReadEvidence(ref json); break;
            case 26: parts.Note = json.NotBlank(); break;
            case CorrectsMember: parts.Corrects = json.NotBlank(); break;
            case ReconstructedMember: parts.Reconstructed = json.YesOrNo(); break;
            case AccountMember: parts.Account = FluidsWire.ReadEvents(ref json); break;
            case ImpellerMember: parts.Impeller = CoolingWire.ReadImpeller(ref json); break;
            case WorksMember: parts.Works = LayUpWire.ReadWorks(ref json); break;
            case PlannedHoursMember: parts.PlannedHours = json.Hours(); break;
            case BucketMember: parts.Bucket = CoolingWire.ReadBucket(ref json); break;
            default: parts.Anode = CoolingWire.ReadAnode(ref json); break;
        }
    }
}
