using MarineService.Core.Belts;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>Belt drives in documents: the drive, its belt, its tensioner; <see cref="BeltDriveBuilder"/> knows what fits together.</summary>
internal static partial class BeltsWire
{
    private const double Turn = 360;

    private static readonly MemberNames DriveMembers = new("crankTurns", "centersKnownTo", "pulleys", "belt", "tensioner", "routing");
    private static readonly MemberNames BeltMembers = new(
        "ribs", "effectiveLength", "tolerance", "effectiveLineDifferential", "backToPitchLine", "thickness", "massPerRib");

    private static readonly MemberNames TensionerMembers = new("kind", "pulley", "pivot", "clockwiseStop", "counterClockwiseStop", "spring");
    private static readonly MemberNames SpringMembers = new("torque", "rate", "pushes");

    private enum TensionerKind
    {
        Automatic,
        SetByHand,
    }

    internal static BeltDrive? ReadDrive(ref JsonCursor json)
    {
        if (!json.BeginObject("a belt drive"))
        {
            return null;
        }

        int before = json.FaultCount;
        Rotation? crank = null;
        double? known = null;
        List<Pulley?> pulleys = [];
        RibbedBelt? belt = null;
        Tensioner? tensioner = null;
        List<string>? routing = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(DriveMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: crank = ReadRotation(ref json); break;
                case 1: known = json.Quantity(WireUnits.Length, 0, BeltDrive.VaguestMm); break;
                case 2: pulleys = ReadPulleys(ref json); break;
                case 3: belt = ReadBelt(ref json); break;
                case 4: tensioner = ReadTensioner(ref json); break;
                default: routing = json.Names(); break;
            }

            json.EndMember();
        }

