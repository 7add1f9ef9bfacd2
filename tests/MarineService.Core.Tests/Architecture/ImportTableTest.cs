namespace MarineService.Core.Tests.Architecture;

public sealed class ImportTableTest
{
    private const string SpecimenRoot = "MarineService.Core.Tests.Architecture.Specimens";

    [Fact]
    public void Library_Imports_OnlyWhatTheGuidesTableAllows()
    {
        ImportTable table = ImportTable.OfDevelopersGuide();
        string[] broken =
        [
            .. Imports.Of(Library.Core, "MarineService.Core")
                .Where(arrow => !table.Allows(arrow.From, arrow.To))
                .Select(arrow => $"{arrow.From} may not import {arrow.To}: {arrow.Types}"),
        ];
        Assert.True(broken.Length == 0, string.Join('\n', broken));
    }

    [Fact]
    public void EveryRoomOfTheLibrary_HasARow()
    {
        ImportTable table = ImportTable.OfDevelopersGuide();
        string[] unknown =
        [
            .. Library.Types.Where(type => type.Assembly == Library.Core).Select(type => ImportTable.RoomOf(type.Namespace!, "MarineService.Core")).Distinct()
                .Where(room => !table.Knows(room)),
        ];
        Assert.True(unknown.Length == 0, "No row in DEVELOPERS.md for: " + string.Join(", ", unknown));
    }

    [Fact]
    public void Table_OfTheGuide_KeepsStrangersApart()
    {
        ImportTable table = ImportTable.OfDevelopersGuide();
        Assert.False(table.Allows("Oils", "Belts"));
        Assert.False(table.Allows("Belts", "Engines"));
        Assert.False(table.Allows(ImportTable.Base, "Engines"));
        Assert.True(table.Allows("Scheduling", "Engines"));
        Assert.True(table.Allows("Records", "Specifications"));
        Assert.All(table.Rooms.Where(room => room != "Exchange"), room => Assert.False(table.Allows(room, "Exchange")));
    }

    [Theory]
    [InlineData("ByField")]
    [InlineData("ByLambda")]
    [InlineData("ByIterator")]
    [InlineData("ByGenericArgument")]
    [InlineData("ByAttribute")]
    [InlineData("ByStaticCall")]
    [InlineData("ByLocalFunction")]
    [InlineData("ByNestedType")]
    [InlineData("ByEnumConstant")]
    public void Imports_OfSpecimens_AreSeenInEveryDisguise(string specimen)
    {
        // Each specimen lives in room One and uses room Two in another way, never by its full name in a using line.
        IReadOnlyList<(string From, string To, string Types)> arrows = Imports.Of(typeof(ImportTableTest).Assembly, SpecimenRoot);
        Assert.Contains(arrows, arrow => arrow.From == "One" && arrow.To == "Two" && arrow.Types.Contains(specimen, StringComparison.Ordinal));
    }

    [Fact]
    public void Imports_OfSpecimens_SeeNoArrowThatIsNotThere()
    {
        IReadOnlyList<(string From, string To, string Types)> arrows = Imports.Of(typeof(ImportTableTest).Assembly, SpecimenRoot);
        Assert.DoesNotContain(arrows, arrow => arrow.From == "Two");
        Assert.DoesNotContain(arrows, arrow => arrow.Types.Contains("Stranger", StringComparison.Ordinal));
    }

    [Fact]
    public void Table_WithAForwardImport_IsRefused()
    {
        const string Text = "| folder | may import |\n|---|---|\n| A | B |\n| B | base |\n";
        Assert.Throws<InvalidOperationException>(() => ImportTable.Parse(Text));
    }
}
