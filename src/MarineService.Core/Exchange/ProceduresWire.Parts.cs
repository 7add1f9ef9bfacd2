using MarineService.Core.Procedures;

namespace MarineService.Core.Exchange;

/// <content>Tools, cautions and hold points of a step.</content>
internal static partial class ProceduresWire
{
    private static readonly MemberNames ToolMembers = new("name", "size");
    private static readonly MemberNames CautionMembers = new("word", "text", "source");
    private static readonly MemberNames HoldMembers = new("id", "text", "leastTime", "count", "written");

    private static List<Tool> ReadTools(ref JsonCursor json)
    {
        List<Tool> tools = [];
        if (!json.BeginArray("a list of tools"))
        {
            return tools;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a tool with its name"))
            {
                continue;
            }

            (string? name, string? size) = (null, null);
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(ToolMembers, ref seen, ref last)) >= 0)
            {
                if (member == 0)
                {
                    name = json.NotBlank();
                }
                else
                {
                    size = json.NotBlank();
                }

                json.EndMember();
            }

            json.Require(ToolMembers, seen, 0);
            if (name is not null)
            {
                tools.Add(Tool.Of(name, size));
            }
        }

        return tools;
    }

    private static List<Caution> ReadCautions(ref JsonCursor json)
    {
        List<Caution> cautions = [];
        if (!json.BeginArray("a list of cautions"))
        {
            return cautions;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a caution with signal word, text and source"))
            {
                continue;
            }

            SignalWord? word = null;
            string? text = null;
            Citation? source = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(CautionMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: word = json.Word<SignalWord>(); break;
                    case 1: text = json.NotBlank(); break;
                    default: source = CitationWire.Read(ref json); break;
                }

                json.EndMember();
            }

            json.Require(CautionMembers, seen, 0, 1, 2);
            if (word is SignalWord signal && text is not null && source is not null)
            {
                cautions.Add(Caution.Of(signal, text, source));
            }
        }

        return cautions;
    }

    private static List<HoldPoint> ReadHoldPoints(ref JsonCursor json)
    {
        List<HoldPoint> points = [];
        if (!json.BeginArray("a list of hold points"))
        {
            return points;
        }

        while (json.NextItem())
        {
            if (ReadHoldPoint(ref json) is HoldPoint point)
            {
                if (points.Exists(one => one.Id == point.Id))
                {
                    json.NoteMeaning("/id", $"'{point.Id}'", "an id that no other hold point of the step has");
                }
                else
                {
                    points.Add(point);
                }
            }
        }

        return points;
    }

    private static HoldPoint? ReadHoldPoint(ref JsonCursor json)
    {
        if (!json.BeginObject("a hold point with id and text"))
        {
            return null;
        }

        int before = json.FaultCount;
        (string? id, string? text) = (null, null);
        double? minutes = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(HoldMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: id = json.NotBlank(); break;
                case 1: text = json.NotBlank(); break;
                case 2: minutes = json.Quantity(WireUnits.Time, HoldPoint.LeastOfMinutes, HoldPoint.MostOfMinutes); break;
                default: ReadTrue(ref json); break;
            }

            json.EndMember();
        }

        json.Require(HoldMembers, seen, 0, 1);
        bool Has(int index) => (seen & (1UL << index)) != 0;
        int kinds = (Has(2) ? 1 : 0) + (Has(3) ? 1 : 0) + (Has(4) ? 1 : 0);
        if (kinds > 1)
        {
            json.Note("", FormattableString.Invariant($"{kinds} of leastTime, count, written"), "one of them at most");
        }

        return json.FaultCount > before ? null
            : minutes is double least ? HoldPoint.LastingMinutes(id!, text!, least)
            : Has(3) ? HoldPoint.Counted(id!, text!)
            : Has(4) ? HoldPoint.Written(id!, text!)
            : HoldPoint.Confirmed(id!, text!);
    }

    // What does not apply is left out.
    private static void ReadTrue(ref JsonCursor json)
    {
        if (json.YesOrNo() == false)
        {
            json.Note("", "false", "true, or no such member");
        }
    }
}
