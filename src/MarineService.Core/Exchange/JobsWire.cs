using MarineService.Core.Cooling;
using MarineService.Core.Fluids;
using MarineService.Core.Jobs;
using MarineService.Core.Procedures;
using MarineService.Core.Records;
using NodaTime;

namespace MarineService.Core.Exchange;

/// <summary>Reports of visits in documents.</summary>
internal static partial class JobsWire
{
    private static readonly MemberNames ReportMembers = new(
        "format", "version", "card", "date", "events", "dial", "oil", "belt", "verdicts", "by", "checkedBy", "evidence",
        "start", "impeller", "bucketTest", "tally");

    private static readonly MemberNames EventMembers = new("step", "proofs", "found", "holds", "putDown", "takenUp");
    private static readonly MemberNames ProofMembers = new("holdPoint", "passed", "time", "missing", "note");
    private static readonly MemberNames VerdictMembers = new("task", "passed");

    internal static VisitReport? ReadReport(ref JsonCursor json, DocumentHead head)
    {
        if (!json.BeginObject("a report of a visit"))
        {
            return null;
        }

        string? card = null;
        LocalDate? date = null;
        List<VisitEvent> events = [];
        EngineHours? dial = null;
        List<OilChangeEvent>? oil = null;
        List<string> belt = [];
        Dictionary<string, bool> verdicts = new(StringComparer.Ordinal);
        (string? by, string? checkedBy) = (null, null);
        List<Evidence> evidence = [];
        StartTimes? start = null;
        ImpellerParts? impeller = null;
        Func<LocalDate, EngineHours?, BucketTest>? bucket = null;
        List<TallyLine> tally = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(ReportMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case < 2: head.Read(ref json, member); break;
                case 2: card = json.NotBlank(); break;
                case 3: date = json.Date(); break;
                case 4: ReadEvents(ref json, events); break;
                case 5: dial = json.Hours(); break;
                case 6: oil = FluidsWire.ReadEvents(ref json); break;
                case 7: belt = json.Names(); break;
                case 8: ReadVerdicts(ref json, verdicts); break;
                case 9: by = json.NotBlank(); break;
                case 10: checkedBy = json.NotBlank(); break;
                case 11: evidence = RecordsWire.ReadEvidence(ref json); break;
                case 12: start = CoolingWire.ReadStart(ref json); break;
                case 13: impeller = CoolingWire.ReadImpeller(ref json); break;
                case 14: bucket = CoolingWire.ReadBucket(ref json); break;
                default: tally = TallyWire.Read(ref json); break;
            }

            json.EndMember();
        }

        DocumentHead.Check(ref json, seen, ReportMembers);
        CoolingWire.CheckFitted(ref json, impeller, date);
        json.Require(ReportMembers, seen, 2, 3, 4);
        return json.FaultCount == 0 && card is not null && date is LocalDate day
            ? VisitReport.Of(card, day, events).Measured(dial, oil, belt, verdicts).WithNames(by, checkedBy, [.. evidence])
                .Seen(start, impeller?.Build(day, dial), bucket?.Invoke(day, dial)).WithTally([.. tally])
            : null;
    }

    private static void ReadEvents(ref JsonCursor json, List<VisitEvent> events)
    {
        if (json.BeginArray("a list of events"))
        {
            while (json.NextItem())
            {
                if (ReadEvent(ref json) is VisitEvent one)
                {
                    events.Add(one);
                }
            }
        }
    }

    private static VisitEvent? ReadEvent(ref JsonCursor json)
    {
        if (!json.BeginObject("an event"))
        {
            return null;
        }

        int before = json.FaultCount;
        (string? step, string? putDown) = (null, null);
        List<StepProof> proofs = [];
        Circumstance? found = null;
        bool? holds = null;
        LocalDate? takenUp = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(EventMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: step = json.NotBlank(); break;
                case 1: ReadProofs(ref json, proofs); break;
                case 2: found = json.Word<Circumstance>(); break;
                case 3: holds = json.YesOrNo(); break;
                case 4: putDown = json.NotBlank(); break;
                default: takenUp = json.Date(); break;
            }

            json.EndMember();
        }

        bool Has(int index) => (seen & (1UL << index)) != 0;
        int kinds = (Has(0) ? 1 : 0) + (Has(2) ? 1 : 0) + (Has(4) ? 1 : 0) + (Has(5) ? 1 : 0);
        if (kinds != 1)
        {
            json.Note("", $"{kinds} of step, found, putDown, takenUp", "one of them");
        }

        if (Has(1) && !Has(0))
        {
            json.Note("/proofs", "present", "the step that they belong to");
        }

        if (Has(2) != Has(3))
        {
            json.Note("", "found or holds alone", "both found and holds, or neither");
        }

        return json.FaultCount > before ? null
            : step is not null ? VisitEvent.Step(step, [.. proofs])
            : found is Circumstance circumstance ? VisitEvent.Found(circumstance, holds!.Value)
            : putDown is not null ? VisitEvent.PutDown(putDown)
            : VisitEvent.TakenUp(takenUp!.Value);
    }

    private static void ReadProofs(ref JsonCursor json, List<StepProof> proofs)
    {
        if (!json.BeginArray("a list of proofs"))
        {
            return;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a proof of a hold point"))
            {
                continue;
            }

            string? point = null;
            bool? passed = null;
            double? minutes = null;
            int? missing = null;
            string? note = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(ProofMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: point = json.NotBlank(); break;
                    case 1: passed = json.YesOrNo(); break;
                    case 2: minutes = json.Quantity(WireUnits.Time, 0, 1440); break;
                    case 3: missing = json.WholeNumber(-10_000, 10_000); break;
                    default: note = json.NotBlank(); break;
                }

                json.EndMember();
            }

            json.Require(ProofMembers, seen, 0, 1);
            if (point is not null && passed is bool good)
            {
                StepProof proof = good ? StepProof.Passed(point) : StepProof.Failed(point);
                proof = minutes is double time ? proof.WithTime(UnitsNet.Duration.FromMinutes(time)) : proof;
                proof = missing is int count ? proof.WithMissing(count) : proof;
                proofs.Add(note is not null ? proof.WithNote(note) : proof);
            }
        }
    }

    private static void ReadVerdicts(ref JsonCursor json, Dictionary<string, bool> verdicts)
    {
        if (!json.BeginArray("a list of verdicts"))
        {
            return;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a verdict with task and passed"))
            {
                continue;
            }

            string? task = null;
            bool? passed = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(VerdictMembers, ref seen, ref last)) >= 0)
            {
                if (member == 0)
                {
                    task = json.NotBlank();
                }
                else
                {
                    passed = json.YesOrNo();
                }

                json.EndMember();
            }

            json.Require(VerdictMembers, seen, 0, 1);
            if (task is not null && passed is bool good)
            {
                if (verdicts.ContainsKey(task))
                {
                    json.NoteMeaning("/task", $"'{task}'", "each task once");
                }

                verdicts[task] = good;
            }
        }
    }
}
