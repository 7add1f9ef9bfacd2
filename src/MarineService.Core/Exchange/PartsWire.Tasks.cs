using MarineService.Core.Parts;

namespace MarineService.Core.Exchange;

/// <content>What tasks take and take off, and the filter bases.</content>
internal static partial class PartsWire
{
    private static void ReadTasks(ref JsonCursor json, PartsParts parts)
    {
        if (!json.BeginArray("a list of tasks"))
        {
            return;
        }

        HashSet<string> ids = new(StringComparer.Ordinal);
        for (int i = 0; json.NextItem(); i++)
        {
            parts.TaskIds.Add(null);
            if (!json.BeginObject("a task with what it takes and takes off"))
            {
                continue;
            }

            string? task = null;
            List<KitItem>? takes = null;
            List<LooseItem>? off = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(TaskMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: task = json.NotBlank(); break;
                    case 1: takes = ReadItems(ref json, parts, FormattableString.Invariant($"/tasks/{i}/takes")); break;
                    default: off = ReadLoose(ref json, parts); break;
                }

                json.EndMember();
            }

            json.Require(TaskMembers, seen, 0);
            if (seen is 0 or 1)
            {
                json.Note("", "neither takes nor comesOff", "takes, comesOff, or both");
            }

            if (task is not null && !ids.Add(task))
            {
                json.NoteMeaning("/task", $"'{task}'", "each task once");
            }
            else if (task is not null)
            {
                parts.TaskIds[i] = task;
                parts.AddTask(task, takes, off);
            }
        }
    }

    private static List<LooseItem> ReadLoose(ref JsonCursor json, PartsParts parts)
    {
        List<LooseItem> items = [];
        HashSet<(string, string)> names = [];
        if (!json.BeginArray("a list of loose parts"))
        {
            return items;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a loose part with name, place and count"))
            {
                continue;
            }

            int before = json.FaultCount;
            (string? name, string? place) = (null, null);
            LoosePartKind? kind = null;
            int? count = null;
            int? washers = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(LooseMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: name = json.NotBlank(); break;
                    case 1: kind = json.Word<LoosePartKind>(); break;
                    case 2: place = json.NotBlank(); break;
                    case 3: count = json.WholeNumber(1, LooseParts.Most); break;
                    default: washers = json.WholeNumber(0, LoosePart.MostWashers); break;
                }

                json.EndMember();
            }

            json.Require(LooseMembers, seen, 0, 2, 3);
            if (json.FaultCount > before)
            {
                continue;
            }

            LoosePart part = LoosePart.Of(name!, kind ?? default, place!, washers ?? 0);
            if (!names.Add((part.Name, part.Place)))
            {
                json.NoteMeaning("/name", $"'{name}'", "each name at one place once");
            }
            else if (!PartsSheet.IsTheSame(parts.Loose, part))
            {
                json.NoteMeaning("/name", $"'{name}'", "the kind and the washers that another task says of it");
            }
            else
            {
                items.Add(LooseItem.Of(part, count!.Value));
            }
        }

        return items;
    }

    private static void ReadBases(ref JsonCursor json, PartsParts parts)
    {
        if (!json.BeginArray("a list of filter bases"))
        {
            return;
        }

        HashSet<string> numbers = new(StringComparer.Ordinal);
        for (int i = 0; json.NextItem(); i++)
        {
            if (!json.BeginObject("a filter base with part and needs"))
            {
                continue;
            }

            int before = json.FaultCount;
            string? number = null;
            FilterNeed? need = null;
            Func<string, FilterSpecification>? filter = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(BaseMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: number = json.NotBlank(); break;
                    case 1: need = FiltersWire.ReadNeed(ref json); break;
                    default: filter = FiltersWire.ReadFilter(ref json); break;
                }

                json.EndMember();
            }

            json.Require(BaseMembers, seen, 0, 1);
            if (number is not null && !numbers.Add(number))
            {
                json.NoteMeaning("/part", $"'{number}'", "each part on one base");
            }

            if (number is not null)
            {
                parts.Named.Add((FormattableString.Invariant($"/filterBases/{i}"), KitItem.Of(number), false));
            }

            if (json.FaultCount == before)
            {
                FilterBase one = FilterBase.Of(number!, need!);
                parts.Bases.Add(filter is null ? one : one.With(filter(number!)));
            }
        }
    }
}
