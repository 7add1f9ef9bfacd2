using MarineService.Core.Parts;
using MarineService.Core.Specifications;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>The covers of an engine in documents: screws, what they are screwed into, and the holes.</summary>
internal static partial class CoversWire
{
    // Angles are kept in radians; what turning them into degrees and back loses is far below this digit.
    private const int DegreeDigits = 10;

    private static readonly MemberNames CoverMembers = new("name", "seat", "threadedInto", "thread", "screwClass", "makersTorque", "pattern");
    private static readonly MemberNames ThreadMembers = new("diameter", "pitch");
    private static readonly MemberNames ClassMembers = new("mark", "proofStress");
    private static readonly MemberNames PatternMembers = new("radius", "angles", "coverHole", "location", "firstHoleOn");

    internal static List<FittedCover> Read(ref JsonCursor json)
    {
        List<FittedCover> covers = [];
        HashSet<string> names = new(StringComparer.Ordinal);
        if (!json.BeginArray("a list of covers"))
        {
            return covers;
        }

        while (json.NextItem())
        {
            if (ReadCover(ref json) is FittedCover cover)
            {
                if (names.Add(cover.Name))
                {
                    covers.Add(cover);
                }
                else
                {
                    json.NoteMeaning("/name", $"'{cover.Name}'", "a name that no other cover has");
                }
            }
        }

        return covers;
    }

    private static FittedCover? ReadCover(ref JsonCursor json)
    {
        if (!json.BeginObject("a cover with its name"))
        {
            return null;
        }

        int before = json.FaultCount;
        string? name = null;
        JointSeat? seat = null;
        ThreadMaterial? into = null;
        MetricThread? thread = null;
        PropertyClass? strength = null;
        double? torque = null;
        Func<FittedCover, FittedCover>? pattern = null;
        double? hole = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(CoverMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: name = json.NotBlank(); break;
                case 1: seat = json.Word<JointSeat>(); break;
                case 2: into = json.Word<ThreadMaterial>(); break;
                case 3: thread = ReadThread(ref json); break;
                case 4: strength = ReadClass(ref json); break;
                case 5: torque = json.Quantity(WireUnits.Torque, JsonCursor.AboveZero, Joint.MostNewtonMeters); break;
                default: pattern = ReadPattern(ref json, out hole); break;
            }

            json.EndMember();
        }

        json.Require(CoverMembers, seen, 0);
        if (FittedCover.HoleFault(thread, hole) is string expected)
        {
            json.NoteMeaning("/pattern/coverHole", FormattableString.Invariant($"{hole} mm"), expected);
        }

        if (json.FaultCount > before)
        {
            return null;
        }

        Joint joint = Joint.Of(name!, seat ?? default, into ?? default, thread, strength);
        FittedCover cover = FittedCover.Of(torque is double value ? joint.WithMakersTorque(Torque.FromNewtonMeters(value)) : joint);
        return pattern is null ? cover : pattern(cover);
    }

    private static MetricThread? ReadThread(ref JsonCursor json)
    {
        if (!json.BeginObject("a thread with diameter and pitch"))
        {
            return null;
        }

        double? diameter = null;
        double? pitch = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(ThreadMembers, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                diameter = json.Quantity(WireUnits.Length, MetricThread.SmallestMm, MetricThread.LargestMm);
            }
            else
            {
                pitch = json.Quantity(WireUnits.Length, JsonCursor.AboveZero, MetricThread.LargestMm * MetricThread.CoarsestShare);
            }

            json.EndMember();
        }

        json.Require(ThreadMembers, seen, 0, 1);
        if (diameter is not double d || pitch is not double p)
        {
            return null;
        }

        if (p > d * MetricThread.CoarsestShare)
        {
            json.NoteMeaning("/pitch", FormattableString.Invariant($"{p} mm"), "at most a quarter of the diameter");
            return null;
        }

        return MetricThread.Of(Length.FromMillimeters(d), Length.FromMillimeters(p));
    }

    private static PropertyClass? ReadClass(ref JsonCursor json)
    {
        if (!json.BeginObject("a class of screws with its mark"))
        {
            return null;
        }

        int before = json.FaultCount;
        string? mark = null;
        double? stress = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(ClassMembers, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                mark = json.NotBlank();
            }
            else
            {
                stress = json.Quantity(WireUnits.Stress, PropertyClass.LeastMegapascals, PropertyClass.MostMegapascals);
            }

            json.EndMember();
        }

        json.Require(ClassMembers, seen, 0);
        if (json.FaultCount > before || mark is null)
        {
            return null;
        }

        if (stress is double megapascals)
        {
            return PropertyClass.Given(mark, Pressure.FromMegapascals(megapascals));
        }

        Answer<PropertyClass> known = PropertyClass.Marked(mark);
        if (!known.IsKnown)
        {
            json.Note("/mark", $"'{mark}'", $"one of {string.Join(", ", PropertyClass.All)}, or a proofStress beside it");
            return null;
        }

        return known.Value;
    }

    // The pattern waits for its cover, whose thread may come later.
    private static Func<FittedCover, FittedCover>? ReadPattern(ref JsonCursor json, out double? hole)
    {
        hole = null;
        if (!json.BeginObject("a pattern with radius and angles"))
        {
            return null;
        }

        int before = json.FaultCount;
        double? radius = null;
        double[] angles = [];
        CoverLocation? location = null;
        int? first = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PatternMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: radius = json.Quantity(WireUnits.Length, JsonCursor.AboveZero, BoltPattern.LargestRadiusMm); break;
                case 1: angles = ReadAngles(ref json); break;
                case 2: hole = json.Quantity(WireUnits.Length, JsonCursor.AboveZero, FittedCover.LargestHoleMm); break;
                case 3: location = json.Word<CoverLocation>(); break;
                default: first = json.WholeNumber(1, BoltPattern.MostHoles); break;
            }

            json.EndMember();
        }

        json.Require(PatternMembers, seen, 0, 1);
        if (json.FaultCount > before || radius is not double mm)
        {
            return null;
        }

        if (BoltPattern.Fault(mm, angles) is string fault)
        {
            json.NoteMeaning("/angles", fault, "angles in order counter-clockwise, no two holes at one place");
            return null;
        }

        if (first > angles.Length)
        {
            json.NoteMeaning("/firstHoleOn", FormattableString.Invariant($"{first}"), FormattableString.Invariant($"one of the {angles.Length} holes"));
            return null;
        }

        BoltPattern pattern = BoltPattern.Of(Length.FromMillimeters(mm), angles);
        Length? clear = hole is double diameter ? Length.FromMillimeters(diameter) : null;
        return cover => cover.WithPattern(pattern, clear, location ?? default, first);
    }

    private static double[] ReadAngles(ref JsonCursor json)
    {
        List<double> angles = [];
        if (!json.BeginArray("a list of angles"))
        {
            return [];
        }

        int items = 0;
        while (json.NextItem())
        {
            items++;
            if (json.Real(BoltPattern.LeastDegrees, BoltPattern.MostDegrees) is double angle)
            {
                angles.Add(angle);
            }
        }

        if (items is < 2 or > BoltPattern.MostHoles)
        {
            json.Note("", FormattableString.Invariant($"{items} angles"), FormattableString.Invariant($"2 to {BoltPattern.MostHoles} angles"));
        }

        return [.. angles];
    }
}
