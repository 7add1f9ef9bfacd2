using MarineService.Core.Fluids;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>Sumps and dipsticks in documents.</summary>
internal static partial class FluidsWire
{
    internal const double LeastLiters = 0.01;
    internal const double MostLiters = 1000;

    private static readonly MemberNames SumpMembers = new(
        "serviceFill",
        "serviceFillUncertainty",
        "filter",
        "filterUncertainty",
        "withoutFilter",
        "dryCapacity",
        "plugResidual",
        "extractorResidual",
        "onlyByExtractor",
        "passages",
        "oilDensity",
        "dipstick");

    private static readonly MemberNames ResidualMembers = new("volume", "standardUncertainty");
    private static readonly MemberNames PassageMembers = new("name", "volume", "drains");

    private static readonly MemberNames DipstickMembers = new(
        "range", "rangeUncertainty", "oilTemperature", "seating", "attitude", "addMark", "fullMark", "shape");

    private static readonly MemberNames ShapeMembers = new("length", "width", "height", "stickAft", "stickStarboard", "stickLean");

    internal static Sump? ReadSump(ref JsonCursor json)
    {
        if (!json.BeginObject("what the oil system holds"))
        {
            return null;
        }

        SumpParts parts = new();
        int before = json.FaultCount;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(SumpMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: parts.ServiceFill = json.Quantity(WireUnits.Volume, LeastLiters, MostLiters); break;
                case 1: parts.ServiceFillSigma = json.Quantity(WireUnits.Volume, 0, MostLiters); break;
                case 2: parts.Filter = json.Quantity(WireUnits.Volume, 0, MostLiters); break;
                case 3: parts.FilterSigma = json.Quantity(WireUnits.Volume, 0, MostLiters); break;
                case 4: parts.WithoutFilter = json.Quantity(WireUnits.Volume, LeastLiters, MostLiters); break;
                case 5: parts.DryCapacity = json.Quantity(WireUnits.Volume, LeastLiters, MostLiters); break;
                case 6: parts.Plug = ReadResidual(ref json); break;
                case 7: parts.Extractor = ReadResidual(ref json); break;
                case 8: parts.OnlyByExtractor = json.YesOrNo(); break;
                case 9: parts.Passages = ReadPassages(ref json); break;
                case 10: parts.OilDensity = json.Quantity(WireUnits.Density, VolumeCorrectionMath.MinBaseDensity, VolumeCorrectionMath.MaxBaseDensity); break;
                default: parts.Dipstick = ReadDipstick(ref json); break;
            }

            json.EndMember();
        }

        json.Require(SumpMembers, seen, 0, 2, 11);
        if (parts.OnlyByExtractor is not null)
        {
            json.Require(SumpMembers, seen, 7);
        }

        if (json.FaultCount > before)
        {
            return null;
        }

