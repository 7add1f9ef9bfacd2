using MarineService.Core.Belts;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <content>Pulleys, points and senses.</content>
internal static partial class BeltsWire
{
    private const int EffectiveDiameter = 3;
    private const int DiameterOverBalls = 5;

    private static readonly MemberNames PulleyMembers = new(
        "name", "rim", "center", "effectiveDiameter", "outsideDiameter", "diameterOverBalls", "duty", "mustTurn", "load", "width", "plane", "leastWrap");

    private static readonly MemberNames PointMembers = new("x", "y", "unit");
    private static readonly MemberNames PlaneMembers = new("axial", "leanAcross", "leanUp");

    private static List<Pulley?> ReadPulleys(ref JsonCursor json)
    {
        List<Pulley?> pulleys = [];
        if (json.BeginArray("a list of pulleys"))
        {
            while (json.NextItem())
            {
                pulleys.Add(ReadPulley(ref json));
            }

            if (pulleys.Count is < 2 or > BeltDrive.MostPulleys)
            {
                json.Note("", FormattableString.Invariant($"{pulleys.Count} pulleys"), FormattableString.Invariant($"from 2 to {BeltDrive.MostPulleys} pulleys, the crank's first"));
            }
        }

        return pulleys;
    }

    private static Pulley? ReadPulley(ref JsonCursor json)
    {
        if (!json.BeginObject("a pulley"))
        {
            return null;
        }

        int before = json.FaultCount;
        string? name = null;
        PulleySurface? rim = null;
        (double XMm, double YMm)? center = null;
        double? diameter = null;
        PulleyDuty duty = default;
        Rotation? mustTurn = null;
        double? load = null;
        double? width = null;
        (double Axial, double Across, double Up)? plane = null;
        double? leastWrap = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PulleyMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: name = ReadName(ref json); break;
                case 1: rim = json.Word<PulleySurface>(); break;
                case 2: center = ReadPoint(ref json); break;
                case 3 or 4: diameter = json.Quantity(WireUnits.Length, JsonCursor.AboveZero, Pulley.LargestDiameterMm); break;
                case 5: diameter = json.Quantity(WireUnits.Length, 1, Pulley.LargestDiameterMm); break;
                case 6: duty = json.Word<PulleyDuty>() ?? default; break;
                case 7: mustTurn = ReadRotation(ref json); break;
                case 8: load = json.Quantity(WireUnits.Power, 0, Pulley.HighestLoadKilowatts); break;
                case 9: width = json.Quantity(WireUnits.Length, JsonCursor.AboveZero, Pulley.WidestMm); break;
                case 10: plane = ReadPlane(ref json); break;
                default: leastWrap = json.Quantity(WireUnits.Angle, 0, Turn); break;
            }

