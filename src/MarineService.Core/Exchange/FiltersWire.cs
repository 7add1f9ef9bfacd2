using MarineService.Core.Parts;

namespace MarineService.Core.Exchange;

/// <summary>Spin-on filters in documents: what a base needs, and what the maker of a filter says of it.</summary>
internal static partial class FiltersWire
{
    private const string AttributeFlow = "flow";
    private const string AttributeParticle = "particleSize";

    private static readonly FilterAttribute[] Asked = [.. FilterAttribute.All.Where(one => one.Property != FilterProperty.AntiDrainBack)];

    private static readonly MemberNames NeedMembers = new(
        ["kind", "mounted", "thread", .. Asked.Select(one => one.Name), AttributeFlow, AttributeParticle]);

    private static readonly MemberNames FilterMembers = new(
        ["thread", .. FilterAttribute.All.Select(one => one.Name), AttributeFlow, AttributeParticle]);

    private static readonly MemberNames RangeMembers = new("least", "most");

    internal static FilterNeed? ReadNeed(ref JsonCursor json)
    {
        const int First = 3;
        if (!json.BeginObject("what a filter base needs, with kind"))
        {
            return null;
        }

        int before = json.FaultCount;
        FilterKind? kind = null;
        FilterOrientation? mounted = null;
        FilterThread? thread = null;
        double?[] least = new double?[FilterProperty.All.Count];
        double?[] most = new double?[FilterProperty.All.Count];
        double? flow = null;
        double? micrometers = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(NeedMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: kind = json.Word<FilterKind>(); break;
                case 1: mounted = json.Word<FilterOrientation>(); break;
                case 2: thread = ReadThread(ref json); break;
                default:
                    if (member - First < Asked.Length)
                    {
                        ReadDemand(ref json, Asked[member - First], least, most);
                    }
                    else
                    {
                        ReadAt(ref json, member - First - Asked.Length, ref flow, ref micrometers);
                    }

                    break;
            }

            json.EndMember();
        }

        json.Require(NeedMembers, seen, 0);
        CheckPairs(ref json, NeedMembers, seen, most[FilterProperty.Bypass.Index]);
        return json.FaultCount == before ? FilterNeed.OfChecked(kind!.Value, mounted ?? default, thread, least, most, flow, micrometers) : null;
    }

    /// <summary>What the maker says of a filter; the number of the part may come later.</summary>
    internal static Func<string, FilterSpecification>? ReadFilter(ref JsonCursor json)
    {
        const int First = 1;
        if (!json.BeginObject("what is known of a filter"))
        {
            return null;
        }

        int before = json.FaultCount;
        FilterThread? thread = null;
        double?[] values = new double?[FilterProperty.All.Count];
        double? flow = null;
        double? micrometers = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(FilterMembers, ref seen, ref last)) >= 0)
        {
            if (member < First)
            {
                thread = ReadThread(ref json);
            }
            else if (member - First < FilterAttribute.All.Length)
            {
                FilterAttribute attribute = FilterAttribute.All[member - First];
                values[attribute.Property.Index] = attribute.Read(ref json, attribute.Property == FilterProperty.GasketSection ? FilterSpecification.MostSectionMm : attribute.Max);
            }
            else
            {
                ReadAt(ref json, member - First - FilterAttribute.All.Length, ref flow, ref micrometers);
            }

            json.EndMember();
        }

        CheckPairs(ref json, FilterMembers, seen, values[FilterProperty.Bypass.Index]);
        if (values[FilterProperty.GasketInner.Index] is double inner && inner >= values[FilterProperty.GasketOuter.Index])
        {
            json.NoteMeaning("/gasketInner", FormattableString.Invariant($"{inner} mm"), "less than the outer diameter");
        }

        return json.FaultCount == before ? name => FilterSpecification.OfChecked(name, thread, values, flow, micrometers) : null;
    }

    private static FilterThread? ReadThread(ref JsonCursor json)
    {
        if (json.NotBlank() is not string designation)
        {
            return null;
        }

        FilterThread? thread = FilterThread.Find(designation);
        if (thread is null)
        {
            json.NoteMeaning("", $"'{designation}'", "a thread as its designation is printed, such as 3/4-16 or M20x1.5");
        }

        return thread;
    }

    private static void ReadDemand(ref JsonCursor json, FilterAttribute attribute, double?[] least, double?[] most)
    {
        int index = attribute.Property.Index;
        if (attribute.Property.IsYesOrNo)
        {
            least[index] = most[index] = attribute.Read(ref json, attribute.Max);
            if (attribute.Property == FilterProperty.AftermarketTests && least[index] == 0)
            {
                json.Note("", "false", "true; what is not asked is left out");
            }
        }
        else if (attribute.Demand == FilterDemand.Range)
        {
            ReadRange(ref json, attribute, out least[index], out most[index]);
        }
        else
        {
            (attribute.Demand == FilterDemand.Least ? least : most)[index] = attribute.Read(ref json, attribute.Max);
        }
    }

    private static void ReadRange(ref JsonCursor json, FilterAttribute attribute, out double? least, out double? most)
    {
        (least, most) = (null, null);
        if (!json.BeginObject("a range with least and most"))
        {
            return;
        }

        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(RangeMembers, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                least = attribute.Read(ref json, attribute.Max);
            }
            else
            {
                most = attribute.Read(ref json, attribute.Max);
            }

            json.EndMember();
        }

        json.Require(RangeMembers, seen, 0, 1);
        if (least > most)
        {
            json.NoteMeaning("/most", FormattableString.Invariant($"{most} {attribute.Units!.Canonical}"), FormattableString.Invariant($"{least} {attribute.Units.Canonical} or more, as the least says"));
        }
    }

    private static void ReadAt(ref JsonCursor json, int which, ref double? flow, ref double? micrometers)
    {
        if (which == 0)
        {
            flow = json.Quantity(WireUnits.VolumeFlow, JsonCursor.AboveZero, FilterNeed.MostLitersPerMinute);
        }
        else
        {
            micrometers = json.Quantity(WireUnits.ParticleSize, JsonCursor.AboveZero, FilterNeed.MostMicrometers);
        }
    }

    // A pressure drop means nothing without its flow, an efficiency nothing without its particle, an opening nothing without a valve.
    private static void CheckPairs(ref JsonCursor json, MemberNames names, ulong seen, double? bypass)
    {
        Both(ref json, names, seen, "pressureDrop", AttributeFlow);
        Both(ref json, names, seen, "efficiency", AttributeParticle);
        if (Has(names, seen, "bypassOpening"))
        {
            json.Require(names, seen, Array.IndexOf(names.Names, "bypass"));
            if (bypass == 0)
            {
                json.Note("/bypass", "false", "true beside bypassOpening");
            }
        }
    }

    private static void Both(ref JsonCursor json, MemberNames names, ulong seen, string one, string other)
    {
        if (Has(names, seen, one) != Has(names, seen, other))
        {
            json.Require(names, seen, Array.IndexOf(names.Names, one), Array.IndexOf(names.Names, other));
        }
    }

    private static bool Has(MemberNames names, ulong seen, string name) => (seen & (1UL << Array.IndexOf(names.Names, name))) != 0;
}
