using MarineService.Core.Engines;
using MarineService.Core.Internal;
using MarineService.Core.Records;
using MarineService.Core.Scheduling;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>Log entries in documents.</summary>
internal static partial class RecordsWire
{
    private static readonly MemberNames LogMembers = new("format", "version", "entries");

    private static readonly MemberNames EntryMembers = new(
        "id",
        "kind",
        "engine",
        "date",
        "dial",
        "source",
        "task",
        "result",
        "exchangedFraction",
        "fractionUncertainty",
        "dueDate",
        "dueHours",
        "event",
        "conditions",
        "fluid",
        "amount",
        "until",
        "oldFinal",
        "newInitial",
        "unmetered",
        "deadSince",
        "newMeter",
        "engineZero",
        "by",
        "checkedBy",
        "evidence",
        "note",
        "corrects",
        "reconstructed",
        "account",
        "impeller",
        "works",
        "plannedHours",
        "bucket",
        "anode");

    private static readonly MemberNames EvidenceMembers = new("kind", "reference", "sha256");
    private static readonly MemberNames AmountMembers = new("volume", "temperature", "standardUncertainty");

    // Which members go with which kind, besides those that go with all: first what must be there, then what may be.
    private static readonly (ulong Must, ulong May)[] Shapes = BuildShapes();

    internal static ServiceLog? ReadLog(ref JsonCursor json, DocumentHead head)
    {
        if (!json.BeginObject("a service log"))
        {
            return null;
        }

        List<LogEntry> entries = new(32);
        bool complete = true;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(LogMembers, ref seen, ref last)) >= 0)
        {
            if (member < 2)
            {
                head.Read(ref json, member);
            }
            else if (json.BeginArray("a list of entries"))
            {
                while (json.NextItem())
                {
                    if (ReadEntry(ref json) is LogEntry entry)
                    {
                        entries.Add(entry);
                    }
                    else
                    {
                        complete = false;
                    }
                }
            }

            json.EndMember();
        }

        DocumentHead.Check(ref json, seen, LogMembers);
        json.Require(LogMembers, seen, 2);
        if (!complete)
        {
            return null;
        }

        LogEntry[] numbered = ServiceLog.Number(entries);
        foreach (ListFault fault in ServiceLog.Check(numbered))
        {
            json.NoteMeaning(FormattableString.Invariant($"/entries/{fault.Index}/{fault.Member}"), $"'{fault.Value}'", fault.Expected);
        }

        return json.FaultCount > 0 ? null : ServiceLog.OfChecked(numbered);
    }

    private static LogEntry? ReadEntry(ref JsonCursor json)
    {
        if (!json.BeginObject("an entry"))
        {
            return null;
        }

        EntryParts parts = default;
        int before = json.FaultCount;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(EntryMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: parts.Id = json.NotBlank(); break;
                case 1: parts.Kind = json.Word<EntryKind>(); break;
                case 2: parts.Engine = json.NotBlank(); break;
                case 3: parts.Date = json.Date(); break;
                case 4: parts.Dial = json.Hours(); break;
                case 5: parts.Source = json.Word<ReadingSource>(); break;
                case 6: parts.Task = json.NotBlank(); break;
                case 23: parts.By = json.NotBlank(); break;
                default: ReadRare(ref json, member, parts.WithRare()); break;
            }

            json.EndMember();
        }

        CheckEntry(ref json, seen, in parts);
        return json.FaultCount == before ? parts.Build() : null;
    }

    private static void CheckEntry(ref JsonCursor json, ulong seen, in EntryParts parts)
    {
        json.Require(EntryMembers, seen, 1, 3);
        if (parts.Kind is not EntryKind kind)
        {
            return;
        }

        (ulong must, ulong may) = Shapes[(int)kind];
        json.NoteEach(EntryMembers, must & ~seen, "missing", "this member");
        if ((seen & KindMembers & ~(must | may)) is > 0 and ulong strange)
        {
            json.NoteEach(EntryMembers, strange, "present", $"no such member in an entry of kind '{WireEnum<EntryKind>.Word(kind)}'");
        }

        bool Has(int member) => (seen & (1UL << member)) != 0;
        if (kind == EntryKind.OpeningDuePoint && !Has(DueDateMember) && !Has(DueHoursMember))
        {
            json.Note("", "neither dueDate nor dueHours", "dueDate, dueHours or both");
        }

        if (kind == EntryKind.Completion && Has(FractionMember) && parts.Rare.Result is CompletionOutcome.Passed or CompletionOutcome.Failed)
        {
            json.Note("/exchangedFraction", "present", "no such member in the result of an inspection");
        }

        if (Has(FractionUncertaintyMember) && !Has(FractionMember))
        {
            json.Note("/fractionUncertainty", "present", "the exchangedFraction that it belongs to");
        }

        CheckUntil(ref json, in parts);

        CoolingWire.CheckFitted(ref json, parts.Rare.Impeller, parts.Date);
        if (parts.Rare.DeadSince is { } dead && parts.Date is { } changed && dead > changed)
        {
            json.NoteMeaning("/deadSince", NodaTime.Text.LocalDatePattern.Iso.Format(dead), "a date on or before the date of the change");
        }
    }

    internal static MeasuredVolume? ReadAmount(ref JsonCursor json)
    {
        if (!json.BeginObject("an amount with a volume"))
        {
            return null;
        }

        double? liters = null;
        double? celsius = null;
        double? sigma = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(AmountMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: liters = json.Quantity(WireUnits.Volume, 0, 10_000); break;
                case 1: celsius = json.Quantity(WireUnits.Temperature, -60, 200); break;
                default: sigma = json.Quantity(WireUnits.Volume, 0, 10_000); break;
            }

            json.EndMember();
        }

        json.Require(AmountMembers, seen, 0);
        return liters is double amount
            ? MeasuredVolume.Of(
                Volume.FromLiters(amount),
                celsius is double t ? Temperature.FromDegreesCelsius(t) : null,
                sigma is double u ? Volume.FromLiters(u) : null)
            : null;
    }

    internal static List<Evidence> ReadEvidence(ref JsonCursor json)
    {
        List<Evidence> proofs = [];
        if (!json.BeginArray("a list of proofs"))
        {
            return proofs;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a proof with kind and reference"))
            {
                continue;
            }

            EvidenceKind? kind = null;
            string? reference = null;
            string? hash = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(EvidenceMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: kind = json.Word<EvidenceKind>(); break;
                    case 1: reference = json.NotBlank(); break;
                    default: hash = ReadHash(ref json); break;
                }

                json.EndMember();
            }

            json.Require(EvidenceMembers, seen, 0, 1);
            if (kind is EvidenceKind known && reference is not null)
            {
                proofs.Add(Evidence.Of(known, reference, hash));
            }
        }

        return proofs;
    }

    private static string? ReadHash(ref JsonCursor json)
    {
        string? hash = json.NotBlank();
        if (hash is not null && !Evidence.IsHash(hash))
        {
            json.Note("", $"'{hash}'", "64 hexadecimal digits");
            return null;
        }

        return hash;
    }
}
