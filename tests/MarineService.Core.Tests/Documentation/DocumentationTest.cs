using System.Reflection;
using System.Xml.Linq;
using MarineService.Core.Tests.Architecture;
using MarineService.Core.Tests.Architecture.Specimens.Documents;

namespace MarineService.Core.Tests.Documentation;

/// <summary>The documentation of the libraries under test says what a caller must know, at every public member.</summary>
public sealed class DocumentationTest
{
    public static TheoryData<string> Libraries => [.. Library.All.Select(Library.Name)];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void EveryPublicMember_IsDocumentedWhole(string library)
    {
        using ThrownExceptions thrown = new(Named(library).Location);
        DocumentationRules rules = new(DocumentationFile.Beside(Named(library)), thrown);
        string[] faults = [.. Library.PublicTypes.Where(type => type.Assembly == Named(library)).SelectMany(rules.Faults)];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    [Theory]
    [MemberData(nameof(Libraries))]
    public void File_SpeaksOfOurOwnTypesOnly(string library)
    {
        XDocument file = XDocument.Load(Path.ChangeExtension(Named(library).Location, ".xml"));
        Assert.All(
            file.Descendants("member").Select(member => member.Attribute("name")!.Value.Substring(2)),
            name => Assert.StartsWith("MarineService.", name, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Libraries))]
    public void EveryKernel_SaysWhereItsFormulasComeFrom(string library)
    {
        using ThrownExceptions thrown = new(Named(library).Location);
        DocumentationRules rules = new(DocumentationFile.Beside(Named(library)), thrown);
        string[] faults = [.. rules.KernelsWithoutASource([.. Library.Types.Where(type => type.Assembly == Named(library))])];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    [Theory]
    [InlineData(nameof(Documented.NoSummary), "summary is missing")]
    [InlineData(nameof(Documented.NoParameter), "parameter 'teeth' is not described")]
    [InlineData(nameof(Documented.NoReturns), "returns is missing")]
    [InlineData(nameof(Documented.NoRange), "parameter 'mm' has neither unit nor range")]
    [InlineData(nameof(Documented.NoException), "throws System.ArgumentOutOfRangeException")]
    [InlineData(nameof(Documented.NoExceptionOfHelper), "throws System.InvalidOperationException")]
    public void Specimen_WithAGap_IsFound(string method, string expected) =>
        Assert.Contains(Faults(), fault => fault.Contains("." + method + "(", StringComparison.Ordinal) && fault.Contains(expected, StringComparison.Ordinal));

    [Fact]
    public void Specimen_WithoutAGap_IsLeftAlone() =>
        Assert.DoesNotContain(Faults(), fault => fault.Contains(nameof(Documented.Whole), StringComparison.Ordinal));

    [Theory]
    [InlineData("From 0 to 10,000 L.", true)]
    [InlineData("A finite number.", true)]
    [InlineData("The gap.", false)]
    public void Range_IsRecognized_InWordsOrFigures(string text, bool expected) => Assert.Equal(expected, DocumentationRules.SaysUnitOrRange(text));

    private static Assembly Named(string library) => Library.All.Single(one => Library.Name(one) == library);

    private static string[] Faults()
    {
        string path = typeof(Documented).Assembly.Location;
        using ThrownExceptions thrown = new(path);
        return [.. new DocumentationRules(new DocumentationFile(XDocument.Load(Path.ChangeExtension(path, ".xml"))), thrown).Faults(typeof(Documented))];
    }
}
