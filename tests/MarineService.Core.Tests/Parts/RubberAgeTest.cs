using MarineService.Core.Parts;
using MarineService.Core.Tests.Reference;
using NodaTime;

namespace MarineService.Core.Tests.Parts;

/// <summary>Storage limits by three guides, and an impeller of the second quarter of 2017.</summary>
public sealed class RubberAgeTest
{
    private static readonly RubberPart Impeller = RubberPart.Of("impeller", Polymer.Chloroprene, CureQuarter.Of(2017, 2)).Kept(asGuided: true);

    [Fact]
    public void LimitFor_EveryRowOfTheTable_IsAsReproduced()
    {
        foreach (IReadOnlyDictionary<string, string> row in ReferenceTable.Read("rubber-storage.csv"))
        {
            StorageGuide guide = StorageGuide.All.Single(known => known.Name == row["guide"]);
            Answer<StorageLimit> limit = guide.LimitFor(Enum.Parse<Polymer>(row["polymer"]));
            string initial = !limit.IsKnown ? "?" : limit.Value.InitialYears?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "none";
            Assert.Equal((row["guide"], row["polymer"], row["initial"]), (row["guide"], row["polymer"], initial));
            Assert.Equal((int)row.Number("extension"), limit.IsKnown ? limit.Value.ExtensionYears : 0);
        }
    }

    // Worked out independently from ISO 2230 group B, 7 + 3 years from the end of the quarter of cure.
    [Fact]
    public void Limits_OfTheSecondQuarterOf2017_EndWithTheSecondQuarters()
    {
        RubberAge age = Impeller.AgeOn(new LocalDate(2026, 10, 12));
        Assert.Equal(new LocalDate(2024, 6, 30), age.InitialLimit.Value);
        Assert.Equal(new LocalDate(2027, 6, 30), age.ExtendedLimit.Value);
        Assert.Equal("B", age.Limit.Value.Group);
    }

    [Theory]
    [InlineData("2024-06-30", false, StorageVerdict.Good)]
    [InlineData("2024-07-01", false, StorageVerdict.Inspect)]
    [InlineData("2024-07-01", true, StorageVerdict.Good)]
    [InlineData("2027-06-30", true, StorageVerdict.Good)]
    [InlineData("2027-07-01", true, StorageVerdict.TooOld)]
    [InlineData("2027-07-01", false, StorageVerdict.TooOld)]
    public void Storage_OnEachSideOfTheLimits_IsJudged(string day, bool inspected, StorageVerdict verdict)
    {
        LocalDate today = NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;
        Assert.Equal(verdict, (inspected ? Impeller.Inspected() : Impeller).AgeOn(today).Storage);
    }

    [Fact]
    public void Storage_WithoutQuarterPolymerOrKeeping_IsNotKnownAndSaysWhatIsMissing()
    {
        LocalDate today = new(2020, 1, 1);
        Assert.Contains("The quarter of cure.", RubberPart.Of("ring", Polymer.Nitrile).Kept(true).AgeOn(today).Missing);
        Assert.Contains("What the part is made of.", RubberPart.Of("ring", Polymer.NotStated, CureQuarter.Of(2018, 1)).Kept(true).AgeOn(today).Missing);
        RubberAge kept = RubberPart.Of("ring", Polymer.Nitrile, CureQuarter.Of(2018, 1)).AgeOn(today);
        Assert.Equal(StorageVerdict.NotKnown, kept.Storage);
        Assert.Contains("dark", Assert.Single(kept.Missing), StringComparison.Ordinal);
        Assert.Equal("RUBBER-003", Assert.Single(kept.Findings).Code);
    }

    [Fact]
    public void Storage_OfBadlyKeptRubberPastTheLimit_IsTooOldAllTheSame() =>
        Assert.Equal(StorageVerdict.TooOld, Impeller.Kept(asGuided: false).AgeOn(new LocalDate(2028, 1, 1)).Storage);

    [Fact]
    public void Storage_WithoutALimit_IsGoodHoweverOld()
    {
        RubberAge age = RubberPart.Of("ring", Polymer.Fluorocarbon, CureQuarter.Of(1990, 1)).Kept(true).AgeOn(new LocalDate(2026, 1, 1), StorageGuide.SaeArp5316);
        Assert.Equal(StorageVerdict.Good, age.Storage);
        Assert.False(age.InitialLimit.IsKnown);
    }

    [Fact]
    public void Service_IsNotSaidByAStorageLimit()
    {
        RubberAge age = Impeller.Fitted(new LocalDate(2020, 4, 1)).AgeOn(new LocalDate(2026, 10, 12));
        Assert.Equal(78, age.MonthsInService.Value);
        Assert.False(age.ServiceEnds.IsKnown);

        // It lay in store until it was fitted, within its limit; the years since are not storage.
        Assert.Equal(StorageVerdict.Good, age.Storage);
    }

    [Fact]
    public void Service_ByTheMakersMonths_EndsAndIsFound()
    {
        RubberPart fitted = Impeller.Fitted(new LocalDate(2020, 4, 1));
        Assert.Empty(fitted.AgeOn(new LocalDate(2023, 3, 31), serviceMonths: 36).Findings);
        Assert.Equal("RUBBER-004", Assert.Single(fitted.AgeOn(new LocalDate(2023, 4, 1), serviceMonths: 36).Findings).Code);
    }

    [Theory]
    [InlineData("2Q17", 2017, 2)]
    [InlineData("2Q2017", 2017, 2)]
    [InlineData("2017-Q2", 2017, 2)]
    [InlineData("4Q26", 2026, 4)]
    [InlineData("1Q27", null, 0)]
    [InlineData("1Q99", 1999, 1)]
    [InlineData("5Q17", null, 0)]
    [InlineData("1Q2027", null, 0)]
    [InlineData("17", null, 0)]
    public void Read_DateCode_IsTheLatestQuarterNotAfterTheDay(string code, int? year, int quarter)
    {
        Answer<CureQuarter> read = CureQuarter.Read(code, new LocalDate(2026, 10, 12));
        Assert.Equal(year, read.IsKnown ? read.Value.Year : null);
        Assert.Equal(quarter, read.IsKnown ? read.Value.Quarter : 0);
    }
}