        json.Require(DriveMembers, seen, 0, 2);
        return json.FaultCount == before && crank is Rotation turns
            ? Joined(ref json, Gathered(turns, known, pulleys, belt, tensioner, routing))
            : null;
    }

    private static BeltDriveBuilder Gathered(
        Rotation crankTurns, double? known, List<Pulley?> pulleys, RibbedBelt? belt, Tensioner? tensioner, List<string>? routing)
    {
        BeltDriveBuilder builder = pulleys.Aggregate(BeltDrive.SeenFromPulleyEnd(crankTurns), (gathered, pulley) => gathered.Add(pulley!));
        builder = known is double mm ? builder.WithCentersKnownTo(mm) : builder;
        builder = belt is null ? builder : builder.WithBelt(belt);
        builder = tensioner is null ? builder : builder.WithTensioner(tensioner);
        return routing is null ? builder : builder.RoutedAs([.. routing]);
    }

    // Each part is right by itself; what does not go together is a fault of meaning, which the schema cannot say.
    private static BeltDrive? Joined(ref JsonCursor json, BeltDriveBuilder builder)
    {
        IReadOnlyList<DriveFault> faults = builder.Faults();
        foreach (DriveFault fault in faults)
        {
            json.NoteMeaning(fault.Place, fault.Value, fault.Expected);
        }

        return faults.Count == 0 ? builder.Build() : null;
    }

    private static RibbedBelt? ReadBelt(ref JsonCursor json)
    {
        if (!json.BeginObject("a belt"))
        {
            return null;
        }

        int before = json.FaultCount;
        int? ribs = null;
        double? length = null;
        double? tolerance = null;
        double? differential = null;
        double? back = null;
        double? thickness = null;
        double? mass = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(BeltMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: ribs = json.WholeNumber(1, RibbedBelt.MostRibs); break;
                case 1: length = json.Quantity(WireUnits.Length, JsonCursor.AboveZero, RibbedBelt.LongestMm); break;
                case 2: tolerance = json.Quantity(WireUnits.Length, 0, RibbedBelt.WidestToleranceMm); break;
                case 3: differential = json.Quantity(WireUnits.Length, 0, RibbedBelt.WidestOffsetMm); break;
                case 4: back = json.Quantity(WireUnits.Length, 0, RibbedBelt.WidestOffsetMm); break;
                case 5: thickness = json.Quantity(WireUnits.Length, 0, RibbedBelt.ThickestMm); break;
                default: mass = json.Quantity(WireUnits.LinearDensity, JsonCursor.AboveZero, RibbedBelt.HeaviestKilogramsPerMeter); break;
            }

            json.EndMember();
        }

        const ulong given = 1UL << 2;
        if ((seen & given) != 0)
        {
            json.Require(BeltMembers, seen, 1);
        }

        RibbedBelt belt = RibbedBelt.Unmeasured;
        double toPitch = back ?? belt.BackToPitchLineMm;
        double thick = thickness ?? belt.ThicknessMm;
        if (thick < toPitch)
        {
            json.NoteMeaning(
                thickness is null ? "/backToPitchLine" : "/thickness",
                FormattableString.Invariant($"{thickness ?? toPitch} mm"),
                FormattableString.Invariant($"a thickness ({thick} mm) of at least the way from the back to the pitch line ({toPitch} mm)"));
        }

        if (json.FaultCount > before)
        {
            return null;
        }

        belt = ribs is int count ? RibbedBelt.Pk(count) : belt;
        belt = length is double mm ? belt.OfEffectiveLength(Length.FromMillimeters(mm), tolerance is double off ? Length.FromMillimeters(off) : null) : belt;
        belt = belt.WithThickness(differential ?? belt.EffectiveLineDifferentialMm, toPitch, thick);
        return mass is double perRib ? belt.WithMassPerRib(LinearDensity.FromKilogramsPerMeter(perRib)) : belt;
    }

    private static Tensioner? ReadTensioner(ref JsonCursor json)
    {
        if (!json.BeginObject("a tensioner"))
        {
            return null;
        }

        int before = json.FaultCount;
        TensionerKind? kind = null;
        string? pulley = null;
        (double XMm, double YMm)? pivot = null;
        double? from = null;
        double? to = null;
        (double Torque, double Rate, Sense? Pushes)? spring = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(TensionerMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: kind = json.Word<TensionerKind>(); break;
                case 1: pulley = json.NotBlank(); break;
                case 2: pivot = ReadPoint(ref json); break;
                case 3: from = json.Quantity(WireUnits.Angle, -Turn, Turn); break;
                case 4: to = json.Quantity(WireUnits.Angle, -Turn, 2 * Turn); break;
                default: spring = ReadSpring(ref json); break;
            }

            json.EndMember();
        }

        json.Require(TensionerMembers, seen, 0, 1, 2, 3, 4);
        const ulong sprung = 1UL << 5;
        if (kind == TensionerKind.SetByHand && (seen & sprung) != 0)
        {
            json.Note("/spring", "a spring", "none on a tensioner that is set by hand");
        }

        if (from is double first && to is double second && (second <= first || second - first > Tensioner.WidestTravelDegrees))
        {
            json.NoteMeaning(
                "/counterClockwiseStop",
                FormattableString.Invariant($"{second} deg"),
                FormattableString.Invariant($"more than the clockwise stop, {first} deg, by at most {Tensioner.WidestTravelDegrees} deg"));
        }

        if (json.FaultCount > before || pivot is not (double x, double y))
        {
            return null;
        }

        Tensioner tensioner = kind == TensionerKind.Automatic
            ? Tensioner.Automatic(pulley!, x, y, from!.Value, to!.Value)
            : Tensioner.SetByHand(pulley!, x, y, from!.Value, to!.Value);
        return spring is { } pushing
            ? tensioner.WithSpring(Torque.FromNewtonMeters(pushing.Torque), pushing.Rate, pushing.Pushes)
            : tensioner;
    }

    private static (double Torque, double Rate, Sense? Pushes)? ReadSpring(ref JsonCursor json)
    {
        if (!json.BeginObject("a spring"))
        {
            return null;
        }

        double? torque = null;
        double? rate = null;
        Rotation? pushes = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(SpringMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: torque = json.Quantity(WireUnits.Torque, JsonCursor.AboveZero, Tensioner.StrongestNewtonMeters); break;
                case 1: rate = json.Quantity(WireUnits.TorquePerAngle, 0, Tensioner.StiffestNewtonMetersPerDegree); break;
                default: pushes = ReadRotation(ref json); break;
            }

            json.EndMember();
        }

        json.Require(SpringMembers, seen, 0);
        return torque is double newtonMeters ? (newtonMeters, rate ?? 0, pushes?.AsSeenFrom(Viewpoint.PulleyEnd)) : null;
    }
}
