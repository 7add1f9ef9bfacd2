using MarineService.Core.Belts;
using MarineService.Core.Cooling;
using MarineService.Core.Engines;
using MarineService.Core.Fluids;
using MarineService.Core.LayUp;
using MarineService.Core.Oils;
using MarineService.Core.Parts;
using MarineService.Core.Scheduling;
using MarineService.Core.Specifications;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>Data sheets of engines and boats in documents.</summary>
internal static partial class SpecificationsWire
{
    /// <summary>The members of an engine's data sheet; the document puts format and version before them.</summary>
    internal static readonly MemberNames EngineSheet = new("format", "version", "engine", "meter", "variants", "tasks", "permittedOils", "fittedOil", "beltDrive", "sump", "oilTask", "rawWater", "layUp", "covers", "parts");

    /// <summary>The members of a boat's data sheet; the document puts format and version before them.</summary>
    internal static readonly MemberNames BoatSheet = new("format", "version", "boat", "engines", "tasks");

    private static readonly MemberNames FittedMembers = new("id", "specification");
    private static readonly MemberNames InnerSheet = new("engine", "meter", "variants", "tasks", "permittedOils", "fittedOil", "beltDrive", "sump", "oilTask", "rawWater", "layUp", "covers", "parts");
    private static readonly MemberNames VariantMembers = new("designation", "ratedPower", "ratedSpeed");

