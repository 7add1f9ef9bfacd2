using MarineService.Core.Procedures;

namespace MarineService.Core.Exchange;

/// <content>Steps.</content>
internal static partial class ProceduresWire
{
    private static readonly MemberNames StepMembers = new(
        "id", "text", "why", "after", "onlyIf", "unless", "acts", "tools", "consumables", "cautions", "holdPoints", "time", "expiresOvernight",
        "inspects", "replaces", "opens", "closes", "decides", "includes");

    private static void ReadSteps(ref JsonCursor json, List<ProcedureStep> steps)
    {
        if (!json.BeginArray("a list of steps"))
        {
            return;
        }

        HashSet<string> known = new(StringComparer.Ordinal);
        int count = 0;
        while (json.NextItem())
        {
            count++;
            if (ReadStep(ref json) is ProcedureStep step)
            {
                if (known.Add(step.Id))
                {
                    steps.Add(step);
                }
                else
                {
                    json.NoteMeaning("/id", $"'{step.Id}'", "an id that no other step has");
                }
            }
        }

        if (count is 0 or > Procedures.Procedure.MostSteps)
        {
            json.Note("", FormattableString.Invariant($"{count} steps"), FormattableString.Invariant($"1 to {Procedures.Procedure.MostSteps} steps"));
        }
    }

    private static ProcedureStep? ReadStep(ref JsonCursor json)
    {
        if (!json.BeginObject("a step with id and text"))
        {
            return null;
        }

        int before = json.FaultCount;
        StepParts parts = new();
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(StepMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: parts.Id = json.NotBlank(); break;
                case 1: parts.Text = json.NotBlank(); break;
                case 2: parts.Why = json.NotBlank(); break;
                case 3: parts.After = json.Names(); break;
                case 4 or 5: (parts.Condition, parts.Holds) = (json.Word<Circumstance>(), member == 4); break;
                case 6: parts.Acts = ReadActs(ref json); break;
                case 7: parts.Tools = ReadTools(ref json); break;
                case 8: parts.Consumables = json.Names(); break;
                case 9: parts.Cautions = ReadCautions(ref json); break;
                case 10: parts.HoldPoints = ReadHoldPoints(ref json); break;
                case 11: parts.Minutes = json.Quantity(WireUnits.Time, ProcedureStep.LeastMinutes, ProcedureStep.MostMinutes); break;
                case 12: parts.Expires = json.YesOrNo() == true; break;
                case 13 or 14: (parts.Item, parts.Replaces) = (json.NotBlank(), member == 14); break;
                case 15: parts.Opens = json.NotBlank(); break;
                case 16: parts.Closes = json.NotBlank(); break;
                case 17: parts.Decides = json.Word<Circumstance>(); break;
                default: parts.Includes = json.Names(); break;
            }

            json.EndMember();
        }

        json.Require(StepMembers, seen, 0, 1);
        Exclude(ref json, seen, 4, 5);
        Exclude(ref json, seen, 13, 14);
        return json.FaultCount == before ? parts.Build() : null;
    }

    private static void Exclude(ref JsonCursor json, ulong seen, int one, int other)
    {
        if ((seen & (1UL << one)) != 0 && (seen & (1UL << other)) != 0)
        {
            json.Note("", $"both {StepMembers.Names[one]} and {StepMembers.Names[other]}", "one of them at most");
        }
    }

    private static List<StepAct> ReadActs(ref JsonCursor json)
    {
        List<StepAct> acts = [];
        if (json.BeginArray("a list of acts"))
        {
            while (json.NextItem())
            {
                if (json.Word<StepAct>() is StepAct act)
                {
                    if (acts.Contains(act))
                    {
                        json.Note("", $"'{WireEnum<StepAct>.Word(act)}'", "each act once");
                    }

                    acts.Add(act);
                }
            }
        }

        return acts;
    }
}
