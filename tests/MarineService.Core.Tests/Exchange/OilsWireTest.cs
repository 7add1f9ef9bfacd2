using System.Text;
using FsCheck;
using FsCheck.Fluent;
using MarineService.Core.Exchange;
using MarineService.Core.Oils;
using MarineService.Core.Specifications;
using UnitsNet;

namespace MarineService.Core.Tests.Exchange;

public sealed class OilsWireTest
{
    private static readonly string[] SomeClaims = ["CK-4", "SP", "FC-W", "E9-16", "A3/B4-2010", "CI-4 PLUS", "FC-W Catalyst Compatible"];

    [Law]
    public Property Sheet_WithOils_ReadsBackAsItWasWritten() =>
        Prop.ForAll(Sheets().ToArbitrary(), sheet =>
        {
            string text = EngineSpecificationJson.ToText(sheet);
            ReadResult<EngineSpecification> back = EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(text));
            return (back.IsRead
                && EngineSpecificationJson.ToText(back.Value) == text
                && back.Value.PermittedOils?.ToString() == sheet.PermittedOils?.ToString()
                && back.Value.FittedOil?.ToString() == sheet.FittedOil?.ToString()
                && back.Value.FittedOil?.Viscosity == sheet.FittedOil?.Viscosity).Label(text + "\n" + string.Join("\n", back.Faults));
        });

    [Fact]
    public void Sheet_AsPeopleWriteIt_IsRead()
    {
        EngineSpecification sheet = Read("""
            "permittedOils": {
              "grades": [
                { "grade": "SAE 15w-40", "coldest": { "value": 5, "unit": "[degF]" }, "hottest": { "value": 40, "unit": "Cel" }, "preference": 2 },
                { "grade": "10W-30" }
              ],
              "required": [ [ "API CI-4", "E7-2016" ], [ "FC-W" ] ],
              "forbidden": [ "CJ-4" ]
            },
            "fittedOil": { "grade": "15W-40", "claims": [ "CK-4" ], "viscosityAt40C": { "value": 110, "unit": "cSt" }, "viscosityAt100C": { "value": 14.5, "unit": "mm2/s" } }
            """).Value;
        Assert.Equal("15W-40 from -15 to 40 °C, 10W-30; CI-4 or E7-16; FC-W; never CJ-4", sheet.PermittedOils!.ToString());
        Assert.Equal(2, sheet.PermittedOils.Grades[0].MakersPreference);
        Assert.Equal(110, sheet.FittedOil!.Viscosity!.At40C.Centistokes);
    }

    [Fact]
    public void Sheet_WithoutOils_SaysNothingOfThem()
    {
        EngineSpecification sheet = Read("").Value;
        Assert.Null(sheet.PermittedOils);
        Assert.Null(sheet.FittedOil);
        Assert.DoesNotContain("Oil", EngineSpecificationJson.ToText(sheet), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "grades": [ { "grade": "40W-15" } ] }""", "/permittedOils/grades/0/grade: '40W-15'; expected the winter grade first")]
    [InlineData("""{ "grades": [ { "grade": "15W40W" } ] }""", "/permittedOils/grades/0/grade: '15W40W'; expected a winter grade (0W, 5W")]
    [InlineData("""{ "grades": [ { "grade": "15W40" } ] }""", "/permittedOils/grades/0/grade: '15W40'; expected a hyphen between the two grades: 15W-40")]
    [InlineData("""{ "grades": [ { "grade": 30 } ] }""", "/permittedOils/grades/0/grade: 30; expected text that is not blank")]
    [InlineData("""{ "grades": [ { "grade": "30" }, { "grade": "SAE 30" } ] }""", "/permittedOils/grades/1/grade: '30'; expected a grade that is not in the list yet")]
    [InlineData("""{ "grades": [ { "grade": "30", "coldest": { "value": 10, "unit": "Cel" }, "hottest": { "value": 5, "unit": "Cel" } } ] }""", "/permittedOils/grades/0/hottest: 5 Cel; expected at least the coldest, 10 Cel")]
    [InlineData("""{ "grades": [ { "grade": "30", "coldest": { "value": -70, "unit": "Cel" } } ] }""", "/permittedOils/grades/0/coldest/value: -70; expected from -60 to 60 Cel")]
    [InlineData("""{ "grades": [ { "grade": "30", "preference": 0 } ] }""", "/permittedOils/grades/0/preference: 0; expected a whole number from 1 to 100")]
    [InlineData("""{ "grades": [ {} ] }""", "/permittedOils/grades/0/grade: missing; expected this member")]
    [InlineData("""{ "grades": [] }""", "/permittedOils/grades: an empty list; expected at least one permitted grade")]
    [InlineData("""{}""", "/permittedOils/grades: missing; expected this member")]
    [InlineData("""[]""", "/permittedOils: an array; expected the oils that the maker permits")]
    [InlineData("""{ "grades": [ { "grade": "30" } ], "required": [ [ "XY-9" ] ] }""", "/permittedOils/required/0/0: 'XY-9'; expected one of SA, SB")]
    [InlineData("""{ "grades": [ { "grade": "30" } ], "required": [ [] ] }""", "/permittedOils/required/0: an empty list; expected at least one service category")]
    [InlineData("""{ "grades": [ { "grade": "30" } ], "required": [ "CI-4" ] }""", "/permittedOils/required/0: 'CI-4'; expected a list of service categories of which one will do")]
    [InlineData("""{ "grades": [ { "grade": "30" } ], "forbidden": [ "E9-16" ] }""", "/permittedOils/forbidden/0: 'E9-16'; expected one of SA, SB")]
    [InlineData("""{ "grades": [ { "grade": "30" } ], "allowed": [] }""", "/permittedOils/allowed: an array; expected no such member, but one of grades, required, forbidden")]
    public void PermittedOils_ThatAreWrong_AreNotedWithTheirPlace(string permitted, string fault) =>
        Assert.StartsWith(fault, Assert.Single(Read($"\"permittedOils\": {permitted}").Faults).ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("""{ "claims": [] }""", "/fittedOil/grade: missing; expected this member")]
    [InlineData("""{ "grade": "15W-40", "claims": [ "CK-4", 7 ] }""", "/fittedOil/claims/1: 7; expected text that is not blank")]
    [InlineData("""{ "grade": "15W-40", "claims": [ "CK-4-16" ] }""", "/fittedOil/claims/0: 'CK-4-16'; expected one of SA")]
    [InlineData("""{ "grade": "15W-40", "viscosityAt40C": { "value": 110, "unit": "mm2/s" } }""", "/fittedOil/viscosityAt100C: missing; expected this member")]
    [InlineData("""{ "grade": "15W-40", "viscosityAt40C": { "value": 10, "unit": "mm2/s" }, "viscosityAt100C": { "value": 14, "unit": "mm2/s" } }""", "/fittedOil/viscosityAt100C: 14 mm2/s; expected less than at 40 °C, 10 mm2/s")]
    [InlineData("""{ "grade": "15W-40", "viscosityAt40C": { "value": 10.0000001, "unit": "mm2/s" }, "viscosityAt100C": { "value": 10, "unit": "mm2/s" } }""", "/fittedOil/viscosityAt100C: 10 mm2/s; expected less than at 40 °C")]
    [InlineData("""{ "grade": "15W-40", "viscosityAt40C": { "value": 0.1, "unit": "mm2/s" }, "viscosityAt100C": { "value": 14, "unit": "St" } }""", "/fittedOil/viscosityAt40C/value: 0.1; expected from 0.4 to 100000 mm2/s")]
    public void FittedOil_ThatIsWrong_IsNotedWithItsPlace(string fitted, string fault) =>
        Assert.StartsWith(fault, Read($"\"fittedOil\": {fitted}").Faults[0].ToString(), StringComparison.Ordinal);

    [Fact]
    public void Faults_OfBothOils_ComeAtOnce()
    {
        IReadOnlyList<ReadFault> faults = Read("""
            "permittedOils": { "grades": [ { "grade": "7W" }, { "grade": "8W" } ], "forbidden": [ "?" ] }, "fittedOil": { "grade": "9W" }
            """).Faults;
        Assert.Equal(
            ["/permittedOils/grades/0/grade", "/permittedOils/grades/1/grade", "/permittedOils/forbidden/0", "/fittedOil/grade"],
            faults.Select(fault => fault.Place));
    }

    private static ReadResult<EngineSpecification> Read(string oils) => EngineSpecificationJson.Read(Encoding.UTF8.GetBytes(
        "{ \"format\": \"marine-service/engine-specification\", \"version\": 1, \"engine\": { \"designation\": \"Brae 16D\" }, \"tasks\": []"
        + (oils.Length == 0 ? "" : ", " + oils) + " }"));

    private static Gen<EngineSpecification> Sheets() =>
        from grades in Gen.Shuffle(SaeGrade.All.ToArray())
        from count in Gen.Choose(1, 5)
        from coldest in Gen.ArrayOf(Gen.Choose(-400, 200), 5)
        from hottest in Gen.ArrayOf(Gen.Choose(-400, 600), 5)
        from claims in Gen.SubListOf(SomeClaims)
        from kinds in Gen.ArrayOf(Gen.Choose(0, 2), 8)
        select Sheet([.. grades.Take(count)], coldest, hottest, [.. claims], kinds);

    private static EngineSpecification Sheet(SaeGrade[] grades, int[] coldest, int[] hottest, string[] claims, int[] kinds)
    {
        PermittedOils permitted = PermittedOils.Of([.. grades.Select((grade, i) => PermittedGrade.Of(
            grade,
            kinds[i] == 0 ? null : Temperature.FromDegreesCelsius(coldest[i] / 10.0),
            kinds[i] == 2 ? Temperature.FromDegreesCelsius(Math.Max(coldest[i], hottest[i]) / 10.0) : null,
            kinds[i] == 1 ? i + 1 : null))]);
        permitted = claims.Length == 0 ? permitted : permitted.Requiring(claims).Requiring(claims[0]).Forbidding("TC-W3");
        LabelledOil fitted = LabelledOil.Of(
            grades[0], claims.Select(CategoryClaim.Parse), kinds[5] == 0 ? null : OilViscosity.Of(KinematicViscosity.FromCentistokes(110.25), KinematicViscosity.FromCentistokes(14.5)));
        EngineSpecification sheet = EngineSpecification.Named("Brae 16D");
        sheet = kinds[6] == 0 ? sheet : sheet.WithPermittedOils(permitted);
        return kinds[7] == 0 ? sheet : sheet.WithFittedOil(fitted);
    }
}