        Sump sump = parts.Build();
        NoteMisfits(ref json, sump);
        return json.FaultCount > before ? null : sump;
    }

    // Figures that contradict each other: no account can be kept with them, so they are faults of the document.
    private static void NoteMisfits(ref JsonCursor json, Sump sump)
    {
        foreach (Finding misfit in sump.Validate())
        {
            if (misfit.Severity >= Severity.Act)
            {
                string place = misfit.Code switch
                {
                    "FLUID-040" => "/filter",
                    "FLUID-041" => "/dipstick/fullMark",
                    "FLUID-042" => "/dipstick/range",
                    "FLUID-044" => "/withoutFilter",
                    "FLUID-046" => "/dryCapacity",
                    _ => sump.FindResidual(DrainMethod.DrainPlug)!.Value.Liters >= sump.ServiceFillLiters - sump.FilterLiters ? "/plugResidual" : "/extractorResidual",
                };
                json.NoteMeaning(place, misfit.Figures[0].ToString(DisplayUnits.Metric), misfit.Message(DisplayUnits.Metric));
            }
        }
    }

    private static (double Liters, double? Sigma)? ReadResidual(ref JsonCursor json)
    {
        if (!json.BeginObject("a residual with its volume"))
        {
            return null;
        }

        double? liters = null;
        double? sigma = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(ResidualMembers, ref seen, ref last)) >= 0)
        {
            if (member == 0)
            {
                liters = json.Quantity(WireUnits.Volume, 0, MostLiters);
            }
            else
            {
                sigma = json.Quantity(WireUnits.Volume, 0, MostLiters);
            }

            json.EndMember();
        }

        json.Require(ResidualMembers, seen, 0);
        return liters is double amount ? (amount, sigma) : null;
    }

    private static List<OilPassage> ReadPassages(ref JsonCursor json)
    {
        List<OilPassage> passages = [];
        if (!json.BeginArray("a list of oil coolers, remote filters and the like"))
        {
            return passages;
        }

        while (json.NextItem())
        {
            if (!json.BeginObject("a passage with name, volume and whether it drains"))
            {
                continue;
            }

            string? name = null;
            double? liters = null;
            bool? drains = null;
            ulong seen = 0;
            int last = -1;
            int member;
            while ((member = json.NextMember(PassageMembers, ref seen, ref last)) >= 0)
            {
                switch (member)
                {
                    case 0: name = json.NotBlank(); break;
                    case 1: liters = json.Quantity(WireUnits.Volume, LeastLiters, MostLiters); break;
                    default: drains = json.YesOrNo(); break;
                }

                json.EndMember();
            }

            json.Require(PassageMembers, seen, 0, 1, 2);
            if (name is not null && liters is double amount && drains is bool leaves)
            {
                passages.Add(OilPassage.Of(name, Volume.FromLiters(amount), leaves));
            }
        }

        return passages;
    }

    private static Dipstick? ReadDipstick(ref JsonCursor json)
    {
        if (!json.BeginObject("a dipstick with its range"))
        {
            return null;
        }

        DipstickParts parts = new();
        int before = json.FaultCount;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(DipstickMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: parts.Range = json.Quantity(WireUnits.Volume, LeastLiters, MostLiters); break;
                case 1: parts.RangeSigma = json.Quantity(WireUnits.Volume, 0, MostLiters); break;
                case 2: parts.OilCelsius = json.Quantity(WireUnits.Temperature, 40, 150); break;
                case 3: parts.Seating = json.Word<StickSeating>(); break;
                case 4: parts.Attitude = json.Word<BoatAttitude>(); break;
                case 5: parts.AddMarkMm = json.Quantity(WireUnits.Length, 0, 5000); break;
                case 6: parts.FullMarkMm = json.Quantity(WireUnits.Length, 0, 5000); break;
                default: parts.Shape = ReadShape(ref json); break;
            }

            json.EndMember();
        }

        json.Require(DipstickMembers, seen, 0);
        const ulong marks = (1UL << 5) | (1UL << 6);
        if ((seen & marks) is not 0 and not marks)
        {
            json.Require(DipstickMembers, seen, 5, 6);
        }

        return json.FaultCount == before ? parts.Build() : null;
    }

    private static SumpShape? ReadShape(ref JsonCursor json)
    {
        if (!json.BeginObject("the sump's shape"))
        {
            return null;
        }

        double? length = null;
        double? width = null;
        double? height = null;
        double aft = 0;
        double starboard = 0;
        double lean = 0;
        int before = json.FaultCount;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(ShapeMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: length = json.Quantity(WireUnits.Length, 1, 5000); break;
                case 1: width = json.Quantity(WireUnits.Length, 1, 5000); break;
                case 2: height = json.Quantity(WireUnits.Length, 1, 5000); break;
                case 3: aft = json.Quantity(WireUnits.Length, -2500, 2500) ?? 0; break;
                case 4: starboard = json.Quantity(WireUnits.Length, -2500, 2500) ?? 0; break;
                default: lean = json.Quantity(WireUnits.Angle, 0, 59) ?? 0; break;
            }

            json.EndMember();
        }

        json.Require(ShapeMembers, seen, 0, 1);
        if (json.FaultCount > before)
        {
            return null;
        }

        NoteOutside(ref json, "/stickAft", aft, length!.Value);
        NoteOutside(ref json, "/stickStarboard", starboard, width!.Value);
        return json.FaultCount > before
            ? null
            : SumpShape.Rectangular(Millimeters(length.Value), Millimeters(width!.Value), height is double tall ? Millimeters(tall) : null)
                .WithStickAt(Millimeters(aft), Millimeters(starboard), Angle.FromDegrees(lean));
    }

    private static void NoteOutside(ref JsonCursor json, string place, double fromCenterMm, double sideMm)
    {
        if (Math.Abs(fromCenterMm) > 0.5 * sideMm)
        {
            json.NoteMeaning(place, FormattableString.Invariant($"{fromCenterMm} mm"), FormattableString.Invariant($"a place within the sump, at most {0.5 * sideMm} mm from its center"));
        }
    }

    private static Length Millimeters(double mm) => Length.FromMillimeters(mm);
}
