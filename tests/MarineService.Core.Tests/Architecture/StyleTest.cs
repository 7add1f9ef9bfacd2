using MarineService.Core.Tests.Architecture.Specimens.Shapes;

namespace MarineService.Core.Tests.Architecture;

/// <summary>Every rule holds for every type of the library, and every rule finds the type that was made to break it.</summary>
public sealed class StyleTest
{
    private static readonly Dictionary<string, (Func<IEnumerable<Type>, IEnumerable<string>> Rule, Type Specimen)> Rules = new(StringComparer.Ordinal)
    {
        [nameof(StyleRules.NoFieldHoldsAQuantity)] = (StyleRules.NoFieldHoldsAQuantity, typeof(HoldsQuantity)),
        [nameof(StyleRules.NoFieldHoldsAQuantity) + " in a list"] = (StyleRules.NoFieldHoldsAQuantity, typeof(HoldsQuantities)),
        [nameof(StyleRules.NoPublicSetters)] = (StyleRules.NoPublicSetters, typeof(HasInit)),
        [nameof(StyleRules.NoPublicFields)] = (StyleRules.NoPublicFields, typeof(HasField)),
        [nameof(StyleRules.EverythingIsSealed)] = (StyleRules.EverythingIsSealed, typeof(IsOpen)),
        [nameof(StyleRules.EverythingIsSealed) + " abstract"] = (StyleRules.EverythingIsSealed, typeof(IsOpenAbstract)),
        [nameof(StyleRules.NoPublicInterfaces)] = (StyleRules.NoPublicInterfaces, typeof(ISpecimen)),
        [nameof(StyleRules.NoPositionalRecords)] = (StyleRules.NoPositionalRecords, typeof(Positional)),
        [nameof(StyleRules.NoPositionalRecords) + " struct"] = (StyleRules.NoPositionalRecords, typeof(PositionalStruct)),
        [nameof(StyleRules.NoRecordComparesAListByReference)] = (StyleRules.NoRecordComparesAListByReference, typeof(RecordWithList)),
        [nameof(StyleRules.StructsAreSmallReadOnlyScalars)] = (StyleRules.StructsAreSmallReadOnlyScalars, typeof(BigStruct)),
        [nameof(StyleRules.NoMutableCollectionsComeOut)] = (StyleRules.NoMutableCollectionsComeOut, typeof(GivesArray)),
        [nameof(StyleRules.NoStaticState)] = (StyleRules.NoStaticState, typeof(HasState)),
        [nameof(StyleRules.KernelsAreInternalAndStatic)] = (StyleRules.KernelsAreInternalAndStatic, typeof(PublicMath)),
        [nameof(StyleRules.EnumsDefineZero)] = (StyleRules.EnumsDefineZero, typeof(NoZero)),
        [nameof(StyleRules.NoForeignTimesOrFloats)] = (StyleRules.NoForeignTimesOrFloats, typeof(SpeaksOfDateTime)),
    };

    public static TheoryData<string> Names => [.. Rules.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Library_KeepsTheRule(string name)
    {
        string[] broken = [.. Rules[name].Rule(Library.Types)];
        Assert.True(broken.Length == 0, string.Join('\n', broken));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Rule_FindsItsSpecimen_AndLeavesTheGoodOneAlone(string name)
    {
        (Func<IEnumerable<Type>, IEnumerable<string>> rule, Type specimen) = Rules[name];
        Assert.NotEmpty(rule([specimen]));
        Assert.Empty(rule([typeof(Good), typeof(GoodScalar), typeof(GoodBase), typeof(GoodLabels)]));
    }
}
