using MarineService.Core.Scheduling;

namespace MarineService.Core.Exchange;

/// <content>The members that few entries have.</content>
internal static partial class RecordsWire
{
    private static void ReadRare(ref JsonCursor json, int member, RareEntryParts parts)
    {
        switch (member)
        {
            case 7: parts.Result = json.Word<CompletionOutcome>(); break;
            case 8: parts.Fraction = json.Number(0.000001m, 1m); break;
            case 9: parts.FractionUncertainty = json.Number(0m, 1m); break;
            case 10: parts.DueDate = json.Date(); break;
            case 11: parts.DueHours = json.Hours(); break;
            case 12: parts.Event = json.NotBlank(); break;
            case 13: parts.Conditions = json.Names(); break;
            case 14: parts.Fluid = json.NotBlank(); break;
            case 15: parts.Amount = ReadAmount(ref json); break;
            case 16: parts.Until = json.Date(); break;
            case 17: parts.OldFinal = json.Hours(); break;
            case 18: parts.NewInitial = json.Hours(); break;
            case 19: parts.Unmetered = json.Hours(); break;
            case 20: parts.DeadSince = json.Date(); break;
            case 21: parts.NewMeter = EnginesWire.ReadMeter(ref json); break;
            case 22: parts.EngineZero = json.Hours(); break;
            case 24: parts.CheckedBy = json.NotBlank(); break;
            case 25: parts.Evidence = ReadEvidence(ref json); break;
            case 26: parts.Note = json.NotBlank(); break;
            case 27: parts.Corrects = json.NotBlank(); break;
            case 28: parts.Reconstructed = json.YesOrNo(); break;
            case AccountMember: parts.Account = FluidsWire.ReadEvents(ref json); break;
            case ImpellerMember: parts.Impeller = CoolingWire.ReadImpeller(ref json); break;
            case WorksMember: parts.Works = LayUpWire.ReadWorks(ref json); break;
            case PlannedHoursMember: parts.PlannedHours = json.Hours(); break;
            case BucketMember: parts.Bucket = CoolingWire.ReadBucket(ref json); break;
            default: parts.Anode = CoolingWire.ReadAnode(ref json); break;
        }
    }
}
