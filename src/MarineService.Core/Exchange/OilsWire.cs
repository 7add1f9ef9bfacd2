using MarineService.Core.Oils;
using UnitsNet;

namespace MarineService.Core.Exchange;

/// <summary>Permitted and labelled oils in documents. Grades and categories are their own words, read by the room that knows them.</summary>
internal static partial class OilsWire
{
    private static readonly MemberNames PermittedMembers = new("grades", "required", "forbidden");
    private static readonly MemberNames GradeMembers = new("grade", "coldest", "hottest", "preference");
    private static readonly MemberNames LabelMembers = new("grade", "claims", "viscosityAt40C", "viscosityAt100C");

    internal static PermittedOils? ReadPermitted(ref JsonCursor json)
    {
        if (!json.BeginObject("the oils that the maker permits"))
        {
            return null;
        }

        List<PermittedGrade> grades = [];
        List<CategoryRequirement> required = [];
        List<ServiceCategory> forbidden = [];
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(PermittedMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: grades = ReadGrades(ref json); break;
                case 1: required = ReadRequired(ref json); break;
                default: forbidden = ReadForbidden(ref json); break;
            }

            json.EndMember();
        }

        json.Require(PermittedMembers, seen, 0);
        PermittedOils? permitted = PermittedOils.Of(grades, out _);
        return permitted is null
            ? null
            : permitted.Requiring(required).Forbidding([.. forbidden.Select(category => category.Name)]);
    }

    internal static LabelledOil? ReadLabelled(ref JsonCursor json)
    {
        if (!json.BeginObject("an oil by its label"))
        {
            return null;
        }

        SaeGrade? grade = null;
        List<CategoryClaim> claims = [];
        double? kv40 = null;
        double? kv100 = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(LabelMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: grade = ReadGrade(ref json); break;
                case 1: claims = ReadClaims(ref json, "a list of service categories"); break;
                case 2: kv40 = ReadViscosity(ref json, OilViscosity.Most40); break;
                default: kv100 = ReadViscosity(ref json, OilViscosity.Most100); break;
            }

            json.EndMember();
        }

        json.Require(LabelMembers, seen, 0);
        const ulong both = (1UL << 2) | (1UL << 3);
        if ((seen & both) is not 0 and not both)
        {
            json.Require(LabelMembers, seen, 2, 3);
        }

        if (kv100 >= kv40)
        {
            json.NoteMeaning("/viscosityAt100C", FormattableString.Invariant($"{kv100} mm2/s"), FormattableString.Invariant($"less than at 40 °C, {kv40} mm2/s"));
            return null;
        }

        return grade is null ? null
            : LabelledOil.Of(grade, claims, kv40 is double at40 && kv100 is double at100
                ? OilViscosity.Of(KinematicViscosity.FromCentistokes(at40), KinematicViscosity.FromCentistokes(at100))
                : null);
    }

    private static List<PermittedGrade> ReadGrades(ref JsonCursor json)
    {
        List<PermittedGrade> grades = [];
        if (!json.BeginArray("a list of permitted grades"))
        {
            return grades;
        }

        bool isEmpty = true;
        while (json.NextItem())
        {
            isEmpty = false;
            if (ReadPermittedGrade(ref json) is PermittedGrade permitted)
            {
                if (grades.Exists(known => known.Grade == permitted.Grade))
                {
                    json.NoteMeaning("/grade", $"'{permitted.Grade.Designation}'", "a grade that is not in the list yet");
                }
                else
                {
                    grades.Add(permitted);
                }
            }
        }

        if (isEmpty)
        {
            json.Note("", "an empty list", "at least one permitted grade");
        }

        return grades;
    }

    private static PermittedGrade? ReadPermittedGrade(ref JsonCursor json)
    {
        if (!json.BeginObject("a permitted grade"))
        {
            return null;
        }

        SaeGrade? grade = null;
        double? coldest = null;
        double? hottest = null;
        int? preference = null;
        ulong seen = 0;
        int last = -1;
        int member;
        while ((member = json.NextMember(GradeMembers, ref seen, ref last)) >= 0)
        {
            switch (member)
            {
                case 0: grade = ReadGrade(ref json); break;
                case 1: coldest = json.Quantity(WireUnits.Temperature, OilGuard.ColdestCelsius, OilGuard.HottestAmbientCelsius); break;
                case 2: hottest = json.Quantity(WireUnits.Temperature, OilGuard.ColdestCelsius, OilGuard.HottestAmbientCelsius); break;
                default: preference = json.WholeNumber(1, PermittedGrade.LastPreference); break;
            }

            json.EndMember();
        }

        json.Require(GradeMembers, seen, 0);
        if (hottest < coldest)
        {
            json.NoteMeaning("/hottest", FormattableString.Invariant($"{hottest} Cel"), FormattableString.Invariant($"at least the coldest, {coldest} Cel"));
            return null;
        }

        return grade is null ? null : PermittedGrade.Of(grade, Celsius(coldest), Celsius(hottest), preference);
    }

    // Rounded as the room does, so that what is compared here is what is compared there.
    private static double? ReadViscosity(ref JsonCursor json, double most) =>
        json.Quantity(WireUnits.KinematicViscosity, BlendMath.LeastKinematic, most) is double kinematic ? OilGuard.Round(kinematic) : null;

    private static SaeGrade? ReadGrade(ref JsonCursor json)
    {
        if (json.NotBlank() is not string text)
        {
            return null;
        }

        if (SaeGradeText.Read(text, out SaeGrade? grade) is string expected)
        {
            json.NoteMeaning("", $"'{text}'", expected);
        }

        return grade;
    }

    private static List<CategoryRequirement> ReadRequired(ref JsonCursor json)
    {
        List<CategoryRequirement> required = [];
        if (json.BeginArray("a list of requirements, each a list of service categories of which one will do"))
        {
            while (json.NextItem())
            {
                int before = json.FaultCount;
                List<CategoryClaim> anyOf = ReadClaims(ref json, "a list of service categories of which one will do");
                if (anyOf.Count > 0)
                {
                    required.Add(CategoryRequirement.OneOf([.. anyOf]));
                }
                else if (json.FaultCount == before)
                {
                    json.Note("", "an empty list", "at least one service category");
                }
            }
        }

        return required;
    }

    private static List<CategoryClaim> ReadClaims(ref JsonCursor json, string expected)
    {
        List<CategoryClaim> claims = [];
        if (json.BeginArray(expected))
        {
            while (json.NextItem())
            {
                if (json.NotBlank() is not string text)
                {
                    continue;
                }

                if (CategoryClaim.Read(text) is CategoryClaim claim)
                {
                    claims.Add(claim);
                }
                else
                {
                    json.NoteMeaning("", $"'{text}'", CategoryTable.OneOfAll);
                }
            }
        }

        return claims;
    }

    private static List<ServiceCategory> ReadForbidden(ref JsonCursor json)
    {
        List<ServiceCategory> forbidden = [];
        if (json.BeginArray("a list of service categories"))
        {
            while (json.NextItem())
            {
                if (json.NotBlank() is not string text)
                {
                    continue;
                }

                if (ServiceCategory.TryParse(text, out ServiceCategory? category))
                {
                    forbidden.Add(category);
                }
                else
                {
                    json.NoteMeaning("", $"'{text}'", CategoryTable.OneOfAll);
                }
            }
        }

        return forbidden;
    }

    private static Temperature? Celsius(double? celsius) => celsius is double value ? Temperature.FromDegreesCelsius(value) : null;
}