    internal static EngineSpecification? ReadEngineSheet(ref JsonCursor json, DocumentHead? head)
    {
        if (!json.BeginObject("the data sheet of an engine"))
        {
            return null;
        }

        MemberNames names = head is null ? InnerSheet : EngineSheet;
        int shift = head is null ? 0 : 2;
        Engine? engine = null;
        HourMeter? meter = null;
        List<EngineVariant> variants = [];
        List<ServiceTask?>? tasks = null;
        PermittedOils? permitted = null;
        LabelledOil? fitted = null;
        BeltDrive? drive = null;
        Sump? sump = null;
        string? oilTask = null;
        RawWaterSystem? rawWater = null;
        LayUpSheet? layUp = null;
        List<FittedCover> covers = [];
        PartsSheet? parts = null;
        List<string?> partsTasks = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(names, ref seen, ref last)) >= 0)
        {
            switch (member - shift)
            {
                case 0: engine = EnginesWire.ReadEngine(ref json); break;
                case 1: meter = EnginesWire.ReadMeter(ref json); break;
                case 2: variants = ReadVariants(ref json); break;
                case 3: tasks = SchedulingWire.ReadTasks(ref json, hoursAllowed: true); break;
                case 4: permitted = OilsWire.ReadPermitted(ref json); break;
                case 5: fitted = OilsWire.ReadLabelled(ref json); break;
                case 6: drive = BeltsWire.ReadDrive(ref json); break;
                case 7: sump = FluidsWire.ReadSump(ref json); break;
                case 8: oilTask = json.NotBlank(); break;
                case 9: rawWater = CoolingWire.ReadSystem(ref json); break;
                case 10: layUp = LayUpWire.Read(ref json); break;
                case 11: covers = CoversWire.Read(ref json); break;
                case 12: parts = PartsWire.Read(ref json, out partsTasks); break;
                default: head!.Read(ref json, member); break;
            }

            json.EndMember();
        }

        if (head is not null)
        {
            DocumentHead.Check(ref json, seen, names);
        }

        json.Require(names, seen, shift, shift + 3);
        if ((seen & (1UL << (shift + 8))) != 0)
        {
            json.Require(names, seen, shift + 7);
        }

        if (tasks is null)
        {
            return null;
        }

        SchedulingWire.CheckPlan(ref json, "/tasks", tasks);
        PartsWire.CheckTasks(ref json, "/parts", partsTasks, tasks);
        if (engine is null || json.FaultCount > 0)
        {
            return null;
        }

        EngineSpecification sheet = EngineSpecification.Of(engine).WithMeter(meter ?? HourMeter.Plain).With([.. variants]).With([.. tasks.Select(task => task!)]).With([.. covers]);
        sheet = permitted is null ? sheet : sheet.WithPermittedOils(permitted);
        sheet = fitted is null ? sheet : sheet.WithFittedOil(fitted);
        sheet = drive is null ? sheet : sheet.WithBeltDrive(drive);
        sheet = rawWater is null ? sheet : sheet.WithRawWater(rawWater);
        sheet = layUp is null ? sheet : sheet.WithLayUp(layUp);
        sheet = parts is null ? sheet : sheet.WithPartsSheet(parts);
        return sump is null ? sheet : sheet.WithSump(sump, oilTask ?? EngineSpecification.EngineOilTask);
    }

    internal static BoatSpecification? ReadBoatSheet(ref JsonCursor json, DocumentHead head)
    {
        if (!json.BeginObject("the data sheet of a boat"))
        {
            return null;
        }

        Boat? boat = null;
        List<KeyValuePair<string, EngineSpecification?>> engines = [];
        List<ServiceTask?> tasks = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(BoatSheet, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 2: boat = EnginesWire.ReadBoat(ref json); break;
                case 3: engines = ReadFitted(ref json); break;
                case 4: tasks = SchedulingWire.ReadTasks(ref json, hoursAllowed: false); break;
                default: head.Read(ref json, member); break;
            }

            json.EndMember();
        }

        DocumentHead.Check(ref json, seen, BoatSheet);
        json.Require(BoatSheet, seen, 2, 3);
        SchedulingWire.CheckPlan(ref json, "/tasks", tasks);
        if (boat is null || json.FaultCount > 0)
        {
            return null;
        }

        return BoatSpecification.Of(boat)
            .With([.. tasks.Select(task => task!)])
            .WithEngines(engines.Select(engine => FittedEngine.Of(engine.Key, engine.Value!)));
    }

    private static List<KeyValuePair<string, EngineSpecification?>> ReadFitted(ref JsonCursor json)
    {
        List<KeyValuePair<string, EngineSpecification?>> engines = [];
        HashSet<string> ids = new(StringComparer.Ordinal);
        if (!json.BeginArray("a list of engines"))
        {
            return engines;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("an engine with id and specification"))
            {
                continue;
            }

            string? id = null;
            EngineSpecification? specification = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(FittedMembers, ref seen, ref last)) >= 0)
            {
                if (member == 0)
                {
                    id = json.NotBlank();
                }
                else
                {
                    specification = ReadEngineSheet(ref json, null);
                }

                json.EndMember();
            }

            json.Require(FittedMembers, seen, 0, 1);
            if (id == BoatSpecification.Scope)
            {
                json.Note("/id", "'boat'", "another id: 'boat' stands for the boat itself");
            }
            else if (id is not null && !ids.Add(id))
            {
                json.NoteMeaning("/id", $"'{id}'", "an id that no other engine has");
            }
            else if (id is not null)
            {
                engines.Add(new(id, specification));
            }
        }

        return engines;
    }

    private static List<EngineVariant> ReadVariants(ref JsonCursor json)
    {
        List<EngineVariant> variants = [];
        HashSet<string> designations = new(StringComparer.Ordinal);
        if (!json.BeginArray("a list of variants"))
        {
            return variants;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a variant"))
            {
                continue;
            }

            string? designation = null;
            double? power = null;
            double? speed = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(VariantMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: designation = json.NotBlank(); break;
                    case 1: power = json.Quantity(WireUnits.Power, 0.5, 5000); break;
                    default: speed = json.Quantity(WireUnits.RotationalSpeed, 100, 15_000); break;
                }

                json.EndMember();
            }

            json.Require(VariantMembers, seen, 0, 1, 2);
            if (designation is not null && !designations.Add(designation))
            {
                json.NoteMeaning("/designation", $"'{designation}'", "a designation that no other variant has");
            }
            else if (designation is not null && power is double kilowatts && speed is double revolutions)
            {
                variants.Add(EngineVariant.Of(designation, Power.FromKilowatts(kilowatts), RotationalSpeed.FromRevolutionsPerMinute(revolutions)));
            }
        }

        return variants;
    }
}
