using MarineService.Core.Jobs;
using MarineService.Core.Procedures;

namespace MarineService.Core.Exchange;

/// <summary>Procedures in documents.</summary>
internal static partial class ProceduresWire
{
    private static readonly MemberNames PageMembers = new("format", "version", "id", "title", "source", "tasks", "known", "steps");
    private static readonly MemberNames TaskMembers = new("task", "provedBy");
    private static readonly MemberNames KnownMembers = new("circumstance", "holds");

    internal static ProcedurePage? ReadPage(ref JsonCursor json, DocumentHead head)
    {
        if (!json.BeginObject("a procedure"))
        {
            return null;
        }

        (string? id, string? title) = (null, null);
        Citation? source = null;
        List<(string Id, List<string> ProvedBy)> tasks = [];
        Circumstances known = Circumstances.Unknown;
        List<ProcedureStep> steps = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PageMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case < 2: head.Read(ref json, member); break;
                case 2: id = json.NotBlank(); break;
                case 3: title = json.NotBlank(); break;
                case 4: source = CitationWire.Read(ref json); break;
                case 5: ReadTasks(ref json, tasks); break;
                case 6: known = ReadKnown(ref json); break;
                default: ReadSteps(ref json, steps); break;
            }

            json.EndMember();
        }

        DocumentHead.Check(ref json, seen, PageMembers);
        json.Require(PageMembers, seen, 2, 3, 7);
        return json.FaultCount == 0 && id is not null && title is not null && Whole(ref json, Procedures.Procedure.Of(id, title, steps, source), known) is Procedure procedure
            ? Page(ref json, procedure, tasks)
            : null;
    }

    /// <summary>What only all steps together can tell: circles, steps that are not there, orders that would do harm.</summary>
    private static Procedure? Whole(ref JsonCursor json, Procedure listed, Circumstances known)
    {
        int before = json.FaultCount;
        if (listed.Graph.Sorted.Count < listed.Steps.Count)
        {
            Note(ref json, listed, listed.Findings);
            return null;
        }

        if (listed.Steps.All(step => step.IsNeeded(known) == false))
        {
            json.NoteMeaning("/known", "every step is left out", "circumstances in which something is to be done");
            return null;
        }

        Procedure procedure = listed.For(known);
        Note(ref json, listed, procedure.Findings);
        return json.FaultCount == before ? procedure : null;
    }

    private static void Note(ref JsonCursor json, Procedure listed, IReadOnlyList<Finding> findings)
    {
        Dictionary<string, int> places = new(StringComparer.Ordinal);
        for (int i = 0; i < listed.Steps.Count; i++)
        {
            places[ProcedureCheck.Subject(listed.Steps[i])] = i;
        }

        foreach (Finding finding in findings)
        {
            int index = places.TryGetValue(finding.Subject, out int place) ? place : -1;
            string step = FormattableString.Invariant($"/steps/{index}");
            if (finding.Rule == ProcedureRules.Circle)
            {
                json.NoteMeaning("/steps", finding["circle"]!.Word!, "steps that do not wait for each other in a circle");
            }
            else if (finding.Rule == ProcedureRules.UnknownStep)
            {
                string missing = finding["missing step"]!.Word!;
                int at = listed.Steps[index].Predecessors.TakeWhile(id => id != missing).Count();
                json.NoteMeaning(FormattableString.Invariant($"{step}/after/{at}"), $"'{missing}'", "the id of a step of this procedure");
            }
            else if (finding.Rule == ProcedureRules.HarmfulOrder)
            {
                json.NoteMeaning(step, $"allowed {finding["when"]!.Word}", $"no order that does harm: {finding["harm"]!.Word} ({finding["source"]!.Word})");
            }
            else if (finding.Rule == ProcedureRules.AccessLeftOpen)
            {
                json.NoteMeaning(listed.Steps[index].Opens is null ? $"{step}/closes" : $"{step}/opens", $"'{finding["access"]!.Word}'", "one step that opens it and one after it that closes it");
            }
        }
    }

    private static ProcedurePage? Page(ref JsonCursor json, Procedure procedure, List<(string Id, List<string> ProvedBy)> tasks)
    {
        int before = json.FaultCount;
        ProcedurePage page = ProcedurePage.Of(procedure);
        for (int i = 0; i < tasks.Count; i++)
        {
            for (int j = 0; j < tasks[i].ProvedBy.Count; j++)
            {
                if (procedure.Find(tasks[i].ProvedBy[j]) is null)
                {
                    json.NoteMeaning(FormattableString.Invariant($"/tasks/{i}/provedBy/{j}"), $"'{tasks[i].ProvedBy[j]}'", "the id of a step of this procedure");
                }
            }

            page = json.FaultCount == before ? page.Doing(tasks[i].Id, [.. tasks[i].ProvedBy]) : page;
        }

        return json.FaultCount == before ? page : null;
    }

    private static void ReadTasks(ref JsonCursor json, List<(string Id, List<string> ProvedBy)> tasks)
    {
        if (!json.BeginArray("a list of tasks"))
        {
            return;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a task with the steps that prove it"))
            {
                continue;
            }

            string? id = null;
            List<string> provedBy = [];
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(TaskMembers, ref seen, ref last)) >= 0)
            {
                if (member == 0)
                {
                    id = json.NotBlank();
                }
                else
                {
                    int before = json.FaultCount;
                    provedBy = json.Names();
                    if (provedBy.Count == 0 && json.FaultCount == before)
                    {
                        json.Note("", "nothing", "at least one step");
                    }
                }

                json.EndMember();
            }

            json.Require(TaskMembers, seen, 0, 1);
            if (id is not null && tasks.Exists(task => task.Id == id))
            {
                json.NoteMeaning("/task", $"'{id}'", "each task once");
            }
            else if (id is not null)
            {
                tasks.Add((id, provedBy));
            }
        }
    }

    private static Circumstances ReadKnown(ref JsonCursor json)
    {
        Circumstances known = Circumstances.Unknown;
        if (!json.BeginArray("a list of circumstances"))
        {
            return known;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a circumstance and whether it holds"))
            {
                continue;
            }

            Circumstance? circumstance = null;
            bool? holds = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(KnownMembers, ref seen, ref last)) >= 0)
            {
                if (member == 0)
                {
                    circumstance = json.Word<Circumstance>();
                }
                else
                {
                    holds = json.YesOrNo();
                }

                json.EndMember();
            }

            json.Require(KnownMembers, seen, 0, 1);
            if (circumstance is Circumstance one && holds is bool does)
            {
                if (known[one] is not null)
                {
                    json.NoteMeaning("/circumstance", $"'{WireEnum<Circumstance>.Word(one)}'", "each circumstance once");
                }

                known = known.With(one, does);
            }
        }

        return known;
    }
}
