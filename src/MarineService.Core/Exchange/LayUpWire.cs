using MarineService.Core.Engines;
using MarineService.Core.LayUp;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>What a data sheet knows for the winter, in documents.</summary>
internal static partial class LayUpWire
{
    private const double LeastLiters = 0.01;

    private static readonly MemberNames SheetMembers = new("circuit", "lowPoints", "absent", "cylinders", "fuelTank");
    private static readonly MemberNames PointMembers = new("id", "kind", "title", "drains", "holds", "trapped");
    private static readonly MemberNames CylinderMembers = new("count", "displacement", "compressionRatio");
    private static readonly MemberNames TankMembers = new("fuel", "capacity", "title");

    internal static LayUpSheet? Read(ref JsonCursor json)
    {
        if (!json.BeginObject("what is known for the winter"))
        {
            return null;
        }

        int before = json.Faults.Count;
        double? circuit = null;
        List<LowPoint>? points = null;
        List<LowPointKind> absent = [];
        Cylinders? cylinders = null;
        FuelTank? tank = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(SheetMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: circuit = json.Quantity(WireUnits.Volume, LeastLiters, LayUpGuard.MaxLiters); break;
                case 1: points = ReadPoints(ref json); break;
                case 2: absent = ReadAbsent(ref json); break;
                case 3: cylinders = ReadCylinders(ref json); break;
                default: tank = ReadTank(ref json); break;
            }

            json.EndMember();
        }

        if ((seen & 0b101) != 0)
        {
            json.Require(SheetMembers, seen, 1);
        }

        if (json.Faults.Count > before)
        {
            return null;
        }

        LayUpSheet sheet = LayUpSheet.Empty;
        sheet = cylinders is null ? sheet : sheet.With(cylinders);
        sheet = tank is null ? sheet : sheet.With(tank);
        return points is null ? sheet : BuildSide(ref json, points, absent, circuit) is RawWaterSide side ? sheet.With(side) : null;
    }

    // What only all members together can tell.
    private static RawWaterSide? BuildSide(ref JsonCursor json, List<LowPoint> points, List<LowPointKind> absent, double? circuit)
    {
        RawWaterSide side = RawWaterSide.Of([.. points]);
        if (circuit is double liters)
        {
            if (liters < side.TrappedLiters)
            {
                json.NoteMeaning("/circuit", FormattableString.Invariant($"{liters} L"), FormattableString.Invariant($"at least the {side.TrappedLiters} L that stay after draining"));
                return null;
            }

            side = side.WithCircuit(Volume.FromLiters(liters));
        }

        for (int i = 0; i < absent.Count; i++)
        {
            if (points.Exists(point => point.Kind == absent[i]))
            {
                json.NoteMeaning(FormattableString.Invariant($"/absent/{i}"), $"'{WireEnum<LowPointKind>.Word(absent[i])}'", "a kind that is not among the low points");
                return null;
            }
        }

        return absent.Count == 0 ? side : side.Without([.. absent]);
    }

    private static List<LowPoint>? ReadPoints(ref JsonCursor json)
    {
        if (!json.BeginArray("a list of low points"))
        {
            return null;
        }

        List<LowPoint> points = [];
        while (json.NextItem())
        {
            if (ReadPoint(ref json) is LowPoint point)
            {
                if (points.Exists(known => known.Id == point.Id))
                {
                    json.NoteMeaning("/id", $"'{point.Id}'", "an id that no other low point has");
                }
                else
                {
                    points.Add(point);
                }
            }
        }

        return points;
    }

    private static LowPoint? ReadPoint(ref JsonCursor json)
    {
        if (!json.BeginObject("a low point"))
        {
            return null;
        }

        string? id = null;
        LowPointKind? kind = null;
        string? title = null;
        int? drains = null;
        double? holds = null;
        double? trapped = null;
        int before = json.Faults.Count;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PointMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: id = json.NotBlank(); break;
                case 1: kind = json.Word<LowPointKind>(); break;
                case 2: title = json.NotBlank(); break;
                case 3: drains = json.WholeNumber(0, 20); break;
                case 4: holds = json.Quantity(WireUnits.Volume, LeastLiters, LayUpGuard.MaxLiters); break;
                default: trapped = json.Quantity(WireUnits.Volume, 0, LayUpGuard.MaxLiters); break;
            }

            json.EndMember();
        }

        json.Require(PointMembers, seen, 0, 1, 3);
        if (trapped > holds)
        {
            json.NoteMeaning("/trapped", FormattableString.Invariant($"{trapped} L"), FormattableString.Invariant($"at most the {holds} L that it holds"));
        }

        return json.Faults.Count > before
            ? null
            : LowPoint.Of(id!, kind!.Value, drains!.Value, Liters(holds), Liters(trapped), title);
    }

    private static List<LowPointKind> ReadAbsent(ref JsonCursor json)
    {
        List<LowPointKind> kinds = [];
        if (json.BeginArray("a list of kinds of low points"))
        {
            while (json.NextItem())
            {
                if (json.Word<LowPointKind>() is LowPointKind kind)
                {
                    if (kinds.Contains(kind))
                    {
                        json.Note("", $"'{WireEnum<LowPointKind>.Word(kind)}'", "each kind once");
                    }
                    else
                    {
                        kinds.Add(kind);
                    }
                }
            }
        }

        return kinds;
    }

    private static Cylinders? ReadCylinders(ref JsonCursor json)
    {
        if (!json.BeginObject("the cylinders"))
        {
            return null;
        }

        int? count = null;
        double? displacement = null;
        double? ratio = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(CylinderMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: count = json.WholeNumber(1, 24); break;
                case 1: displacement = json.Quantity(WireUnits.Volume, 0.02, 200); break;
                default: ratio = json.Real(4, 30); break;
            }

            json.EndMember();
        }

        json.Require(CylinderMembers, seen, 0, 1);
        return count is int number && displacement is double liters ? Cylinders.Of(number, Volume.FromLiters(liters), ratio) : null;
    }

    private static FuelTank? ReadTank(ref JsonCursor json)
    {
        if (!json.BeginObject("a fuel tank"))
        {
            return null;
        }

        Fuel? fuel = null;
        double? capacity = null;
        string? title = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(TankMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: fuel = json.Word<Fuel>(); break;
                case 1: capacity = json.Quantity(WireUnits.Volume, LeastLiters, LayUpGuard.MaxLiters); break;
                default: title = json.NotBlank(); break;
            }

            json.EndMember();
        }

        json.Require(TankMembers, seen, 1);
        return capacity is double liters ? FuelTank.Of(fuel ?? Fuel.NotStated, Volume.FromLiters(liters), title ?? FuelTank.PlainTitle) : null;
    }

    private static Volume? Liters(double? liters) => liters is double value ? Volume.FromLiters(value) : null;
}