            json.EndMember();
        }

        json.Require(PulleyMembers, seen, 0, 1, 2);
        double? size = Size(ref json, seen, rim, diameter);
        if (json.FaultCount > before || size is null || center is not (double x, double y))
        {
            return null;
        }

        Pulley pulley = rim == PulleySurface.Grooved ? Pulley.Grooved(name!, x, y, size.Value) : Pulley.Smooth(name!, x, y, size.Value);
        pulley = pulley.WithDuty(duty);
        pulley = mustTurn is Rotation turn ? pulley.WithRequiredRotation(turn) : pulley;
        pulley = load is double kilowatts ? pulley.WithLoad(Power.FromKilowatts(kilowatts)) : pulley;
        pulley = width is double mm ? pulley.WithWidth(mm) : pulley;
        pulley = plane is (double axial, double across, double up) ? pulley.WithAxialPosition(axial, across, up) : pulley;
        return leastWrap is double degrees ? pulley.WithLeastWrap(degrees) : pulley;
    }

    /// <summary>The one diameter that is given, as the effective one of a grooved pulley or the outside one of a smooth pulley.</summary>
    private static double? Size(ref JsonCursor json, ulong seen, PulleySurface? rim, double? diameter)
    {
        ulong given = (seen >> EffectiveDiameter) & 7;
        if (given is not (1 or 2 or 4))
        {
            json.Note("", given == 0 ? "no diameter" : "several diameters", "one of effectiveDiameter, outsideDiameter, diameterOverBalls");
            return null;
        }

        if (rim == PulleySurface.Smooth && given != 2)
        {
            json.Note(
                $"/{PulleyMembers.Names[given == 1 ? EffectiveDiameter : DiameterOverBalls]}", "a diameter of grooves", "outsideDiameter of a smooth rim");
            return null;
        }

        if (rim is null || diameter is not double mm || given == 1 || rim == PulleySurface.Smooth)
        {
            return diameter;
        }

        double effective = given == 2 ? mm + PkProfile.OutsideBelowEffectiveMm(GrooveAngle.Degrees40) : PkProfile.EffectiveFromOverBallsMm(mm);
        if (effective <= Pulley.LargestDiameterMm)
        {
            return effective;
        }

        json.NoteMeaning("/outsideDiameter", FormattableString.Invariant($"{mm} mm"), FormattableString.Invariant($"an effective diameter of at most {Pulley.LargestDiameterMm} mm"));
        return null;
    }

    private static string? ReadName(ref JsonCursor json)
    {
        string? name = json.NotBlank();
        if (name is null || Pulley.IsName(name))
        {
            return name;
        }

        json.Note("", $"'{name}'", "a name without commas and brackets, which separate the entries of a routing");
        return null;
    }

    private static (double XMm, double YMm)? ReadPoint(ref JsonCursor json)
    {
        if (!json.BeginObject($"a point with x, y and unit ({WireUnits.Length.List})"))
        {
            return null;
        }

        double? x = null;
        double? y = null;
        int unit = -1;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PointMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: x = json.Real(-Pulley.FarthestMm, Pulley.FarthestMm); break;
                case 1: y = json.Real(-Pulley.FarthestMm, Pulley.FarthestMm); break;
                default: unit = json.Unit(WireUnits.Length); break;
            }

            json.EndMember();
        }

        json.Require(PointMembers, seen, 0, 1, 2);
        if (x is not double across || y is not double up || unit < 0)
        {
            return null;
        }

        (double xMm, double yMm) = (WireUnits.Length.ToCanonical(unit, across), WireUnits.Length.ToCanonical(unit, up));
        if (Math.Abs(xMm) <= Pulley.FarthestMm && Math.Abs(yMm) <= Pulley.FarthestMm)
        {
            return (xMm, yMm);
        }

        json.NoteMeaning("", FormattableString.Invariant($"{xMm} mm, {yMm} mm"), FormattableString.Invariant($"a point within {Pulley.FarthestMm} mm"));
        return null;
    }

    private static (double Axial, double Across, double Up)? ReadPlane(ref JsonCursor json)
    {
        if (!json.BeginObject("the plane of a pulley"))
        {
            return null;
        }

        double? axial = null;
        double across = 0;
        double up = 0;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PlaneMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: axial = json.Quantity(WireUnits.Length, -Pulley.FarthestMm, Pulley.FarthestMm); break;
                case 1: across = json.Real(-Pulley.SteepestLeanRatio, Pulley.SteepestLeanRatio) ?? 0; break;
                default: up = json.Real(-Pulley.SteepestLeanRatio, Pulley.SteepestLeanRatio) ?? 0; break;
            }

            json.EndMember();
        }

        json.Require(PlaneMembers, seen, 0);
        return axial is double mm ? (mm, across, up) : null;
    }

    private static Rotation? ReadRotation(ref JsonCursor json) =>
        RotationWire.Read<Viewpoint, Rotation>(ref json, "a sense of rotation with the end from which it is seen", Rotation.Of);
}
